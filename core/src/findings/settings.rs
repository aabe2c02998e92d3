//! From where on something is found. Every value can be set; the defaults are common practice.

/// Thresholds; metres, seconds, m/s, radians.
///
/// Where nothing else is said: common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Settings {
    /// A screen stands at least so long before the cutter is by.
    pub lead: f64,
    /// A screen that stands longer before the cutter is by is scouted.
    pub scouted: f64,
    /// A cutter who is not set for is no faster than this until the screener stands.
    pub waits: f64,
    /// A cutter may start so long before the screener stands.
    pub early: f64,
    /// The screener's feet are down so long before the pass-by.
    pub feet: f64,
    /// A chaser comes by so long after the cutter, on top of the reaction.
    pub chase: f64,
    /// Middles further apart at a pass-by let a defender through.
    pub loose: f64,
    /// Bodies overlap below this share of the mean shoulder breadth (for adults 0.42 m).
    pub touch: f64,
    /// A screener's body may be so far off square.
    pub square: f64,
    /// Chest and back may want directions so far apart; beyond, the place is wrong.
    pub spot: f64,
    /// A screener with another move stands no longer than this after the cutter is by.
    pub stays: f64,
    /// Speeds below this are standing.
    pub still: f64,
    /// Hands further apart cannot hand a ball over.
    pub handoff: f64,
    /// A hand-off's giver is still so long before the exchange.
    pub giver: f64,
    /// Speed at a catch on the perimeter.
    pub catch: f64,
    /// Speed at a catch near the ring.
    pub rim_catch: f64,
    /// A catch so near to the ring is one at the rim.
    pub rim: f64,
    /// A receiver's chest is no further away from the ball than this …
    pub look: f64,
    /// … so long after it has left …
    pub look_after: f64,
    /// … and so long before the catch.
    pub look_before: f64,
    /// A passer's chest is no further away from the target.
    pub chest: f64,
    /// A pass keeps so far from every body, over the floor.
    pub pass_clear: f64,
    /// A body's feet reach so far from its middle.
    pub foot: f64,
    /// In the lane for so long is worth a warning (the limit itself: `Rules`).
    pub lane: f64,
    /// Three in the lane for so long are a crowd.
    pub lane_crowd: f64,
    /// A throw-in that leaves later is tight (the limit itself: `Rules`).
    pub throw_in: f64,
    /// A set that takes longer is long.
    pub long_set: f64,
    /// A holder who stands longer invites the five seconds.
    pub holder: f64,
    /// A player without part and look for longer is a statue.
    pub statue: f64,
    /// Team mates meet under the ring within this of it.
    pub under_ring: f64,
    /// Bodies that close slower than this only touch.
    pub closing: f64,
    /// Neighbours on the perimeter are at least so far apart …
    pub neighbours: f64,
    /// … but for so long.
    pub neighbours_for: f64,
    /// Any two are at least so far apart …
    pub apart: f64,
    /// … but for so long.
    pub apart_for: f64,
    /// Within this of a corner spot one fills it.
    pub corner: f64,
    /// A safety stands so far above the free-throw line.
    pub safety: f64,
    /// A pass is thrown no farther than this, but for those made to go far.
    pub far_pass: f64,
    /// The ball changes sides within this.
    pub one_side: f64,
    /// The way off a screen is run so many times as fast as the way to it.
    pub fast: f64,
    /// Four on one side for so long load it.
    pub loaded: f64,
    /// Who has come to stand so near to a dunker spot, or the lane, is parked there.
    pub parked: f64,
    /// One normal step, as a share of stature: for adults 0.83 m. No rule book gives it in metres.
    pub step: f64,
    /// Beyond this from the chest a defender does not see a screener.
    pub blind: f64,
    /// A closely guarded holder for so long is worth a note (the limit itself: `Rules`).
    pub guarded: f64,
    /// A hand that is in the lane so long before the ball takes it …
    pub stolen: f64,
    /// … and so long, may do so.
    pub shut: f64,
    /// A receiver with a defender so near is covered (2 ft, as the public classes have it) …
    pub tight: f64,
    /// … and with none nearer than this is open (4 ft) …
    pub open: f64,
    /// … but not worth waiting for longer than this.
    pub soon: f64,
    /// An attacker and a defender who come together slower than this only jostle.
    pub contact: f64,
    /// A helper so near to a quiet cutter has not gone with the loud one …
    pub helper: f64,
    /// … if the own man is farther than this.
    pub left_alone: f64,
    /// A read that ends so much less open than the line it leaves is worse, seconds: a step of the
    /// defender's.
    pub worse: f64,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            lead: 0.2,
            scouted: 1.5,
            waits: 1.5,
            early: 0.1,
            feet: 0.2,
            chase: crate::guard::UNSEEN,
            loose: 0.80,
            touch: 0.80,
            square: 30f64.to_radians(),
            // 60° against a defender who is seen; here they are only guessed.
            spot: 75f64.to_radians(),
            stays: 1.0,
            still: 0.1,
            handoff: 0.7,
            giver: 0.15,
            catch: 2.0,
            // The rule of thumb is 5; a sprinter of the movement model is a little faster.
            rim_catch: 5.5,
            rim: 3.0,
            // A chest half turned away, and a head that turns on from there.
            look: 120f64.to_radians(),
            look_after: 0.2,
            look_before: 0.3,
            chest: 60f64.to_radians(),
            pass_clear: 0.35,
            foot: 0.15,
            lane: 2.8,
            lane_crowd: 0.3,
            throw_in: 4.3,
            long_set: 16.0,
            holder: 5.0,
            statue: 5.0,
            under_ring: 1.8,
            closing: 1.0,
            neighbours: 3.6,
            neighbours_for: 1.0,
            apart: 1.5,
            apart_for: 0.5,
            corner: 2.0,
            safety: 1.5,
            far_pass: 8.0,
            one_side: 8.0,
            fast: 1.5,
            loaded: 3.0,
            parked: 0.8,
            step: 0.45,
            blind: 100f64.to_radians(),
            guarded: 4.0,
            stolen: 0.3,
            shut: 0.1,
            tight: 0.61,
            open: 1.22,
            soon: 1.0,
            contact: 1.5,
            helper: 1.8,
            left_alone: 2.5,
            worse: 0.2,
        }
    }
}
