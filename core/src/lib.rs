//! Backcut turns a written basketball set play into something that moves truthfully.
#![no_std]
#![forbid(unsafe_code)]
extern crate alloc;
#[cfg(any(test, feature = "std"))]
extern crate std;

pub mod athlete;
pub mod choreography;
pub mod court;
pub mod defence;
pub mod document;
pub mod fault;
pub mod findings;
pub mod flight;
pub mod guard;
pub mod looks;
pub mod math;
pub mod motion;
pub mod path;
pub mod play;
pub mod scene;
pub mod set;
pub mod strip;
pub mod svg;
pub mod timeline;
pub mod timing;
pub mod words;
