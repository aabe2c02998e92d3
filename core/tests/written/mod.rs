//! Sets from any numbers, and what must hold of how they move.
#![allow(dead_code, reason = "each test needs its part")]

use backcut::set::{PlayerId, Verb};
use backcut::timeline::{Frame, Timeline};

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
/// Seconds between two frames that are looked at.
pub(crate) const DT: f64 = 1.0 / 240.0;

/// Numbers from which one action is made.
pub(crate) type Seed = (u8, u8, u8, u8, u8);

/// A read from any numbers: of which action, at which of its edges, made by whom, what is done then,
/// and perhaps a read of that.
#[derive(Clone, Debug)]
pub(crate) struct Fork {
    pub(crate) at: u8,
    pub(crate) edge: u8,
    pub(crate) by: u8,
    pub(crate) seeds: Vec<Seed>,
    pub(crate) inner: Vec<Self>,
}

/// A set whose ball order is right, from any numbers.
pub(crate) fn written(players: usize, holder: usize, stand: usize, seeds: &[Seed]) -> String {
    with_reads(players, holder, stand, seeds, &[])
}

/// The same with reads.
pub(crate) fn with_reads(
    players: usize,
    holder: usize,
    stand: usize,
    seeds: &[Seed],
    forks: &[Fork],
) -> String {
    let holder = holder % players;
    let stands: Vec<String> = (0..players)
        .map(|i| {
            // 5 and 16 have no common factor: no spot twice.
            let at = SPOTS[(stand + 5 * i) % SPOTS.len()];
            let ball = if i == holder { r#", "ball": true"# } else { "" };
            format!(r#""{}": {{"at": "{at}"{ball}}}"#, i + 1)
        })
        .collect();
    let made = Made::new(players, holder, "a", seeds);
    format!(
        r#"{{"backcut": 1, "title": "x", "players": {{{}}}, "beats": [{}], "reads": [{}]}}"#,
        stands.join(", "),
        made.text,
        made.reads(players, "b", forks)
    )
}

/// Beats as text, and what a read of them has to know.
struct Made {
    text: String,
    name: &'static str,
    /// Of each action: what it is, and who has the ball after it.
    actions: Vec<(u8, usize)>,
}

impl Made {
    fn new(players: usize, mut holder: usize, name: &'static str, seeds: &[Seed]) -> Self {
        let mut beats: Vec<Vec<String>> = vec![Vec::new()];
        let mut actions = Vec::new();
        for (n, seed) in seeds.iter().enumerate() {
            if seed.4 % 5 == 0 {
                beats.push(Vec::new());
            }
            let action = action(players, &mut holder, name, n, *seed);
            beats.last_mut().unwrap().push(action);
            actions.push((seed.0 % 9, holder));
        }
        let beats: Vec<String> = beats
            .iter()
            .filter(|b| !b.is_empty())
            .map(|b| format!(r#"{{"actions": [{}]}}"#, b.join(", ")))
            .collect();
        Self {
            text: beats.join(", "),
            name,
            actions,
        }
    }

    fn reads(&self, players: usize, name: &'static str, forks: &[Fork]) -> String {
        let reads = forks.iter().map(|fork| {
            let n = usize::from(fork.at) % self.actions.len();
            let (what, holder) = self.actions[n];
            let edges: &[&str] = match what {
                0..=3 => &["start", "plant", "end"],
                4 => &["start", "set", "free", "end"],
                5 | 6 => &["start", "release", "catch"],
                7 => &["start", "set", "release", "end"],
                _ => &["start", "end"],
            };
            let made = Self::new(players, holder, name, &fork.seeds);
            let by: Vec<String> = (0..players)
                .filter(|i| fork.by & (1 << i) != 0 || *i == usize::from(fork.by) % players)
                .map(|i| (i + 1).to_string())
                .collect();
            format!(
                r#"{{"at": {{"id": "{}{n}", "edge": "{}"}}, "by": [{}], "if": {{"coverage": "switch"}}, "beats": [{}], "reads": [{}]}}"#,
                self.name,
                edges[usize::from(fork.edge) % edges.len()],
                by.join(", "),
                made.text,
                made.reads(players, "c", &fork.inner),
            )
        });
        reads.collect::<Vec<_>>().join(", ")
    }
}

/// One action; whoever gets the ball by it is its holder then.
fn action(players: usize, holder: &mut usize, name: &str, n: usize, seed: Seed) -> String {
    let (what, who, kind, place, extra) = seed;
    let pick = |list: &[&'static str], n: u8| list[usize::from(n) % list.len()];
    let other = |not: usize, n: u8| (not + 1 + usize::from(n) % (players - 1)) % players;
    let free = if extra % 11 == 0 {
        r#", "free": true"#
    } else {
        ""
    };
    let off = |who: usize| match extra % 3 {
        0 => format!(r#", "off": {}"#, other(who, place) + 1),
        _ => String::new(),
    };
    let tie = match (extra % 7, n) {
        (1, 1..) => format!(
            r#", "after": {{"id": "{name}{}", "edge": "start", "lag": 0.2}}"#,
            n - 1
        ),
        (2, 1..) => format!(
            r#", "with": {{"id": "{name}{}", "edge": "end", "lag": -0.1}}"#,
            n - 1
        ),
        _ => String::new(),
    };
    let spot = pick(&SPOTS, place);
    let (h, runner) = (*holder + 1, other(*holder, who));
    let r = runner + 1;
    let body = match what % 9 {
        0..=2 => format!(
            r#""who": {r}, "do": "cut", "kind": "{}", "to": "{spot}"{}"#,
            pick(&CUTS, kind),
            off(runner)
        ),
        3 => format!(
            r#""who": {h}, "do": "dribble", "kind": "{}", "to": "{spot}"{}"#,
            pick(&DRIBBLES, kind),
            off(*holder)
        ),
        4 => format!(
            r#""who": {r}, "do": "screen", "kind": "{}", "for": {}, "at": "{spot}""#,
            pick(&SCREENS, kind),
            other(runner, extra) + 1
        ),
        5 | 6 => {
            *holder = runner;
            format!(
                r#""who": {h}, "do": "pass", "kind": "{}", "to": {r}{free}"#,
                pick(&PASSES, kind)
            )
        }
        7 => {
            *holder = runner;
            format!(r#""who": {h}, "do": "handoff", "kind": "dho", "to": {r}"#)
        }
        _ => format!(r#""who": {h}, "do": "fake", "of": "shot""#),
    };
    format!(r#"{{"id": "{name}{n}", {body}{tie}}}"#)
}

/// What is wrong with how a set moves, if anything.
pub(crate) fn verify(tl: &Timeline) -> Result<(), String> {
    let mut last: Option<Frame> = None;
    for i in 0..=(tl.duration() / DT) as u32 {
        let mut now = Frame::default();
        tl.frame(f64::from(i) * DT, &mut now);
        if let Some(before) = last {
            bodies(tl, &before, &now)?;
            ball(&before, &now)?;
        }
        last = Some(now);
    }
    for pair in tl.ball_spans().windows(2) {
        if pair[0].end != pair[1].start {
            return Err(format!("two balls or none: {pair:?}"));
        }
    }
    for tie in tl.ties().iter().filter(|t| t.written) {
        if tie.to.t < tie.from.t + tie.lag - 1e-5 {
            return Err(format!("a tie does not hold: {tie:?}"));
        }
    }
    for s in tl.screens() {
        if s.free < s.set {
            return Err(format!("free before set: {s:?}"));
        }
        let end = s.shut.unwrap_or(s.free);
        let moves = (0..=20)
            .map(|i| s.set + 1e-6 + (end - s.set - 2e-6).max(0.0) * f64::from(i) / 20.0)
            .any(|t| tl.player(s.screen.who, t).is_some_and(|m| m.speed > 1e-6));
        if moves {
            return Err(format!("a screen moves: {s:?}"));
        }
    }
    Ok(())
}

fn bodies(tl: &Timeline, before: &Frame, now: &Frame) -> Result<(), String> {
    for who in PlayerId::ALL {
        let i = who.index();
        let (Some(a), Some(b)) = (before.players[i], now.players[i]) else {
            continue;
        };
        let top = tl.limits(who).v_max + 0.01;
        let went = (b.x - a.x).hypot(b.y - a.y);
        if b.speed > top || went > top * DT + 1e-6 {
            return Err(format!("{who:?} runs {} at {}", went / DT, now.t));
        }
        let busy = tl.actions().iter().any(|a| {
            a.who == who
                && matches!(
                    a.verb,
                    Verb::Cut | Verb::Dribble | Verb::Screen | Verb::Handoff
                )
                && a.start - DT <= now.t
                && now.t <= a.end + DT
        });
        if b.speed > 1e-6 && !busy {
            return Err(format!("{who:?} moves without an action at {}", now.t));
        }
    }
    Ok(())
}

fn ball(before: &Frame, now: &Frame) -> Result<(), String> {
    let (a, b) = (before.ball, now.ball);
    if ![b.x, b.y, b.z].iter().all(|v| v.is_finite()) {
        return Err(format!("no ball at {}", now.t));
    }
    let went = ((b.x - a.x).powi(2) + (b.y - a.y).powi(2) + (b.z - a.z).powi(2)).sqrt();
    if went > 0.1 {
        return Err(format!("the ball jumps {went} m at {}", now.t));
    }
    Ok(())
}
