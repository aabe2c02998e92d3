//! The native tool of Backcut.

fn main() {}
