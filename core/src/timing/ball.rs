//! What waits for the ball: passes, hand-offs, shots.

use super::block::{After, At, Instant, OpenPass, Stops, Why, soft};
use super::weave::{LAND, Weaver};
use crate::athlete::Limits;
use crate::choreography::Transfer;
use crate::flight;
use crate::math::{Point, distance};
use crate::set::{Edge, Kind, PlayerId};

/// Wind-up of a pass. Common practice, no source: 0.2–0.3 s.
pub(super) const WIND_UP: f64 = 0.25;
/// A passer stays so long after the ball has left.
const FOLLOW_THROUGH: f64 = 0.15;
/// Catch to the next wind-up.
const SECURE: f64 = 0.2;
/// A ball may arrive so much before the receiver …
pub(crate) const EARLY: f64 = 0.05;
/// … and the receiver should not stand longer than this before it comes.
const STANDING: f64 = 0.15;
/// A giver stands so long before the exchange, and stays so long after.
pub(crate) const GIVE: f64 = 0.2;
/// Gather of a shot off one foot, and catch to gather.
const GATHER: f64 = 0.3;
/// Both players of a pass reach toward each other, together so far, metres.
const HANDS: f64 = 0.66;

/// Seconds a pass between two bodies flies.
pub(super) fn hand_time(from: Point, to: Point, kind: Option<Kind>, limits: &Limits) -> f64 {
    flight::pass_time((distance(from, to) - HANDS).max(0.3), kind, limits)
}

impl<'a> Weaver<'a> {
    pub(super) fn pass(&mut self, t: &'a Transfer) {
        let Some(row) = self.row(t.row) else { return };
        let (who, to, free) = (row.who, t.to, row.free);
        let takes = hand_time(t.from, t.target, row.kind, self.limits(who));
        let stops = Stops {
            release: WIND_UP,
            catch: WIND_UP + takes,
            end: WIND_UP + takes,
        };
        let running = self
            .open
            .get(who.index())
            .and_then(Option::as_ref)
            .map(|r| r.block);
        let after = self.last(who);
        if free && let Some(run) = running {
            // A free pass may leave during the passer's own run, not before it.
            self.then(Some(who), After::one(Instant::new(run, At::Start)));
        }
        let Some(block) = self.still(t.row, stops, false) else {
            return;
        };
        let start = Instant::new(block, At::Start);
        let (release, catch) = (
            Instant::new(block, At::Edge(Edge::Release)),
            Instant::new(block, At::Edge(Edge::Catch)),
        );
        let ball = if free && running == Some(self.ball.block) {
            self.got
        } else {
            self.ball.later(if self.caught { SECURE } else { 0.0 })
        };
        self.wait(ball, start, 0.0, 0, Why::Ball);
        self.in_hand(start);
        let mut next = After::one(release.later(FOLLOW_THROUGH));
        if free {
            next = next.and(after);
        }
        self.then(Some(who), next);
        if t.in_stride && !free {
            let run = self
                .open
                .get_mut(to.index())
                .and_then(Option::as_mut)
                .map(|run| {
                    run.took = true;
                    (run.block, run.legs.last().map_or(t.row, |l| l.row))
                });
            self.out.stride.push(OpenPass {
                block,
                transfer: *t,
                run,
            });
        } else {
            self.catch_at_spot(block, catch, to, free);
            let open = OpenPass {
                block,
                transfer: *t,
                run: None,
            };
            if free {
                self.out.free.push(open);
            } else {
                self.out.spots.push(open);
            }
        }
        (self.ball, self.got) = (catch, catch);
        self.caught = true;
        self.cue = Some(release);
        self.out.goal = Some(catch);
    }

    fn catch_at_spot(&mut self, block: usize, catch: Instant, to: PlayerId, free: bool) {
        // Whoever stands as a screen can catch, but stays for the cutter.
        let (mut there, mut stays) = (After::default(), After::default());
        for i in self.last(to).iter() {
            let stand = self.out.stands.iter().position(|s| *s == Some(i.block));
            match stand.and_then(|s| self.set_at.get(s)) {
                Some(set) => {
                    stays = stays.and(After::one(i));
                    there = there.and(*set);
                }
                None => there = there.and(After::one(i)),
            }
        }
        let ran = self.open.get(to.index()).is_some_and(Option::is_some);
        self.close(to);
        if !free {
            for from in there.iter() {
                self.wait(from, catch, -EARLY, soft::FEET, Why::Receiver);
                if ran && from.block != block {
                    self.wait(catch, from, -STANDING, soft::STANDING, Why::Standing);
                }
            }
        }
        // Whether or not the feet are there for the catch, the own way ends before the next one.
        let next = After::one(catch.later(LAND)).and(stays).and(there);
        self.then(Some(to), next);
    }

    pub(super) fn handoff(&mut self, t: &'a Transfer) {
        let Some(row) = self.row(t.row) else { return };
        let who = row.who;
        let stops = Stops {
            release: GIVE,
            catch: GIVE,
            end: 2.0 * GIVE,
        };
        let stands = self.last(who).iter().next();
        let Some(block) = self.still(t.row, stops, false) else {
            return;
        };
        self.out.givers.extend(stands.map(|s| (t.row, s)));
        let release = Instant::new(block, At::Edge(Edge::Release));
        let ball = self.ball;
        let start = Instant::new(block, At::Start);
        self.wait(ball, start, 0.0, 0, Why::Ball);
        self.in_hand(start);
        self.then(Some(who), After::one(release.later(GIVE)));
        self.handoffs.push((block, *t));
        if t.keeps {
            self.caught = true;
            self.cue = Some(release);
            return;
        }
        if let Some(run) = self.open.get_mut(t.to.index()).and_then(Option::as_mut) {
            run.took = true;
        }
        (self.ball, self.got) = (release, release);
        self.caught = false;
        self.cue = Some(release);
        self.out.goal = Some(release);
    }

    pub(super) fn shot(&mut self, row: usize, running: bool) {
        let Some(who) = self.row(row).map(|r| r.who) else {
            return;
        };
        let limits = self.limits(who);
        let holds = self.caught;
        let release = match (running, holds) {
            (true, _) => GATHER,
            (false, true) => limits.release,
            (false, false) => limits.release_quick,
        };
        let stops = Stops {
            release,
            end: release + FOLLOW_THROUGH,
            ..Stops::default()
        };
        let ball = self.ball;
        let before = self.last(who);
        if running {
            // The gather begins on the run: the ball leaves with the last step.
            self.then(Some(who), before.later(-GATHER));
        } else if holds {
            // The feet land with the catch; nothing else has to happen before the shot.
            self.then(Some(who), After::one(ball));
        }
        let Some(block) = self.still(row, stops, false) else {
            return;
        };
        let start = Instant::new(block, At::Start);
        let secure = if running && holds { GATHER } else { 0.0 };
        self.wait(ball, start, secure, 0, Why::Ball);
        self.in_hand(start);
        let release = Instant::new(block, At::Edge(Edge::Release));
        self.then(Some(who), After::one(release.later(FOLLOW_THROUGH)));
        self.cue = Some(release);
        self.out.goal = Some(release);
    }
}
