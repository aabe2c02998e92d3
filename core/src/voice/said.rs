//! Something to say that is put into words once it is known in which voice.

use super::Voice;
use super::message::{Message, Text};
use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

/// A message with its parts, not yet in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said(Box<Inner>);

#[derive(Clone, Debug, PartialEq, Eq)]
enum Inner {
    /// What is the same in every language.
    Plain(String),
    Filled(Message, Vec<(&'static str, Said)>),
}

impl Said {
    /// In words.
    #[must_use]
    pub fn told(&self, voice: Voice) -> String {
        match &*self.0 {
            Inner::Plain(text) => text.clone(),
            Inner::Filled(message, parts) => {
                let told: Vec<(&str, String)> = parts
                    .iter()
                    .map(|(name, part)| (*name, part.told(voice)))
                    .collect();
                let parts: Vec<(&str, &str)> = told.iter().map(|p| (p.0, p.1.as_str())).collect();
                voice.fill(*message, &parts)
            }
        }
    }

    /// With one more part.
    pub(crate) fn with(mut self, name: &'static str, part: impl Into<Self>) -> Self {
        if let Inner::Filled(_, parts) = &mut *self.0 {
            parts.push((name, part.into()));
        }
        self
    }
}

/// In English.
impl fmt::Display for Said {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.told(Voice::ENGLISH))
    }
}

impl Message {
    pub(crate) fn with(self, name: &'static str, part: impl Into<Said>) -> Said {
        Said(Box::new(Inner::Filled(self, Vec::new()))).with(name, part)
    }
}

impl From<Text> for Said {
    fn from(text: Text) -> Self {
        Self(Box::new(Inner::Filled(text.into(), Vec::new())))
    }
}

/// What is no sentence: a name, a number, a word of the file.
impl From<String> for Said {
    fn from(text: String) -> Self {
        Self(Box::new(Inner::Plain(text)))
    }
}

impl From<&str> for Said {
    fn from(text: &str) -> Self {
        String::from(text).into()
    }
}
