//! Sets whose ball order is right, made from any numbers.

const SPOTS: [&str; 16] = [
    "top",
    "left slot",
    "right slot",
    "left wing",
    "right wing",
    "left corner",
    "right corner",
    "left elbow",
    "right elbow",
    "left block",
    "right block",
    "left dunker spot",
    "right mid post",
    "nail",
    "right short corner",
    "left low wing",
];
const CUTS: [&str; 20] = [
    "v-cut", "l-cut", "backdoor", "basket", "zipper", "straight", "curl", "fade", "reject", "slip",
    "ghost", "flash", "fill", "lift", "drift", "shallow", "loop", "through", "roll", "split",
];
const DRIBBLES: [&str; 8] = [
    "dribble-at",
    "push",
    "hard",
    "retreat",
    "hesitation",
    "crossover",
    "snake",
    "hostage",
];
const SCREENS: [&str; 10] = [
    "down", "pin-down", "away", "back", "flare", "cross", "ball", "flat", "step-up", "stagger",
];
const PASSES: [&str; 6] = ["chest", "bounce", "overhead", "lob", "skip", "pocket"];
/// Numbers from which one action is made.
pub(crate) type Seed = (u8, u8, u8, u8, u8);

/// A set whose ball order is right, from any numbers.
pub(crate) fn written(players: usize, holder: usize, stand: usize, seeds: &[Seed]) -> String {
    let pick = |list: &[&'static str], n: u8| list[usize::from(n) % list.len()];
    let mut holder = holder % players;
    let stands: Vec<String> = (0..players)
        .map(|i| {
            // 5 and 16 have no common factor: no spot twice.
            let at = SPOTS[(stand + 5 * i) % SPOTS.len()];
            let ball = if i == holder { r#", "ball": true"# } else { "" };
            format!(r#""{}": {{"at": "{at}"{ball}}}"#, i + 1)
        })
        .collect();
    let mut beats: Vec<Vec<String>> = vec![Vec::new()];
    for (n, (what, who, kind, place, extra)) in seeds.iter().enumerate() {
        let other = |not: usize, n: u8| (not + 1 + usize::from(n) % (players - 1)) % players;
        let free = if extra % 11 == 0 {
            r#", "free": true"#
        } else {
            ""
        };
        let off = |who: usize| match extra % 3 {
            0 => format!(r#", "off": {}"#, other(who, *place) + 1),
            _ => String::new(),
        };
        let tie = match (extra % 7, n) {
            (1, 1..) => format!(
                r#", "after": {{"id": "a{}", "edge": "start", "lag": 0.2}}"#,
                n - 1
            ),
            (2, 1..) => format!(
                r#", "with": {{"id": "a{}", "edge": "end", "lag": -0.1}}"#,
                n - 1
            ),
            _ => String::new(),
        };
        let spot = pick(&SPOTS, *place);
        let (h, runner) = (holder + 1, other(holder, *who));
        let r = runner + 1;
        let body = match what % 9 {
            0..=2 => format!(
                r#""who": {r}, "do": "cut", "kind": "{}", "to": "{spot}"{}"#,
                pick(&CUTS, *kind),
                off(runner)
            ),
            3 => format!(
                r#""who": {h}, "do": "dribble", "kind": "{}", "to": "{spot}"{}"#,
                pick(&DRIBBLES, *kind),
                off(holder)
            ),
            4 => format!(
                r#""who": {r}, "do": "screen", "kind": "{}", "for": {}, "at": "{spot}""#,
                pick(&SCREENS, *kind),
                other(runner, *extra) + 1
            ),
            5 | 6 => {
                holder = runner;
                format!(
                    r#""who": {h}, "do": "pass", "kind": "{}", "to": {r}{free}"#,
                    pick(&PASSES, *kind)
                )
            }
            7 => {
                holder = runner;
                format!(r#""who": {h}, "do": "handoff", "kind": "dho", "to": {r}"#)
            }
            _ => format!(r#""who": {h}, "do": "fake", "of": "shot""#),
        };
        if extra % 5 == 0 {
            beats.push(Vec::new());
        }
        let action = format!(r#"{{"id": "a{n}", {body}{tie}}}"#);
        beats.last_mut().unwrap().push(action);
    }
    let beats: Vec<String> = beats
        .iter()
        .filter(|b| !b.is_empty())
        .map(|b| format!(r#"{{"actions": [{}]}}"#, b.join(", ")))
        .collect();
    format!(
        r#"{{"backcut": 1, "title": "x", "players": {{{}}}, "beats": [{}]}}"#,
        stands.join(", "),
        beats.join(", ")
    )
}
