//! Backcut turns a written basketball set play into something that moves truthfully.
//!
//! A set file says who does what, off whose screen, in which order; nobody writes a clock time.
//! This crate finds out when everything can happen and says where everybody and the ball are at any
//! instant, natively and in wasm with the same bits.
//!
//! ```
//! use backcut::play::{Options, Play};
//! use backcut::set::PlayerId;
//!
//! let text = br#"{ "backcut": 1, "title": "Give and go", "players": {
//!     "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
//!   "beats": [ { "actions": [
//!     {"who": 1, "do": "pass", "to": 2},
//!     {"who": 1, "do": "cut", "kind": "basket"},
//!     {"who": 2, "do": "pass", "kind": "bounce", "to": 1},
//!     {"who": 1, "do": "shot", "kind": "layup"} ] } ] }"#;
//! let play = Play::open(text, &Options::default())?;
//! let end = play.timeline().duration();
//! let one = PlayerId::new(1).and_then(|p| play.timeline().player(p, end)).unwrap();
//! assert!(one.x.hypot(one.y) < 1.0, "1 ends at the ring");
//! # Ok::<(), backcut::fault::Faults>(())
//! ```
//!
//! # Stages
//!
//! [`document`] reads a file into a [`set`]; [`choreography`] lays it on a [`court`]; [`timing`]
//! schedules it with the laws of [`motion`] and [`flight`]; a [`timeline`] answers for any instant.
//! On that stand [`defence`] and [`looks`], reads with [`branch`] and [`choice`], [`findings`], [`words`], [`strip`] and [`scene`], which
//! [`svg`] paints. [`play`] is the facade over all of them.
//!
//! # Frame
//!
//! ```text
//!          end line
//!   ┌────────┬─────┬────────┐      origin: the floor under the centre of the ring
//!   │        │  o→ x        │      x: to the offence's right as it faces the ring
//!   │        │  ↓  │        │      y: from the ring toward half court
//!   │        │  y  │        │      z: up
//!   │        └─────┘        │      facing 0 looks at −y (the ring), growing clockwise here
//! ```
//!
//! Metres, seconds, radians; anything else is in the name.
//!
//! # What it does not do
//!
//! Full court, rebounds, fouls as facts (a call is the referee's), shooting percentages. Calls and
//! reads are likely, never certain: five real defenders choose.
#![no_std]
#![forbid(unsafe_code)]
extern crate alloc;
#[cfg(any(test, feature = "std"))]
extern crate std;

pub mod athlete;
#[cfg(feature = "authoring")]
pub mod branch;
#[cfg(feature = "authoring")]
pub mod card;
#[cfg(feature = "authoring")]
pub mod choice;
pub mod choreography;
pub mod court;
pub mod defence;
pub mod document;
pub mod fault;
#[cfg(feature = "authoring")]
pub mod film;
pub mod findings;
pub mod flight;
pub mod guard;
pub mod link;
pub mod looks;
pub mod math;
pub mod motion;
pub mod path;
pub mod play;
#[cfg(feature = "authoring")]
pub mod quiz;
pub mod scene;
pub mod set;
pub mod spelling;
#[cfg(feature = "authoring")]
pub mod stops;
pub mod strip;
pub mod svg;
pub mod timeline;
pub mod timing;
pub mod voice;
pub mod words;
