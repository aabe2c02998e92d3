//! What stands in a message beside its words, so that each is one string: tables of pieces with their
//! pointers took twice the bytes on the wire. The build script writes these marks.

/// A part comes: its name, up to [`NAMED`].
pub(crate) const PART: char = '\u{1}';
/// A choice comes: the name of the part it goes by, up to [`NAMED`], then its cases, then [`END`].
pub(crate) const CHOICE: char = '\u{2}';
/// Ends a name: of a part, of a case, of a form.
pub(crate) const NAMED: char = '\u{3}';
/// Ends a case, which is its name and its words.
pub(crate) const CASE: char = '\u{4}';
/// Ends a choice.
pub(crate) const END: char = '\u{5}';
/// Ends a form, which is its name and its words.
pub(crate) const FORM: char = '\u{6}';
