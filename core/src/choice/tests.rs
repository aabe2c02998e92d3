//! Each condition at the place where it is true, and at those where it is only nearly so.

use super::*;
use crate::court::Side;
use crate::defence::{Defence, DefenderState};
use crate::math::{Point, Vec2, angle_of, direction, unit};
use crate::play::{Options, Play};
use crate::set::{Condition, Coverage, Deed, Directive, PlayerId, Read};
use alloc::format;
use alloc::vec::Vec;
use std::string::String;

fn player(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

/// 3 comes out of the corner off 5's pin-down, and a read at that instant of it.
fn set(edge: &str, condition: &str) -> String {
    format!(
        r#"{{ "backcut": 1, "title": "Pin-down", "players": {{
             "1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}},
             "3": {{"at": "right corner"}}, "5": {{"at": "right elbow"}} }},
           "beats": [ {{ "actions": [
             {{"id": "wait", "who": 1, "do": "hold", "takes": 2.0}},
             {{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]}},
             {{"id": "cut", "who": 3, "do": "cut", "off": 5, "to": "right slot", "pace": "sprint",
               "after": {{"id": "wait", "mine": "plant"}} }},
             {{"who": 1, "do": "pass", "to": 3}}, {{"who": 3, "do": "shot"}} ] }} ],
           "reads": [ {{ "title": "Fade", "at": {{"id": "cut", "edge": "{edge}"}}, "by": [3, 1],
             "if": {condition},
             "beats": [ {{ "actions": [
               {{"who": 3, "do": "cut", "kind": "fade", "to": "right corner"}},
               {{"who": 1, "do": "pass", "to": 3}}, {{"who": 3, "do": "shot"}} ] }} ] }} ] }}"#
    )
}

fn open(text: &str) -> Play {
    Play::open(text.as_bytes(), &Options::default()).unwrap_or_else(|f| panic!("{f:?}"))
}

/// The instant of the read, with 3 and 5 there.
struct At {
    play: Play,
    read: Read,
    t: f64,
    man: Point,
    /// Which way 3 goes; to the ring where 3 stands.
    way: Vec2,
    screen: Point,
}

fn at(edge: &str, condition: &str) -> At {
    let play = open(&set(edge, condition));
    let read = play.set().reads[0].clone();
    let t = play.fork_instant(&read).unwrap();
    let place = |n, t| play.timeline().player(player(n), t).unwrap().at();
    let man = place(3, t);
    let way = direction(man - place(3, t - 0.02)).unwrap_or_else(|| unit(0.0));
    let screen = place(5, t);
    At {
        read,
        t,
        man,
        way,
        screen,
        play,
    }
}

impl At {
    /// What is seen with a defender of 3's put at `place`.
    fn with(&self, place: Point, v: Vec2, man: u8, deed: Option<Deed>) -> Seen {
        self.looking(3, place, v, man, deed, angle_of(self.man - place))
    }

    fn looking(
        &self,
        x: u8,
        place: Point,
        v: Vec2,
        man: u8,
        deed: Option<Deed>,
        facing: f64,
    ) -> Seen {
        let state = DefenderState {
            x: place.x,
            y: place.y,
            facing,
            vx: v.x,
            vy: v.y,
        };
        let defence = self.play.defence(Coverage::Chase);
        let defence = defence.with(player(x), state, (player(man), self.t - 0.1), deed);
        self.seen(&defence)
    }

    fn seen(&self, defence: &Defence) -> Seen {
        Scene {
            set: self.play.set(),
            timeline: self.play.timeline(),
            defence,
        }
        .seen(&self.read, self.t)
    }

    fn stands(&self, place: Point) -> bool {
        self.with(place, Vec2::ZERO, 3, None).holds
    }
}

const fn across(v: Vec2) -> Vec2 {
    Vec2::new(-v.y, v.x)
}

#[test]
fn a_defender_trails_behind_the_man_and_not_beside_before_or_far_off_the_way() {
    let at = at("pass-by", r#"{"who": "X3", "does": "trails"}"#);
    let behind = at.with(at.man - at.way * 0.8, Vec2::ZERO, 3, None);
    assert!(behind.holds);
    let Measure::Behind { x, man, gap } = behind.measure else {
        panic!("{behind:?}");
    };
    assert_eq!((x, man), (player(3), player(3)));
    assert!((gap - 0.8).abs() < 0.05, "{gap}");
    assert!(at.stands(at.man - at.way * 2.0 + across(at.way) * 1.5));
    assert!(!at.stands(at.man - at.way * 0.2));
    assert!(!at.stands(at.man + across(at.way) * 0.8));
    assert!(!at.stands(at.man + at.way * 0.8));
    assert!(!at.stands(at.man - at.way * 0.8 + across(at.way) * 1.0));
}

#[test]
fn nobody_trails_a_man_who_stands() {
    let at = at("plant", r#"{"who": "X3", "does": "trails"}"#);
    let seen = at.with(at.man + Vec2::new(0.0, -0.8), Vec2::ZERO, 3, None);
    assert_eq!((seen.holds, seen.measure), (false, Measure::Nothing));
}

#[test]
fn going_round_is_seen_by_where_the_defender_heads_and_on_which_side() {
    let wide = |side: Side, deed| {
        let name = if side == Side::Left { "left" } else { "right" };
        let at = at(
            "cue",
            &format!(r#"{{"who": "X3", "does": "goes round", "side": "{name}"}}"#),
        );
        // To the right of the man's line, whichever side is asked for.
        let by = at.play.timeline().player(player(3), at.t + 0.3).unwrap();
        let right = Vec2::new(at.way.y, -at.way.x) * at.way.y.signum();
        at.with(by.at() + right * 0.9, at.way * 3.0, 3, deed)
    };
    let goes = wide(Side::Right, Some(Deed::GoesRound));
    assert!(goes.holds, "{goes:?}");
    assert!(!wide(Side::Left, Some(Deed::GoesRound)).holds);
    assert!(!wide(Side::Right, None).holds);
    let at = at("cue", r#"{"who": "X3", "does": "goes round"}"#);
    let line = at.with(
        at.man - at.way * 0.5,
        at.way * 3.0,
        3,
        Some(Deed::GoesRound),
    );
    assert!(!line.holds, "{line:?}");
}

#[test]
fn shooting_the_gap_is_being_past_the_screen_and_before_the_man() {
    let at = at("cue", r#"{"who": "X3", "does": "shoots the gap"}"#);
    let out = at.play.timeline().player(player(3), at.t + 1.1).unwrap();
    assert!(at.stands(out.at()));
    // In the way, but short of the screen: that is a top-lock.
    assert!(!at.stands(at.man + at.way * 0.5));
    assert!(!at.stands(at.man - at.way * 0.8));
}

#[test]
fn a_top_lock_is_between_man_and_screen_and_near() {
    let at = at("plant", r#"{"who": "X3", "does": "top-locks"}"#);
    let way = direction(at.screen - at.man).unwrap();
    assert!(at.stands(at.man + way * 0.8));
    assert!(!at.stands(at.man + way * 1.5));
    assert!(!at.stands(at.man + way * 0.8 + across(way) * 0.6));
    assert!(!at.stands(at.man - way * 0.8));
}

#[test]
fn a_switch_is_seen_by_whom_the_defender_has() {
    let at = at("pass-by", r#"{"who": "X3", "does": "switches"}"#);
    let place = at.man - at.way * 0.8;
    let other = at.with(place, Vec2::ZERO, 5, None);
    assert!(other.holds);
    assert_eq!(
        other.measure,
        Measure::Has {
            x: player(3),
            man: player(5)
        }
    );
    assert!(!at.stands(place));
}

#[test]
fn stepping_out_is_leaving_the_own_man_and_no_switch() {
    let at = at("pass-by", r#"{"who": "X5", "does": "steps out"}"#);
    let place = at.man + at.way;
    let seen = |man, deed| at.looking(5, place, Vec2::ZERO, man, deed, 0.0).holds;
    assert!(seen(5, Some(Deed::StepsOut)));
    assert!(!seen(5, None));
    assert!(!seen(3, Some(Deed::StepsOut)));
}

#[test]
fn sagging_is_far_off_the_man_toward_the_ring_and_nearer_on_the_ball() {
    let at = at("plant", r#"{"who": "X3", "does": "sags"}"#);
    let ring = direction(Point::ZERO - at.man).unwrap();
    assert!(at.stands(at.man + ring * 3.0));
    assert!(!at.stands(at.man + ring * 2.6));
    let tags = at.with(at.man + ring * 1.4, Vec2::ZERO, 3, Some(Deed::Sags));
    assert!(tags.holds);
    let holder = self::at("plant", r#"{"who": "X1", "does": "sags"}"#);
    let one = holder.play.timeline().player(player(1), holder.t).unwrap();
    let ring = direction(Point::ZERO - one.at()).unwrap();
    let off = |far: f64| holder.looking(1, one.at() + ring * far, Vec2::ZERO, 1, None, 0.0);
    assert!(off(1.7).holds);
    assert!(!off(1.3).holds);
}

#[test]
fn who_stays_low_is_nearer_to_the_baseline_and_still_near() {
    let at = at("plant", r#"{"who": "X3", "does": "stays low"}"#);
    assert!(at.stands(at.man + Vec2::new(0.4, -0.5)));
    assert!(!at.stands(at.man + Vec2::new(0.4, -0.2)));
    assert!(!at.stands(at.man + Vec2::new(0.0, 0.5)));
    assert!(!at.stands(at.man + Vec2::new(0.0, -2.7)));
}

#[test]
fn a_turned_head_has_the_man_out_of_view() {
    let at = at("plant", r#"{"who": "X3", "does": "turns head"}"#);
    let place = at.man + Vec2::new(-1.0, 0.5);
    let to = angle_of(at.man - place);
    let turned = |by: f64| at.looking(3, place, Vec2::ZERO, 3, None, to + by.to_radians());
    assert!(turned(110.0).holds);
    assert!(turned(-110.0).holds);
    assert!(!turned(90.0).holds);
}

#[test]
fn separation_is_to_the_own_defender_whoever_that_is() {
    let at = at("plant", r#"{"who": "X3", "under": 1.0}"#);
    assert!(at.stands(at.man + Vec2::new(0.0, 0.9)));
    assert!(!at.stands(at.man + Vec2::new(0.0, 1.1)));
}

#[test]
fn a_lane_is_closed_by_a_hand_in_it_and_not_by_one_beside_it() {
    let at = at("plant", r#"{"lane": "closed", "from": 1, "to": 2}"#);
    let place = |n| at.play.timeline().player(player(n), at.t).unwrap().at();
    let far = at.play.defence(Coverage::Chase);
    let corner = DefenderState {
        x: 7.0,
        y: 12.0,
        ..DefenderState::default()
    };
    let away = [1, 2, 3, 5].into_iter().fold(far, |defence, n| {
        defence.with(player(n), corner, (player(n), 0.0), None)
    });
    assert!(!at.seen(&away).holds);
    let middle = place(1).midpoint(place(2));
    let there = DefenderState {
        x: middle.x,
        y: middle.y,
        ..DefenderState::default()
    };
    let shut = at.seen(&away.with(player(2), there, (player(2), 0.0), None));
    assert!(shut.holds, "{shut:?}");
    let Measure::Lane { hand, .. } = shut.measure else {
        panic!("{shut:?}");
    };
    assert_eq!(hand, Some(player(2)));
}

#[test]
fn a_coverage_is_the_one_that_meets_the_screen() {
    let holds = |asked: &str, played| {
        let at = at("cue", &format!(r#"{{"coverage": "{asked}"}}"#));
        at.seen(&at.play.defence(played)).holds
    };
    assert!(holds("switch", Coverage::Switch));
    assert!(!holds("switch", Coverage::Chase));
    // A coverage for ball screens means off the ball what it does there.
    assert!(holds("chase", Coverage::Drop));
    assert!(holds("drop", Coverage::Drop));
}

#[test]
fn the_first_true_read_wins_by_its_instant_and_those_after_it_are_not_asked() {
    // Both are true under a switch; the later one stands first in the file.
    let text = set("cue", r#"{"coverage": "switch"}"#);
    let mut play = open(&text).set().clone();
    let mut early = play.reads[0].clone();
    early.at.edge = crate::set::Edge::Plant;
    play.reads.push(early);
    let play = Play::of(play, &Options::default()).unwrap();
    let decided = play.decided(Coverage::Switch).unwrap();
    assert_eq!(decided.path, [1]);
    assert_eq!(decided.asked.len(), 1);
    let chase = play.decided(Coverage::Chase).unwrap();
    assert_eq!(chase.path, [] as [usize; 0]);
    let order: Vec<usize> = chase.asked.iter().map(|a| a.path[0]).collect();
    assert_eq!(order, [1, 0]);
}

/// The set with a second read within its own: once the fade has ended, and wherever X3 is then.
fn nested(edge: &str, condition: &str) -> Play {
    let mut set = open(&set(edge, condition)).set().clone();
    let mut inner = set.reads[0].clone();
    set.reads[0].beats[0].actions[0].id = Some("fade".into());
    inner.at.action = "fade".into();
    inner.at.main = None;
    inner.at.edge = crate::set::Edge::End;
    inner.by = [player(3)].into();
    inner.condition = Condition::Separation {
        who: player(3),
        under: 20.0,
    };
    inner.beats.clear();
    set.reads[0].reads.push(inner);
    Play::of(set, &Options::default()).unwrap()
}

#[test]
fn a_read_within_a_read_is_asked_of_the_branch() {
    let play = nested("plant", r#"{"coverage": "switch"}"#);
    let switched = play.decided(Coverage::Switch).unwrap();
    assert_eq!(switched.path, [0, 0], "{switched:?}");
    assert!(switched.asked[1].t > switched.asked[0].t);
    let chased = play.decided(Coverage::Chase).unwrap();
    assert_eq!(chased.asked.len(), 1, "{chased:?}");
}

#[test]
fn a_read_that_no_coverage_makes_true_can_still_be_told() {
    let told = |condition: &str, coverage: Coverage| {
        let play = open(&set("pass-by", condition));
        let tried = play.lines().unwrap().answer(coverage).tried;
        assert!(!(tried[0].told && tried[0].shown()));
        tried[0].told
    };
    let switches = r#"{"who": "X3", "does": "switches"}"#;
    assert!(told(switches, Coverage::Chase));
    // Who does it anyhow need not be told.
    assert!(!told(switches, Coverage::Switch));
    // 2 uses no screen that X2 could go round.
    assert!(!told(
        r#"{"who": "X2", "does": "goes round"}"#,
        Coverage::Chase
    ));
    assert!(!told(r#"{"coverage": "switch"}"#, Coverage::Chase));
    let near = r#"{"who": "X2", "under": 0.1}"#;
    assert!(!told(near, Coverage::Chase));
}

#[test]
fn five_do_what_the_reads_of_their_line_ask_for() {
    let play = open(&set("pass-by", r#"{"who": "X3", "does": "switches"}"#));
    let branch = play.branch(&[0]).unwrap();
    let (at, branch) = (branch.forks[0], branch.play);
    let has = |defence: &Defence| defence.man_of(player(3), at);
    assert_eq!(has(&play.defence(Coverage::Chase)), player(3));
    assert_eq!(has(&branch.defence(Coverage::Chase)), player(5));
    // Nobody is told what a coverage does by itself.
    let lines = play.lines().unwrap();
    let plain = lines.defend(lines.line(&[0]).unwrap(), Coverage::Switch);
    assert_eq!(branch.defence(Coverage::Switch), plain);
    // The table is of the same five.
    let answer = lines.answer(Coverage::Chase);
    let looks = branch.looks(&branch.defence(Coverage::Chase));
    assert_eq!(answer.tried[0].end.as_ref(), ends(&looks));
}

#[test]
fn what_was_told_for_one_read_holds_for_those_within_it() {
    let play = nested("pass-by", r#"{"who": "X3", "does": "switches"}"#);
    let branch = play.branch(&[0, 0]).unwrap();
    let defence = branch.play.defence(Coverage::Chase);
    assert_eq!(defence.man_of(player(3), branch.forks[0]), player(5));
    let tried = play.lines().unwrap().answer(Coverage::Chase).tried;
    assert!(tried[1].told, "{tried:?}");
}

#[test]
fn an_instruction_in_the_file_makes_its_read_true() {
    let mut set = open(&set("pass-by", r#"{"who": "X3", "does": "switches"}"#))
        .set()
        .clone();
    let decided = |set: &crate::set::Set| {
        let play = Play::of(set.clone(), &Options::default()).unwrap();
        play.decided(Coverage::Chase).unwrap().path
    };
    assert_eq!(decided(&set), [] as [usize; 0]);
    set.defence.on.push(Directive {
        action: "cut".into(),
        who: player(3),
        does: Deed::Switches,
        side: None,
    });
    assert_eq!(decided(&set), [0]);
}
