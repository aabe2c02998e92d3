//! A set as the text of a set file, in one form: fields in the order of the tables, only what
//! differs from what is understood anyway, an action a line.

mod action;
mod out;

use super::VERSION;
use super::words::SIDES;
use crate::court::Side;
#[cfg(feature = "authoring")]
use crate::set::SlowEnd;
use crate::set::{
    Beat, Condition, Coverage, Deed, Defence, Directive, Player, PlayerId, Read, ReadInstant, Set,
};
use action::{place, players};
use alloc::format;
use alloc::string::{String, ToString};
use out::Out;
#[cfg(feature = "schema")]
pub(super) use out::quote;

/// The text of `set`. Reading it gives the same set again, the places in the file aside.
///
/// ```
/// let text = r#"{"backcut":1,"title":"Keep away","players":{"1":{"at":"top","ball":true},
///     "2":{"at":"left wing"}},"beats":[{"actions":[{"to":2,"who":1,"do":"pass"}]}]}"#;
/// let set = backcut::document::read(text.as_bytes())?;
/// let written = backcut::document::write(&set);
/// assert!(written.contains(r#"{"who": 1, "do": "pass", "to": 2}"#));
/// assert_eq!(backcut::document::write(&backcut::document::read(written.as_bytes())?), written);
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[must_use]
pub fn write(set: &Set) -> String {
    let mut out = Out::new(&set.extras);
    out.scopes.push(&set.beats);
    out.block(&mut |out| {
        out.number("backcut", f64::from(VERSION));
        heading(out, set);
        out.field("players", &mut |out| {
            out.block(&mut |out| {
                for each in &set.players {
                    out.field(&each.id.number().to_string(), &mut |out| player(out, each));
                }
            });
        });
        out.field("beats", &mut |out| out.lines(&set.beats, beat));
        if !set.reads.is_empty() {
            out.field("reads", &mut |out| out.lines(&set.reads, read));
        }
        footing(out, set);
    });
    out.text.push('\n');
    out.text
}

fn heading(out: &mut Out<'_>, set: &Set) {
    out.word("title", &set.title);
    out.text("about", set.about.as_deref());
    out.text("use", set.when.as_deref());
    if !set.points.is_empty() {
        out.field("points", &mut |out| {
            out.lines(&set.points, |out, p| out.quoted(p));
        });
    }
    out.text("credit", set.credit.as_deref());
    if !set.tags.is_empty() {
        out.field("tags", &mut |out| {
            out.list(&set.tags, |out, t| out.quoted(t));
        });
    }
    out.word("court", set.court.name());
    out.word("level", set.level.name());
}

fn footing(out: &mut Out<'_>, set: &Set) {
    if set.defence != Defence::default() {
        out.field("defence", &mut |out| defence(out, &set.defence));
    }
    #[cfg(feature = "authoring")]
    if !set.slow.is_empty() {
        out.field("slow", &mut |out| {
            out.list(&set.slow, |out, slow| {
                out.object(&mut |out| {
                    out.field("from", &mut |out| slow_end(out, &slow.from));
                    out.field("to", &mut |out| slow_end(out, &slow.to));
                    out.number("rate", slow.rate);
                });
            });
        });
    }
    if !set.film.is_empty() {
        out.field("film", &mut |out| {
            out.list(&set.film, |out, mark| {
                out.object(&mut |out| {
                    out.number("t", mark.t);
                    out.number("film", mark.film);
                });
            });
        });
    }
}

#[cfg(feature = "authoring")]
fn slow_end(out: &mut Out<'_>, end: &SlowEnd) {
    match end {
        SlowEnd::Beat(n) => out.value(f64::from(*n)),
        SlowEnd::Instant(at) => instant(out, at),
    }
}

fn player(out: &mut Out<'_>, player: &Player) {
    out.object(&mut |out| {
        out.field("at", &mut |out| place(out, &player.at));
        out.flag("ball", player.ball);
        if let Some(facing) = player.facing {
            out.number("facing", facing);
        }
        out.text("level", player.level.map(|l| l.name()));
    });
}

fn beat(out: &mut Out<'_>, beat: &Beat) {
    out.object(&mut |out| {
        out.text("title", beat.title.as_deref());
        out.text("say", beat.say.as_deref());
        out.field("actions", &mut |out| {
            out.lines(&beat.actions, action::action);
        });
    });
}

fn read<'s>(out: &mut Out<'s>, read: &'s Read) {
    out.object(&mut |out| {
        out.text("title", read.title.as_deref());
        out.field("at", &mut |out| instant(out, &read.at));
        out.field("by", &mut |out| players(out, &read.by));
        out.field("if", &mut |out| condition(out, &read.condition));
        out.scopes.push(&read.beats);
        out.field("beats", &mut |out| out.lines(&read.beats, beat));
        if !read.reads.is_empty() {
            out.field("reads", &mut |out| out.lines(&read.reads, self::read));
        }
        out.scopes.pop();
    });
}

fn instant(out: &mut Out<'_>, instant: &ReadInstant) {
    out.object(&mut |out| {
        out.word("id", &instant.action);
        out.word("edge", instant.edge.name());
        if let Some(of) = instant.of {
            out.field("of", &mut |out| out.player(of));
        }
    });
}

fn condition(out: &mut Out<'_>, condition: &Condition) {
    out.object(&mut |out| match condition {
        Condition::Coverage(c) => out.word("coverage", c.name()),
        Condition::Does { who, does, side } => {
            defender(out, *who);
            out.word("does", deed(*does));
            out.text("side", side.map(side_name));
        }
        Condition::Separation { who, under } => {
            defender(out, *who);
            out.number("under", *under);
        }
        Condition::LaneClosed { from, to } => {
            out.word("lane", "closed");
            out.field("from", &mut |out| out.player(*from));
            out.field("to", &mut |out| out.player(*to));
        }
    });
}

fn defence(out: &mut Out<'_>, defence: &Defence) {
    out.object(&mut |out| {
        out.text("all", defence.all.map(Coverage::name));
        if !defence.on.is_empty() {
            out.field("on", &mut |out| out.lines(&defence.on, directive));
        }
    });
}

fn directive(out: &mut Out<'_>, directive: &Directive) {
    out.object(&mut |out| {
        out.word("id", &directive.action);
        defender(out, directive.who);
        out.word("does", deed(directive.does));
        out.text("side", directive.side.map(side_name));
    });
}

fn defender(out: &mut Out<'_>, own_man: PlayerId) {
    out.word("who", &format!("X{}", own_man.number()));
}

fn deed(deed: Deed) -> &'static str {
    Deed::TABLE.iter().find(|r| r.0 == deed).map_or("", |r| r.1)
}

fn side_name(side: Side) -> &'static str {
    SIDES.iter().find(|s| s.1 == side).map_or("", |s| s.0)
}
