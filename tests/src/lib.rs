//! Cross-crate tests of Backcut; nothing here is published.

pub mod source;
