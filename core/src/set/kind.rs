//! The trade's names for actions, with aliases; one row a kind.

use super::Verb;
use crate::spelling::same_word;

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
    KindRow { kind: Kind::VCut, verb: Verb::Cut, name: "v-cut", aliases: &[], family: Family::Around },
    KindRow { kind: Kind::LCut, verb: Verb::Cut, name: "l-cut", aliases: &[], family: Family::Around },
    KindRow { kind: Kind::Backdoor, verb: Verb::Cut, name: "backdoor", aliases: &["back cut"], family: Family::Rim },
    KindRow { kind: Kind::Basket, verb: Verb::Cut, name: "basket", aliases: &["face", "front", "give-and-go", "basket cut"], family: Family::Rim },
    KindRow { kind: Kind::HighPostRub, verb: Verb::Cut, name: "high-post-rub", aliases: &["ucla"], family: Family::Out },
    KindRow { kind: Kind::OverTheElbows, verb: Verb::Cut, name: "over-the-elbows", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Zipper, verb: Verb::Cut, name: "zipper", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Shuffle, verb: Verb::Cut, name: "shuffle", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::FlexCut, verb: Verb::Cut, name: "flex", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Straight, verb: Verb::Cut, name: "straight", aliases: &["pop out"], family: Family::Out },
    KindRow { kind: Kind::Curl, verb: Verb::Cut, name: "curl", aliases: &[], family: Family::Rim },
    KindRow { kind: Kind::Fade, verb: Verb::Cut, name: "fade", aliases: &["flare cut"], family: Family::Out },
    KindRow { kind: Kind::Reject, verb: Verb::Cut, name: "reject", aliases: &["refuse"], family: Family::Rim },
    KindRow { kind: Kind::Slip, verb: Verb::Cut, name: "slip", aliases: &[], family: Family::Rim },
    KindRow { kind: Kind::Ghost, verb: Verb::Cut, name: "ghost", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Flash, verb: Verb::Cut, name: "flash", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Fill, verb: Verb::Cut, name: "fill", aliases: &["replace"], family: Family::Out },
    KindRow { kind: Kind::Lift, verb: Verb::Cut, name: "lift", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Drift, verb: Verb::Cut, name: "drift", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Shallow, verb: Verb::Cut, name: "shallow", aliases: &["exchange"], family: Family::Out },
    KindRow { kind: Kind::Loop, verb: Verb::Cut, name: "loop", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Through, verb: Verb::Cut, name: "through", aliases: &["clear"], family: Family::Out },
    KindRow { kind: Kind::FortyFive, verb: Verb::Cut, name: "45", aliases: &["45 cut"], family: Family::Rim },
    KindRow { kind: Kind::Roll, verb: Verb::Cut, name: "roll", aliases: &[], family: Family::Rim },
    KindRow { kind: Kind::ShortRoll, verb: Verb::Cut, name: "short-roll", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Pop, verb: Verb::Cut, name: "pop", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Dive, verb: Verb::Cut, name: "dive", aliases: &[], family: Family::Rim },
    KindRow { kind: Kind::DuckIn, verb: Verb::Cut, name: "duck-in", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::SealCut, verb: Verb::Cut, name: "seal", aliases: &[], family: Family::Out },
    KindRow { kind: Kind::Split, verb: Verb::Cut, name: "split", aliases: &["scissor"], family: Family::Out },
    KindRow { kind: Kind::Get, verb: Verb::Cut, name: "get", aliases: &["pass and follow"], family: Family::Out },
    KindRow { kind: Kind::Down, verb: Verb::Screen, name: "down", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::PinDown, verb: Verb::Screen, name: "pin-down", aliases: &["wide"], family: Family::Single },
    KindRow { kind: Kind::Away, verb: Verb::Screen, name: "away", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Back, verb: Verb::Screen, name: "back", aliases: &["blind"], family: Family::Single },
    KindRow { kind: Kind::Flare, verb: Verb::Screen, name: "flare", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Cross, verb: Verb::Screen, name: "cross", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Diagonal, verb: Verb::Screen, name: "diagonal", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::FlexScreen, verb: Verb::Screen, name: "flex", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Ball, verb: Verb::Screen, name: "ball", aliases: &["ball screen", "side", "middle"], family: Family::Ball },
    KindRow { kind: Kind::Flat, verb: Verb::Screen, name: "flat", aliases: &[], family: Family::Ball },
    KindRow { kind: Kind::StepUp, verb: Verb::Screen, name: "step-up", aliases: &[], family: Family::Ball },
    KindRow { kind: Kind::Drag, verb: Verb::Screen, name: "drag", aliases: &[], family: Family::Ball },
    KindRow { kind: Kind::DoubleDrag, verb: Verb::Screen, name: "double-drag", aliases: &[], family: Family::Ball },
    KindRow { kind: Kind::ReScreen, verb: Verb::Screen, name: "re-screen", aliases: &["twist"], family: Family::Ball },
    KindRow { kind: Kind::Ram, verb: Verb::Screen, name: "ram", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Stagger, verb: Verb::Screen, name: "stagger", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Double, verb: Verb::Screen, name: "double", aliases: &["tight"], family: Family::Pair },
    KindRow { kind: Kind::Gate, verb: Verb::Screen, name: "gate", aliases: &["elevator"], family: Family::Pair },
    KindRow { kind: Kind::ScreenTheScreener, verb: Verb::Screen, name: "screen-the-screener", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Rip, verb: Verb::Screen, name: "rip", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::Hammer, verb: Verb::Screen, name: "hammer", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::BackOnTheRoller, verb: Verb::Screen, name: "back-on-the-roller", aliases: &["spain", "back screen on the roller"], family: Family::Single },
    KindRow { kind: Kind::BrushScreen, verb: Verb::Screen, name: "brush", aliases: &[], family: Family::Single },
    KindRow { kind: Kind::SealScreen, verb: Verb::Screen, name: "seal", aliases: &["seal screen"], family: Family::Single },
    KindRow { kind: Kind::Chest, verb: Verb::Pass, name: "chest", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::Bounce, verb: Verb::Pass, name: "bounce", aliases: &[], family: Family::Bounce },
    KindRow { kind: Kind::Overhead, verb: Verb::Pass, name: "overhead", aliases: &[], family: Family::High },
    KindRow { kind: Kind::Skip, verb: Verb::Pass, name: "skip", aliases: &[], family: Family::High },
    KindRow { kind: Kind::Lob, verb: Verb::Pass, name: "lob", aliases: &[], family: Family::Lob },
    KindRow { kind: Kind::Pocket, verb: Verb::Pass, name: "pocket", aliases: &[], family: Family::Bounce },
    KindRow { kind: Kind::Outlet, verb: Verb::Pass, name: "outlet", aliases: &[], family: Family::High },
    KindRow { kind: Kind::KickOut, verb: Verb::Pass, name: "kick-out", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::Swing, verb: Verb::Pass, name: "swing", aliases: &["extra"], family: Family::Flat },
    KindRow { kind: Kind::HighLow, verb: Verb::Pass, name: "high-low", aliases: &[], family: Family::High },
    KindRow { kind: Kind::Lead, verb: Verb::Pass, name: "lead", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::Shovel, verb: Verb::Pass, name: "shovel", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::Pitch, verb: Verb::Pass, name: "pitch", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::Inbound, verb: Verb::Pass, name: "inbound", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::OneHand, verb: Verb::Pass, name: "one-hand", aliases: &[], family: Family::Flat },
    KindRow { kind: Kind::Baseball, verb: Verb::Pass, name: "baseball", aliases: &[], family: Family::High },
    KindRow { kind: Kind::Hook, verb: Verb::Pass, name: "hook", aliases: &[], family: Family::High },
    KindRow { kind: Kind::DribbleAt, verb: Verb::Dribble, name: "dribble-at", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Push, verb: Verb::Dribble, name: "push", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Hard, verb: Verb::Dribble, name: "hard", aliases: &["attack"], family: Family::Toward },
    KindRow { kind: Kind::Retreat, verb: Verb::Dribble, name: "retreat", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Hesitation, verb: Verb::Dribble, name: "hesitation", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Crossover, verb: Verb::Dribble, name: "crossover", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Snake, verb: Verb::Dribble, name: "snake", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Hostage, verb: Verb::Dribble, name: "hostage", aliases: &[], family: Family::Toward },
    KindRow { kind: Kind::Dho, verb: Verb::Handoff, name: "dho", aliases: &["dribble hand-off"], family: Family::Still },
    KindRow { kind: Kind::Keep, verb: Verb::Handoff, name: "keep", aliases: &[], family: Family::Still },
    KindRow { kind: Kind::CatchAndShoot, verb: Verb::Shot, name: "catch-and-shoot", aliases: &[], family: Family::TwoFeet },
    KindRow { kind: Kind::OffScreen, verb: Verb::Shot, name: "off-screen", aliases: &[], family: Family::TwoFeet },
    KindRow { kind: Kind::PullUp, verb: Verb::Shot, name: "pull-up", aliases: &[], family: Family::TwoFeet },
    KindRow { kind: Kind::Floater, verb: Verb::Shot, name: "floater", aliases: &[], family: Family::Running },
    KindRow { kind: Kind::Layup, verb: Verb::Shot, name: "layup", aliases: &[], family: Family::Running },
    KindRow { kind: Kind::PlantHold, verb: Verb::Hold, name: "plant", aliases: &["jump stop", "stride stop"], family: Family::Still },
    KindRow { kind: Kind::Pivot, verb: Verb::Hold, name: "pivot", aliases: &[], family: Family::Still },
    KindRow { kind: Kind::ScreenOut, verb: Verb::Hold, name: "screen-out", aliases: &["box out"], family: Family::Still },
    KindRow { kind: Kind::PassFake, verb: Verb::Fake, name: "pass-fake", aliases: &[], family: Family::Still },
    KindRow { kind: Kind::CutFake, verb: Verb::Fake, name: "cut-fake", aliases: &[], family: Family::Still },
    KindRow { kind: Kind::ShotFake, verb: Verb::Fake, name: "shot-fake", aliases: &[], family: Family::Still },
    KindRow { kind: Kind::Jab, verb: Verb::Fake, name: "jab", aliases: &[], family: Family::Still },
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
