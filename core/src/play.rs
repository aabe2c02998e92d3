//! The way in: from the text of a set file to everything that can be shown of it.

#[cfg(feature = "authoring")]
mod cards;
#[cfg(feature = "authoring")]
mod film;
#[cfg(feature = "authoring")]
mod quiz;
#[cfg(feature = "authoring")]
mod reads;

#[cfg(feature = "authoring")]
pub use reads::{Branched, NotBranched};

use crate::athlete::Level;
#[cfg(feature = "authoring")]
use crate::choice;
use crate::court::{Court, RuleSet};
use crate::defence::{self, Defence, Past};
use crate::document;
use crate::fault::Faults;
use crate::findings::{Finding, Search, Settings};
use crate::looks::{self, Look, Outcome};
use crate::scene::{self, CloseUp, Scene, Staged, StripGeometry, StripView, Verdict, View};
use crate::set::{Coverage, Set};
#[cfg(feature = "authoring")]
use crate::stops::{self, Stop};
use crate::strip::{self, Strip};
use crate::svg::{self, Palette};
use crate::timeline::Timeline;
#[cfg(feature = "authoring")]
use crate::timeline::{self, Slowed};
use crate::timing;
use crate::voice::Voice;
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

    #[cfg(feature = "authoring")]
    fn past(&self) -> &[Past] {
        &self.past
    }

    #[cfg(not(feature = "authoring"))]
    fn past(&self) -> &[Past] {
        &[]
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

    /// Those, and the one that the file names.
    #[must_use]
    pub fn coverages_tried(&self) -> Vec<Coverage> {
        let mut all = self.coverages();
        all.extend(self.set.defence.all.filter(|c| !all.contains(c)));
        all
    }

    /// Five defenders under `coverage`; on a branch they also do what its reads ask for, as far as
    /// somebody can be told to.
    #[must_use]
    pub fn defence(&self, coverage: Coverage) -> Defence {
        let (set, court, timeline) = (&self.set, &self.court, &self.timeline);
        #[cfg(feature = "authoring")]
        return choice::defend(&self.past, set, court, timeline, coverage);
        #[cfg(not(feature = "authoring"))]
        Defence::simulate(set, court, timeline, coverage)
    }

    /// Every chance with how open it is against `defence`, in time order.
    #[must_use]
    pub fn looks(&self, defence: &Defence) -> Vec<Look> {
        looks::looks(&self.timeline, defence)
    }

    /// The looks under every coverage that is [tried](Self::coverages_tried).
    #[must_use]
    pub fn outcomes(&self) -> Vec<Outcome> {
        let outcome = |coverage| Outcome {
            coverage,
            written: self.set.defence.all == Some(coverage),
            looks: self.looks(&self.defence(coverage)),
        };
        self.coverages_tried().into_iter().map(outcome).collect()
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
