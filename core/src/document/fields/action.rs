//! The fields of places, ties and actions.

use super::{Choice, Shape, Table, field, needed};
use crate::document::words::Words;
use crate::set::Verb;
use crate::voice::messages::fault as m;

pub(super) const TITLE: Shape = Shape::Text(200);
pub(super) const PARAGRAPH: Shape = Shape::Text(2000);
pub(super) const PLAYERS: Shape = Shape::OneOrMore(&Shape::Player);
const SPOT: Shape = Shape::Word(Words::Spot);
pub(super) const SIDE: Shape = Shape::Word(Words::Side);
const OFF_SIDE: Shape = Shape::Word(Words::OffSide);
pub(super) const EDGE: Shape = Shape::Word(Words::Edge);
pub(super) const LEVEL: Shape = Shape::Word(Words::Level);

const MOVED: Table = Table {
    what: m::NEAR_SPOT,
    fields: &[
        needed("spot", SPOT, "The spot."),
        field(
            "dx",
            Shape::Number(-30, 30),
            "Metres to the offence's right.",
        ),
        field("dy", Shape::Number(-30, 30), "Metres toward half court."),
    ],
};

const BESIDE: Table = Table {
    what: m::BESIDE_MATE,
    fields: &[
        needed("beside", Shape::Player, "The team mate."),
        needed(
            "side",
            SIDE,
            "On which side, as the offence sees it when it faces the ring.",
        ),
        field(
            "gap",
            Shape::Number(0, 10),
            "Metres between the bodies; 0.6 if not given.",
        ),
    ],
};

const USED: Table = Table {
    what: m::USE_OF_SCREEN,
    fields: &[
        needed("who", Shape::Player, "Whose screen."),
        field("side", OFF_SIDE, "Which side of it."),
    ],
};

const BY: Table = Table {
    what: m::SCREENER_TO_PASS,
    fields: &[
        needed("off", Shape::Player, "Whose screen."),
        field("side", OFF_SIDE, "Which side of it."),
    ],
};

pub(super) const PLACE: Shape = Shape::Either(&Choice {
    says: m::ANY_PLACE,
    shapes: &[
        SPOT,
        Shape::Point,
        Shape::Object(&MOVED),
        Shape::Object(&BESIDE),
    ],
});

const TARGET: Shape = Shape::Either(&Choice {
    says: m::PLACE_OR_PLAYER,
    shapes: &[
        SPOT,
        Shape::Player,
        Shape::Point,
        Shape::Object(&MOVED),
        Shape::Object(&BESIDE),
    ],
});

const VIA: Shape = Shape::Either(&Choice {
    says: m::PLACE_OR_SCREENER,
    shapes: &[
        SPOT,
        Shape::Point,
        Shape::Object(&MOVED),
        Shape::Object(&BESIDE),
        Shape::Object(&BY),
    ],
});

const OFF: Shape = Shape::Either(&Choice {
    says: m::SCREENER,
    shapes: &[Shape::Player, Shape::Object(&USED)],
});

const TIE: Table = Table {
    what: m::TIE,
    fields: &[
        needed(
            "id",
            Shape::Id,
            "The action that this one waits for, by its id.",
        ),
        field(
            "edge",
            EDGE,
            "Its instant; if not given, its end for \"after\", its start for \"with\".",
        ),
        field(
            "of",
            Shape::Player,
            "Which screener, where the instant belongs to one of several.",
        ),
        field(
            "lag",
            Shape::Seconds(-60, 60),
            "Seconds from that instant to mine.",
        ),
        field(
            "mine",
            EDGE,
            "The instant of this action; its start if not given.",
        ),
    ],
};

const TIES: Shape = Shape::OneOrMore(&Shape::Either(&Choice {
    says: m::TIED_TO,
    shapes: &[Shape::Id, Shape::Object(&TIE)],
}));

/// One action.
pub(in crate::document) const ACTION: Table = Table {
    what: m::ACTION,
    fields: &[
        field(
            "id",
            Shape::Id,
            "A name by which others can wait for this action.",
        ),
        needed(
            "who",
            PLAYERS,
            "The player; a list where several screen, hold or fake as one.",
        ),
        needed("do", Shape::Word(Words::Verb), "What they do."),
        field("kind", Shape::Word(Words::Kind), "The trade's name for it."),
        field(
            "to",
            TARGET,
            "Where it goes; for a pass, hand-off or fake the player it goes to.",
        ),
        field("at", PLACE, "Where a screen, a hand-off or a catch is."),
        field(
            "via",
            Shape::List(&VIA, 1, 20),
            "Places and screeners on the way, in running order.",
        ),
        field("for", PLAYERS, "Whom a screen is for."),
        field(
            "off",
            Shape::OneOrMore(&OFF),
            "Whose screens are used, in running order.",
        ),
        field("side", OFF_SIDE, "Which side of the screen."),
        field("pace", Shape::Word(Words::Pace), "How hard."),
        field("takes", Shape::Seconds(0, 60), "Seconds it takes at least."),
        field("after", TIES, "Not before that instant of another action."),
        field("with", TIES, "Exactly at that instant of another action."),
        field(
            "free",
            Shape::Flag,
            "Drops the waits that are otherwise understood.",
        ),
        field("say", PARAGRAPH, "Your own words for it."),
        field("of", Shape::Word(Words::Faked), "What is faked."),
    ],
};

/// Fields of an action that only some verbs have; all others belong to every verb.
const OWN_FIELDS: [(&str, &[Verb]); 8] = [
    (
        "to",
        &[
            Verb::Cut,
            Verb::Dribble,
            Verb::Pass,
            Verb::Handoff,
            Verb::Fake,
        ],
    ),
    ("at", &[Verb::Screen, Verb::Pass, Verb::Handoff]),
    (
        "via",
        &[Verb::Cut, Verb::Dribble, Verb::Screen, Verb::Handoff],
    ),
    ("for", &[Verb::Screen]),
    ("off", &[Verb::Cut, Verb::Dribble]),
    ("side", &[Verb::Cut, Verb::Dribble]),
    (
        "pace",
        &[Verb::Cut, Verb::Dribble, Verb::Screen, Verb::Handoff],
    ),
    ("of", &[Verb::Fake]),
];

/// The verbs whose actions may carry the field `name`.
pub(in crate::document) fn verbs_of(name: &str) -> &'static [Verb] {
    OWN_FIELDS
        .iter()
        .find(|row| row.0 == name)
        .map_or(&Verb::ALL, |row| row.1)
}
