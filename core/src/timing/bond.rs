//! Waits that need the runs: feet, gates, exchanges, and what the author wrote.

use super::block::{At, Instant, Wait, What, Why, soft};
use super::run::Run;
use super::weave::{LEAD, SET_BEFORE, STAY, Weaver};
use crate::choreography::{Part, Row, Use};
use crate::math::{Listed, distance, first_root, sort_short};
use crate::set::{ActionId, Edge, Kind, PlayerId, TieRelation, Verb};
use alloc::vec::Vec;

/// A spot is free once the leaver is so far from it, metres. Common practice, no source.
pub(crate) const GONE: f64 = 2.0;
/// Nearer than this, two places are one spot.
pub(crate) const SAME_SPOT: f64 = 0.8;
/// A second cutter off one screen is so long behind the first. Common practice, no source:
/// 0.3–0.8 s.
pub(crate) const BEHIND: f64 = 0.5;
/// Between the two cutters of a split. Common practice, no source: 0.4–0.6 s.
pub(crate) const SPLIT: f64 = 0.5;

impl Weaver<'_> {
    pub(super) fn build_runs(&mut self) {
        for who in PlayerId::ALL {
            self.close(who);
        }
        sort_short(&mut self.closed, |a, b| a.0.cmp(&b.0));
        for (block, who, legs) in core::mem::take(&mut self.closed) {
            let run = Run::new(who, &legs, self.limits(who), self.entry(who, block));
            self.out.runs.push(run);
            if let Some(b) = self.out.blocks.get_mut(block) {
                b.what = What::Run(self.out.runs.len() - 1);
            }
        }
    }

    /// Cutters wait for feet, screeners for cutters.
    pub(super) fn screens(&mut self) {
        for u in &self.ch.uses {
            let Some(screen) = self.ch.screens.get(u.screen) else {
                continue;
            };
            let (Some(row), Some(stand)) = (
                self.row(u.cutter),
                self.out.stands.get(u.screen).copied().flatten(),
            ) else {
                continue;
            };
            let Some(by) = self
                .out
                .locate(self.ch, u.cutter, Edge::PassBy, Some(screen.who))
            else {
                continue;
            };
            let first = u.order == 0
                || screen.twin.is_some_and(|t| {
                    self.ch
                        .uses
                        .iter()
                        .any(|o| o.cutter == u.cutter && o.screen == t && o.order == 0)
                });
            if let Some(ahead) = self.ahead(u).filter(|_| !row.free) {
                self.wait(ahead, by, BEHIND, soft::FEET, Why::Follows);
            }
            if !row.free {
                let start = Instant::new(by.block, At::LegStart(u.cutter, Part::Way));
                let burst = self.out.offset(by).zip(self.out.offset(start));
                let burst = burst.map_or(SET_BEFORE, |(by, start)| by - start);
                let lag = if first {
                    burst.clamp(SET_BEFORE, 0.8)
                } else {
                    SET_BEFORE
                };
                for from in self
                    .set_at
                    .get(u.screen)
                    .copied()
                    .unwrap_or_default()
                    .iter()
                {
                    self.out.waits.push(Wait {
                        from,
                        to: by,
                        lag,
                        wanted: lag.max(LEAD),
                        softness: soft::FEET,
                        why: Why::Feet {
                            screener: screen.who,
                        },
                    });
                }
            }
            if screen.shut_at.is_none() || !self.is_last_use(u.screen, u.cutter) {
                let free = Instant::new(stand, At::Start);
                let stays = !screen.row.is_some_and(|r| self.free(r));
                if stays {
                    self.wait(by, free, STAY, 0, Why::Stays { cutter: row.who });
                }
            }
        }
    }

    /// When the cutter before this one is by the same screen.
    fn ahead(&self, u: &Use) -> Option<Instant> {
        let at = self.ch.uses.iter().position(|o| o == u)?;
        let before = self
            .ch
            .uses
            .get(..at)?
            .iter()
            .rfind(|o| o.screen == u.screen)?;
        let who = self.ch.screens.get(u.screen)?.who;
        self.out
            .locate(self.ch, before.cutter, Edge::PassBy, Some(who))
    }

    fn is_last_use(&self, screen: usize, cutter: usize) -> bool {
        self.ch
            .uses
            .iter()
            .rfind(|u| u.screen == screen)
            .is_some_and(|u| u.cutter == cutter)
    }

    /// Both posts start to shut at the offset of the cutter's run from which neither touches.
    pub(super) fn gates(&mut self) {
        let gates: Vec<(usize, usize)> = self
            .ch
            .uses
            .iter()
            .filter(|u| self.is_last_use(u.screen, u.cutter))
            .map(|u| (u.screen, u.cutter))
            .listed();
        for (index, cutter) in gates {
            let Some(screen) = self.ch.screens.get(index).filter(|s| s.shut_at.is_some()) else {
                continue;
            };
            let Some(post) = screen.row else { continue };
            let slide = self.out.locate(self.ch, post, Edge::Shut, None);
            let by = self
                .out
                .locate(self.ch, cutter, Edge::PassBy, Some(screen.who));
            let (Some(slide), Some(by)) = (slide, by) else {
                continue;
            };
            let Some(at) = self.shut_offset(slide.block, by, cutter) else {
                continue;
            };
            let from = Instant::new(by.block, At::Plus(at));
            let start = Instant::new(slide.block, At::Start);
            self.wait(from, start, 0.0, 0, Why::Shut);
            self.wait(start, from, 0.0, soft::SHUT, Why::Shut);
        }
    }

    /// The earliest offset of the cutter's run at which the slide may begin: from then on the two
    /// bodies, ellipses of shoulder by depth, never meet.
    fn shut_offset(&self, slide: usize, by: Instant, cutter: usize) -> Option<f64> {
        let (slide, run) = (self.out.run_of(slide)?, self.out.run_of(by.block)?);
        let by = self.out.offset(by)?;
        let who = self.row(cutter)?.who;
        let (a, b) = (self.limits(who), self.limits(slide.who));
        let wide = 0.5 * (a.shoulder + b.shoulder) + 0.02;
        let deep = 0.5 * (a.depth + b.depth) + 0.02;
        let way = run.path().tangent(run.law().at(by).s);
        // Where they last touched they mostly do so again: that is where the look begins.
        let mut first = 0_i32;
        let mut touches = |o: f64| {
            let found = (first..=first + 24).find(|i| {
                let t = slide.duration() * f64::from(i % 25) / 24.0;
                let d = run.point(o + t) - slide.point(t);
                let (along, across) = (d.dot(way) / deep, d.cross(way) / wide);
                along * along + across * across < 1.0
            });
            first = found.unwrap_or(0) % 25;
            found.is_some()
        };
        let steps = 40_i32;
        let found = (0..=steps)
            .map(|i| by - 0.4 + 0.8 * f64::from(i) / f64::from(steps))
            .find(|o| !touches(*o));
        Some(found.unwrap_or(by + 0.4).max(0.0))
    }

    /// A hand-off happens where the taker's way passes the giver.
    pub(super) fn exchanges(&mut self) {
        let mut taken: Vec<Instant> = Vec::new();
        for (block, t) in core::mem::take(&mut self.handoffs) {
            let Some(giver) = self.row(t.row).map(|r| r.who) else {
                continue;
            };
            let found = self.out.blocks.iter().enumerate().find_map(|(b, _)| {
                let run = self.out.run_of(b).filter(|r| r.who == t.to)?;
                let mark = run.marks.iter().find(|m| {
                    m.edge == Edge::PassBy
                        && m.of == Some(giver)
                        && !self.ch.uses.iter().any(|u| {
                            u.cutter == m.row
                                && self
                                    .ch
                                    .screens
                                    .get(u.screen)
                                    .is_some_and(|s| s.who == giver)
                        })
                })?;
                let i = Instant::new(b, At::Mark(mark.row, Edge::PassBy, Some(giver)));
                (!taken.contains(&i)).then_some(i)
            });
            let Some(by) = found else { continue };
            taken.push(by);
            let release = Instant::new(block, At::Edge(Edge::Release));
            self.wait(release, by, 0.0, 0, Why::Exchange);
            self.wait(by, release, 0.0, 0, Why::Exchange);
        }
    }

    /// Moves that follow another's by their kind: a fill goes when the leaver is gone, a lift or a
    /// drift with the drive, the second of a split half a second after the first.
    pub(super) fn followers(&mut self) {
        for row in 0..self.ch.rows.len() {
            let Some(r) = self.row(row).filter(|r| !r.free) else {
                continue;
            };
            let Some(mine) = self.out.locate(self.ch, row, Edge::Start, None) else {
                continue;
            };
            let lead = match r.kind {
                Some(Kind::Fill) => self.leaver(row, mine.block),
                Some(Kind::Lift | Kind::Drift) => self.drive(r).map(|i| (i, 0.0)),
                Some(Kind::Split) => self
                    .earlier(row, |o| o.kind == Some(Kind::Split) && o.who != r.who)
                    .map(|i| (i, SPLIT)),
                _ => None,
            };
            if let Some((from, lag)) = lead.filter(|(i, _)| i.block != mine.block) {
                self.wait(from, mine, lag, soft::FEET, Why::Follows);
            }
        }
    }

    /// The start of the latest earlier row of that sort.
    fn earlier(&self, row: usize, like: impl Fn(&Row) -> bool) -> Option<Instant> {
        let found = (0..row).rev().find(|o| self.row(*o).is_some_and(&like))?;
        self.out.locate(self.ch, found, Edge::Start, None)
    }

    /// The start of the first dribble of that row's beat, wherever it is written.
    fn drive(&self, r: &Row) -> Option<Instant> {
        let drives = |o: &Row| o.verb == Verb::Dribble && o.id.beat == r.id.beat && o.who != r.who;
        let found = (0..self.ch.rows.len()).find(|o| self.row(*o).is_some_and(drives))?;
        self.out.locate(self.ch, found, Edge::Start, None)
    }

    /// When whoever left the spot that `row` fills is far enough gone.
    fn leaver(&self, row: usize, block: usize) -> Option<(Instant, f64)> {
        let mine = self.out.run_of(block)?;
        let spot = mine.path().point(mine.leg(row, Part::Way)?.s[1]);
        let who = mine.who;
        let found = (0..self.out.blocks.len()).find_map(|b| {
            let run = self.out.run_of(b).filter(|r| r.who != who)?;
            let leg = run.legs.iter().find(|l| l.row < row)?;
            let near = |s: f64| distance(run.path().point(s), spot);
            if near(leg.s[0]) > SAME_SPOT {
                return None;
            }
            let gone = first_root(leg.s[0], run.path().length(), 24, |s| near(s) - GONE)?;
            let t = run.law().time_at(gone);
            Some(Instant {
                block: b,
                at: At::Plus(t),
                plus: 0.0,
            })
        })?;
        Some((found, 0.0))
    }

    /// What the author wrote.
    pub(super) fn ties(&mut self) {
        for (row, r) in self.ch.rows.iter().enumerate() {
            let Some(action) = self.set.action(r.id) else {
                continue;
            };
            for (nth, tie) in action.ties.iter().enumerate() {
                let Some(mine) = self.out.locate(self.ch, row, tie.mine, None) else {
                    continue;
                };
                let theirs = self.rows_of(tie.to);
                for (i, other) in theirs.into_iter().enumerate() {
                    let Some(from) = self.out.locate(self.ch, other, tie.edge, tie.of) else {
                        continue;
                    };
                    let why = Why::Written { row, tie: nth };
                    self.wait(from, mine, tie.lag, 0, why);
                    if tie.relation == TieRelation::With && i == 0 {
                        self.wait(mine, from, 0.0 - tie.lag, 0, why);
                    }
                }
            }
        }
    }

    fn rows_of(&self, id: ActionId) -> Vec<usize> {
        let rows = self.ch.rows.iter().enumerate();
        rows.filter(|(_, r)| r.id == id).map(|(i, _)| i).listed()
    }
}
