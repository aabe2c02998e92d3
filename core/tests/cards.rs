//! Role cards say what the timetable says, whatever set they are made from.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod written;

use backcut::card::{Card, Cue, Doing, Eyes, Step};
use backcut::play::{Options, Play};
use backcut::set::{Edge, PlayerId, Verb};
use backcut::timeline::TimedAction;
use backcut::voice::{Units, Voice};
use proptest::prelude::*;
use written::{Seed, written};

/// Two instants this near are one to the eye, seconds.
const TIGHT: f64 = 0.08;
/// What comes of rounding, seconds.
const EPS: f64 = 1e-4;

fn player(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

fn demo(name: &str) -> Play {
    let path = format!(
        "{}/../web-demo/sets/{name}.json",
        env!("CARGO_MANIFEST_DIR")
    );
    Play::open(&std::fs::read(path).unwrap(), &Options::default()).unwrap()
}

const DEMOS: [&str; 8] = [
    "breakwater",
    "fogbank",
    "gangway",
    "lighthouse",
    "paper-boats",
    "slipway",
    "tidepool",
    "turnstile",
];

/// Whom a pass or a hand-off of the row's player goes to.
fn receiver(play: &Play, row: &TimedAction) -> Option<PlayerId> {
    let action = play.set().action(row.id)?;
    action
        .receiver()
        .filter(|_| action.actor() == Some(row.who))
}

/// What a card says otherwise than the timetable, if anything.
fn verify(play: &Play, card: &Card) -> Result<(), String> {
    let rows = play.timeline().actions();
    let mut does = Vec::new();
    let mut gets = Vec::new();
    for (i, step) in card.steps.iter().enumerate() {
        match step.what {
            Doing::Does(row) => {
                let own = &rows[row];
                if own.who != card.who || (step.start, step.end) != (own.start, own.end) {
                    return Err(format!("not its instants: {step:?} {own:?}"));
                }
                if step.beat != usize::from(own.id.beat) {
                    return Err(format!("another beat: {step:?}"));
                }
                does.push(row);
            }
            Doing::Catches(row) => {
                let at = (rows[row].at(Edge::Release), rows[row].at(Edge::Catch));
                if at != (Some(step.start), Some(step.end)) {
                    return Err(format!("not the flight: {step:?}"));
                }
                gets.push(row);
            }
            Doing::Takes(row) => {
                if rows[row].at(Edge::Release) != Some(step.start) {
                    return Err(format!("not the exchange: {step:?}"));
                }
                gets.push(row);
            }
            Doing::Stays if i + 1 == card.steps.len() => {}
            Doing::Stays => return Err("stays, and goes on".into()),
        }
        for cue in &step.cues {
            holds(play, card, step, cue)?;
        }
    }
    once(&does, rows, |(_, a)| a.who == card.who)?;
    once(&gets, rows, |(_, a)| {
        let comes = rows.iter().any(|o| o.id == a.id && o.who == card.who);
        let ball = match a.verb {
            Verb::Pass => true,
            Verb::Handoff => !comes && a.kind != Some(backcut::set::Kind::Keep),
            _ => false,
        };
        ball && receiver(play, a) == Some(card.who)
    })?;
    let ordered = card.steps.windows(2).all(|s| s[0].start <= s[1].start);
    ordered.then_some(()).ok_or("out of order".to_owned())
}

/// Whether `told` has each row that `wanted` names, once, and no other.
fn once(
    told: &[usize],
    rows: &[TimedAction],
    wanted: impl Fn(&(usize, &TimedAction)) -> bool,
) -> Result<(), String> {
    let wanted: Vec<usize> = rows
        .iter()
        .enumerate()
        .filter(wanted)
        .map(|r| r.0)
        .collect();
    let mut told = told.to_vec();
    told.sort_unstable();
    (told == wanted)
        .then_some(())
        .ok_or(format!("{told:?} instead of {wanted:?}"))
}

/// Whether a wait that a card names is one that holds: somebody else's instant, and the own one
/// right after it.
fn holds(play: &Play, card: &Card, step: &Step, cue: &Cue) -> Result<(), String> {
    let rows = play.timeline().actions();
    let Doing::Does(own) = step.what else {
        return Err(format!("waits without an action: {step:?}"));
    };
    let theirs = &rows[cue.action];
    let catches = receiver(play, theirs).filter(|_| cue.edge == Edge::Catch);
    if catches.unwrap_or(theirs.who) != cue.who || cue.who == card.who {
        return Err(format!("waits for nobody else: {cue:?}"));
    }
    let marks = theirs.marks.iter().any(|m| {
        m.edge == cue.edge && (cue.of.is_none() || m.of == cue.of) && (m.t - cue.t).abs() < EPS
    });
    // A gate shuts by an instant of the cutter's run that has no name.
    let tied = play.timeline().ties().iter().any(|t| {
        (t.from.action, t.to.action) == (cue.action, own) && (t.from.t - cue.t).abs() < EPS
    });
    if !marks && !tied {
        return Err(format!("no such instant: {cue:?} {theirs:?}"));
    }
    let due = cue.t + cue.lag;
    let mut mine = rows[own].marks.iter().filter(|m| m.edge == cue.mine);
    mine.any(|m| (-EPS..TIGHT).contains(&(m.t - due)))
        .then_some(())
        .ok_or(format!("nobody is held up: {cue:?} {:?}", rows[own]))
}

/// What is wrong with the words of a card, if anything.
fn told(play: &Play, card: &Card) -> Result<(), String> {
    let mut spanish = play.clone();
    spanish.speak(Voice::new("es", Units::Metres));
    [play, &spanish]
        .into_iter()
        .try_for_each(|play| told_in(play, card))
}

fn told_in(play: &Play, card: &Card) -> Result<(), String> {
    let words = play.card_words(card);
    if words.steps.len() != card.steps.len() {
        return Err("steps without words".into());
    }
    for (step, told) in card.steps.iter().zip(&words.steps) {
        let waits = step.cues.is_empty() == told.wait.is_empty();
        let reads = step.calls.len() == told.reads.len();
        let purpose = step.purpose.is_none() == told.why.is_empty();
        if told.text.len() < 3 || told.look.is_empty() || !waits || !reads || !purpose {
            return Err(format!("{told:?} {step:?}"));
        }
        for cue in &step.cues {
            if !told.wait.contains(char::from(b'0' + cue.who.number())) {
                return Err(format!("{} does not name {:?}", told.wait, cue.who));
            }
        }
        let all = format!("{told:?} {words:?}");
        let mut spoken = all.split(|c: char| !c.is_alphabetic());
        if spoken.any(|w| ["he", "she", "his", "her", "him"].contains(&w)) {
            return Err(format!("he or she: {all}"));
        }
        let sentences = [&told.text, &told.wait, &told.why]
            .into_iter()
            .chain(&told.reads);
        for said in sentences.filter(|s| !s.is_empty()) {
            let whole = said.ends_with('.') && !said.contains(['{', '}']);
            if !whole || said.contains("  ") || said.contains(" .") {
                return Err(format!("no sentence: {said:?}"));
            }
        }
    }
    Ok(())
}

fn cards(play: &Play) -> impl Iterator<Item = Card> + '_ {
    PlayerId::ALL.into_iter().filter_map(|who| play.card(who))
}

#[test]
fn cards_of_the_demo_sets_and_all_their_branches_agree_with_the_timetable() {
    for name in DEMOS {
        let play = demo(name);
        assert_eq!(cards(&play).count(), play.set().players.len());
        let branches = (0..play.set().reads.len()).map(|n| play.branch(&[n]).unwrap().play);
        for play in branches.chain([play.clone()]) {
            for card in cards(&play) {
                verify(&play, &card).unwrap_or_else(|e| panic!("{name}: {e}"));
                told(&play, &card).unwrap_or_else(|e| panic!("{name}: {e}"));
            }
        }
    }
}

#[test]
fn every_read_is_on_the_card_of_everybody_it_names() {
    for name in DEMOS {
        let play = demo(name);
        for (n, read) in play.set().reads.iter().enumerate() {
            let actions = || read.beats.iter().flat_map(|b| &b.actions);
            for card in cards(&play) {
                let on = |a: &backcut::set::Action| {
                    a.who.contains(&card.who) || a.receiver() == Some(card.who)
                };
                let named = read.by.contains(&card.who) || actions().any(on);
                let calls: Vec<_> = card.steps.iter().flat_map(|s| &s.calls).collect();
                let told = calls.iter().filter(|c| c.read == n).count();
                assert_eq!(told, usize::from(named), "{name} {n} {:?}", card.who);
                for call in calls {
                    let read = &play.set().reads[call.read];
                    assert_eq!(Some(call.t), play.fork_instant(read));
                }
            }
        }
    }
}

#[test]
fn eyes_go_where_the_picture_has_the_chest() {
    for name in DEMOS.into_iter().filter(|n| *n != "fogbank") {
        let play = demo(name);
        for card in cards(&play) {
            for step in &card.steps {
                let Doing::Does(row) = step.what else {
                    continue;
                };
                let row = &play.timeline().actions()[row];
                let t = row.at(Edge::Release).unwrap_or(row.start);
                let at = match (row.verb, step.eyes) {
                    (Verb::Pass, Eyes::Mate(who)) => play.timeline().player(who, t).unwrap().at(),
                    (Verb::Shot, Eyes::Ring) => backcut::math::Point::ZERO,
                    (Verb::Pass | Verb::Shot, eyes) => panic!("{name}: {eyes:?}"),
                    _ => continue,
                };
                let own = play.timeline().player(card.who, t).unwrap();
                let off = at - own.at();
                let way = (off.x.hypot(off.y) > 0.3).then(|| off.x.atan2(-off.y));
                let turn = way.map_or(0.0, |w| {
                    (w - own.facing).sin().atan2((w - own.facing).cos())
                });
                assert!(turn.abs() < 1.05, "{name}: {:?} {turn} at {t}", card.who);
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn prop_cards_agree_with_the_timetable(
        players in 2usize..=5,
        holder in 0usize..5,
        stand in 0usize..16,
        seeds in prop::collection::vec(any::<Seed>(), 1..12),
    ) {
        let text = written(players, holder, stand, &seeds);
        let Ok(play) = Play::open(text.as_bytes(), &Options::default()) else { return Ok(()) };
        for n in 1..=5 {
            let card = play.card(player(n));
            prop_assert_eq!(card.is_some(), usize::from(n) <= players);
            let Some(card) = card else { continue };
            prop_assert!(!card.steps.is_empty() && (1..=2).contains(&card.parts.len()));
            let (right, said) = (verify(&play, &card), told(&play, &card));
            prop_assert!(right.is_ok(), "{right:?}");
            prop_assert!(said.is_ok(), "{said:?}");
        }
    }
}
