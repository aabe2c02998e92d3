//! What a coder knows of set files before it has seen one.
//!
//! The text is in the form in which sets are written: the fields in their order, every kind, most
//! spots, and the English that coaches use. No sentence of a demo set is in it, so what those weigh
//! in a link says something about other sets. Frozen with the version of the link: another text,
//! however much better, belongs to another version.

use super::model::Model;

/// The dictionary of version 1.
pub(super) const TEXT: &str = include_str!("dictionary-1.txt");

/// A model that has read the dictionary.
pub(super) fn model() -> Model {
    let mut model = Model::new();
    model.prime(TEXT);
    model
}
