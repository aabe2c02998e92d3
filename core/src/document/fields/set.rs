//! The fields of beats, reads, players and the set.

use super::action::{ACTION, EDGE, LEVEL, PARAGRAPH, PLACE, PLAYERS, SIDE, TITLE};
use super::{Choice, Shape, Table, field, needed};
use crate::document::words::Words;
use crate::set::FilmMark;
use crate::voice::messages::fault as m;

const BEAT: Table = Table {
    what: m::BEAT,
    fields: &[
        field("title", TITLE, "Its name."),
        field("say", PARAGRAPH, "Your own words for it."),
        needed(
            "actions",
            Shape::List(&Shape::Object(&ACTION), 1, 200),
            "What happens, in order.",
        ),
    ],
};

const BEATS: Shape = Shape::List(&Shape::Object(&BEAT), 1, 200);

const INSTANT: Table = Table {
    what: m::INSTANT,
    fields: &[
        needed("id", Shape::Id, "The action, by its id."),
        needed("edge", EDGE, "Its instant."),
        field(
            "of",
            Shape::Player,
            "Which screener, where the instant belongs to one of several.",
        ),
    ],
};

const IF_COVERAGE: Table = Table {
    what: m::DECIDING_COVERAGE,
    fields: &[needed(
        "coverage",
        Shape::Word(Words::Coverage),
        "How the whole defence plays it.",
    )],
};

const IF_DOES: Table = Table {
    what: m::DECIDING_DEED,
    fields: &[
        needed("does", Shape::Word(Words::Deed), "What the defender does."),
        needed("who", Shape::Defender, "The defender."),
        field("side", SIDE, "On which side."),
    ],
};

const IF_NEAR: Table = Table {
    what: m::DECIDING_DISTANCE,
    fields: &[
        needed(
            "under",
            Shape::Number(0, 30),
            "Nearer to the own man than so many metres.",
        ),
        needed("who", Shape::Defender, "The defender."),
    ],
};

const IF_LANE: Table = Table {
    what: m::DECIDING_LANE,
    fields: &[
        needed("lane", Shape::Word(Words::Closed), "\"closed\"."),
        needed("from", Shape::Player, "From whom."),
        needed("to", Shape::Player, "To whom."),
    ],
};

const CONDITION: Shape = Shape::Either(&Choice {
    says: m::CONDITION,
    shapes: &[
        Shape::Object(&IF_COVERAGE),
        Shape::Object(&IF_DOES),
        Shape::Object(&IF_NEAR),
        Shape::Object(&IF_LANE),
    ],
});

static READ: Table = Table {
    what: m::READ,
    fields: &[
        field("title", TITLE, "Its name."),
        needed("at", Shape::Object(&INSTANT), "When it is made."),
        needed("by", PLAYERS, "Who must see it."),
        needed("if", CONDITION, "What decides."),
        needed(
            "beats",
            BEATS,
            "What replaces the rest of what these players would do.",
        ),
        field(
            "reads",
            Shape::List(&ONE_READ, 0, 50),
            "Reads within this one.",
        ),
    ],
};

/// A static, since the table of a read names it again.
static ONE_READ: Shape = Shape::Object(&READ);

const PLAYER: Table = Table {
    what: m::PLAYER,
    fields: &[
        needed("at", PLACE, "Where they stand as the set begins."),
        field("ball", Shape::Flag, "Whether they hold the ball."),
        field(
            "facing",
            Shape::Angle,
            "Where they look, in radians: 0 at the ring, clockwise.",
        ),
        field(
            "level",
            LEVEL,
            "Their level, where it differs from the set's.",
        ),
    ],
};

const DIRECTIVE: Table = Table {
    what: m::INSTRUCTION,
    fields: &[
        needed("id", Shape::Id, "The action, by its id."),
        needed("who", Shape::Defender, "The defender."),
        needed("does", Shape::Word(Words::Deed), "What they do."),
        field("side", SIDE, "On which side."),
    ],
};

const DEFENCE: Table = Table {
    what: m::DEFENCE,
    fields: &[
        field(
            "all",
            Shape::Word(Words::Coverage),
            "The coverage that holds if nothing else is said.",
        ),
        field(
            "on",
            Shape::List(&Shape::Object(&DIRECTIVE), 0, 200),
            "Instructions for single actions.",
        ),
    ],
};

#[cfg(feature = "authoring")]
const SLOW_END: Shape = Shape::Either(&Choice {
    says: m::BEAT_OR_INSTANT,
    shapes: &[Shape::Count(200), Shape::Object(&INSTANT)],
});

#[cfg(feature = "authoring")]
const SLOW: Table = Table {
    what: m::SLOW_STRETCH,
    fields: &[
        needed(
            "from",
            SLOW_END,
            "From the start of this beat (the first is 1), or from this instant.",
        ),
        needed(
            "to",
            SLOW_END,
            "To the end of this beat, or to this instant.",
        ),
        needed(
            "rate",
            Shape::Number(0, 1),
            "Times the usual speed; above 0, at most 1.",
        ),
    ],
};

#[cfg(feature = "authoring")]
const STRETCH: Shape = Shape::Object(&SLOW);
/// Anything: what shows only the first picture takes them on trust.
#[cfg(not(feature = "authoring"))]
const STRETCH: Shape = Shape::Version;

const FILM: Table = Table {
    what: m::FILM_MARK,
    fields: &[
        needed(
            "t",
            Shape::Seconds(0, FilmMark::LATEST),
            "Seconds of the set.",
        ),
        needed(
            "film",
            Shape::Number(0, FilmMark::LATEST_OF_FILM),
            "Seconds of the film.",
        ),
    ],
};

/// The whole file.
pub(in crate::document) const SET: Table = Table {
    what: m::SET,
    fields: &[
        needed("backcut", Shape::Version, "The version of this format: 1."),
        needed("title", TITLE, "The name of the set."),
        field("about", PARAGRAPH, "A paragraph about it."),
        field(
            "use",
            TITLE,
            "When it is called: half court, sideline, after a time-out.",
        ),
        field("points", Shape::List(&PARAGRAPH, 0, 50), "Teaching points."),
        field("credit", TITLE, "Whose set it is."),
        field(
            "tags",
            Shape::List(&Shape::Id, 0, 50),
            "Free words to find it by.",
        ),
        field(
            "court",
            Shape::Word(Words::Court),
            "Whose rules and lines; \"fiba\" if not given.",
        ),
        field("level", LEVEL, "Who plays; \"adult\" if not given."),
        needed(
            "players",
            Shape::Players(&PLAYER),
            "Two to five players by number.",
        ),
        needed("beats", BEATS, "The stages of the set, in order."),
        field(
            "reads",
            Shape::List(&ONE_READ, 0, 50),
            "Branches: if the defence does this, do that.",
        ),
        field("defence", Shape::Object(&DEFENCE), "How the defence plays."),
        field(
            "slow",
            Shape::List(&STRETCH, 0, 50),
            "Stretches shown slowly.",
        ),
        field(
            "film",
            Shape::List(&Shape::Object(&FILM), 0, FilmMark::MOST),
            "Marks that tie the set to a film.",
        ),
    ],
};
