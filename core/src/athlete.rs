//! Bodies and limits by level: how fast, how sharp, how tall.

use crate::spelling::same_word;

/// Who plays: the defaults for bodies and limits.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the names say it")]
pub enum Level {
    Elite,
    EliteWomen,
    #[default]
    Adult,
    HighSchool,
    U14,
    U12,
    Recreational,
}

/// How hard a move is run.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the names say it")]
pub enum Pace {
    Walk,
    Jog,
    #[default]
    Run,
    Sprint,
}

impl Pace {
    /// All, slowest first.
    pub const ALL: [Self; 4] = [Self::Walk, Self::Jog, Self::Run, Self::Sprint];

    /// The name in a set file.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Walk => "walk",
            Self::Jog => "jog",
            Self::Run => "run",
            Self::Sprint => "sprint",
        }
    }
}

/// What an athlete of a level can do; metres, seconds, m/s, m/s².
///
/// Source of every number: the project's movement reference (see `DEVELOPERS.md`, "Where the
/// numbers come from"); sprint constants are fits to published splits, the braking, plant and
/// shuffle values make published combine times come out, the rest is judgement.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Top speed of the sprint model, m/s.
    pub v_max: f64,
    /// Time constant of the sprint model, s.
    pub tau: f64,
    /// Mean braking, m/s².
    pub brake: f64,
    /// Sideways acceleration on a curve, m/s².
    pub lateral: f64,
    /// Largest change of velocity at one plant, m/s.
    pub plant_dv: f64,
    /// Time a full turn on one foot takes, s.
    pub plant_time: f64,
    /// Shuffle speed as a share of `v_max`.
    pub shuffle: f64,
    /// Backpedal speed as a share of `v_max`.
    pub backpedal: f64,
    /// Speed with the ball as a share of the speed without.
    pub dribble: f64,
    /// Choice reaction, s.
    pub reaction: f64,
    /// Catch to release in a hurry, s.
    pub release_quick: f64,
    /// Catch to release, s.
    pub release: f64,
    /// Height at which a shot leaves the hands.
    pub release_height: f64,
    /// Factor on pass speeds.
    pub pass_scale: f64,
    /// Body height.
    pub stature: f64,
    /// Arm span.
    pub span: f64,
    /// Standing reach.
    pub reach: f64,
    /// Shoulder breadth.
    pub shoulder: f64,
    /// Chest depth.
    pub depth: f64,
}

/// The cap on speed and the share of full acceleration that go with a pace.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Effort {
    /// Speed not exceeded, m/s.
    pub top: f64,
    /// Factor on the sprint model's acceleration.
    pub accel: f64,
}

impl Limits {
    /// Speed cap and acceleration share of `pace`; `ball` for a dribbler.
    #[must_use]
    pub fn effort(&self, pace: Pace, ball: bool) -> Effort {
        // Walk 1.4 m/s; jog, run and sprint as shares of top speed. Common practice, no source.
        let (top, accel) = match pace {
            Pace::Walk => (1.4, 0.4),
            Pace::Jog => (0.33 * self.v_max, 0.4),
            Pace::Run => (0.60 * self.v_max, 0.6),
            Pace::Sprint => (self.v_max, 1.0),
        };
        Effort {
            top: if ball { top * self.dribble } else { top },
            accel,
        }
    }
}

#[rustfmt::skip]
const TABLE: [(Level, &str, [f64; 19]); 7] = [
    //                                            v_max tau   brake lat  dv   t_pl  shuf  back  drib  react quick norm  h_rel pass  stat  span  reach shou  depth
    (Level::Elite,        "elite",         [8.5, 1.03, 6.0, 6.0, 3.0, 0.33, 0.55, 0.70, 0.95, 0.30, 0.60, 0.80, 2.50, 1.00, 1.97, 2.09, 2.63, 0.54, 0.27]),
    (Level::EliteWomen,   "elite women",   [7.6, 1.05, 5.5, 5.5, 2.8, 0.33, 0.55, 0.70, 0.95, 0.30, 0.65, 0.85, 2.25, 0.92, 1.83, 1.89, 2.40, 0.48, 0.27]),
    (Level::Adult,        "adult",         [8.0, 1.03, 5.5, 5.5, 2.8, 0.33, 0.55, 0.70, 0.93, 0.31, 0.65, 0.85, 2.35, 0.95, 1.85, 1.93, 2.42, 0.52, 0.26]),
    (Level::HighSchool,   "high school",   [7.8, 1.03, 5.2, 5.0, 2.6, 0.34, 0.55, 0.68, 0.91, 0.32, 0.70, 0.90, 2.25, 0.90, 1.80, 1.86, 2.34, 0.50, 0.25]),
    (Level::U14,          "u14",      [7.2, 1.00, 4.6, 4.5, 2.4, 0.35, 0.55, 0.65, 0.88, 0.36, 0.85, 1.00, 2.00, 0.75, 1.65, 1.68, 2.12, 0.43, 0.21]),
    (Level::U12,          "u12",      [6.4, 0.95, 4.2, 4.0, 2.1, 0.35, 0.55, 0.62, 0.82, 0.40, 0.90, 1.10, 1.80, 0.65, 1.50, 1.52, 1.92, 0.39, 0.19]),
    (Level::Recreational, "recreational",  [7.0, 1.10, 4.6, 4.3, 2.2, 0.36, 0.52, 0.62, 0.85, 0.38, 0.80, 1.00, 2.15, 0.80, 1.76, 1.81, 2.27, 0.51, 0.25]),
];

impl Level {
    /// All, in the order in which they are listed to people.
    pub const ALL: [Self; 7] = [
        Self::Elite,
        Self::EliteWomen,
        Self::Adult,
        Self::HighSchool,
        Self::U14,
        Self::U12,
        Self::Recreational,
    ];

    fn row(self) -> &'static (Self, &'static str, [f64; 19]) {
        // The enum is declared in table order; `each_level_has_its_own_row` holds that.
        let [first, ..] = &TABLE;
        TABLE.get(self as usize).unwrap_or(first)
    }

    /// The name in a set file.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().1
    }

    /// Whether young players play: they stand nearer to the ring.
    #[must_use]
    pub fn is_youth(self) -> bool {
        matches!(self, Self::U14 | Self::U12)
    }

    /// The level of that name; letter case, and a hyphen for a space, do not matter.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|l| same_word(name, l.name()))
    }

    /// What athletes of this level can do.
    #[must_use]
    pub fn limits(self) -> Limits {
        let [
            v_max,
            tau,
            brake,
            lateral,
            plant_dv,
            plant_time,
            shuffle,
            backpedal,
            dribble,
            reaction,
            release_quick,
            release,
            release_height,
            pass_scale,
            stature,
            span,
            reach,
            shoulder,
            depth,
        ] = self.row().2;
        Limits {
            v_max,
            tau,
            brake,
            lateral,
            plant_dv,
            plant_time,
            shuffle,
            backpedal,
            dribble,
            reaction,
            release_quick,
            release,
            release_height,
            pass_scale,
            stature,
            span,
            reach,
            shoulder,
            depth,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_level_has_its_own_row() {
        assert_eq!(Level::ALL.len(), TABLE.len());
        for level in Level::ALL {
            assert_eq!(level.row().0, level);
        }
    }

    #[test]
    fn levels_read_back_from_their_names() {
        for level in Level::ALL {
            assert_eq!(Level::parse(level.name()), Some(level));
        }
        assert_eq!(Level::parse(" Elite-Women "), Some(Level::EliteWomen));
        assert_eq!(Level::parse("elite men"), None);
    }

    #[test]
    fn a_harder_pace_is_faster_and_the_ball_slows_it() {
        for level in Level::ALL {
            let limits = level.limits();
            let tops = Pace::ALL.map(|pace| limits.effort(pace, false).top);
            assert!(tops.is_sorted_by(|a, b| a < b), "{level:?}: {tops:?}");
            for pace in Pace::ALL {
                assert!(limits.effort(pace, true).top < limits.effort(pace, false).top);
            }
        }
    }
}
