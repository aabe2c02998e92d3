//! The tree as a [`Set`]. What the tables refuse has been reported by then; here it is passed over,
//! so that everything else can still be judged.

mod action;
mod extra;
mod place;
mod read;

use super::LIMITS;
use super::json::{Json, Value};
use super::report::Report;
use super::shape::{counted, defender, whole};
use super::told::{quoted, told};
use super::words;
use crate::athlete::Level;
use crate::math::Listed;
#[cfg(feature = "authoring")]
use crate::set::SlowEnd;
use crate::set::{ActionId, Beat, FilmMark, Player, PlayerId, Scope, Set, SetPlace, SlowStretch};
use crate::spelling::nearest;
use crate::voice::Said;
use crate::voice::messages::fault as m;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// The set that `tree` describes.
pub(super) fn set(tree: &Json, report: &mut Report<'_>) -> Set {
    let judge = report.clear;
    let mut taker = Taker {
        report,
        judge,
        scopes: Vec::new(),
        actions: 0,
    };
    let beats = tree.get("beats");
    taker.enter(beats);
    let set = Set {
        title: text(tree, "title").unwrap_or_default(),
        about: text(tree, "about"),
        when: text(tree, "use"),
        points: texts(tree, "points"),
        credit: text(tree, "credit"),
        tags: texts(tree, "tags"),
        court: word(tree, "court")
            .and_then(words::court)
            .unwrap_or_default(),
        level: word(tree, "level")
            .and_then(Level::parse)
            .unwrap_or_default(),
        players: tree.get("players").map(players).unwrap_or_default(),
        beats: taker.beats(beats),
        reads: taker.reads(tree.get("reads")),
        defence: tree.get("defence").map(read::defence).unwrap_or_default(),
        slow: items(tree, "slow")
            .filter_map(|node| taker.slow(node))
            .listed(),
        film: items(tree, "film").filter_map(film).listed(),
        extras: Vec::new(),
    };
    taker.too_many(tree);
    Set {
        extras: extra::all(tree, &report.source),
        ..set
    }
}

struct Taker<'r, 'a, 't> {
    report: &'r mut Report<'a>,
    /// Whether a name that leads nowhere is to be reported.
    judge: bool,
    /// The names that can be tied to: of the main line, then of each read around this place.
    scopes: Vec<Vec<(&'t str, ActionId)>>,
    /// Actions so far, in all beats.
    actions: usize,
}

impl<'t> Taker<'_, '_, 't> {
    /// Collects the names of `beats` before anything is tied to them: a tie may point ahead.
    fn enter(&mut self, beats: Option<&'t Json>) {
        let mut names: Vec<(&'t str, ActionId)> = Vec::new();
        for (beat, b) in beats.map_or(&[][..], Json::items).iter().zip(0u16..) {
            for (action, a) in items(beat, "actions").zip(0u16..) {
                let Some(node) = action.get("id") else {
                    continue;
                };
                let Some(name) = node.text() else { continue };
                let taken = names.iter().chain(self.scopes.iter().flatten());
                if self.judge && taken.clone().any(|n| n.0 == name) {
                    self.report.add(node.start, "duplicate-id", &|_| {
                        told(m::ID_TAKEN.with("id", quoted(name)), m::ID_ONCE)
                    });
                }
                names.push((name, ActionId { beat: b, action: a }));
            }
        }
        self.scopes.push(names);
    }

    fn beats(&mut self, beats: Option<&Json>) -> Vec<Beat> {
        beats
            .map_or(&[][..], Json::items)
            .iter()
            .map(|node| Beat {
                title: text(node, "title"),
                say: text(node, "say"),
                actions: items(node, "actions").map(|a| self.action(a)).listed(),
                place: self.report.source.place(node.start),
            })
            .listed()
    }

    #[cfg(not(feature = "authoring"))]
    #[allow(
        clippy::unused_self,
        reason = "an author's program has something to look up"
    )]
    fn slow(&mut self, _: &'t Json) -> Option<SlowStretch> {
        Some(SlowStretch)
    }

    #[cfg(feature = "authoring")]
    fn slow(&mut self, node: &'t Json) -> Option<SlowStretch> {
        Some(SlowStretch {
            from: self.slow_end(node, "from")?,
            to: self.slow_end(node, "to")?,
            rate: number(node, "rate")?,
        })
    }

    #[cfg(feature = "authoring")]
    fn slow_end(&mut self, node: &'t Json, key: &str) -> Option<SlowEnd> {
        match number(node, key) {
            Some(n) => Some(SlowEnd::Beat(u16::try_from(whole(n)?).ok()?)),
            None => Some(SlowEnd::Instant(self.instant(node.get(key)?))),
        }
    }

    /// The action named `name`, looked for in the innermost beats first.
    fn resolve(&mut self, node: &Json, name: &str) -> Option<(Scope, ActionId)> {
        let main = self.scopes.len().saturating_sub(1);
        for (names, up) in self.scopes.iter().rev().zip(0u8..) {
            if let Some((_, id)) = names.iter().find(|n| n.0 == name) {
                let scope = if usize::from(up) == main {
                    Scope::Main
                } else {
                    Scope::Read(up)
                };
                return Some((scope, *id));
            }
        }
        if self.judge {
            let scopes = &self.scopes;
            self.report.add(node.start, "unknown-action", &|_| {
                let known: Vec<&str> = scopes.iter().flatten().map(|n| n.0).listed();
                let allowed: Said = match known.len() {
                    0 => m::NO_IDS.into(),
                    _ => m::IDS.with("ids", super::shape::join(known.iter().copied())),
                };
                told(m::NO_SUCH_ID.with("id", quoted(name)), allowed)
                    .meant(nearest(name, known.iter().copied()))
            });
        }
        None
    }

    fn too_many(&mut self, tree: &Json) {
        let count = self.actions;
        if count > LIMITS.actions {
            self.report.add(tree.start, "too-many-actions", &|_| {
                told(
                    counted(m::COUNT_ACTIONS, count),
                    m::AT_MOST.with("n", LIMITS.actions.to_string()),
                )
            });
        }
    }
}

fn players(node: &Json) -> Vec<Player> {
    let names = ["1", "2", "3", "4", "5"];
    PlayerId::ALL
        .into_iter()
        .zip(names)
        .filter_map(|(id, name)| {
            let player = node.get(name)?;
            Some(Player {
                id,
                at: player
                    .get("at")
                    .and_then(place::place)
                    .unwrap_or(SetPlace::Point { x: 0.0, y: 0.0 }),
                ball: flag(player, "ball"),
                facing: number(player, "facing"),
                level: word(player, "level").and_then(Level::parse),
            })
        })
        .listed()
}

fn film(node: &Json) -> Option<FilmMark> {
    Some(FilmMark {
        t: number(node, "t")?,
        film: number(node, "film")?,
    })
}

fn items<'t>(node: &'t Json, key: &str) -> impl Iterator<Item = &'t Json> {
    node.get(key).map_or(&[][..], Json::items).iter()
}

/// One value, or each of a list, as far as a list may be long.
fn one_or_more<'t>(node: &'t Json, key: &str) -> impl Iterator<Item = &'t Json> {
    let values = match node.get(key) {
        Some(
            list @ Json {
                value: Value::List(_),
                ..
            },
        ) => list.items(),
        Some(one) => core::slice::from_ref(one),
        None => &[],
    };
    values.iter().take(LIMITS.list)
}

fn word<'t>(node: &'t Json, key: &str) -> Option<&'t str> {
    node.get(key).and_then(Json::text)
}

fn text(node: &Json, key: &str) -> Option<String> {
    word(node, key).map(ToString::to_string)
}

fn texts(node: &Json, key: &str) -> Vec<String> {
    items(node, key)
        .filter_map(Json::text)
        .map(ToString::to_string)
        .listed()
}

fn number(node: &Json, key: &str) -> Option<f64> {
    node.get(key).and_then(Json::number)
}

fn flag(node: &Json, key: &str) -> bool {
    matches!(
        node.get(key),
        Some(Json {
            value: Value::Bool(true),
            ..
        })
    )
}

/// A player's number.
fn player(node: &Json) -> Option<PlayerId> {
    let n = whole(node.number()?)?;
    PlayerId::new(u8::try_from(n).ok()?)
}

/// The number behind a defender's name.
fn guarded(node: &Json, key: &str) -> Option<PlayerId> {
    defender(word(node, key)?).and_then(PlayerId::new)
}
