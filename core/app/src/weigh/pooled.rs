//! Weighing by everything known of a glaze: what was learned, what the potter chose, and the page that says why.

use rusqlite::Connection;

use super::context::WeighContext;
use super::{MovedTarget, WeighEntry};
use crate::contents::BucketHistory;
use crate::evidence::{parse_id, powder_density, style};
use crate::local_settings::{remember, remembered};
use crate::messages::pooled as say;
use crate::pooled::{
    Cache, Chosen, Learned, TargetChoice, TargetOption, WhyTargetView, chosen, disagreements, moved, options, wet, why,
    with_choice,
};
use crate::{CommandResult, Note, Now, Result, Studio, StudioError};
use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{Source, Target, kept};
use laydown_domain::coat::verdict::{self, Reading, ReadingRefused, Verdict};
use laydown_domain::learning::pooled as model;
use laydown_store::{Transaction, entity, query};

/// What fired pots say of the job, and what the potter chose.
#[derive(Default)]
pub(super) struct Known {
    learned: Option<Learned>,
    chosen: Option<Chosen>,
    was_announced: bool,
    disagreements: Vec<String>,
}

impl WeighContext {
    /// Reads what fired pots say, and how sure the bucket's SG still is.
    pub(super) fn learn(&mut self, conn: &Connection, now: Now, cache: &Cache) -> Result<()> {
        let learned = cache.learned(conn, now, &self.glaze, &self.form, &self.job)?;
        let chosen = chosen(&self.glaze, self.form.id, self.zone());
        if let Some(at) = self.checked_at {
            let history = BucketHistory::read(conn, self.bucket.id)?;
            self.is_changed = history.is_changed_since(at);
            self.sg = history.sg_today(conn, now, self.sg, at)?;
            self.job.solids = Solids::of(self.sg, powder_density(&self.glaze))?;
        }
        let notes = learned.as_ref().map(|learned| disagreements(conn, &learned.notes, &self.style)).transpose()?;
        self.known = Known {
            was_announced: remembered::<bool>(conn, &self.announced_under())?.unwrap_or_default(),
            learned,
            chosen: Some(chosen),
            disagreements: notes.unwrap_or_default(),
        };
        Ok(())
    }

    /// The target by what is chosen, where that is not the best single evidence alone.
    pub(super) fn chosen_target(&self) -> Option<Target> {
        match (self.known.chosen?, &self.known.learned) {
            (Chosen::All, Some(learned)) => {
                model::target_for(&learned.outlook, &self.job, &self.scale, learned.rests_on())
            }
            (Chosen::Kept(dry), _) => Some(kept(&self.job, self.job.solids.wet(dry))),
            (Chosen::All | Chosen::Best, _) => None,
        }
    }

    /// A reading judged: against everything pooled by its chances, else by the span that is accepted.
    pub(super) fn judged(&self, reading: &Reading, target: &Target) -> Result<Verdict, ReadingRefused> {
        let control = self.evidence.controls.first();
        let judged = || verdict::judge(reading, target, &self.scale, &self.job, control);
        match (&target.source, &self.known.learned) {
            (Source::Pooled { .. }, Some(learned)) => {
                model::judge(reading, target, &learned.outlook, &self.scale, &self.job, control)
            }
            (Source::Kept, Some(learned)) => {
                let judged = judged()?;
                let right = model::chance_right(&learned.outlook, &self.job, &self.scale, judged.net);
                Ok(Verdict { right, ..judged })
            }
            _ => judged(),
        }
    }

    /// How likely a coat on the aim comes out right.
    pub(super) fn right_on_aim(&self, target: &Target) -> Option<f64> {
        let learned = self.known.learned.as_ref()?;
        model::chance_right(&learned.outlook, &self.job, &self.scale, target.wet)
    }

    /// That fired pots have moved the target, until the first coat is saved by it, with the one tap that takes it back.
    pub(super) fn moved(&self, target: &Target) -> Option<MovedTarget> {
        let Source::Pooled { pots, .. } = target.source else { return None };
        let before = self.best_target().ok().filter(|_| !self.known.was_announced)?.wet;
        let (was, after) = (self.mass(before), self.mass(target.wet));
        (was != after).then(|| MovedTarget {
            text: moved(pots, &self.style.mass_number(before, self.scale.step), &after),
            keep: TargetOption { label: say::keep(was), choice: TargetChoice::BestEvidence },
        })
    }

    /// What of the evidence disagrees.
    pub(super) fn notes_on_evidence(&self, target: &Target) -> Vec<Note> {
        let is_pooled = matches!(target.source, Source::Pooled { .. });
        let said = self.moved(target).map(|moved| moved.text).into_iter();
        said.chain(self.known.disagreements.iter().filter(|_| is_pooled).cloned()).map(Note::attention).collect()
    }

    /// The other ways in which this target can be chosen.
    pub(super) fn options(&self, target: &Target) -> Vec<TargetOption> {
        let before = self.best_target().ok().map(|before| self.mass(before.wet));
        let chosen = self.known.chosen.unwrap_or(Chosen::All);
        options(chosen, self.known.learned.is_some(), before.as_deref(), &self.mass(target.wet))
    }

    /// What fired pots would say where something else was chosen.
    fn pots_would_say(&self, target: &Target) -> Option<String> {
        let learned = self.known.learned.as_ref().filter(|_| !matches!(target.source, Source::Pooled { .. }))?;
        let aim = learned.outlook.aim(self.job.zone.area, &self.job.solids)?;
        Some(say::pots_say(self.mass(aim.wet)))
    }

    /// Remembers that the potter has seen where the target went.
    pub(super) fn remember_announced(&self, tx: &mut Transaction<'_>, target: &Target) -> Result<()> {
        let is_pooled = matches!(target.source, Source::Pooled { .. });
        if is_pooled && !self.known.was_announced { remember(tx, &self.announced_under(), &true) } else { Ok(()) }
    }

    pub(super) fn target_id(&self) -> String {
        [&self.entry.form, &self.entry.bucket, self.zone().code(), &self.entry.scale].join(" ")
    }

    fn announced_under(&self) -> String {
        format!("announced {} {}", self.glaze.id, self.zone().code())
    }
}

#[uniffi::export]
impl Studio {
    /// Chooses how a target comes about, as [`TargetOption::choice`] offers it; `target` is [`crate::TargetView::id`].
    ///
    /// # Errors
    /// [`StudioError::Missing`] when something chosen is gone.
    pub fn choose_target(&self, now: Now, target: &str, choice: TargetChoice) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let context = self.learned_context(tx.conn(), now, target)?;
            let target = context.target()?;
            let (form, zone) = (context.form.id, context.zone());
            remember(tx, &context.announced_under(), &true)?;
            tx.put(&with_choice(context.glaze.clone(), form, zone, choice, target.dry))?;
            let sentence = match choice {
                TargetChoice::AllEvidence => say::uses_all(),
                TargetChoice::BestEvidence => say::uses_best(),
                TargetChoice::Kept => say::keeps(context.mass(target.wet)),
            };
            Ok((context.glaze.id, sentence))
        })?;
        let (glaze, sentence) = stored.value;
        Ok(CommandResult::new(glaze.to_string(), sentence, stored.undo))
    }

    /// Why a target is what it is; `target` is [`crate::TargetView::id`].
    ///
    /// # Errors
    /// [`StudioError::Missing`] when something chosen is gone.
    pub fn why_target(&self, now: Now, target: &str) -> Result<WhyTargetView> {
        self.store.read(|conn| {
            let context = self.learned_context(conn, now, target)?;
            let target = context.target()?;
            let words = crate::in_words::target(&target, &context.style, context.scale.step);
            let as_shown = (&context.style, context.scale.step);
            let (said, notes, rows) =
                why(conn, self.store.photos(), now, &context.glaze, &context.form, &context.job, as_shown)?;
            // What is listed says what fired pots say, whatever was chosen.
            let by_pots = context.pots_would_say(&target);
            let answer = [words.source, words.sure].into_iter().chain(by_pots).chain(said);
            Ok(WhyTargetView {
                title: say::why(words.aim),
                answer: answer.filter(|sentence| !sentence.is_empty()).collect(),
                notes,
                rows,
            })
        })
    }

    /// Leaves out of targets what a piece showed after a firing, or counts it again: [`crate::EvidenceRow`] names both.
    /// `target` is [`crate::TargetView::id`], to say what that changes.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such assessment.
    pub fn set_counts(&self, now: Now, target: &str, firing: &str, piece: &str, counts: bool) -> Result<CommandResult> {
        let (firing, piece) = (parse_id(firing, "firing")?, parse_id(piece, "piece")?);
        let stored = self.command(now, |tx| {
            let context = self.learned_context(tx.conn(), now, target)?;
            let found = query::finding(tx.conn(), piece, firing)?.ok_or_else(|| StudioError::missing("piece"))?;
            let shown = |conn: &Connection| -> Result<Option<String>> {
                let grams = wet(conn, now, &context.glaze, &context.form, &context.job)?;
                Ok(grams.map(|grams| context.mass(grams)))
            };
            let before = shown(tx.conn())?;
            tx.put(&entity::Finding { left_out: !counts, ..found })?;
            let after = shown(tx.conn())?;
            let done = if counts { say::counts_again() } else { say::is_left_out() };
            Ok(match before.zip(after).filter(|(before, after)| before != after) {
                Some((before, after)) => say::and_so(done, before, after),
                None => done,
            })
        })?;
        Ok(CommandResult::new(piece.to_string(), stored.value, stored.undo))
    }
}

impl Studio {
    fn learned_context(&self, conn: &Connection, now: Now, target: &str) -> Result<WeighContext> {
        let gone = || StudioError::missing("to_weigh_with");
        let [form, bucket, zone, scale] = target.split(' ').collect::<Vec<_>>()[..] else { return Err(gone()) };
        let entry = WeighEntry {
            form: form.to_owned(),
            bucket: bucket.to_owned(),
            zone: zone.parse().ok(),
            scale: scale.to_owned(),
            ..WeighEntry::default()
        };
        let mut context = WeighContext::load(conn, style(conn)?, &entry)?.ok_or_else(gone)?;
        context.is_what_was_shown(&entry)?;
        context.learn(conn, now, &self.pooled)?;
        Ok(context)
    }
}
