//! The way in: from the text of a set file to everything that can be shown of it.

#[cfg(feature = "authoring")]
mod cards;
#[cfg(feature = "authoring")]
mod film;
#[cfg(feature = "authoring")]
mod quiz;

use crate::athlete::Level;
#[cfg(feature = "authoring")]
use crate::branch::{self, Dropped, Line, NotPlayed};
#[cfg(feature = "authoring")]
use crate::choice::{Answer, Decided, Lines};
use crate::court::{Court, RuleSet};
use crate::defence::{self, Defence, Past};
use crate::document;
#[cfg(feature = "authoring")]
use crate::fault::Fault;
use crate::fault::Faults;
use crate::findings::{Finding, Search, Settings};
use crate::looks::{self, Look, Outcome};
#[cfg(feature = "authoring")]
use crate::math::sort_short;
use crate::scene::{self, CloseUp, Scene, Staged, StripGeometry, StripView, Verdict, View};
#[cfg(feature = "authoring")]
use crate::set::Read;
use crate::set::{Coverage, Set};
#[cfg(feature = "authoring")]
use crate::stops::{self, Stop};
use crate::strip::{self, Strip};
#[cfg(feature = "authoring")]
use crate::strip::{Fork, ForkTo};
use crate::svg::{self, Palette};
use crate::timeline::Timeline;
#[cfg(feature = "authoring")]
use crate::timeline::{self, Slowed};
use crate::timing;
use crate::voice::Voice;
#[cfg(feature = "authoring")]
use crate::voice::messages::fault as m;
use crate::words;
use alloc::string::String;
use alloc::vec::Vec;

/// What a page or a caller may set over the file.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Options {
    /// Another rule set than the file's.
    pub court: Option<RuleSet>,
    /// Another level than the file's.
    pub level: Option<Level>,
    /// The set on the other side.
    pub mirror: bool,
    /// In which language and measure it is told.
    pub voice: Voice,
}

/// A set that is ready to be looked at.
///
/// ```
/// use backcut::play::{Options, Play};
/// let text = br#"{ "backcut": 1, "title": "Give and go", "players": {
///     "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
///   "beats": [ { "actions": [
///     {"who": 1, "do": "pass", "to": 2},
///     {"who": 1, "do": "cut", "kind": "basket"},
///     {"who": 2, "do": "pass", "kind": "bounce", "to": 1},
///     {"who": 1, "do": "shot", "kind": "layup"} ] } ] }"#;
/// let play = Play::open(text, &Options::default())?;
/// assert!(play.timeline().duration() > 2.0);
///
/// let faults = Play::open(b"{}", &Options::default()).unwrap_err();
/// assert!(faults.list.iter().any(|f| f.code == "missing-version"));
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[derive(Clone, Debug)]
pub struct Play {
    set: Set,
    court: Court,
    timeline: Timeline,
    strip: Strip,
    /// Of no particular width: what it shows depends on the set alone; and how it is told.
    view: View,
    /// Of a branch: the lines it has left.
    #[cfg(feature = "authoring")]
    past: Vec<Past>,
}

/// A branch, to be looked at like any set.
#[cfg(feature = "authoring")]
#[derive(Clone, Debug)]
pub struct Branched {
    /// The branch.
    pub play: Play,
    /// When each of its reads is made, seconds.
    pub forks: Vec<f64>,
    /// What does not happen because of the last one.
    pub dropped: Vec<Dropped>,
}

/// Why there is no such branch.
#[cfg(feature = "authoring")]
#[derive(Clone, Debug, PartialEq)]
pub enum NotBranched {
    /// The set has no such read.
    NoSuchRead,
    /// It cannot be played.
    NotPlayed(NotPlayed),
}

#[cfg(feature = "authoring")]
impl From<NotPlayed> for NotBranched {
    fn from(why: NotPlayed) -> Self {
        Self::NotPlayed(why)
    }
}

#[cfg(feature = "authoring")]
impl NotBranched {
    /// The same as faults of whoever asked for the read that is written `path`.
    #[must_use]
    pub fn faults(self, path: &str) -> Faults {
        let allowed = match self {
            Self::NotPlayed(NotPlayed::Waits(faults)) => return faults,
            Self::NoSuchRead => m::READS_OF_SET,
            Self::NotPlayed(NotPlayed::NoInstant) => m::NEVER_COMES,
            Self::NotPlayed(NotPlayed::AfterTheShot) => m::SHOT_IS_GONE,
        };
        Faults::one(|| Fault::unknown_option("read", path, allowed))
    }
}

impl Play {
    /// Reads, checks and schedules a set file.
    ///
    /// # Errors
    /// Everything that cannot be understood as written, all at once; or `contradictory-waits`.
    pub fn open(text: &[u8], options: &Options) -> Result<Self, Faults> {
        Self::of(document::read(text)?, options)
    }

    /// Schedules a set that has been read already.
    ///
    /// # Errors
    /// `contradictory-waits`.
    pub fn of(set: Set, options: &Options) -> Result<Self, Faults> {
        let mut set = if options.mirror { set.mirrored() } else { set };
        set.court = options.court.unwrap_or(set.court);
        set.level = options.level.unwrap_or(set.level);
        let court = set.floor();
        let schedule = timing::build(&set, &court)?;
        let timeline = Timeline::build(&set, &court, schedule);
        let strip = strip::build(&timeline, &set);
        let view = View {
            voice: options.voice,
            ..View::of(&timeline, &court, 0.0)
        };
        let play = Self {
            set,
            court,
            timeline,
            strip,
            view,
            #[cfg(feature = "authoring")]
            past: Vec::new(),
        };
        #[cfg(feature = "authoring")]
        let play = play.parted(Vec::new());
        Ok(play)
    }

    /// The branch by the reads of `path`, each counted from 0 among those of the branch before it;
    /// everything that can be asked of a set can be asked of it.
    ///
    /// # Errors
    /// No such read, or the one that cannot be played, and why.
    #[cfg(feature = "authoring")]
    pub fn branch(&self, path: &[usize]) -> Result<Branched, NotBranched> {
        let mut line = Line::main(&self.set, &self.court).map_err(NotPlayed::Waits)?;
        let mut forks = Vec::new();
        let mut waiting = Vec::new();
        for index in path {
            let Some(read) = line.set().reads.get(*index).cloned() else {
                return Err(NotBranched::NoSuchRead);
            };
            let t = branch::fork_instant(line.set(), line.timeline(), &read);
            let left = reads_of(line.set(), line.timeline());
            waiting.extend(left.filter(|fork| t.is_some_and(|t| fork.t < t)));
            waiting.extend(t.map(|t| Fork {
                t,
                to: ForkTo::Drawn,
            }));
            forks.extend(t);
            line = line.fork(&read, &self.court)?;
        }
        let past = line.past().to_vec();
        let (set, timeline, dropped) = line.into_parts();
        let play = Self {
            strip: strip::build(&timeline, &set),
            view: View {
                voice: self.voice(),
                ..View::of(&timeline, &self.court, 0.0)
            },
            court: self.court,
            set,
            timeline,
            past,
        };
        Ok(Branched {
            play: play.parted(waiting),
            forks,
            dropped,
        })
    }

    /// With its strip parted where `waiting` and its own reads leave it.
    #[cfg(feature = "authoring")]
    fn parted(mut self, mut waiting: Vec<Fork>) -> Self {
        waiting.extend(reads_of(&self.set, &self.timeline));
        sort_short(&mut waiting, |a, b| a.t.total_cmp(&b.t));
        self.strip.forks = waiting;
        self
    }

    #[cfg(feature = "authoring")]
    fn past(&self) -> &[Past] {
        &self.past
    }

    #[cfg(not(feature = "authoring"))]
    fn past(&self) -> &[Past] {
        &[]
    }

    /// When a read of this set leaves its line, seconds; `None` where its instant never comes.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn fork_instant(&self, read: &Read) -> Option<f64> {
        branch::fork_instant(&self.set, &self.timeline, read)
    }

    /// In which language and measure this set is told.
    #[must_use]
    pub fn voice(&self) -> Voice {
        self.view.voice
    }

    /// From now on it is told like this; nothing is laid or timed anew.
    pub fn speak(&mut self, voice: Voice) {
        self.view.voice = voice;
    }

    /// The main line of a set as it is drawn, not of a branch, and every branch that its reads make.
    ///
    /// # Errors
    /// `contradictory-waits`; no set that has been opened has them.
    #[cfg(feature = "authoring")]
    pub fn lines(&self) -> Result<Lines, Faults> {
        Lines::new(&self.set, &self.court)
    }

    /// Which reads five under `coverage` make true of a set as it is drawn, and what is seen of each
    /// that is asked. [`Play::branch`] plays the path that is decided.
    ///
    /// # Errors
    /// As [`Play::lines`].
    #[cfg(feature = "authoring")]
    pub fn decided(&self, coverage: Coverage) -> Result<Decided, Faults> {
        Ok(self.lines()?.decided(coverage))
    }

    /// Which read beats which coverage, for every coverage that a set as it is drawn can meet and the
    /// one that its file names.
    ///
    /// # Errors
    /// As [`Play::lines`].
    #[cfg(feature = "authoring")]
    pub fn answers(&self) -> Result<Vec<Answer>, Faults> {
        let lines = self.lines()?;
        let mut all = self.coverages();
        all.extend(self.set.defence.all.filter(|c| !all.contains(c)));
        Ok(all.into_iter().map(|c| lines.answer(c)).collect())
    }

    /// What was written, with the options laid over it.
    #[must_use]
    pub fn set(&self) -> &Set {
        &self.set
    }

    /// Where it is played.
    #[must_use]
    pub fn court(&self) -> &Court {
        &self.court
    }

    /// What happens when.
    #[must_use]
    pub fn timeline(&self) -> &Timeline {
        &self.timeline
    }

    /// The rows, bars and ties under the court.
    #[must_use]
    pub fn strip(&self) -> &Strip {
        &self.strip
    }

    // --- against five ----------------------------------------------------------------------

    /// The coverages this set can meet, in the order in which they are listed to people.
    #[must_use]
    pub fn coverages(&self) -> Vec<Coverage> {
        defence::coverages(&self.set, &self.timeline)
    }

    /// Five defenders under `coverage`.
    #[must_use]
    pub fn defence(&self, coverage: Coverage) -> Defence {
        Defence::after(
            self.past(),
            &self.set,
            &self.court,
            &self.timeline,
            coverage,
        )
    }

    /// Every chance with how open it is against `defence`, in time order.
    #[must_use]
    pub fn looks(&self, defence: &Defence) -> Vec<Look> {
        looks::looks(&self.timeline, defence)
    }

    /// The looks under every coverage this set can meet.
    #[must_use]
    pub fn outcomes(&self) -> Vec<Outcome> {
        looks::outcomes_after(self.past(), &self.set, &self.court, &self.timeline)
    }

    // --- in words --------------------------------------------------------------------------

    /// The name of a beat, counted from 0.
    #[must_use]
    pub fn beat_title(&self, beat: usize) -> String {
        words::beat_title(&self.set, beat, self.voice())
    }

    /// The author's own words for a beat, counted from 0; empty where there are none.
    #[must_use]
    pub fn said(&self, beat: usize) -> &str {
        let said = self.set.beats.get(beat).and_then(|b| b.say.as_deref());
        said.unwrap_or_default()
    }

    /// What happens in a beat: the author's words, else generated ones.
    #[must_use]
    pub fn caption(&self, beat: usize) -> String {
        words::beat(&self.set, Some(&self.timeline), beat, self.voice())
    }

    /// The instant `t` in words, for those who cannot see it.
    #[must_use]
    pub fn describe(&self, t: f64) -> String {
        words::describe(&self.timeline, &self.set, t, self.voice())
    }

    /// The same against five: also who is nearest to the ball.
    #[must_use]
    pub fn describe_against(&self, defence: &Defence, t: f64) -> String {
        let mut out = self.describe(t);
        let voice = self.voice();
        let guarded = words::guarded(&self.timeline, defence, &self.set, t, voice);
        if !guarded.is_empty() {
            out.push(' ');
            out.push_str(&guarded);
        }
        out
    }

    /// What to keep an eye on when this set is taught; the supervising coach decides.
    #[must_use]
    pub fn cautions(&self) -> Vec<&'static str> {
        words::cautions(&self.set, self.voice())
    }

    // --- walked through --------------------------------------------------------------------

    /// The stretches that are shown slowly, in time order.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn slow(&self) -> Vec<Slowed> {
        timeline::slow(&self.timeline, &self.set)
    }

    /// Where a walk through the set stops, in time order, each with its reasons.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn stops(&self) -> Vec<Stop> {
        stops::build(&self.timeline, &self.set)
    }

    /// Why it stops there, a sentence a reason.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn stop(&self, stop: &Stop) -> String {
        words::stop(stop, &self.set, self.voice())
    }

    // --- judged ----------------------------------------------------------------------------

    /// What breaks a rule, a body or the timing, in time order, each with its proved cure where
    /// there is one. The referee decides what is called, the supervising coach what is run.
    #[must_use]
    pub fn findings(&self, settings: &Settings) -> Vec<Finding> {
        self.cured(None, settings)
    }

    /// What is found only once five defend, in time order, each with its proved cure where there is
    /// one: true of the coverage of `defence`, which is one likely answer.
    #[must_use]
    pub fn findings_against(&self, defence: &Defence, settings: &Settings) -> Vec<Finding> {
        self.cured(Some(defence), settings)
    }

    fn cured(&self, defence: Option<&Defence>, settings: &Settings) -> Vec<Finding> {
        let mut search = self.search(defence, settings);
        while self.cure_on(&mut search, settings) {}
        search.into_found()
    }

    /// The findings, or with a defence those that need it, still without cures; each
    /// [`Play::cure_on`] looks a little further for those.
    #[must_use]
    pub fn search(&self, defence: Option<&Defence>, settings: &Settings) -> Search {
        Search::new(&self.set, &self.court, &self.timeline, defence, settings)
    }

    /// Tries one edit; whether there is more to try. Nothing is tried on a branch: an edit makes
    /// another main line, and the read would leave that elsewhere.
    pub fn cure_on(&self, search: &mut Search, settings: &Settings) -> bool {
        self.past().is_empty() && search.step(&self.set, &self.court, settings)
    }

    /// A finding in a sentence or two.
    #[must_use]
    pub fn finding(&self, finding: &Finding) -> String {
        words::finding(finding, &self.set, self.voice())
    }

    /// Its cure in words, with the price.
    #[must_use]
    pub fn cure(&self, finding: &Finding) -> Option<String> {
        words::cure(finding, &self.set, self.voice())
    }

    // --- in pictures -----------------------------------------------------------------------

    /// A view of the court that shows everybody for the whole set, `width_px` CSS pixels wide.
    #[must_use]
    pub fn view(&self, width_px: f64) -> View {
        View {
            width_px: View::new(width_px).width_px,
            ..self.view
        }
    }

    /// The court without anybody on it.
    #[must_use]
    pub fn court_scene(&self, view: &View) -> Scene {
        scene::court(&self.court, view)
    }

    /// Everybody, the ball and the trails at `t`, with what is known beyond the set; `out` is reused.
    pub fn movers_scene(
        &self,
        verdict: Option<&Verdict<'_>>,
        t: f64,
        view: &View,
        out: &mut Scene,
    ) {
        scene::movers(&self.staged(), verdict, t, view, out);
    }

    fn staged(&self) -> Staged<'_> {
        Staged {
            timeline: &self.timeline,
            set: &self.set,
            court: &self.court,
        }
    }

    /// What is shown large in a corner of the court during a beat, where `view` is too small for it.
    #[must_use]
    pub fn close_up(&self, beat: usize, view: &View) -> Option<CloseUp> {
        scene::close_up(&self.timeline, &self.set, &self.court, view, beat)
    }

    /// A beat as a coach draws it on paper: bodies where it starts and the ways they go.
    #[must_use]
    pub fn beat_scene(&self, beat: usize, width_px: f64) -> Scene {
        let view = View {
            print: true,
            ..self.view(width_px)
        };
        scene::beat(&self.timeline, &self.set, &self.court, beat, &view)
    }

    /// The strip, with what is known beyond the set.
    #[must_use]
    pub fn strip_scene(&self, verdict: Option<&Verdict<'_>>, view: &StripView) -> Scene {
        scene::strip(&self.strip, verdict, view)
    }

    /// Where things lie in that strip.
    #[must_use]
    pub fn strip_geometry(&self, view: &StripView) -> StripGeometry {
        StripGeometry::of(&self.strip, view)
    }

    /// The key of the marks this set uses.
    #[must_use]
    pub fn key_scene(&self, width_px: f64) -> Scene {
        scene::key(&self.set, width_px, self.voice())
    }

    /// A picture of the instant `t` as a standalone SVG, with what is known beyond the set.
    #[must_use]
    pub fn poster(
        &self,
        verdict: Option<&Verdict<'_>>,
        t: f64,
        width_px: f64,
        palette: &Palette,
    ) -> String {
        let view = self.view(width_px);
        let picture = scene::picture(&self.staged(), verdict, t, &view);
        svg::paint(&picture, palette, &self.set.title, &self.describe(t))
    }

    /// [`Play::beat_scene`] as a standalone SVG.
    #[must_use]
    pub fn beat_poster(&self, beat: usize, width_px: f64, palette: &Palette) -> String {
        let picture = self.beat_scene(beat, width_px);
        svg::paint(&picture, palette, &self.set.title, &self.caption(beat))
    }
}

/// Where the reads of `set` leave its line.
#[cfg(feature = "authoring")]
fn reads_of<'a>(set: &'a Set, timeline: &'a Timeline) -> impl Iterator<Item = Fork> + 'a {
    let fork = |(index, read): (usize, &Read)| {
        branch::fork_instant(set, timeline, read).map(|t| Fork {
            t,
            to: ForkTo::Read(index, read.title.clone()),
        })
    };
    set.reads.iter().enumerate().filter_map(fork)
}
