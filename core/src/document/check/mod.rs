//! What is well written and still cannot be played: the sense of the game.

mod action;
mod ball;
mod stand;
mod tie;

use super::json::{Json, Value};
use super::report::Report;
use super::shape::join;
use super::told::{quoted, told};
use crate::court::Court;
use crate::math::Listed;
#[cfg(feature = "authoring")]
use crate::set::SlowEnd;
use crate::set::{Beat, Condition, PlayerId, Read, Set};
use crate::spelling::nearest;
use crate::voice::Said;
use crate::voice::messages::fault as m;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use ball::Ball;

/// Reports what in `set` cannot be played; `tree` is the text it was taken from.
pub(super) fn check(set: &Set, tree: &Json, report: &mut Report<'_>) {
    let mut checker = Checker {
        court: set.floor(),
        scopes: alloc::vec![&set.beats[..]],
        set,
        report,
    };
    checker.players(tree);
    let ball = set.first_holder().map_or(Ball::Unknown, Ball::With);
    checker.beats(&set.beats, tree.get("beats"), ball);
    checker.reads(&set.reads, tree.get("reads"));
    checker.defence(tree);
    #[cfg(feature = "authoring")]
    checker.slow(tree);
    checker.film(tree);
}

struct Checker<'s, 'r, 'a> {
    set: &'s Set,
    court: Court,
    /// The main line, then the beats of each read around this place.
    scopes: Vec<&'s [Beat]>,
    report: &'r mut Report<'a>,
}

impl<'s> Checker<'s, '_, '_> {
    fn players(&mut self, tree: &Json) {
        let set = self.set;
        let Some(players) = tree.get("players") else {
            return;
        };
        let node_of = |id: PlayerId| {
            let key = [b'0' + id.number()];
            core::str::from_utf8(&key)
                .ok()
                .and_then(|key| players.get(key))
        };
        let mut holders = Vec::new();
        for player in &set.players {
            let Some(node) = node_of(player.id) else {
                continue;
            };
            self.place(&player.at, at(node, "at"), &[player.id]);
            if player.ball {
                holders.push((player.id, at(node, "ball").start));
            }
        }
        match holders.as_slice() {
            [] => self.report.add(players.start, "no-ball", &|_| {
                told(m::NOBODY_HAS_BALL, m::ONE_HAS_IT_WRITTEN)
            }),
            [_] => {}
            [(first, start), others @ ..] => {
                for (other, second) in others {
                    self.report
                        .add_related(*second, "two-balls", &[*start], &|_| {
                            let (a, b) = (first.number(), other.number());
                            told(
                                m::BOTH_HAVE_BALL
                                    .with("a", a.to_string())
                                    .with("b", b.to_string()),
                                m::ONE_HAS_IT,
                            )
                        });
                }
            }
        }
    }

    fn beats(&mut self, beats: &[Beat], nodes: Option<&Json>, mut ball: Ball) {
        let nodes = nodes.map_or(&[][..], Json::items);
        for (beat, node) in beats.iter().zip(nodes) {
            let actions = node.get("actions").map_or(&[][..], Json::items);
            for (action, node) in beat.actions.iter().zip(actions) {
                self.action(action, node);
                self.ties(action, node);
                ball = self.ball(ball, action, node);
            }
        }
    }

    /// Reads, each with its own beats and the reads in it; as deep as the text, which is bounded.
    fn reads(&mut self, reads: &'s [Read], nodes: Option<&Json>) {
        let nodes = nodes.map_or(&[][..], Json::items);
        for (read, node) in reads.iter().zip(nodes) {
            if let Some(instant) = node.get("at") {
                self.instant(&read.at, instant);
            }
            self.known(&read.by, at(node, "by"));
            match &read.condition {
                Condition::Coverage(_) => {}
                Condition::Does { who, .. } | Condition::Separation { who, .. } => {
                    self.known(&[*who], at(at(node, "if"), "who"));
                }
                Condition::LaneClosed { from, to } => {
                    self.known(&[*from], at(at(node, "if"), "from"));
                    self.known(&[*to], at(at(node, "if"), "to"));
                }
            }
            self.scopes.push(&read.beats);
            // Who has the ball at that instant is a matter of time, which is not known here.
            self.beats(&read.beats, node.get("beats"), Ball::Unknown);
            self.reads(&read.reads, node.get("reads"));
            self.scopes.pop();
        }
    }

    fn defence(&mut self, tree: &Json) {
        let set = self.set;
        let nodes = tree
            .get("defence")
            .and_then(|d| d.get("on"))
            .map_or(&[][..], Json::items);
        for (directive, node) in set.defence.on.iter().zip(nodes) {
            self.known(&[directive.who], at(node, "who"));
            let ids = ids(set);
            if !ids.contains(&directive.action.as_str()) {
                let name = directive.action.as_str();
                self.report
                    .add(at(node, "id").start, "unknown-action", &|_| {
                        told(
                            m::NO_SUCH_ID.with("id", quoted(name)),
                            m::IDS.with("ids", join(ids.iter().copied())),
                        )
                        .meant(nearest(name, ids.iter().copied()))
                    });
            }
        }
    }

    #[cfg(feature = "authoring")]
    fn slow(&mut self, tree: &Json) {
        let set = self.set;
        let beats = set.beats.len();
        let nodes = tree.get("slow").map_or(&[][..], Json::items);
        for (slow, node) in set.slow.iter().zip(nodes) {
            let mut last = 1;
            for (end, key) in [(&slow.from, "from"), (&slow.to, "to")] {
                match end {
                    SlowEnd::Beat(n) if *n < last || usize::from(*n) > beats => {
                        self.report.add(at(node, key).start, "no-such-beat", &|_| {
                            told(
                                m::IS_BEAT.with("name", key).with("n", n.to_string()),
                                m::BEATS_ARE.with("n", beats.to_string()),
                            )
                        });
                    }
                    SlowEnd::Beat(n) => last = *n,
                    SlowEnd::Instant(instant) => self.instant(instant, at(node, key)),
                }
            }
            if slow.rate <= 0.0 {
                self.report
                    .add(at(node, "rate").start, "number-out-of-range", &|_| {
                        told(m::RATE_ZERO, m::RATE_IS)
                    });
            }
        }
    }

    fn film(&mut self, tree: &Json) {
        let set = self.set;
        let nodes = tree.get("film").map_or(&[][..], Json::items);
        let pairs = set.film.iter().zip(set.film.iter().skip(1));
        for ((before, mark), node) in pairs.zip(nodes.iter().skip(1)) {
            if mark.t <= before.t || mark.film <= before.film {
                self.report.add(node.start, "film-out-of-order", &|_| {
                    told(m::MARK_NOT_LATER, m::MARKS_IN_ORDER)
                });
            }
        }
    }

    /// Reports players whom the set does not have; `node` is one number or a list of them.
    fn known(&mut self, who: &[PlayerId], node: &Json) {
        let single = core::slice::from_ref(node);
        let nodes = match &node.value {
            Value::List(items) => items.as_slice(),
            _ => single,
        };
        for (id, node) in who.iter().zip(nodes) {
            self.known_one(*id, node);
        }
    }

    fn known_one(&mut self, id: PlayerId, node: &Json) {
        let set = self.set;
        if set.player(id).is_none() {
            self.report.add(node.start, "player-not-in-set", &|_| {
                let numbers: Vec<_> = set.players.iter().map(|p| p.id).listed();
                told(
                    m::NOT_IN_SET.with("who", id.number().to_string()),
                    m::PLAYERS_HERE.with("players", listed(&numbers)),
                )
            });
        }
    }
}

/// The member `key` of `node`, or `node` where that is not written.
fn at<'t>(node: &'t Json, key: &str) -> &'t Json {
    node.get(key).unwrap_or(node)
}

/// The ids of all actions, those of reads included.
fn ids(set: &Set) -> Vec<&str> {
    let mut ids = Vec::new();
    let mut open: Vec<(&[Beat], &[Read])> = alloc::vec![(&set.beats, &set.reads)];
    while let Some((beats, reads)) = open.pop() {
        let actions = beats.iter().flat_map(|b| &b.actions);
        ids.extend(actions.filter_map(|a| a.id.as_deref()));
        open.extend(reads.iter().map(|r| (&r.beats[..], &r.reads[..])));
    }
    ids
}

/// "4 and 5".
fn listed(players: &[PlayerId]) -> Said {
    let numbers: Vec<String> = players.iter().map(|p| p.number().to_string()).listed();
    match numbers.split_last() {
        Some((last, first)) if !first.is_empty() => m::AND
            .with("first", first.join(", "))
            .with("last", last.as_str()),
        last => last.map_or("", |(last, _)| last).into(),
    }
}
