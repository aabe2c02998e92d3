use super::fixture::{Played, breakwater, p, turnstile};
use super::*;
use crate::math::{BezPath, PathEl, Point, distance};
use crate::set::{Edge, Verb};
use crate::voice::{Units, Voice};
use alloc::vec::Vec;
use proptest::prelude::*;

fn staged(played: &Played) -> Staged<'_> {
    Staged {
        timeline: &played.timeline,
        set: &played.set,
        court: &played.court,
    }
}

fn drawn(played: &Played, t: f64, view: &View) -> Scene {
    picture(&staged(played), None, t, view)
}

/// Role and width of all strokes that start at a place of the floor.
fn from(scene: &Scene, played: &Played, view: &View, at: Point) -> Vec<(Role, f64)> {
    let at = view.camera(&played.court).px(at);
    let starts = |path: &BezPath| matches!(path.elements().first(), Some(PathEl::MoveTo(p)) if distance(*p, at) < 0.01);
    scene
        .items
        .iter()
        .filter_map(|item| match item {
            Item::Stroke {
                path, role, width, ..
            } if starts(path) => Some((*role, *width)),
            _ => None,
        })
        .collect()
}

fn state(played: &Played, who: u8, t: f64) -> Point {
    let m = played.timeline.player(p(who), t).unwrap();
    Point::new(m.x, m.y)
}

#[test]
fn the_followed_have_a_second_contour_that_greyscale_keeps() {
    let played = turnstile();
    let mut view = View::new(760.0);
    view.show_trails = false;
    let contours = |view: &View| {
        let scene = drawn(&played, 6.6, view);
        let follow = |i: &&Item| {
            matches!(
                i,
                Item::Stroke {
                    role: Role::Follow,
                    ..
                }
            )
        };
        scene.items.iter().filter(follow).count()
    };
    assert_eq!(contours(&view), 0);
    view.follow[2] = true;
    view.follow[3] = true;
    assert_eq!(contours(&view), 2);
}

#[test]
fn a_trail_is_full_for_a_second_after_its_run_and_then_faint() {
    let played = turnstile();
    let view = View::new(760.0);
    let cut = played.action(1, Verb::Cut, 0);
    let start = state(&played, 1, cut.start);
    let at = |t| from(&drawn(&played, t, &view), &played, &view, start);
    let middle = 0.5 * (cut.start + cut.end);
    assert_eq!(at(middle), [(Role::Faint, 1.5), (Role::Ink, 2.4)]);
    assert_eq!(at(cut.end + 0.9), [(Role::Ink, 2.4)]);
    assert_eq!(at(cut.end + 1.1), [(Role::Faint, 1.5)]);
}

#[test]
fn what_comes_is_shown_from_a_second_and_a_half_before() {
    let played = turnstile();
    let view = View::new(400.0);
    let starts = played.action(3, Verb::Cut, 0).start;
    let start = state(&played, 3, starts);
    let at = |t| from(&drawn(&played, t, &view), &played, &view, start);
    assert_eq!(at(starts - 1.6), []);
    assert_eq!(at(starts - 1.4), [(Role::Faint, 1.2)]);
}

#[test]
fn the_others_are_dimmed_where_somebody_is_followed() {
    let played = turnstile();
    let mut view = View::new(760.0);
    view.follow[1] = true;
    let cut = played.action(1, Verb::Cut, 0);
    let start = state(&played, 1, cut.start);
    let scene = drawn(&played, 0.5 * (cut.start + cut.end), &view);
    let strokes = from(&scene, &played, &view, start);
    assert!(!strokes.is_empty() && strokes.iter().all(|s| s.0 == Role::Faint));
}

#[test]
fn a_screen_has_its_bar_only_while_it_stands() {
    let played = turnstile();
    let mut view = View::new(760.0);
    view.show_trails = false;
    let bars = |t| {
        let mut out = Scene::default();
        movers(&staged(&played), None, t, &view, &mut out);
        let bar = |i: &&Item| matches!(i, Item::Stroke { role: Role::Ink, round: false, width, .. } if *width > 3.0);
        out.items.iter().filter(bar).count()
    };
    let gate = played.action(5, Verb::Screen, 0);
    let other = played.action(4, Verb::Screen, 1);
    let sets = [gate, other].map(|g| g.at(Edge::Set).unwrap());
    assert_eq!(bars(sets[0].min(sets[1]) - 0.02), 0);
    assert_eq!(bars(sets[0].max(sets[1]) + 0.02), 2);
    assert_eq!(bars(gate.end.max(other.end) + 0.02), 0);
}

#[test]
fn the_ball_never_jumps_where_it_changes_hands() {
    let played = turnstile();
    let mut view = View::new(358.0);
    view.inset = false;
    let ball = |t| {
        let scene = drawn(&played, t, &view);
        let item = scene.items.iter().rfind(|i| {
            matches!(
                i,
                Item::Fill {
                    role: Role::Ball,
                    ..
                }
            )
        });
        match item {
            Some(Item::Fill { path, .. }) => match path.elements()[0] {
                PathEl::MoveTo(p) => p,
                _ => Point::ZERO,
            },
            _ => Point::ZERO,
        }
    };
    for span in played.timeline.ball_spans() {
        let t = span.end;
        assert!(distance(ball(t - 1e-6), ball(t + 1e-6)) < 0.05, "at {t}");
    }
}

#[test]
fn a_close_up_opens_only_on_small_courts_and_clear_of_what_it_shows() {
    let played = breakwater();
    let given = played.time(5, Verb::Handoff, 0, Edge::Release);
    let beat = played.timeline.beat_at(given);
    let close = |width| {
        let view = View::new(width);
        close_up(&played.timeline, &played.set, &played.court, &view, beat).map(|c| (c, view))
    };
    assert!(close(760.0).is_none());
    let (close, view) = close(358.0).unwrap();
    let camera = view.camera(&played.court);
    assert!(!close.area.is_near(camera.px(close.middle), 20.0));
    assert!(close.area.x >= 0.0 && close.area.x + close.area.width <= 358.0);
    // Looking at it fills the court with it, at true scale.
    let look = View {
        look_at: Some(close.middle),
        ..view
    };
    assert!((look.enlargement(&played.court, 0.52) - 1.0).abs() < 1e-12);
    let middle = look.camera(&played.court).px(close.middle);
    assert!((middle.x - 179.0).abs() < 1e-9);
}

#[test]
fn looking_closely_keeps_the_pictures_size_and_shows_all_that_the_inset_shows() {
    let played = breakwater();
    for width in [358.0, 600.0] {
        let whole = View::of(&played.timeline, &played.court, width);
        let look = View {
            look_at: Some(Point::new(2.0, 5.0)),
            ..whole
        };
        let height = look.height_px(&played.court);
        assert!((height - whole.height_px(&played.court)).abs() < 1e-9);
        let scale = look.scale(&played.court);
        assert!(scale > 2.0 * whole.scale(&played.court));
        assert!(scale * 103.0 / 44.0 <= width + 1e-9 && scale * 82.0 / 44.0 <= height + 1e-9);
        let says = |view: &View| {
            let items = court(&played.court, view).items;
            let half = |i: &Item| matches!(i, Item::Text { text, .. } if text == "0.5 m");
            items.iter().filter(|i| half(i)).count()
        };
        assert_eq!((says(&whole), says(&look)), (0, 1));
    }
}

#[test]
fn the_moving_layer_reuses_its_room() {
    let played = turnstile();
    let view = View::new(760.0);
    let mut out = Scene::default();
    movers(&staged(&played), None, 1.0, &view, &mut out);
    let first = out.clone();
    movers(&staged(&played), None, 1.0, &view, &mut out);
    assert_eq!(out, first);
}

#[test]
fn a_folded_strip_shows_the_followed_and_the_ball() {
    let played = turnstile();
    let data = crate::strip::build(&played.timeline, &played.set);
    let mut view = StripView {
        width_px: 356.0,
        folded: true,
        ..StripView::default()
    };
    view.follow[2] = true;
    let rows = StripGeometry::of(&data, &view).rows;
    assert_eq!(
        rows.iter().map(|r| r.who).collect::<Vec<_>>(),
        [Some(p(3)), None]
    );
    view.folded = false;
    assert_eq!(StripGeometry::of(&data, &view).rows.len(), 6);
}

#[test]
fn what_is_past_and_to_come_lie_in_the_same_places() {
    let played = turnstile();
    let data = crate::strip::build(&played.timeline, &played.set);
    let mut view = StripView {
        width_px: 720.0,
        ..StripView::default()
    };
    let shapes = |scene: &Scene| {
        let shape = |i: &Item| match i {
            Item::Fill { path, .. } | Item::Stroke { path, .. } => Some(path.clone()),
            _ => None,
        };
        scene.items.iter().map(shape).collect::<Vec<_>>()
    };
    let past = strip(&data, None, &view);
    view.to_come = true;
    let to_come = strip(&data, None, &view);
    assert_eq!(shapes(&past), shapes(&to_come));
    assert_ne!(past, to_come);
}

#[test]
fn a_beat_without_a_name_is_counted() {
    let mut played = turnstile();
    played.set.beats[1].title = None;
    let data = crate::strip::build(&played.timeline, &played.set);
    let named = |voice: Voice| {
        let view = StripView {
            width_px: 720.0,
            voice,
            ..StripView::default()
        };
        let named = |name: &str| {
            let is = |i: &Item| matches!(i, Item::Text { text, .. } if text == name);
            strip(&data, None, &view).items.iter().any(is)
        };
        (named("Beat 2"), named("Fase 2"))
    };
    assert_eq!(named(Voice::ENGLISH), (true, false));
    assert_eq!(named(Voice::new("es", Units::Courts)), (false, true));
}

#[test]
fn the_key_shows_only_marks_that_the_set_uses() {
    let words = |played: &Played| {
        let text = |i: &Item| match i {
            Item::Text { text, .. } => Some(text.clone()),
            _ => None,
        };
        key(&played.set, 300.0, Voice::ENGLISH)
            .items
            .iter()
            .filter_map(text)
            .collect::<Vec<_>>()
    };
    assert_eq!(
        words(&turnstile()),
        ["cut", "pass", "dribble", "screen", "shot", "waits"]
    );
    assert_eq!(
        words(&breakwater()),
        ["cut", "dribble", "screen", "hand-off", "waits"]
    );
}

fn finite(path: &BezPath) -> bool {
    path.elements().iter().all(|el| el.is_finite())
}

proptest! {
    #[test]
    fn prop_every_number_of_a_picture_is_finite(
        t in -5.0..20.0_f64, width in 0.0..3000.0_f64, follow in any::<[bool; 5]>(), print: bool,
        x in -9.0..9.0_f64, look: bool,
    ) {
        for played in [turnstile(), breakwater()] {
            let mut view = View::of(&played.timeline, &played.court, width);
            view.follow = follow;
            view.print = print;
            view.look_at = look.then(|| Point::new(x, 3.0));
            let mut scenes: Vec<Scene> = Vec::from([drawn(&played, t, &view)]);
            scenes.push(beat(&played.timeline, &played.set, &played.court, 1, &view));
            let data = crate::strip::build(&played.timeline, &played.set);
            scenes.push(strip(&data, None, &StripView { width_px: width, follow, ..StripView::default() }));
            for item in scenes.iter().flat_map(|s| &s.items) {
                match item {
                    Item::Fill { path, .. } => prop_assert!(finite(path)),
                    Item::Stroke { path, width, .. } => prop_assert!(finite(path) && *width > 0.0),
                    Item::Text { at, .. } => prop_assert!(at.is_finite()),
                    Item::Clip(_) | Item::Unclip => {}
                }
            }
        }
    }

    #[test]
    fn prop_the_strips_ruler_reads_both_ways(u in 0.0..1.0_f64, width in 100.0..2000.0_f64) {
        let played = turnstile();
        let data = crate::strip::build(&played.timeline, &played.set);
        let view = StripView { width_px: width, ..StripView::default() };
        let geometry = StripGeometry::of(&data, &view);
        let t = u * played.timeline.duration();
        prop_assert!((geometry.t(geometry.x(t)) - t).abs() < 1e-9);
    }
}

#[cfg(feature = "authoring")]
#[test]
fn instants_of_the_followed_stand_on_their_ways_with_the_seconds() {
    let played = turnstile();
    let told = |follow: &[usize], t: f64| {
        let mut view = View::new(760.0);
        for who in follow {
            view.follow[*who] = true;
        }
        let mut scene = Scene::default();
        movers(&staged(&played), None, t, &view, &mut scene);
        let numbers = scene.items.iter().filter_map(|item| match item {
            Item::Text { text, .. } if text.contains('.') => Some(text.clone()),
            _ => None,
        });
        numbers.collect::<Vec<_>>()
    };
    let cut = played.action(2, Verb::Cut, 0);
    let t = cut.start + 0.1;
    let seconds = |t: f64| Voice::default().number(t, 1);
    assert!(told(&[], t).is_empty());
    let two = told(&[1], t);
    for edge in [Edge::Plant, Edge::Cue] {
        let at = cut.at(edge).unwrap();
        assert!(two.contains(&seconds(at)), "{edge:?} {two:?}");
    }
    // Each has their own, and 1 throws what 2 catches.
    let caught = played.time(1, Verb::Pass, 0, Edge::Catch);
    let t = played.time(1, Verb::Pass, 0, Edge::Start) + 0.1;
    assert!(told(&[1], t).contains(&seconds(caught)));
    assert!(!told(&[3], t).contains(&seconds(caught)));
    assert!(told(&[1, 3], t).len() >= told(&[1], t).len());
}

/// Places of the rings and ends of the ties that are drawn in the colour of who is followed.
fn followed_in_strip(scene: &Scene) -> (Vec<Point>, Vec<Point>) {
    let first = |path: &BezPath| match path.elements().first() {
        Some(PathEl::MoveTo(p)) => *p,
        _ => panic!("no start"),
    };
    let strokes = |w: f64| {
        let own = scene.items.iter().filter_map(move |item| match item {
            Item::Stroke {
                path,
                role: Role::Follow,
                width,
                ..
            } if (*width - w).abs() < 1e-9 => Some(first(path)),
            _ => None,
        });
        own.collect()
    };
    (strokes(1.6), strokes(1.2))
}

#[test]
fn the_strip_marks_instants_and_ties_of_the_followed_and_of_nobody_else() {
    let played = turnstile();
    let data = crate::strip::build(&played.timeline, &played.set);
    let drawn = |who: Option<u8>, holds_up: bool| {
        let mut view = StripView {
            width_px: 720.0,
            holds_up,
            ..StripView::default()
        };
        if let Some(n) = who {
            view.follow[p(n).index()] = true;
        }
        let rings = followed_in_strip(&strip(&data, None, &view));
        (rings, StripGeometry::of(&data, &view))
    };
    assert_eq!(drawn(None, false).0, (Vec::new(), Vec::new()));
    let mut ties = 0;
    for row in &data.rows {
        let n = row.who.number();
        let ((rings, own), geometry) = drawn(Some(n), false);
        let y = geometry.row(row.who).unwrap();
        // Shots are drawn as fine as rings.
        let ringed = |t: &f64| {
            let x = geometry.x(*t);
            rings.iter().any(|ring| (ring.x - x).abs() < 4.0)
        };
        assert!(row.instants.iter().all(ringed), "{n}");
        assert!(rings.iter().all(|ring| (ring.y - y).abs() < 11.5), "{n}");
        let theirs = |s: &&crate::strip::Slur| s.from == row.who || s.to == row.who;
        assert_eq!(own.len(), data.slurs.iter().filter(theirs).count(), "{n}");
        ties += own.len();
        // Ink says there what holds the set up.
        assert_eq!(drawn(Some(n), true).0.1, Vec::new());
    }
    // Each lies between two.
    assert_eq!(ties, 2 * data.slurs.len());
    let catch = played.time(1, Verb::Pass, 0, Edge::Catch);
    let catches = data.rows.iter().filter(|row| row.instants.contains(&catch));
    assert_eq!(catches.count(), 1);
}
