//! The trade's names for actions, with aliases; one row a kind.

use super::Verb;
use crate::fault::same_word;

/// What a kind is called and which verb it belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KindRow {
    /// The kind.
    pub kind: Kind,
    /// The verb it belongs to: the same word may name a cut and a screen.
    pub verb: Verb,
    /// The name in a set file.
    pub name: &'static str,
    /// Other accepted spellings; never shown.
    pub aliases: &'static [&'static str],
    /// The plain words shown to people.
    pub title: &'static str,
    /// What its shape and timing rules go by.
    pub family: Family,
}

/// What the shape and timing rules of a kind go by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// A cut of two legs with a plant between.
    Around,
    /// A cut that ends at the ring; its catch is taken in stride.
    Rim,
    /// A cut to a spot; its catch is taken on two feet.
    Out,
    /// An off-ball screen by one.
    Single,
    /// A screen for the player with the ball.
    Ball,
    /// Two screeners as one.
    Pair,
    /// Flat, chest to chest.
    Flat,
    /// Off the floor.
    Bounce,
    /// From over the head.
    High,
    /// A high arc.
    Lob,
    /// The ball goes with the player.
    Toward,
    /// On the spot.
    Still,
    /// Off two feet, from a stop.
    TwoFeet,
    /// Off one foot, in stride.
    Running,
}

/// A kind of action by the trade's name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the table below says what each is called")]
pub enum Kind {
    VCut,
    LCut,
    Backdoor,
    Basket,
    HighPostRub,
    OverTheElbows,
    Zipper,
    Shuffle,
    FlexCut,
    Straight,
    Curl,
    Fade,
    Reject,
    Slip,
    Ghost,
    Flash,
    Fill,
    Lift,
    Drift,
    Shallow,
    Loop,
    Through,
    FortyFive,
    Roll,
    ShortRoll,
    Pop,
    Dive,
    DuckIn,
    SealCut,
    Split,
    Get,
    Down,
    PinDown,
    Away,
    Back,
    Flare,
    Cross,
    Diagonal,
    FlexScreen,
    Ball,
    Flat,
    StepUp,
    Drag,
    DoubleDrag,
    ReScreen,
    Ram,
    Stagger,
    Double,
    Gate,
    ScreenTheScreener,
    Rip,
    Hammer,
    BackOnTheRoller,
    BrushScreen,
    SealScreen,
    Chest,
    Bounce,
    Overhead,
    Skip,
    Lob,
    Pocket,
    Outlet,
    KickOut,
    Swing,
    HighLow,
    Lead,
    Shovel,
    Pitch,
    Inbound,
    OneHand,
    Baseball,
    Hook,
    DribbleAt,
    Push,
    Hard,
    Retreat,
    Hesitation,
    Crossover,
    Snake,
    Hostage,
    Dho,
    Keep,
    CatchAndShoot,
    OffScreen,
    PullUp,
    Floater,
    Layup,
    PlantHold,
    Pivot,
    ScreenOut,
    PassFake,
    CutFake,
    ShotFake,
    Jab,
}

#[rustfmt::skip]
const TABLE: &[KindRow; 94] = &[
    KindRow { kind: Kind::VCut, verb: Verb::Cut, name: "v-cut", aliases: &[], title: "V-cut", family: Family::Around },
    KindRow { kind: Kind::LCut, verb: Verb::Cut, name: "l-cut", aliases: &[], title: "L-cut", family: Family::Around },
    KindRow { kind: Kind::Backdoor, verb: Verb::Cut, name: "backdoor", aliases: &["back cut"], title: "backdoor cut", family: Family::Rim },
    KindRow { kind: Kind::Basket, verb: Verb::Cut, name: "basket", aliases: &["face", "front", "give-and-go", "basket cut"], title: "basket cut", family: Family::Rim },
    KindRow { kind: Kind::HighPostRub, verb: Verb::Cut, name: "high-post-rub", aliases: &["ucla"], title: "high-post rub", family: Family::Out },
    KindRow { kind: Kind::OverTheElbows, verb: Verb::Cut, name: "over-the-elbows", aliases: &[], title: "over-the-elbows cut", family: Family::Out },
    KindRow { kind: Kind::Zipper, verb: Verb::Cut, name: "zipper", aliases: &[], title: "zipper cut", family: Family::Out },
    KindRow { kind: Kind::Shuffle, verb: Verb::Cut, name: "shuffle", aliases: &[], title: "shuffle cut", family: Family::Out },
    KindRow { kind: Kind::FlexCut, verb: Verb::Cut, name: "flex", aliases: &[], title: "flex cut", family: Family::Out },
    KindRow { kind: Kind::Straight, verb: Verb::Cut, name: "straight", aliases: &["pop out"], title: "straight cut", family: Family::Out },
    KindRow { kind: Kind::Curl, verb: Verb::Cut, name: "curl", aliases: &[], title: "curl", family: Family::Rim },
    KindRow { kind: Kind::Fade, verb: Verb::Cut, name: "fade", aliases: &["flare cut"], title: "fade", family: Family::Out },
    KindRow { kind: Kind::Reject, verb: Verb::Cut, name: "reject", aliases: &["refuse"], title: "reject", family: Family::Rim },
    KindRow { kind: Kind::Slip, verb: Verb::Cut, name: "slip", aliases: &[], title: "slip", family: Family::Rim },
    KindRow { kind: Kind::Ghost, verb: Verb::Cut, name: "ghost", aliases: &[], title: "ghost cut", family: Family::Out },
    KindRow { kind: Kind::Flash, verb: Verb::Cut, name: "flash", aliases: &[], title: "flash", family: Family::Out },
    KindRow { kind: Kind::Fill, verb: Verb::Cut, name: "fill", aliases: &["replace"], title: "fill", family: Family::Out },
    KindRow { kind: Kind::Lift, verb: Verb::Cut, name: "lift", aliases: &[], title: "lift", family: Family::Out },
    KindRow { kind: Kind::Drift, verb: Verb::Cut, name: "drift", aliases: &[], title: "drift", family: Family::Out },
    KindRow { kind: Kind::Shallow, verb: Verb::Cut, name: "shallow", aliases: &["exchange"], title: "shallow cut", family: Family::Out },
    KindRow { kind: Kind::Loop, verb: Verb::Cut, name: "loop", aliases: &[], title: "loop", family: Family::Out },
    KindRow { kind: Kind::Through, verb: Verb::Cut, name: "through", aliases: &["clear"], title: "clear-out", family: Family::Out },
    KindRow { kind: Kind::FortyFive, verb: Verb::Cut, name: "45", aliases: &["45 cut"], title: "45 cut", family: Family::Rim },
    KindRow { kind: Kind::Roll, verb: Verb::Cut, name: "roll", aliases: &[], title: "roll", family: Family::Rim },
    KindRow { kind: Kind::ShortRoll, verb: Verb::Cut, name: "short-roll", aliases: &[], title: "short roll", family: Family::Out },
    KindRow { kind: Kind::Pop, verb: Verb::Cut, name: "pop", aliases: &[], title: "pop", family: Family::Out },
    KindRow { kind: Kind::Dive, verb: Verb::Cut, name: "dive", aliases: &[], title: "dive", family: Family::Rim },
    KindRow { kind: Kind::DuckIn, verb: Verb::Cut, name: "duck-in", aliases: &[], title: "duck-in", family: Family::Out },
    KindRow { kind: Kind::SealCut, verb: Verb::Cut, name: "seal", aliases: &[], title: "seal", family: Family::Out },
    KindRow { kind: Kind::Split, verb: Verb::Cut, name: "split", aliases: &["scissor"], title: "split cut", family: Family::Out },
    KindRow { kind: Kind::Get, verb: Verb::Cut, name: "get", aliases: &["pass and follow"], title: "get", family: Family::Out },
    KindRow { kind: Kind::Down, verb: Verb::Screen, name: "down", aliases: &[], title: "down screen", family: Family::Single },
    KindRow { kind: Kind::PinDown, verb: Verb::Screen, name: "pin-down", aliases: &["wide"], title: "pin-down", family: Family::Single },
    KindRow { kind: Kind::Away, verb: Verb::Screen, name: "away", aliases: &[], title: "screen away", family: Family::Single },
    KindRow { kind: Kind::Back, verb: Verb::Screen, name: "back", aliases: &["blind"], title: "back screen", family: Family::Single },
    KindRow { kind: Kind::Flare, verb: Verb::Screen, name: "flare", aliases: &[], title: "flare screen", family: Family::Single },
    KindRow { kind: Kind::Cross, verb: Verb::Screen, name: "cross", aliases: &[], title: "cross screen", family: Family::Single },
    KindRow { kind: Kind::Diagonal, verb: Verb::Screen, name: "diagonal", aliases: &[], title: "diagonal screen", family: Family::Single },
    KindRow { kind: Kind::FlexScreen, verb: Verb::Screen, name: "flex", aliases: &[], title: "flex screen", family: Family::Single },
    KindRow { kind: Kind::Ball, verb: Verb::Screen, name: "ball", aliases: &["ball screen", "side", "middle"], title: "ball screen", family: Family::Ball },
    KindRow { kind: Kind::Flat, verb: Verb::Screen, name: "flat", aliases: &[], title: "flat ball screen", family: Family::Ball },
    KindRow { kind: Kind::StepUp, verb: Verb::Screen, name: "step-up", aliases: &[], title: "step-up screen", family: Family::Ball },
    KindRow { kind: Kind::Drag, verb: Verb::Screen, name: "drag", aliases: &[], title: "drag screen", family: Family::Ball },
    KindRow { kind: Kind::DoubleDrag, verb: Verb::Screen, name: "double-drag", aliases: &[], title: "double drag", family: Family::Ball },
    KindRow { kind: Kind::ReScreen, verb: Verb::Screen, name: "re-screen", aliases: &["twist"], title: "re-screen", family: Family::Ball },
    KindRow { kind: Kind::Ram, verb: Verb::Screen, name: "ram", aliases: &[], title: "screen for the screener-to-be", family: Family::Single },
    KindRow { kind: Kind::Stagger, verb: Verb::Screen, name: "stagger", aliases: &[], title: "staggered screen", family: Family::Single },
    KindRow { kind: Kind::Double, verb: Verb::Screen, name: "double", aliases: &["tight"], title: "double screen", family: Family::Pair },
    KindRow { kind: Kind::Gate, verb: Verb::Screen, name: "gate", aliases: &["elevator"], title: "gate", family: Family::Pair },
    KindRow { kind: Kind::ScreenTheScreener, verb: Verb::Screen, name: "screen-the-screener", aliases: &[], title: "screen for the screener", family: Family::Single },
    KindRow { kind: Kind::Rip, verb: Verb::Screen, name: "rip", aliases: &[], title: "back screen toward the rim", family: Family::Single },
    KindRow { kind: Kind::Hammer, verb: Verb::Screen, name: "hammer", aliases: &[], title: "hammer screen", family: Family::Single },
    KindRow { kind: Kind::BackOnTheRoller, verb: Verb::Screen, name: "back-on-the-roller", aliases: &["spain", "back screen on the roller"], title: "back screen on the roller", family: Family::Single },
    KindRow { kind: Kind::BrushScreen, verb: Verb::Screen, name: "brush", aliases: &[], title: "brush", family: Family::Single },
    KindRow { kind: Kind::SealScreen, verb: Verb::Screen, name: "seal", aliases: &["seal screen"], title: "seal", family: Family::Single },
    KindRow { kind: Kind::Chest, verb: Verb::Pass, name: "chest", aliases: &[], title: "chest pass", family: Family::Flat },
    KindRow { kind: Kind::Bounce, verb: Verb::Pass, name: "bounce", aliases: &[], title: "bounce pass", family: Family::Bounce },
    KindRow { kind: Kind::Overhead, verb: Verb::Pass, name: "overhead", aliases: &[], title: "overhead pass", family: Family::High },
    KindRow { kind: Kind::Skip, verb: Verb::Pass, name: "skip", aliases: &[], title: "skip pass", family: Family::High },
    KindRow { kind: Kind::Lob, verb: Verb::Pass, name: "lob", aliases: &[], title: "lob", family: Family::Lob },
    KindRow { kind: Kind::Pocket, verb: Verb::Pass, name: "pocket", aliases: &[], title: "pocket pass", family: Family::Bounce },
    KindRow { kind: Kind::Outlet, verb: Verb::Pass, name: "outlet", aliases: &[], title: "outlet pass", family: Family::High },
    KindRow { kind: Kind::KickOut, verb: Verb::Pass, name: "kick-out", aliases: &[], title: "kick-out pass", family: Family::Flat },
    KindRow { kind: Kind::Swing, verb: Verb::Pass, name: "swing", aliases: &["extra"], title: "swing pass", family: Family::Flat },
    KindRow { kind: Kind::HighLow, verb: Verb::Pass, name: "high-low", aliases: &[], title: "high-low pass", family: Family::High },
    KindRow { kind: Kind::Lead, verb: Verb::Pass, name: "lead", aliases: &[], title: "lead pass", family: Family::Flat },
    KindRow { kind: Kind::Shovel, verb: Verb::Pass, name: "shovel", aliases: &[], title: "shovel pass", family: Family::Flat },
    KindRow { kind: Kind::Pitch, verb: Verb::Pass, name: "pitch", aliases: &[], title: "pitch", family: Family::Flat },
    KindRow { kind: Kind::Inbound, verb: Verb::Pass, name: "inbound", aliases: &[], title: "inbound pass", family: Family::Flat },
    KindRow { kind: Kind::OneHand, verb: Verb::Pass, name: "one-hand", aliases: &[], title: "one-hand pass", family: Family::Flat },
    KindRow { kind: Kind::Baseball, verb: Verb::Pass, name: "baseball", aliases: &[], title: "baseball pass", family: Family::High },
    KindRow { kind: Kind::Hook, verb: Verb::Pass, name: "hook", aliases: &[], title: "hook pass", family: Family::High },
    KindRow { kind: Kind::DribbleAt, verb: Verb::Dribble, name: "dribble-at", aliases: &[], title: "dribble-at", family: Family::Toward },
    KindRow { kind: Kind::Push, verb: Verb::Dribble, name: "push", aliases: &[], title: "push dribble", family: Family::Toward },
    KindRow { kind: Kind::Hard, verb: Verb::Dribble, name: "hard", aliases: &["attack"], title: "hard dribble", family: Family::Toward },
    KindRow { kind: Kind::Retreat, verb: Verb::Dribble, name: "retreat", aliases: &[], title: "retreat dribble", family: Family::Toward },
    KindRow { kind: Kind::Hesitation, verb: Verb::Dribble, name: "hesitation", aliases: &[], title: "hesitation dribble", family: Family::Toward },
    KindRow { kind: Kind::Crossover, verb: Verb::Dribble, name: "crossover", aliases: &[], title: "crossover", family: Family::Toward },
    KindRow { kind: Kind::Snake, verb: Verb::Dribble, name: "snake", aliases: &[], title: "snake dribble", family: Family::Toward },
    KindRow { kind: Kind::Hostage, verb: Verb::Dribble, name: "hostage", aliases: &[], title: "dribble with the defender kept behind", family: Family::Toward },
    KindRow { kind: Kind::Dho, verb: Verb::Handoff, name: "dho", aliases: &["dribble hand-off"], title: "dribble hand-off", family: Family::Still },
    KindRow { kind: Kind::Keep, verb: Verb::Handoff, name: "keep", aliases: &[], title: "fake hand-off", family: Family::Still },
    KindRow { kind: Kind::CatchAndShoot, verb: Verb::Shot, name: "catch-and-shoot", aliases: &[], title: "catch and shoot", family: Family::TwoFeet },
    KindRow { kind: Kind::OffScreen, verb: Verb::Shot, name: "off-screen", aliases: &[], title: "shot off a screen", family: Family::TwoFeet },
    KindRow { kind: Kind::PullUp, verb: Verb::Shot, name: "pull-up", aliases: &[], title: "pull-up", family: Family::TwoFeet },
    KindRow { kind: Kind::Floater, verb: Verb::Shot, name: "floater", aliases: &[], title: "floater", family: Family::Running },
    KindRow { kind: Kind::Layup, verb: Verb::Shot, name: "layup", aliases: &[], title: "layup", family: Family::Running },
    KindRow { kind: Kind::PlantHold, verb: Verb::Hold, name: "plant", aliases: &["jump stop", "stride stop"], title: "plant", family: Family::Still },
    KindRow { kind: Kind::Pivot, verb: Verb::Hold, name: "pivot", aliases: &[], title: "pivot", family: Family::Still },
    KindRow { kind: Kind::ScreenOut, verb: Verb::Hold, name: "screen-out", aliases: &["box out"], title: "screen-out", family: Family::Still },
    KindRow { kind: Kind::PassFake, verb: Verb::Fake, name: "pass-fake", aliases: &[], title: "pass fake", family: Family::Still },
    KindRow { kind: Kind::CutFake, verb: Verb::Fake, name: "cut-fake", aliases: &[], title: "cut fake", family: Family::Still },
    KindRow { kind: Kind::ShotFake, verb: Verb::Fake, name: "shot-fake", aliases: &[], title: "shot fake", family: Family::Still },
    KindRow { kind: Kind::Jab, verb: Verb::Fake, name: "jab", aliases: &[], title: "jab step", family: Family::Still },
];

impl Kind {
    /// Every kind, verb by verb.
    #[must_use]
    pub fn table() -> &'static [KindRow] {
        TABLE
    }

    /// The kind of `verb` that is written `name`; letter case, and a hyphen for a space, do not
    /// matter.
    ///
    /// ```
    /// use backcut::set::{Kind, Verb};
    /// assert_eq!(Kind::parse(Verb::Screen, "elevator"), Some(Kind::Gate));
    /// assert_eq!(Kind::parse(Verb::Cut, "elevator"), None);
    /// ```
    #[must_use]
    pub fn parse(verb: Verb, name: &str) -> Option<Self> {
        TABLE
            .iter()
            .find(|r| {
                r.verb == verb
                    && (same_word(name, r.name) || r.aliases.iter().any(|a| same_word(name, a)))
            })
            .map(|r| r.kind)
    }

    /// Its row.
    #[must_use]
    pub fn row(self) -> &'static KindRow {
        // The enum is declared in table order; `table_is_in_enum_order` holds that.
        let [first, ..] = TABLE;
        TABLE.get(self as usize).unwrap_or(first)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn table_is_in_enum_order() {
        for (i, row) in TABLE.iter().enumerate() {
            assert_eq!(row.kind as usize, i);
        }
    }
}
