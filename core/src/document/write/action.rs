//! Actions, places and ties as text.

use super::Out;
use crate::document::words::{OFF_SIDES, SIDES};
use crate::set::{
    Action, Edge, Off, OffSide, PlayerId, Scope, SetPlace, Target, Tie, TieRelation, Via,
};
use alloc::vec::Vec;

pub(super) fn action(out: &mut Out<'_>, action: &Action) {
    out.object(&mut |out| {
        out.text("id", action.id.as_deref());
        out.field("who", &mut |out| players(out, &action.who));
        out.word("do", action.verb.name());
        out.text("kind", action.kind.map(|k| k.row().name));
        match &action.to {
            Some(Target::Place(to)) => out.field("to", &mut |out| place(out, to)),
            Some(Target::Player(to)) => out.field("to", &mut |out| out.player(*to)),
            None => {}
        }
        if let Some(at) = &action.at {
            out.field("at", &mut |out| place(out, at));
        }
        if !action.via.is_empty() {
            out.field("via", &mut |out| out.list(&action.via, via));
        }
        if !action.for_whom.is_empty() {
            out.field("for", &mut |out| players(out, &action.for_whom));
        }
        if !action.off.is_empty() {
            out.field("off", &mut |out| {
                out.one_or_more(&action.off, |out, o| match o.side {
                    None if !out.is_noted() => out.player(o.who),
                    _ => off(out, o, "who"),
                });
            });
        }
        out.text("side", action.side.map(off_side));
        out.text("pace", action.pace.map(|p| p.name()));
        if let Some(takes) = action.takes {
            out.number("takes", takes);
        }
        ties(out, action, "after", TieRelation::After);
        ties(out, action, "with", TieRelation::With);
        out.flag("free", action.free);
        out.text("say", action.say.as_deref());
        out.text("of", action.of.map(|v| v.name()));
    });
}

pub(super) fn players(out: &mut Out<'_>, who: &[PlayerId]) {
    out.one_or_more(who, |out, p| out.player(*p));
}

pub(super) fn place(out: &mut Out<'_>, place: &SetPlace) {
    match place {
        SetPlace::Spot { spot, dx, dy } if *dx == 0.0 && *dy == 0.0 && !out.is_noted() => {
            out.quoted(&spot.title());
        }
        SetPlace::Spot { spot, dx, dy } => out.object(&mut |out| {
            out.word("spot", &spot.title());
            out.number("dx", *dx);
            out.number("dy", *dy);
        }),
        SetPlace::Point { x, y } => out.list(&[*x, *y], |out, n| out.value(*n)),
        SetPlace::Beside(beside) => out.object(&mut |out| {
            out.field("beside", &mut |out| out.player(beside.who));
            out.text(
                "side",
                SIDES.iter().find(|s| s.1 == beside.side).map(|s| s.0),
            );
            out.number("gap", beside.gap);
        }),
    }
}

fn via(out: &mut Out<'_>, via: &Via) {
    match via {
        Via::Place(p) => place(out, p),
        Via::Off(o) => off(out, o, "off"),
    }
}

fn off(out: &mut Out<'_>, off: &Off, name: &str) {
    out.object(&mut |out| {
        out.field(name, &mut |out| out.player(off.who));
        out.text("side", off.side.map(off_side));
    });
}

fn off_side(side: OffSide) -> &'static str {
    OFF_SIDES.iter().find(|s| s.1 == side).map_or("", |s| s.0)
}

fn ties(out: &mut Out<'_>, action: &Action, name: &str, relation: TieRelation) {
    // A tie to an action without a name cannot be written; no file holds one.
    let ties: Vec<(&Tie, &str)> = action
        .ties
        .iter()
        .filter(|t| t.relation == relation)
        .filter_map(|t| Some((t, name_of(out, t)?)))
        .collect();
    if !ties.is_empty() {
        out.field(name, &mut |out| {
            out.one_or_more(&ties, |out, (t, id)| tie(out, t, id));
        });
    }
}

fn name_of<'s>(out: &Out<'s>, tie: &Tie) -> Option<&'s str> {
    let index = match tie.scope {
        Scope::Main => 0,
        Scope::Read(up) => out.scopes.len().checked_sub(1 + usize::from(up))?,
    };
    let beat = out.scopes.get(index)?.get(usize::from(tie.to.beat))?;
    beat.actions.get(usize::from(tie.to.action))?.id.as_deref()
}

fn tie(out: &mut Out<'_>, tie: &Tie, id: &str) {
    let usual = match tie.relation {
        TieRelation::After => Edge::End,
        TieRelation::With => Edge::Start,
    };
    let plain = tie.edge == usual && tie.mine == Edge::Start && tie.of.is_none() && tie.lag == 0.0;
    if plain && !out.is_noted() {
        return out.quoted(id);
    }
    out.object(&mut |out| {
        out.word("id", id);
        if tie.edge != usual {
            out.word("edge", tie.edge.name());
        }
        if let Some(of) = tie.of {
            out.field("of", &mut |out| out.player(of));
        }
        if tie.lag != 0.0 {
            out.number("lag", tie.lag);
        }
        if tie.mine != Edge::Start {
            out.word("mine", tie.mine.name());
        }
    });
}
