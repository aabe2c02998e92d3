use super::read;
use std::string::ToString;

#[test]
fn smoke() {
    for entry in std::fs::read_dir("/tmp/wt/site/web-demo/sets").unwrap() {
        let path = entry.unwrap().path();
        match read(&std::fs::read(&path).unwrap()) {
            Ok(set) => std::println!("{} ok {}", path.display(), set.actions().count()),
            Err(f) => std::println!("{}\n{}", path.display(), f.to_string()),
        }
    }
}
