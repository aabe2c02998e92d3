//! The set that a branch goes on with, and the set that shows the whole branch.

use super::left::{How, Left};
use super::{Dropped, Line, NotPlayed, ways};
use crate::court::Court;
use crate::math::Point;
use crate::set::{
    Action, ActionId, Beat, Player, PlayerId, Read, Set, SetPlace, Target, Verb, holder_after,
};
use crate::timing::{self, Onward, Schedule, Takeover};
use alloc::vec::Vec;

/// A set that takes over, and how its parts are called in the branch.
pub(super) struct Rest {
    /// From the fork on.
    pub set: Set,
    /// The whole branch.
    pub line: Set,
    /// Ids of the line that was left, in the branch.
    pub before: Vec<(ActionId, ActionId)>,
    /// Ids of `set`, in the branch.
    pub after: Vec<(ActionId, ActionId)>,
    /// For each beat of the branch: whether it is of the line that was left, and which one.
    pub beats: Vec<(bool, usize)>,
    pub written: Vec<Vec<(ActionId, ActionId)>>,
    pub dropped: Vec<Dropped>,
}

/// One action of the rest.
struct Piece {
    action: Action,
    from: From,
    beat: usize,
    onward: Option<How>,
}

#[derive(Clone, Copy, PartialEq)]
pub(super) enum From {
    Line(ActionId),
    Read(ActionId),
}

/// The rest with its schedule. Where somebody under way would have to wait, they stop first.
pub(super) fn build(
    line: &Line,
    left: &[Left],
    read: &Read,
    at: f64,
    holder: Option<PlayerId>,
    court: &Court,
) -> Result<(Rest, Schedule), NotPlayed> {
    let mut stopped: Vec<PlayerId> = Vec::new();
    loop {
        let maker = Maker {
            line,
            read,
            at,
            holder,
            stopped: &stopped,
        };
        let (rest, takeover) = maker.make(left);
        let schedule = timing::resume(&rest.set, court, &takeover);
        let enters = |who: &PlayerId| {
            takeover
                .entries
                .get(who.index())
                .is_some_and(Option::is_some)
        };
        let late = |who: &PlayerId| match &schedule {
            Ok(schedule) => {
                let first = schedule.runs.iter().find(|r| r.run.who == *who);
                first.is_none_or(|r| r.start > 0.0)
            }
            Err(_) => read.by.contains(who),
        };
        let all = PlayerId::ALL.into_iter();
        let more: Vec<PlayerId> = all
            .filter(|who| !stopped.contains(who) && enters(who) && late(who))
            .collect();
        if more.is_empty() {
            let schedule = schedule.map_err(NotPlayed::Waits)?;
            return Ok((rest, schedule));
        }
        stopped.extend(more);
    }
}

pub(super) struct Maker<'a> {
    pub(super) line: &'a Line,
    pub(super) read: &'a Read,
    pub(super) at: f64,
    holder: Option<PlayerId>,
    stopped: &'a [PlayerId],
}

impl Maker<'_> {
    fn make(&self, left: &[Left]) -> (Rest, Takeover) {
        let mut dropped = Vec::new();
        let pieces = self.pieces(left, &mut dropped);
        let mut takeover = Takeover {
            ball: self.line.timeline.in_hand_after(self.at),
            coming: self.line.timeline.coming(self.at),
            ..Takeover::default()
        };
        let mut set = self.line.set.clone();
        set.players = self.players();
        set.reads = Vec::new();
        set.beats = Vec::new();
        let mut ids: Vec<(From, ActionId)> = Vec::new();
        for piece in &pieces {
            while set.beats.len() <= piece.beat {
                set.beats.push(Beat::default());
            }
            let Some(beat) = set.beats.get_mut(piece.beat) else {
                continue;
            };
            let id = id(piece.beat, beat.actions.len());
            beat.actions.push(piece.action.clone());
            ids.push((piece.from, id));
            if let Some(how) = piece.onward {
                for who in &piece.action.who {
                    let to = self.onward(piece, how, id, *who, &mut takeover);
                    if let Some(action) = beat.actions.last_mut() {
                        action.to = to.map(written);
                    }
                }
            }
        }
        for who in PlayerId::ALL {
            let entry = self.line.timeline.under_way(who, self.at).map(|u| u.1);
            if let Some(slot) = takeover.entries.get_mut(who.index()) {
                *slot = entry;
            }
        }
        let mut rest = self.named(set, &ids, dropped);
        self.tie(&mut rest, &ids);
        (rest, takeover)
    }

    /// Everybody as they are at the fork.
    fn players(&self) -> Vec<Player> {
        let players = self.line.set.players.iter();
        players
            .map(|p| {
                let now = self.line.timeline.player(p.id, self.at).unwrap_or_default();
                Player {
                    at: SetPlace::Point { x: now.x, y: now.y },
                    ball: self.holder == Some(p.id),
                    facing: Some(now.facing),
                    ..p.clone()
                }
            })
            .collect()
    }

    fn pieces(&self, left: &[Left], dropped: &mut Vec<Dropped>) -> Vec<Piece> {
        let mut out: Vec<Piece> = Vec::new();
        let mut later: Vec<Piece> = Vec::new();
        for part in left {
            let Some(action) = self.line.set.action(part.id) else {
                continue;
            };
            if matches!(part.how, How::Gone | How::Stops) {
                let gone = part.who.iter();
                dropped.extend(gone.map(|who| Dropped::Action {
                    who: *who,
                    id: part.id,
                }));
            }
            let piece = |action, how: Option<How>, beat| Piece {
                action,
                from: From::Line(part.id),
                beat,
                onward: how,
            };
            let open = self.line.timeline.beats().get(usize::from(part.id.beat));
            let open = open.is_none_or(|b| b.start < self.at);
            match part.how {
                How::Gone => {}
                How::Stays => {
                    let mut rows = self.line.timeline.actions().iter();
                    let end = rows.find(|r| r.id == part.id).map_or(self.at, |r| r.end);
                    let stay = Action {
                        verb: Verb::Hold,
                        kind: None,
                        takes: Some((end - self.at).max(0.1)),
                        free: true,
                        ..self.onward_action(action, &part.who)
                    };
                    out.push(piece(stay, None, 0));
                }
                How::Onward | How::Stops => {
                    let on = Action {
                        free: true,
                        ..self.onward_action(action, &part.who)
                    };
                    out.push(piece(on, Some(part.how), 0));
                }
                How::Stands | How::Whole => {
                    let mut own = Action {
                        who: part.who.clone(),
                        ..action.clone()
                    };
                    if part.how == How::Stands && part.who.len() == action.who.len() {
                        own.at = own.at.or_else(|| self.stood(&part.who));
                    } else if part.how == How::Stands {
                        (own.kind, own.at) = (None, self.stood(&part.who));
                    }
                    if open {
                        out.push(piece(own, None, 0));
                    } else {
                        later.push(piece(own, None, usize::from(part.id.beat)));
                    }
                }
            }
        }
        self.stops(&mut out);
        let beats = self.read.beats.len();
        for (b, beat) in self.read.beats.iter().enumerate() {
            for (a, action) in beat.actions.iter().enumerate() {
                out.push(Piece {
                    action: action.clone(),
                    from: From::Read(id(b, a)),
                    beat: b,
                    onward: None,
                });
            }
        }
        let first = later.first().map_or(0, |p| p.beat);
        for piece in &mut later {
            piece.beat = beats.max(1) + piece.beat - first;
        }
        out.append(&mut later);
        // In written order, those of one beat side by side.
        out.sort_by_key(|p| p.beat);
        self.with_ball(out, dropped)
    }

    /// Whoever is under way and has nothing to go on with comes to a stop.
    fn stops(&self, out: &mut Vec<Piece>) {
        for player in &self.line.set.players {
            let who = player.id;
            if self.line.timeline.under_way(who, self.at).is_none() {
                continue;
            }
            let on = |p: &Piece| p.onward.is_some() && p.action.who.contains(&who);
            let goes = out.iter().any(on);
            let ways = out.iter().map(|p| &p.action);
            let ways = ways.chain(self.read.beats.iter().flat_map(|b| &b.actions));
            let mut own = ways.filter(|a| a.who.contains(&who));
            let way = own
                .next()
                .is_some_and(|a| matches!(a.verb, Verb::Cut | Verb::Dribble | Verb::Screen));
            if goes || way && !self.stopped.contains(&who) {
                continue;
            }
            let last = self
                .line
                .timeline
                .actions()
                .iter()
                .rfind(|r| r.who == who && r.start < self.at);
            let Some((row, action)) = last.and_then(|r| Some((r, self.line.set.action(r.id)?)))
            else {
                continue;
            };
            let on = Action {
                free: true,
                ..self.onward_action(action, &[who])
            };
            out.insert(
                0,
                Piece {
                    action: on,
                    from: From::Line(row.id),
                    beat: 0,
                    onward: Some(How::Stops),
                },
            );
        }
    }

    /// An action whose way is known already.
    fn onward_action(&self, action: &Action, who: &[PlayerId]) -> Action {
        let way = matches!(action.verb, Verb::Dribble) && who.first() == self.holder.as_ref();
        Action {
            who: who.into(),
            verb: if way { Verb::Dribble } else { Verb::Cut },
            kind: action.kind.filter(|_| action.verb != Verb::Screen),
            to: action.to.clone().filter(|_| action.verb != Verb::Screen),
            at: None,
            via: Vec::new(),
            for_whom: Vec::new(),
            off: Vec::new(),
            takes: None,
            ties: Vec::new(),
            ..action.clone()
        }
    }

    fn stood(&self, who: &[PlayerId]) -> Option<SetPlace> {
        let p = self.line.timeline.player(*who.first()?, self.at)?;
        Some(SetPlace::Point { x: p.x, y: p.y })
    }

    /// Drops what needs a ball that its player no longer has.
    fn with_ball(&self, pieces: Vec<Piece>, dropped: &mut Vec<Dropped>) -> Vec<Piece> {
        let mut holder = self.holder;
        let mut shot = false;
        let mut out = Vec::new();
        for mut piece in pieces {
            let actor = piece.action.actor();
            let needs = matches!(
                piece.action.verb,
                Verb::Pass | Verb::Handoff | Verb::Shot | Verb::Dribble
            );
            if needs && (actor != holder || shot)
                || shot && piece.beat > 0 && piece.onward.is_none()
            {
                if piece.onward.is_some() {
                    piece.action.verb = Verb::Cut;
                    out.push(piece);
                } else if let (Some(who), From::Line(id)) = (actor, piece.from) {
                    dropped.push(Dropped::Action { who, id });
                }
                continue;
            }
            shot |= piece.action.verb == Verb::Shot;
            holder = holder_after(holder, &piece.action);
            out.push(piece);
        }
        out
    }

    fn onward(
        &self,
        piece: &Piece,
        how: How,
        id: ActionId,
        who: PlayerId,
        takeover: &mut Takeover,
    ) -> Option<Point> {
        let under_way = self.line.timeline.under_way(who, self.at);
        let limits = self.line.set.limits_of(who);
        let From::Line(of) = piece.from else {
            return None;
        };
        let legs = match (how, under_way) {
            (How::Stops, Some((at, entry))) => [ways::stop(at, entry, &limits)].into(),
            _ => self.line.legs_left(of, who, self.at),
        };
        let to = ways::end_of(&legs)?;
        takeover.onward.push(Onward { id, who, legs });
        Some(to)
    }
}

pub(super) fn id(beat: usize, action: usize) -> ActionId {
    ActionId {
        beat: beat as u16,
        action: action as u16,
    }
}

/// A place as it is written.
fn written(at: Point) -> Target {
    Target::Place(SetPlace::Point { x: at.x, y: at.y })
}
