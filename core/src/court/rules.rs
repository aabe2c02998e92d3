//! The rule sets by name.

/// Whose rules draw the court and set the limits.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum RuleSet {
    /// FIBA Official Basketball Rules.
    #[default]
    Fiba,
    /// NBA Official Rules.
    Nba,
    /// WNBA Official Rules.
    Wnba,
    /// NCAA men.
    NcaaMen,
    /// NCAA women.
    NcaaWomen,
    /// NFHS high school, on the 84 ft court.
    Nfhs,
}

impl RuleSet {
    /// All of them, in the order in which they are listed to people.
    pub const ALL: [Self; 6] = [
        Self::Fiba,
        Self::Nba,
        Self::Wnba,
        Self::NcaaMen,
        Self::NcaaWomen,
        Self::Nfhs,
    ];

    /// The name in a set file.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Fiba => "fiba",
            Self::Nba => "nba",
            Self::Wnba => "wnba",
            Self::NcaaMen => "ncaa-men",
            Self::NcaaWomen => "ncaa-women",
            Self::Nfhs => "nfhs",
        }
    }

    /// The rule set of that name.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|r| r.name() == name)
    }
}
