//! The tool as its users meet it: a process with arguments, streams and an exit status.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod runs;

use runs::{BROKEN, code, demo_sets, feed, first_line, json, run, tool, words};
use serde_json::Value;
use std::path::PathBuf;
use std::process::Stdio;

#[test]
fn no_demo_set_has_a_fault() {
    let sets = demo_sets();
    assert_eq!(sets.len(), 8);
    let output = run(&format!("check {}", sets.join(" ")));
    assert_eq!(code(&output), 0, "{}", words(&output.stdout));
    assert_eq!(
        words(&output.stdout)
            .lines()
            .filter(|l| l.contains(": clean. ") || l.contains(": no faults. "))
            .count(),
        8
    );
}

#[test]
fn findings_come_with_a_cure_and_fail_only_where_asked() {
    let output = run("check --json sets/fogbank.json");
    assert_eq!(code(&output), 0);
    let told = json(&output.stdout);
    let findings = told["files"][0]["findings"].as_array().unwrap();
    let late = findings
        .iter()
        .find(|f| f["code"] == "screen-late")
        .expect("4 is late");
    assert_eq!(late["severity"], "warning");
    assert_eq!(late["players"], serde_json::json!([4, 2]));
    assert!(late["text"].as_str().unwrap().starts_with("4 arrives"));
    assert!(
        late["cure"]
            .as_str()
            .unwrap()
            .starts_with("Let 2 wait for 4.")
    );
    assert!(late["t"].as_f64().unwrap() > 1.0);

    let text = words(&run("check sets/fogbank.json").stdout);
    assert!(text.contains("warning: 4 arrives"), "{text}");
    assert_eq!(code(&run("check --strict sets/fogbank.json")), 1);
    assert_eq!(code(&run("check --strict sets/lighthouse.json")), 0);
}

#[test]
fn what_a_coverage_shows_is_found_under_it_and_names_it() {
    let of = |line: &str| {
        let told = json(&run(line).stdout);
        let all = told["files"][0]["findings"].as_array().unwrap().clone();
        assert!(all.is_sorted_by_key(|f| f["t"].as_f64().unwrap().to_bits()));
        all.into_iter().find(|f| f["code"] == "pass-stolen")
    };
    let stolen = of("check --json sets/gangway.json --coverage under").expect("X2 is in the lane");
    assert_eq!(stolen["coverage"], "under");
    assert_eq!(stolen["defenders"], serde_json::json!(["X2"]));
    assert_eq!(stolen["players"], serde_json::json!([1, 2]));
    // Where nobody says otherwise they chase.
    assert!(of("check --json sets/gangway.json").is_none());
    let text = words(&run("check sets/gangway.json --coverage under").stdout);
    assert!(text.contains("If they go under: X2 has a hand"), "{text}");
}

#[test]
fn a_fault_is_told_at_its_line_with_the_nearest_word() {
    let output = feed("check -", BROKEN);
    assert_eq!(code(&output), 1);
    let text = words(&output.stdout);
    assert!(text.starts_with("standard input:2:"), "{text}");
    assert!(
        text.contains("left wing") && text.contains("unknown-spot"),
        "{text}"
    );
}

#[test]
fn faults_as_json_carry_code_place_and_help() {
    let output = feed("check --json - sets/lighthouse.json", BROKEN);
    assert_eq!(code(&output), 1);
    let told = json(&output.stdout);
    let fault = &told["files"][0]["faults"][0];
    assert_eq!(fault["code"], "unknown-spot");
    assert_eq!(fault["pointer"], "/players/2/at");
    assert_eq!(fault["line"], 2);
    assert!(fault["help"].as_str().unwrap().contains("left wing"));
    assert_eq!(told["files"][1]["file"], "sets/lighthouse.json");
    assert_eq!(told["files"][1]["faults"], Value::Array(Vec::new()));
}

#[test]
fn a_faulty_file_writes_nothing_but_its_faults() {
    for line in [
        "time -",
        "time - --json",
        "frames - --fps 30",
        "draw - --at 1",
        "draw - --beat 1",
    ] {
        let output = feed(line, BROKEN);
        assert_eq!(code(&output), 1, "{line}");
        assert!(output.stdout.is_empty(), "{line}");
        assert!(words(&output.stderr).contains("unknown-spot"), "{line}");
    }
    assert_eq!(
        json(&feed("time - --json", BROKEN).stderr)["faults"][0]["code"],
        "unknown-spot"
    );
}

#[test]
fn hostile_input_is_a_fault_never_a_crash() {
    let deep = "[".repeat(200_000);
    let long = " ".repeat(50 << 20);
    let number = words(BROKEN).replace("\"backcut\": 1", "\"backcut\": 1e999");
    let newer = words(BROKEN).replace("\"backcut\": 1", "\"backcut\": 99");
    let inputs: [&[u8]; 9] = [
        b"",
        b"\0",
        b"\xff\xfe",
        b"nonsense",
        b"{}",
        deep.as_bytes(),
        long.as_bytes(),
        number.as_bytes(),
        newer.as_bytes(),
    ];
    for input in inputs {
        for line in ["check -", "time - --json", "frames - --fps 1"] {
            let output = feed(line, input);
            let start = words(
                &input[..input.len().min(12)]
                    .iter()
                    .map(|b| b & 0x7f)
                    .collect::<Vec<u8>>(),
            );
            assert_eq!(
                code(&output),
                1,
                "{line} on {start:?}: {}",
                words(&output.stderr)
            );
            assert!(
                !words(&output.stderr).contains("panicked"),
                "{line} on {start:?}"
            );
        }
    }
}

#[test]
fn wrong_use_is_status_two_with_a_sentence() {
    for line in [
        "",
        "dance",
        "time",
        "time no-such-file.json",
        "time sets/lighthouse.json --fps 3",
        "draw sets/lighthouse.json",
        "draw sets/lighthouse.json --beat 9",
        "frames sets/lighthouse.json --fps 0",
        "serve no-such-folder",
        "time sets/lighthouse.json --court moon",
        "show -",
        "draw sets/lighthouse.json --at 1 -o no-such-folder/x.svg",
    ] {
        let output = run(line);
        assert_eq!(code(&output), 2, "{line}");
        assert!(output.stdout.is_empty(), "{line}");
        assert_eq!(
            words(&output.stderr).trim().lines().count(),
            1,
            "{line}: {}",
            words(&output.stderr)
        );
    }
}

#[test]
fn standard_input_is_as_good_as_a_file() {
    let bytes =
        std::fs::read(PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("sets/turnstile.json"))
            .unwrap();
    assert_eq!(
        feed("time - --json", &bytes).stdout,
        run("time sets/turnstile.json --json").stdout
    );
}

#[test]
fn the_timetable_names_actions_instants_and_ties() {
    let table = json(&run("time sets/turnstile.json --json").stdout);
    let duration = table["duration"].as_f64().unwrap();
    let actions = table["actions"].as_array().unwrap();
    let action = |id: &str| actions.iter().find(|a| a["id"] == id).unwrap();
    let through = action("through");
    assert_eq!(through["who"], 3);
    assert_eq!(through["do"], "cut");
    let at = |name: &str| through["instants"][name].as_f64().unwrap();
    assert!(at("start") <= at("plant") && at("plant") < at("pass-by") && at("pass-by") < at("end"));
    assert!(at("cue") < at("pass-by"));
    // One pass-by a post of the gate: the first plain, the other with the post's number.
    let instants = through["instants"].as_object().unwrap();
    assert_eq!(
        instants.keys().filter(|k| k.starts_with("pass-by")).count(),
        2
    );
    assert!(instants.contains_key("pass-by:5") || instants.contains_key("pass-by:4"));
    assert!(
        action("1.4")["instants"]["catch"].as_f64().unwrap()
            > action("1.4")["instants"]["release"].as_f64().unwrap()
    );
    for a in actions {
        assert!(a["start"].as_f64().unwrap() <= a["end"].as_f64().unwrap());
        assert!(a["end"].as_f64().unwrap() <= duration + 1e-9);
        assert!(a["slack"].is_null() || a["slack"].as_f64().unwrap() >= 0.0);
        assert!(a["critical"].is_boolean());
    }
    assert!(actions.iter().any(|a| a["critical"] == true));
    for tie in table["ties"].as_array().unwrap() {
        let (from, to) = (&tie["from"], &tie["to"]);
        assert!(
            to["t"].as_f64().unwrap()
                >= from["t"].as_f64().unwrap() + tie["lag"].as_f64().unwrap() - 1e-3,
            "{tie}"
        );
    }
}

#[test]
fn the_table_for_people_says_what_holds_it_up() {
    let text = words(&run("time sets/lighthouse.json").stdout);
    for part in [
        "Lighthouse: ",
        "Loud side",
        "time to spare",
        "holds it up",
        "What holds it up",
    ] {
        assert!(text.contains(part), "{part:?} is missing from\n{text}");
    }
}

#[test]
fn in_spanish_the_tables_are_in_spanish() {
    let time = words(&run("time sets/turnstile.json --lang es --read 2").stdout);
    let looks = words(&run("looks sets/turnstile.json --lang es").stdout);
    let check = words(&run("check sets/turnstile.json --lang es").stdout);
    for (text, parts) in [
        (
            &time,
            &[
                "pase a 2",
                "marca el ritmo",
                "corte hasta el ala derecha",
                "La línea se deja en",
            ],
        ),
        (
            &looks,
            &[
                "segundos libre",
                "3 recibe en",
                "salir al bote",
                "Qué lectura gana",
            ],
        ),
        (&check, &["sin errores", "3 fases", "nota: ", "atención: "]),
    ] {
        for part in parts {
            assert!(text.contains(part), "{part:?} is missing from\n{text}");
        }
        // What the set's author wrote is in English; what stands about it is not.
        for part in [
            " waits", " catch ", " for 3", "note:", "warning:", " beats", "chase",
        ] {
            assert!(!text.contains(part), "{part:?} stands in\n{text}");
        }
    }
}

#[test]
fn frames_come_at_equal_steps_and_end_at_the_end() {
    let duration = json(&run("time sets/breakwater.json --json").stdout)["duration"]
        .as_f64()
        .unwrap();
    let text = words(&run("frames sets/breakwater.json --fps 25").stdout);
    let frames: Vec<Value> = text
        .lines()
        .map(|l| serde_json::from_str(l).unwrap())
        .collect();
    for (k, frame) in frames.iter().enumerate() {
        let t = frame["t"].as_f64().unwrap();
        let expected = (k as f64 / 25.0).min(duration);
        assert!((t - expected).abs() < 1e-12);
        let ids: Vec<&str> = frame["players"]
            .as_array()
            .unwrap()
            .iter()
            .map(|p| p["id"].as_str().unwrap())
            .collect();
        assert_eq!(ids, ["1", "2", "3", "4", "5"]);
        for player in frame["players"].as_array().unwrap() {
            assert!(["x", "y", "facing"].iter().all(|f| player[f].is_number()));
        }
        assert!(["x", "y", "z"].iter().all(|f| frame["ball"][f].is_number()));
        assert!(
            frame["ball"]["holder"].is_null()
                || ids.contains(&frame["ball"]["holder"].as_str().unwrap())
        );
    }
    assert_eq!(frames.last().unwrap()["t"].as_f64().unwrap(), duration);
    assert_eq!(frames[0]["ball"]["holder"], "5");
}

#[test]
fn the_looks_stand_in_a_row_a_coverage_and_a_column_a_chance() {
    let table = json(&run("looks sets/turnstile.json --json").stdout);
    let rows = table["outcomes"].as_array().unwrap();
    let names: Vec<&str> = rows
        .iter()
        .map(|r| r["coverage"].as_str().unwrap())
        .collect();
    assert!(names.contains(&"chase") && names.contains(&"switch"));
    assert!(
        !names.contains(&"drop"),
        "no ball-screen row without a ball screen"
    );
    let columns = |row: &Value| -> Vec<String> {
        let looks = row["looks"].as_array().unwrap();
        looks
            .iter()
            .map(|l| format!("{} {} {}", l["who"], l["chance"], l["t"]))
            .collect()
    };
    assert!(columns(&rows[0]).len() >= 3);
    assert!(rows.iter().all(|r| columns(r) == columns(&rows[0])));

    let text = words(&run("looks sets/turnstile.json").stdout);
    assert!(text.contains("3 shot at"), "{text}");
    // One for what is drawn, one for the reads.
    assert_eq!(
        text.lines().filter(|l| l.starts_with("chase")).count(),
        2,
        "{text}"
    );
    let one = words(&run("looks sets/turnstile.json --coverage under").stdout);
    assert!(one.contains("\nunder") && !one.contains("\nchase"), "{one}");
}

#[test]
fn a_set_with_a_hand_off_has_ball_screen_rows() {
    let table = json(&run("looks sets/breakwater.json --json").stdout);
    let rows = table["outcomes"].as_array().unwrap();
    assert!(rows.iter().any(|r| r["coverage"] == "drop"));
}

#[test]
fn frames_carry_defenders_where_a_coverage_is_named() {
    let plain = run("frames sets/lighthouse.json --fps 10");
    assert!(!words(&plain.stdout).contains("defenders"));
    let output = run("frames sets/lighthouse.json --fps 10 --coverage chase");
    assert_eq!(code(&output), 0);
    for line in words(&output.stdout).lines() {
        let frame = json(line.as_bytes());
        let names: Vec<&str> = frame["defenders"]
            .as_array()
            .unwrap()
            .iter()
            .map(|d| d["id"].as_str().unwrap())
            .collect();
        assert_eq!(names, ["X1", "X2", "X3", "X4", "X5"]);
        let x = &frame["defenders"][0];
        assert!(x["x"].is_f64() && x["y"].is_f64() && x["facing"].is_f64());
    }
}

#[test]
fn mirror_changes_the_sign_of_x_and_nothing_else() {
    let last = |line: &str| {
        let text = words(&run(line).stdout);
        serde_json::from_str::<Value>(text.lines().last().unwrap()).unwrap()
    };
    let plain = last("frames sets/gangway.json --fps 1");
    let mirrored = last("frames sets/gangway.json --fps 1 --mirror");
    assert_eq!(plain["t"], mirrored["t"]);
    for (a, b) in plain["players"]
        .as_array()
        .unwrap()
        .iter()
        .zip(mirrored["players"].as_array().unwrap())
    {
        assert_eq!(a["x"].as_f64().unwrap(), -b["x"].as_f64().unwrap());
        assert_eq!(a["y"], b["y"]);
    }
}

#[test]
fn court_and_level_of_the_command_line_win() {
    let duration = |line: &str| json(&run(line).stdout)["duration"].as_f64().unwrap();
    let adult = duration("time sets/lighthouse.json --json");
    assert!(duration("time sets/lighthouse.json --json --level u12") > adult);
    let corner = |line: &str| {
        json(words(&run(line).stdout).lines().next().unwrap().as_bytes())["players"][1]["x"].clone()
    };
    assert_ne!(
        corner("frames sets/lighthouse.json --fps 1"),
        corner("frames sets/lighthouse.json --fps 1 --court nfhs")
    );
}

#[test]
fn a_picture_is_one_svg_document() {
    for line in [
        "draw sets/tidepool.json --beat 2",
        "draw sets/tidepool.json --at 1.5 --dark",
        "draw sets/tidepool.json --at 3000",
    ] {
        let output = run(line);
        assert_eq!(code(&output), 0, "{line}");
        let svg = words(&output.stdout);
        assert!(
            svg.starts_with("<svg ") && svg.trim_end().ends_with("</svg>"),
            "{line}"
        );
        assert!(svg.contains("<title>Tidepool"), "{line}");
    }
    let path = std::env::temp_dir().join(format!("backcut-{}.svg", std::process::id()));
    let output = run(&format!(
        "draw sets/tidepool.json --beat 1 -o {}",
        path.display()
    ));
    assert_eq!((code(&output), output.stdout.len()), (0, 0));
    assert!(std::fs::read_to_string(&path).unwrap().starts_with("<svg "));
    std::fs::remove_file(path).unwrap();
}

#[test]
fn a_reader_that_leaves_early_is_no_error() {
    let mut child = tool()
        .args(["frames", "sets/tidepool.json", "--fps", "1000"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    assert!(first_line(&mut child).starts_with("{\"t\":0.0"));
    // The pipe is closed here, long before a thousand frames a second are through.
    let output = child.wait_with_output().unwrap();
    assert_eq!((code(&output), words(&output.stderr).as_str()), (0, ""));
}

#[test]
fn the_schema_is_json_and_knows_the_version() {
    let schema = json(&run("schema").stdout);
    assert!(schema["$schema"].is_string());
    assert!(schema["properties"]["backcut"].is_object());
}
