//! From pots that were weighed, fired and looked at to what is known of their glaze.

use laydown_app::{Assessment, EditorKind, GlazeFindingsView, Mark, Stroke, StudioError, WeighEntry};
use laydown_domain::form::ZoneKind;

use crate::{Bench, DAY_MS, NOW, editor, net};

/// Net weights on a small mug with how thick each came out.
type Pots<'a> = &'a [(&'a str, &'a str)];

/// A studio's first test row: some eight mugs from thin to thick. At SG 1.45 a gram wet is about 0.28 g per 100 cm².
const ROW: Pots<'_> = &[
    ("14.2", "thin"),
    ("15.6", "thin"),
    ("17.2", "right"),
    ("18.4", "right"),
    ("19.6", "right"),
    ("20.6", "right"),
    ("21.4", "right"),
    ("23.8", "thick"),
    ("25.2", "thick"),
];

impl Bench {
    pub(crate) fn with_kiln() -> Bench {
        let bench = Bench::set_up();
        let kiln = [("name", "Garden kiln"), ("across", "60"), ("deep", "60"), ("shelves", "3")];
        bench.save(EditorKind::Kiln, "", &kiln);
        bench
    }

    pub(crate) fn first_glaze(&self) -> String {
        self.studio.findings(NOW).unwrap().glazes[0].id.clone()
    }

    /// Glazes a mug with each of these weights and answers with the pieces.
    fn pour(&self, pots: Pots<'_>, entry: &WeighEntry) -> Vec<String> {
        let poured = pots.iter().map(|(wet, _)| {
            let entry = self.weigh(WeighEntry { net: (*wet).to_owned(), ..entry.clone() }).entry;
            let saved = self.studio.save(NOW, entry).unwrap();
            self.studio.coat(NOW, &saved.id).unwrap().piece
        });
        poured.collect()
    }

    pub(crate) fn fire_at(&self, cone: &str) -> String {
        let firing = self.save(EditorKind::Firing, "", &[("cone", cone)]);
        self.studio.load_all(NOW, &firing).unwrap();
        self.studio.advance(NOW, &firing).unwrap();
        firing
    }

    pub(crate) fn came_out(&self, firing: &str, piece: &str, zone: &str, thickness: &str) {
        let look = Assessment::Thickness { zone: zone.to_owned(), thickness: thickness.to_owned() };
        self.studio.assess(NOW, firing, piece, &look).unwrap();
    }

    /// Glazes, fires and looks at mugs.
    pub(crate) fn fired(&self, cone: &str, pots: Pots<'_>) -> (String, Vec<String>) {
        let pieces = self.pour(pots, &net(""));
        let firing = self.fire_at(cone);
        for (piece, (_, thickness)) in pieces.iter().zip(pots) {
            self.came_out(&firing, piece, "inside", thickness);
        }
        (firing, pieces)
    }

    pub(crate) fn findings(&self) -> GlazeFindingsView {
        self.studio.glaze_findings(NOW, &self.first_glaze()).unwrap()
    }
}

#[test]
fn nothing_is_claimed_before_there_is_something() {
    let empty = Bench::empty().studio.findings(NOW).unwrap();
    assert!(empty.glazes.is_empty() && empty.empty.contains("tap thin, right or thick"), "{empty:?}");

    let bench = Bench::with_kiln();
    assert_eq!(bench.studio.findings(NOW).unwrap().glazes[0].detail, "No coats weighed yet.");
    assert!(bench.findings().windows.is_empty() && bench.findings().empty.contains("Eight pots"));

    let pieces = bench.pour(&ROW[..3], &net(""));
    let detail = bench.studio.findings(NOW).unwrap().glazes[0].detail.clone();
    assert_eq!(detail, "3 coats weighed, none looked at after firing yet.");
    let firing = bench.fire_at("6");
    bench.came_out(&firing, &pieces[0], "inside", "thin");
    bench.came_out(&firing, &pieces[1], "inside", "thin");
    bench.came_out(&firing, &pieces[2], "inside", "right");
    let few = bench.findings();
    assert_eq!(few.windows[0].title, "Cone 6, inside");
    assert_eq!(few.windows[0].words, "Not enough pots yet: 3 so far (2 thin, 1 right). A first finding needs 8.");
    // The dots are there all the same, and there is nothing to take over.
    let marks: Vec<Mark> = few.windows[0].chart.dots.iter().map(|dot| dot.mark).collect();
    assert_eq!(marks, [Mark::Right, Mark::Thin, Mark::Thin]);
    assert!(few.windows[0].chart.bands.is_empty() && few.take.is_empty() && few.windows[0].sure.is_empty());
}

#[test]
fn a_test_row_gives_a_window_and_the_glaze_can_start_from_its_best() {
    let bench = Bench::with_kiln();
    bench.fired("6", ROW);
    let aim = bench.aim(net(""));
    let view = bench.findings();
    let [window] = view.windows.as_slice() else { panic!("{:?}", view.windows) };
    assert!(window.words.starts_with("Right between 4.") && window.words.contains("(9 pots)"), "{}", window.words);
    assert!(window.words.ends_with("Below that it came out thin, above that thick."), "{}", window.words);
    assert!(window.sure.starts_with("Best near 5."), "{}", window.sure);
    assert!(bench.studio.findings(NOW).unwrap().glazes[0].detail.starts_with("Cone 6, inside: right between 4."));
    assert_eq!(view.rests[0].value, "No control piece or test tile yet: starting value, 5.5 g per 100 cm²");

    let chart = &window.chart;
    assert_eq!((chart.dots.len(), chart.bands.len(), chart.lines.len()), (9, 1, 2));
    let band = &chart.bands[0];
    for dot in &chart.dots {
        assert!((0.0..=1.0).contains(&dot.at.x) && (0.0..=1.0).contains(&dot.at.y), "{dot:?}");
        let is_inside = (band.from.x..=band.to.x).contains(&dot.at.x);
        assert!(is_inside == (dot.mark == Mark::Right) || (dot.mark == Mark::Right), "{dot:?} {band:?}");
    }
    let best = chart.lines.iter().find(|line| line.stroke == Stroke::Best).unwrap().spots[0].x;
    assert!(band.from.x < best && best < band.to.x);
    assert!(
        chart.words.contains("2 thin at 3.8 to 4.2") && chart.words.contains("Today's aim: 5.5"),
        "{}",
        chart.words
    );

    assert!(view.take.starts_with("Start from 5."), "{}", view.take);
    let before = bench.dump();
    let taken = bench.studio.adopt_best(NOW, &bench.first_glaze(), &view.best).unwrap();
    assert!(taken.sentence.starts_with("Ash white now starts from 5."), "{}", taken.sentence);
    assert!(bench.aim(net("")) < aim, "the next target is the studio's own");
    let after = bench.findings();
    assert_eq!((after.take.as_str(), after.best.as_str()), ("", ""));
    assert_eq!(after.windows[0].words, window.words, "taking it over teaches nothing new");
    bench.studio.undo(NOW, &taken.undo).unwrap();
    assert_eq!(bench.dump(), before);

    for wrong in ["", "0", "-5200", "99000000", "5,2"] {
        let refused = bench.studio.adopt_best(NOW, &bench.first_glaze(), wrong);
        assert!(matches!(refused, Err(StudioError::Refused { .. })), "{wrong:?}: {refused:?}");
    }
    assert_eq!(bench.dump(), before);
    let unknown = "01890000-0000-7000-8000-000000000000";
    assert!(matches!(bench.studio.glaze_findings(NOW, unknown), Err(StudioError::Missing { .. })));
    assert!(matches!(bench.studio.adopt_best(NOW, unknown, "5200"), Err(StudioError::Missing { .. })));
}

#[test]
fn a_control_piece_outside_the_window_is_spoken_of() {
    let bench = Bench::with_kiln();
    let (firing, pieces) = bench.fired("6", ROW);
    bench.studio.assess(NOW, &firing, &pieces[8], &Assessment::Control { on: true }).unwrap();
    let view = bench.findings();
    assert!(view.rests[0].value.starts_with("1 control piece, 6.8 "), "{:?}", view.rests);
    assert!(view.notes[0].text.contains("outside the window. Make a pot near 5."), "{:?}", view.notes);
}

#[test]
fn pots_of_another_cone_are_not_mixed_in_and_few_stay_together() {
    let bench = Bench::with_kiln();
    bench.fired("6", ROW);
    bench.fired("10", &[("19.0", "thick"), ("18.0", "thick")]);
    bench.fired("9", &[("18.5", "thick")]);
    let titles: Vec<String> = bench.findings().windows.into_iter().map(|window| window.title).collect();
    assert_eq!(titles, ["Cone 6, inside", "Cones 9 and 10, inside"]);
}

#[test]
fn the_first_firing_counts_and_a_zone_with_two_glazes_says_nothing() {
    let bench = Bench::with_kiln();
    let pieces = bench.pour(&ROW[..2], &net(""));
    let inside = WeighEntry { piece: pieces[1].clone(), zone: Some(ZoneKind::Inside), ..net("12") };
    bench.save(EditorKind::Glaze, "", &[("name", "Iron red"), ("specific_gravity", "1.48")]);
    let red = bench.studio.buckets(NOW).unwrap().buckets.iter().find(|row| row.glaze == "Iron red").unwrap().id.clone();
    let over = bench.weigh(WeighEntry { bucket: red, ..inside }).entry;
    bench.studio.save(NOW, over).unwrap();
    let first = bench.fire_at("6");
    for piece in &pieces {
        bench.came_out(&first, piece, "inside", "thin");
    }
    let dots = |bench: &Bench| {
        let rows = bench.studio.findings(NOW).unwrap().glazes;
        let views = rows.iter().map(|row| bench.studio.glaze_findings(NOW, &row.id).unwrap());
        views.flat_map(|view| view.windows).flat_map(|window| window.chart.dots).collect::<Vec<_>>()
    };
    let after_the_first = dots(&bench);
    let marks: Vec<Mark> = after_the_first.iter().map(|dot| dot.mark).collect();
    assert_eq!(marks, [Mark::Thin], "the second piece has two glazes inside");
    bench.studio.assess(NOW, &first, &pieces[0], &Assessment::Again { on: true }).unwrap();
    let later = NOW.at(NOW.unix_ms + DAY_MS);
    let more = WeighEntry { piece: pieces[0].clone(), zone: Some(ZoneKind::Inside), ..net("9") };
    bench.studio.save(later, bench.studio.weigh(later, Some(more)).unwrap().entry).unwrap();
    assert_eq!(dots(&bench), after_the_first, "a coat that was put on after the firing was not in it");
    let second = bench.studio.save_record(later, &editor(EditorKind::Firing, "", &[("cone", "6")])).unwrap().id;
    bench.studio.load(later, &second, &pieces[..1], 0).unwrap();
    bench.came_out(&second, &pieces[0], "inside", "thick");
    assert_eq!(dots(&bench), after_the_first);
}

#[test]
fn faults_are_counted_on_each_side_of_the_window() {
    let bench = Bench::with_kiln();
    let (firing, pieces) = bench.fired("6", ROW);
    for piece in &pieces[7..] {
        bench.studio.assess(NOW, &firing, piece, &Assessment::Fault { fault: "running".to_owned(), on: true }).unwrap();
    }
    let faults = &bench.findings().windows[0].faults;
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].label, "Runs");
    // Wilson's interval of 2 of 2, as statsmodels has it: 34.2 to 100%.
    assert!(faults[0].value.contains("2 of 2 (34 to 100%) above the window, 0 of "), "{}", faults[0].value);
    assert!(!faults[0].value.contains("because"), "{}", faults[0].value);
    let chart = bench.findings().windows[0].fault_chart.clone().unwrap();
    assert_eq!((chart.title.as_str(), chart.up[0].words.as_str()), ("Runs", "Above"));
    assert!(chart.words.contains("2 of 2 (34 to 100%)"), "{}", chart.words);
    let above: Vec<_> = chart.lines.iter().filter(|line| line.spots[0].y == chart.up[0].at).collect();
    assert!((above[0].spots[0].x - 0.342).abs() < 1e-3 && (above[0].spots[1].x - 1.0).abs() < 1e-3, "{above:?}");
}

#[test]
fn findings_are_said_in_the_users_units() {
    let bench = Bench::with_kiln();
    bench.fired("6", ROW);
    let units = [("mass", "ounce"), ("area", "square_inch"), ("decimal", "comma")];
    bench.studio.save_record(NOW, &editor(EditorKind::Preference, "", &units)).unwrap();
    let view = bench.findings();
    assert!(view.windows[0].words.starts_with("Right between 1,0"), "{}", view.windows[0].words);
    assert_eq!(view.windows[0].chart.across_title, "Laydown, oz per 100 in²");
    assert!(view.windows[0].chart.across.iter().all(|tick| tick.words.contains(',')), "{:?}", view.windows[0].chart);
}

#[test]
fn no_finding_says_that_a_glaze_is_safe() {
    let bench = Bench::with_kiln();
    bench.fired("6", ROW);
    let said = format!("{:?}{:?}", bench.findings(), bench.studio.findings(NOW).unwrap());
    assert!(!said.contains("safe") && said.contains("Only a laboratory test can tell"));
}
