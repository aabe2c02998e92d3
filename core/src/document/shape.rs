//! Holds a tree against the tables of [`super::fields`].

use super::fields::{self, Choice, Field, Shape, Table};
use super::json::{Json, Value};
use super::report::Report;
use super::told::{Told, quoted, told};
use super::words::{self, Words};
use super::{LIMITS, VERSION};
use crate::set::{Kind, Verb};
use crate::spelling::nearest;
use crate::voice::messages::fault as m;
use crate::voice::{Message, Said};
use alloc::string::{String, ToString};

/// Reports everything in `tree` that no set file may contain.
pub(super) fn check(tree: &Json, report: &mut Report<'_>) {
    if version(tree, report) {
        Checker { report, verb: None }.table(tree, &fields::SET);
    }
}

/// Whether the file is of a version that this program reads; what is newer or has none is not
/// judged any further.
fn version(tree: &Json, report: &mut Report<'_>) -> bool {
    let Value::Object(_) = tree.value else {
        report.add(tree.start, "wrong-type", &|source| {
            told(m::FILE_IS.with("what", source.shown(tree)), m::A_GROUP)
        });
        return false;
    };
    let Some(node) = tree.get("backcut") else {
        report.add(tree.start, "missing-version", &|_| {
            told(m::NO_VERSION, m::BEGINS)
        });
        return false;
    };
    match node.number() {
        Some(n) if n.to_bits() == f64::from(VERSION).to_bits() => true,
        Some(n) if n > f64::from(VERSION) => {
            report.add(node.start, "newer-version", &|source| {
                let shown = source.shown(node);
                told(
                    m::NEWER.with("version", shown),
                    m::READS_VERSION.with("version", VERSION.to_string()),
                )
            });
            false
        }
        _ => {
            report.add(node.start, "wrong-version", &|source| {
                told(
                    m::BAD_VERSION.with("what", source.shown(node)),
                    m::VERSION_IS.with("version", VERSION.to_string()),
                )
            });
            false
        }
    }
}

struct Checker<'r, 'a> {
    report: &'r mut Report<'a>,
    /// What the action does in which the checker stands.
    verb: Option<Verb>,
}

impl Checker<'_, '_> {
    fn table(&mut self, node: &Json, table: &Table) {
        let action = table.what == fields::ACTION.what;
        if action {
            self.verb = node.get("do").and_then(Json::text).and_then(words::verb);
        }
        for field in table.fields {
            if field.needed && node.get(field.name).is_none() {
                self.report.add(node.start, "missing-field", &|_| {
                    told(
                        m::HAS_NO.with("what", table.what).with("name", field.name),
                        is(field.name, allowed(&field.shape)),
                    )
                });
            }
        }
        for member in node.members() {
            if member.key.starts_with("x-") {
                continue;
            }
            match table.fields.iter().find(|f| f.name == member.key) {
                Some(field) => {
                    if action {
                        self.belongs(member.key_at, field);
                    }
                    self.shape(&member.value, &field.shape, field.name);
                }
                None => self.unknown_field(member.key_at, &member.key, table),
            }
        }
    }

    fn unknown_field(&mut self, at: u32, key: &str, table: &Table) {
        self.report.add(at, "unknown-field", &|_| {
            let names = || table.fields.iter().map(|f| f.name);
            told(
                m::HAS_NO_FIELD
                    .with("what", table.what)
                    .with("name", quoted(key)),
                m::FIELDS.with("names", join(names())),
            )
            .meant(nearest(key, names()))
        });
    }

    /// Whether an action of this verb has the field at all.
    fn belongs(&mut self, at: u32, field: &Field) {
        let Some(verb) = self.verb else { return };
        let verbs = fields::verbs_of(field.name);
        if !verbs.contains(&verb) {
            self.report.add(at, "field-of-other-action", &|_| {
                told(
                    m::VERB_HAS_NO
                        .with("verb", verb.name())
                        .with("name", field.name),
                    m::BELONGS
                        .with("name", field.name)
                        .with("verbs", join(verbs.iter().map(|v| v.name()))),
                )
            });
        }
    }

    fn shape(&mut self, node: &Json, shape: &Shape, name: &str) {
        match (shape, &node.value) {
            (Shape::Version, _) | (Shape::Flag, Value::Bool(_)) => {}
            (Shape::Number(from, to), Value::Number(n)) => {
                self.range(
                    node,
                    shape,
                    "number-out-of-range",
                    in_range(*n, *from, *to),
                    name,
                );
            }
            (Shape::Seconds(from, to), Value::Number(n)) => {
                self.range(
                    node,
                    shape,
                    "time-out-of-range",
                    in_range(*n, *from, *to),
                    name,
                );
            }
            (Shape::Angle, Value::Number(n)) => {
                let fits = in_range(*n, -7, 7);
                self.range(node, shape, "number-out-of-range", fits, name);
            }
            #[cfg(feature = "authoring")]
            (Shape::Count(to), Value::Number(n)) => {
                let fits = whole(*n).is_some_and(|n| (1..=*to).contains(&n));
                self.range(node, shape, "number-out-of-range", fits, name);
            }
            (Shape::Player, Value::Number(n)) => {
                let fits = whole(*n).is_some_and(|n| (1..=5).contains(&n));
                self.range(node, shape, "no-such-player", fits, name);
            }
            (Shape::Defender, Value::Text(text)) => {
                self.range(
                    node,
                    shape,
                    "no-such-defender",
                    defender(text).is_some(),
                    name,
                );
            }
            (Shape::Text(longest), Value::Text(text)) => self.text(node, text, *longest, name),
            (Shape::Id, Value::Text(text)) => {
                self.text(node, text, LIMITS.id, name);
                self.range(
                    node,
                    shape,
                    "empty-name",
                    !text.trim_ascii().is_empty(),
                    name,
                );
            }
            (Shape::Word(words), Value::Text(text)) => self.word(node, *words, text),
            (Shape::Point, Value::List(items)) => {
                let fits = items.len() == 2 && items.iter().all(|i| i.number().is_some());
                self.range(node, shape, "wrong-type", fits, name);
            }
            (Shape::Object(table), Value::Object(_)) => self.table(node, table),
            (Shape::Either(choice), _) => self.either(node, choice, name),
            (Shape::OneOrMore(one), Value::List(items)) => {
                self.list(node, one, items, (1, LIMITS.list), name);
            }
            (Shape::OneOrMore(one), _) => self.shape(node, one, name),
            (Shape::List(one, least, most), Value::List(items)) => {
                self.list(node, one, items, (*least, *most), name);
            }
            (Shape::Players(table), Value::Object(_)) => self.players(node, table),
            _ => self.range(node, shape, "wrong-type", false, name),
        }
    }

    /// Reports `code` unless the value fits.
    fn range(&mut self, node: &Json, shape: &Shape, code: &'static str, fits: bool, name: &str) {
        if !fits {
            self.report.add(node.start, code, &|source| {
                told(is(name, source.shown(node)), is(name, allowed(shape)))
            });
        }
    }

    fn text(&mut self, node: &Json, text: &str, longest: usize, name: &str) {
        let length = text.bytes().filter(|b| !(0x80..=0xbf).contains(b)).count();
        if length > longest {
            self.report.add(node.start, "text-too-long", &|_| {
                told(
                    m::LONG_TEXT
                        .with("name", name)
                        .with("n", length.to_string()),
                    m::AT_MOST.with("n", longest.to_string()),
                )
            });
        }
    }

    fn list(
        &mut self,
        node: &Json,
        one: &Shape,
        items: &[Json],
        (least, most): (usize, usize),
        name: &str,
    ) {
        if items.len() < least {
            self.report.add(node.start, "empty-list", &|_| {
                told(m::EMPTY_LIST.with("name", name), m::ONE_ENTRY)
            });
        }
        if items.len() > most {
            self.report.add(node.start, "list-too-long", &|_| {
                told(
                    m::ENTRIES
                        .with("name", name)
                        .with("n", items.len().to_string()),
                    m::AT_MOST.with("n", most.to_string()),
                )
            });
        }
        for item in items.iter().take(most) {
            self.shape(item, one, name);
        }
    }

    fn either(&mut self, node: &Json, choice: &Choice, name: &str) {
        let fits = |shape: &&Shape| match (shape, &node.value) {
            #[cfg(feature = "authoring")]
            (Shape::Count(_), Value::Number(_)) => true,
            (Shape::Player, Value::Number(_))
            | (Shape::Word(_) | Shape::Id, Value::Text(_))
            | (Shape::Point, Value::List(_)) => true,
            (Shape::Object(table), Value::Object(_)) => table
                .fields
                .first()
                .is_some_and(|f| node.get(f.name).is_some()),
            _ => false,
        };
        // An object that names nothing of its own is held against the only one there could be.
        let mut objects = choice
            .shapes
            .iter()
            .filter(|s| matches!(s, Shape::Object(_)));
        let only = match (&node.value, objects.next(), objects.next()) {
            (Value::Object(_), Some(only), None) => Some(only),
            _ => None,
        };
        match choice.shapes.iter().find(fits).or(only) {
            Some(shape) => self.shape(node, shape, name),
            None => {
                self.report.add(node.start, "wrong-type", &|source| {
                    told(is(name, source.shown(node)), is(name, choice.says))
                });
            }
        }
    }

    fn players(&mut self, node: &Json, table: &'static Table) {
        let mut count = 0;
        for member in node.members() {
            if member.key.starts_with("x-") {
                continue;
            }
            count += 1;
            if !matches!(member.key.as_str(), "1" | "2" | "3" | "4" | "5") {
                self.report.add(member.key_at, "no-such-player", &|_| {
                    told(
                        m::NO_PLAYER.with("name", quoted(&member.key)),
                        m::PLAYERS_ARE,
                    )
                });
            }
            self.shape(&member.value, &Shape::Object(table), &member.key);
        }
        let (code, allowed) = match count {
            0 | 1 => ("too-few-players", m::LEAST_TWO),
            2..=5 => return,
            _ => ("too-many-players", m::MOST_FIVE),
        };
        self.report.add(node.start, code, &|_| {
            told(counted(m::COUNT_PLAYERS, count), allowed)
        });
    }

    fn word(&mut self, node: &Json, words: Words, text: &str) {
        if !words.knows(text, self.verb) {
            let verb = self.verb;
            self.report.add(node.start, words.code(), &|_| {
                unknown_word(words, verb, text)
            });
        }
    }
}

/// What to say about a word that is not on its list.
fn unknown_word(words: Words, verb: Option<Verb>, text: &str) -> Told {
    let noun: Said = match (words, verb) {
        (Words::Kind, Some(verb)) => m::KIND_OF.with("verb", verb.name()),
        _ => words.noun().into(),
    };
    let names = words.names(verb);
    let listed: Said = match words {
        Words::Spot => words::spots_in_brief(),
        _ => join(names.iter().map(String::as_str)).into(),
    };
    let told = told(
        m::IS_NOT
            .with("word", quoted(text))
            .with("what", noun.clone()),
        m::IS_ONE_OF.with("what", noun).with("words", listed),
    );
    let other = Verb::ALL
        .into_iter()
        .find(|v| Some(*v) != verb && Kind::parse(*v, text).is_some());
    match (words, other) {
        (Words::Spot, _) if words.knows(&["left ", text].concat(), verb) => {
            told.hint(m::SAY_SIDE.with("word", text))
        }
        (Words::Kind, Some(other)) => told.hint(
            m::IS_KIND_OF
                .with("word", quoted(text))
                .with("verb", other.name()),
        ),
        (Words::Verb, Some(other)) => told.hint(
            m::WRITE_KIND
                .with("verb", other.name())
                .with("word", quoted(text)),
        ),
        _ => {
            let aliases = words.aliases(verb);
            told.meant(nearest(
                text,
                names.iter().chain(&aliases).map(String::as_str),
            ))
        }
    }
}

/// What a field is, or is to be.
fn is(name: &str, what: impl Into<Said>) -> Said {
    m::FIELD_IS.with("name", name).with("what", what)
}

/// What may stand in a field.
fn allowed(shape: &Shape) -> Said {
    let range = |message: Message, from: i32, to: i32| {
        let said = message.with("from", from.to_string());
        said.with("to", to.to_string())
    };
    match shape {
        Shape::Version => VERSION.to_string().into(),
        Shape::Flag => m::FLAG.into(),
        Shape::Number(from, to) => range(m::NUMBER, *from, *to),
        Shape::Seconds(from, to) => range(m::SECONDS, *from, *to),
        Shape::Angle => m::ANGLE.into(),
        #[cfg(feature = "authoring")]
        Shape::Count(to) => m::WHOLE.with("to", to.to_string()),
        Shape::Player => m::PLAYER_NUMBER.into(),
        Shape::Defender => m::DEFENDER.into(),
        Shape::Text(_) => m::TEXT.into(),
        Shape::Id => m::SHORT_NAME.into(),
        Shape::Word(words) => m::QUOTED.with("what", words.noun()),
        Shape::Point => m::POINT.into(),
        Shape::Object(table) => m::GROUP.with("what", table.what),
        Shape::Either(choice) => choice.says.into(),
        Shape::OneOrMore(one) => m::OR_LIST.with("what", allowed(one)),
        Shape::List(one, ..) => m::LIST.with("what", allowed(one)),
        Shape::Players(_) => m::PLAYERS.into(),
    }
}

/// How many of something the set has.
pub(super) fn counted(what: Message, count: usize) -> Said {
    m::SET_HAS.with("count", what.with("n", count.to_string()))
}

/// Words with commas between.
pub(super) fn join<'a>(words: impl Iterator<Item = &'a str>) -> String {
    let mut out = String::new();
    for word in words {
        if !out.is_empty() {
            out.push_str(", ");
        }
        out.push_str(word);
    }
    out
}

fn in_range(n: f64, from: i32, to: i32) -> bool {
    (f64::from(from)..=f64::from(to)).contains(&n)
}

/// `n` where it is a whole number of a size that a set can contain.
pub(super) fn whole(n: f64) -> Option<i32> {
    // The cast saturates, so whatever is too large or has a fraction does not come back the same.
    let cast = n as i32;
    (f64::from(cast) == n).then_some(cast)
}

/// The number of a defender, written `X3`.
pub(super) fn defender(text: &str) -> Option<u8> {
    match text.as_bytes() {
        [b'X' | b'x', digit @ b'1'..=b'5'] => Some(digit - b'0'),
        _ => None,
    }
}
