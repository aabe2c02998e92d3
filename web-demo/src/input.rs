//! Opening a set.

use crate::Failure;
use crate::args::{Overrides, Source};
use backcut::branch::NotPlayed;
use backcut::document::LIMITS;
use backcut::fault::Faults;
use backcut::play::{Branched, NotBranched, Options, Play};
use std::fs::File;
use std::io::{self, Read};

impl Source {
    /// How it is called in messages.
    pub(crate) fn name(&self) -> String {
        match self {
            Self::Standard => "standard input".to_owned(),
            Self::File(path) => path.display().to_string(),
        }
    }

    /// Its bytes, no more than it takes to see that there are too many.
    ///
    /// # Errors
    /// [`Failure::Use`] when it cannot be read.
    pub(crate) fn read(&self) -> Result<Vec<u8>, Failure> {
        let mut bytes = Vec::new();
        let limit = LIMITS.bytes as u64 + 1;
        let result = match self {
            Self::Standard => io::stdin().lock().take(limit).read_to_end(&mut bytes),
            Self::File(path) => {
                File::open(path).and_then(|file| file.take(limit).read_to_end(&mut bytes))
            }
        };
        match result {
            Ok(_) => Ok(bytes),
            Err(e) => Err(Failure::Use(format!("{}: {e}", self.name()))),
        }
    }

    /// The set in it, built.
    ///
    /// # Errors
    /// [`Failure::Faults`] when it is no set; [`Failure::Use`] when it cannot be read.
    pub(crate) fn open(&self, overrides: Overrides) -> Result<Play, Failure> {
        self.play(&self.read()?, overrides)
    }

    /// The set in `bytes`, which were read here, built.
    ///
    /// # Errors
    /// [`Failure::Faults`] when it is no set.
    pub(crate) fn play(&self, bytes: &[u8], overrides: Overrides) -> Result<Play, Failure> {
        Ok(self.branch(bytes, overrides)?.play)
    }

    /// It has these faults.
    pub(crate) fn faulty(&self, faults: Faults) -> Failure {
        Failure::Faults {
            name: self.name(),
            faults,
        }
    }

    /// The branch of it that was asked for, the main line where none was.
    ///
    /// # Errors
    /// As [`Source::play`]; [`Failure::Use`] when there is no such branch.
    pub(crate) fn branch(&self, bytes: &[u8], overrides: Overrides) -> Result<Branched, Failure> {
        let faulty = |faults| self.faulty(faults);
        let play = Play::open(bytes, &overrides.options()).map_err(faulty)?;
        let path = overrides.read.iter().take_while(|n| **n > 0);
        let path: Vec<usize> = path.map(|n| usize::from(*n) - 1).collect();
        if path.is_empty() {
            return Ok(Branched {
                play,
                forks: Vec::new(),
                dropped: Vec::new(),
            });
        }
        play.branch(&path).map_err(|why| match why {
            NotBranched::NoSuchRead => {
                Failure::Use(format!("{}: the set has no such read", self.name()))
            }
            NotBranched::NotPlayed(NotPlayed::NoInstant) => Failure::Use(format!(
                "{}: the instant of that read never comes",
                self.name()
            )),
            NotBranched::NotPlayed(NotPlayed::AfterTheShot) => Failure::Use(format!(
                "{}: at the instant of that read the shot is gone",
                self.name()
            )),
            NotBranched::NotPlayed(NotPlayed::Waits(faults)) => faulty(faults),
        })
    }
}

impl Overrides {
    /// Whether the line that is drawn is asked for, not a branch.
    pub(crate) fn is_drawn(self) -> bool {
        self.read.iter().all(|n| *n == 0)
    }

    /// As the library takes them.
    pub(crate) fn options(self) -> Options {
        Options {
            court: self.court,
            level: self.level,
            mirror: self.mirror,
            voice: self.voice,
        }
    }
}
