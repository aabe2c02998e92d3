//! An instant costs no memory: a page asks for one sixty times a second.
//!
//! Its own program, for it counts what the whole process takes from the allocator.
#![allow(unsafe_code, reason = "an allocator cannot be written without")]
#![allow(clippy::unwrap_used, reason = "a test stops at what it cannot read")]

use backcut::play::{Options, Play};
use backcut::set::PlayerId;
use backcut::timeline::Frame;
use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;
use std::hint::black_box;

thread_local! {
    static TAKEN: Cell<usize> = const { Cell::new(0) };
}

/// The system's allocator, counting by thread: the test harness has threads of its own.
struct Counting;

fn count() {
    // A thread that is ending has lost its count, and needs none.
    let _ = TAKEN.try_with(|taken| taken.set(taken.get() + 1));
}

// SAFETY: every call goes to the system's allocator as it came.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        count();
        // SAFETY: the caller's promise.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, place: *mut u8, layout: Layout) {
        // SAFETY: the caller's promise.
        unsafe { System.dealloc(place, layout) }
    }

    unsafe fn realloc(&self, place: *mut u8, layout: Layout, size: usize) -> *mut u8 {
        count();
        // SAFETY: the caller's promise.
        unsafe { System.realloc(place, layout, size) }
    }
}

#[global_allocator]
static ALLOCATOR: Counting = Counting;

fn taken(act: impl FnOnce()) -> usize {
    let before = TAKEN.get();
    act();
    TAKEN.get() - before
}

fn demo_sets() -> impl Iterator<Item = Play> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../web-demo/sets");
    std::fs::read_dir(folder).unwrap().map(|entry| {
        let text = std::fs::read(entry.unwrap().path()).unwrap();
        Play::open(&text, &Options::default()).unwrap()
    })
}

#[test]
fn the_count_sees_a_single_box() {
    assert_eq!(taken(|| drop(black_box(Box::new(1_u64)))), 1);
}

#[test]
fn an_instant_takes_nothing_from_the_allocator() {
    for play in demo_sets() {
        let timeline = play.timeline();
        let mut frame = Frame::default();
        let taken = taken(|| {
            // From before the start to past the end.
            for i in -60..=1200 {
                let t = f64::from(i) / 60.0;
                timeline.frame(t, &mut frame);
                black_box(&frame);
                black_box(timeline.ball(t));
                for who in PlayerId::ALL {
                    black_box(timeline.player(who, t));
                }
            }
        });
        assert_eq!(taken, 0, "{}", play.set().title);
    }
}
