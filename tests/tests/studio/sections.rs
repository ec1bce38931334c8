//! What a glaze's page says beside windows: drift, sizes, sets and use.

use laydown_app::{EditorEntry, EditorKind, FindingsSection, Mark, Stroke, StudioError, WeighEntry};
use quick_xml::escape::unescape;
use quick_xml::events::Event;
use quick_xml::reader::Reader;

use crate::{Bench, DAY_MS, NOW, editor, leading_number, net};

/// Ten pots in order on the small mug, which holds 250 ml.
const IN_ORDER: [(&str, &str); 10] = [
    ("13.6", "thin"),
    ("14.4", "thin"),
    ("15.2", "thin"),
    ("16.2", "right"),
    ("17.0", "right"),
    ("17.8", "right"),
    ("18.6", "right"),
    ("19.4", "right"),
    ("20.6", "thick"),
    ("21.8", "thick"),
];

const MINUTE_MS: i64 = 60_000;

impl Bench {
    /// What is on the piece's foot.
    fn code(&self, piece: &str) -> String {
        self.studio.piece(NOW, piece).unwrap().title.rsplit(", ").next().unwrap().to_owned()
    }

    fn section(&self, title: &str) -> Option<FindingsSection> {
        self.findings().sections.into_iter().find(|section| section.title.starts_with(title))
    }

    /// Weighs coats that are so far off their aim, a minute after one another from `minute` on.
    fn poured_off(&self, entry: &WeighEntry, minute: i64, off: &[f64]) {
        let aim = self.aim(entry.clone());
        for (at, off) in off.iter().enumerate() {
            let now = NOW.at(NOW.unix_ms + (minute + at as i64) * MINUTE_MS);
            let text = format!("{:.1}", aim * (1.0 + off));
            let entry = self.studio.weigh(now, Some(WeighEntry { net: text, ..entry.clone() })).unwrap().entry;
            self.studio.save(now, entry).unwrap();
        }
    }
}

const STEADY: [f64; 8] = [0.01, -0.02, 0.02, -0.01, 0.0, 0.01, -0.01, 0.0];

#[test]
fn a_drift_is_said_until_it_is_answered_with_what_was_new_near_it() {
    let bench = Bench::with_kiln();
    bench.poured_off(&net(""), 0, &STEADY[..7]);
    assert_eq!(bench.section("Coats against aims"), None, "seven are too few");
    bench.poured_off(&net(""), 7, &STEADY[7..]);
    let steady = bench.section("Coats against aims").unwrap();
    assert!(steady.words.ends_with("They keep to the aim.") && steady.answer.is_empty(), "{steady:?}");

    // A new bucket of the same glaze, and coats run over.
    let glaze = bench.first_glaze();
    let pail = bench.save(EditorKind::Bucket, &glaze, &[("name", "Grey pail")]);
    bench.save(EditorKind::Check, &pail, &[("way", "typed"), ("typed", "1.45")]);
    let entry = WeighEntry { bucket: pail, ..net("") };
    bench.poured_off(&entry, 8, &[0.06, 0.05, 0.07, 0.06, 0.06]);
    let view = bench.findings();
    let drift = &view.sections[0];
    assert_eq!(drift.title, "Coats against aims", "it comes first");
    assert!(drift.words.starts_with("Starting today: 5 coats average 6% over the aim. New around"), "{}", drift.words);
    assert!(drift.words.contains("New around then: bucket Grey pail"), "{}", drift.words);
    assert!(!drift.words.contains("because") && drift.words.contains("Check the bucket's SG"), "{}", drift.words);
    let chart = drift.chart.as_ref().unwrap();
    assert_eq!((chart.dots.len(), &chart.words), (13, &drift.words));
    let began = chart.lines.iter().find(|line| line.stroke == Stroke::Edge).unwrap();
    assert!((began.spots[0].x - 8.0 / 13.0).abs() < 1e-9, "{began:?}");
    assert!(bench.studio.findings(NOW).unwrap().glazes[0].detail.starts_with("Starting today: 5 coats"));

    // It holds although coats come back to the aim.
    for minute in [13, 21, 29, 37] {
        bench.poured_off(&entry, minute, &STEADY);
    }
    let held = bench.section("Coats against aims").unwrap().words;
    assert!(held.contains("% over the aim. They have been back on the aim since. New around then"), "{held}");
    let later = NOW.at(NOW.unix_ms + 60 * MINUTE_MS);
    let before = bench.dump();
    let answered = bench.studio.answer_drift(later, &glaze).unwrap();
    assert_eq!(bench.section("Coats against aims"), None, "nothing since then");
    bench.studio.undo(later, &answered.undo).unwrap();
    assert_eq!(bench.dump(), before);
    assert!(!bench.section("Coats against aims").unwrap().answer.is_empty());
    bench.studio.answer_drift(later, &glaze).unwrap();
    bench.poured_off(&entry, 61, &STEADY);
    assert!(bench.section("Coats against aims").unwrap().words.ends_with("They keep to the aim."));
    let unknown = "01890000-0000-7000-8000-000000000000";
    assert!(matches!(bench.studio.answer_drift(later, unknown), Err(StudioError::Missing { .. })));
}

#[test]
fn coats_that_run_short_with_nothing_new_say_so() {
    let bench = Bench::with_kiln();
    bench.poured_off(&net(""), 0, &STEADY);
    bench.poured_off(&net(""), 8, &[-0.06, -0.05, -0.07, -0.06, -0.06]);
    let words = bench.section("Coats against aims").unwrap().words;
    assert!(
        words.starts_with("Starting today: 5 coats average 6% short of the aim. Nothing new around then"),
        "{words}"
    );
}

#[test]
fn a_size_that_was_not_glazed_yet_has_an_aim_from_all_pots_which_is_that_of_weigh() {
    let bench = Bench::with_kiln();
    bench.fired("6", &IN_ORDER[..7]);
    assert_eq!(bench.section("Sizes"), None, "seven pots are too few");
    bench.fired("6", &IN_ORDER[7..]);
    let alone = bench.section("Sizes").unwrap();
    assert_eq!(alone.title, "Sizes: straight mug, inside");
    assert_eq!(alone.words, "From 10 fired pots of this shape, for today's bucket.");
    assert!(alone.lines[0].label.starts_with("Next size, 300 ml"), "{:?}", alone.lines);

    let small = bench.aim(net(""));
    let large = [("name", "Large mug"), ("class", "cylinder_mug"), ("capacity", "450 ml")];
    let form = bench.save(EditorKind::Form, "", &large);
    bench.save(EditorKind::Form, "", &[("name", "Bowl"), ("class", "deep_bowl"), ("capacity", "450 ml")]);
    let sizes = bench.section("Sizes").unwrap();
    let [line] = sizes.lines.as_slice() else { panic!("{:?}", sizes.lines) };
    let target = bench.weigh(WeighEntry { form, ..net("") }).target.unwrap();
    assert_eq!(line.label, "Large mug, 450 ml");
    assert!(line.value.starts_with(&format!("{} (", target.wet)), "{} {}", line.value, target.wet);
    // The domain's rule: insides of a class grow with what they hold to two thirds.
    let ratio = leading_number(&target.wet) / small;
    assert!((ratio - (450.0f64 / 250.0).powf(2.0 / 3.0)).abs() < 0.02, "{ratio}");

    let chart = sizes.chart.unwrap();
    assert_eq!((chart.dots.len(), chart.lines.len()), (10, 3));
    assert_eq!(chart.dots.iter().filter(|dot| dot.mark == Mark::Right).count(), 5);
    let [low, high, aim] = chart.lines.as_slice() else { unreachable!() };
    for at in 0..aim.spots.len() {
        assert!(high.spots[at].y < aim.spots[at].y && aim.spots[at].y < low.spots[at].y, "{at}");
    }
    assert!(chart.words.contains("at 300 ml ") && chart.across_title == "Holds, ml", "{}", chart.words);
    assert!(chart.up.iter().all(|tick| tick.words.ends_with(" g")), "{:?}", chart.up);
}

#[test]
fn the_pieces_that_match_best_are_named_and_the_next_ones_aim() {
    let bench = Bench::with_kiln();
    let codes = |weights: &[&str]| -> Vec<String> {
        let saved = weights.iter().map(|wet| bench.studio.save(NOW, bench.weigh(net(wet)).entry).unwrap().id);
        saved.map(|id| bench.studio.coat(NOW, &id).unwrap().piece).map(|piece| bench.code(&piece)).collect()
    };
    let waiting = codes(&["20.6", "18.2", "19.4", "19.5"]);
    assert!(!format!("{:?}", bench.section("Sets")).contains("Best 4"), "four are no choice");
    let more = codes(&["19.3", "19.6"]);
    let sets = bench.section("Sets that match").unwrap();
    assert_eq!(sets.lines[0].label, "Waiting: Small mug, inside");
    let four = [&more[0], &waiting[2], &waiting[3], &more[1]].map(String::as_str).join(", ");
    // 19.6 over 19.3 g.
    assert_eq!(sets.lines[0].value, format!("Best 4, within 1.6%: {four}. Next piece to match: 19.4 g."));

    // Once they are fired, those that came out right are matched.
    let firing = bench.fire_at("6");
    let pieces = bench.studio.firing(NOW, &firing).unwrap().pieces;
    for placed in &pieces {
        bench.came_out(&firing, &placed.piece, "inside", "right");
    }
    let fired = bench.section("Sets that match").unwrap();
    assert_eq!(fired.lines[0].label, "Came out right: Small mug, inside");
    assert!(fired.lines[0].value.contains(&four), "{:?}", fired.lines);
}

#[test]
fn what_is_used_what_is_left_and_what_to_mix() {
    let bench = Bench::with_kiln();
    assert_eq!(bench.section("Use"), None);
    let glaze = bench.first_glaze();
    let small = bench.save(EditorKind::Bucket, &glaze, &[("name", "Small pail"), ("volume", "1000 ml")]);
    bench.save(EditorKind::Check, &small, &[("way", "typed"), ("typed", "1.45")]);
    let entry = WeighEntry { bucket: small, ..net("20.0") };
    for week in 0..3 {
        for _ in 0..5 {
            let now = NOW.at(NOW.unix_ms + week * 7 * DAY_MS);
            bench.studio.save(now, bench.studio.weigh(now, Some(entry.clone())).unwrap().entry).unwrap();
        }
    }
    let then = NOW.at(NOW.unix_ms + 14 * DAY_MS);
    let view = bench.studio.glaze_findings(then, &glaze).unwrap();
    let used = view.sections.into_iter().find(|section| section.title == "Use").unwrap();
    assert_eq!(used.lines[0].value, "150 g wet, from 15 coats in the last 8 weeks.");
    // 1,450 g less 300 g; two thirds of it are to be used, so 667 g of them are left, or 33 coats of 20 g. By Brongniart
    // (density 2.6, SG 1.45) 50.4% of what was taken is powder.
    let [_, pail] = used.lines.as_slice() else { panic!("{:?}", used.lines) };
    assert_eq!(pail.label, "Small pail");
    assert!(
        pail.value.starts_with("1150 g left: about 33 more coats until a third is left to dip into."),
        "{}",
        pail.value
    );
    assert!(pail.value.contains("To fill it up: 151 g powder and 149 g water."), "{}", pail.value);
}

#[test]
fn hands_are_told_apart_only_where_names_are_written_down() {
    let bench = Bench::with_kiln();
    bench.poured_off(&net(""), 0, &STEADY);
    assert_eq!(bench.section("Hands"), None);
    let glazes = |name: &str| {
        bench.studio.save_record(NOW, &editor(EditorKind::Preference, "", &[("hand", name)])).unwrap();
    };
    let fields = |bench: &Bench| {
        let coat = bench.weigh(net("")).recent[0].id.clone();
        let entry = EditorEntry { id: coat, ..editor(EditorKind::Coat, "", &[]) };
        let fields = bench.studio.editor(NOW, &entry).unwrap().fields;
        fields.into_iter().map(|field| (field.key, field.text)).collect::<Vec<_>>()
    };
    assert!(fields(&bench).iter().all(|(key, _)| key != "hand"), "nobody is asked who writes no names down");
    glazes("Ana");
    assert!(bench.says("Glazed by Ana."));
    bench.poured_off(&net(""), 8, &[0.05, 0.05, 0.05]);
    // Remembered for the run, until it is another's turn.
    assert!(fields(&bench).contains(&("hand".to_owned(), "Ana".to_owned())));
    glazes("Bo");
    bench.poured_off(&net(""), 11, &[-0.1, 0.1]);
    glazes("");
    assert!(!bench.says("Glazed by"));
    let hands = bench.section("Hands").unwrap();
    let said: Vec<(&str, &str)> = hands.lines.iter().map(|line| (line.label.as_str(), line.value.as_str())).collect();
    assert_eq!(said[0].0, "Ana");
    assert!(said[0].1.starts_with("3 coats, average 5% over the aim. Standard deviation 0."), "{said:?}");
    // 18.4 and 22.4 g: the logarithm of their ratio over the square root of two.
    assert!(said[1].0 == "Bo" && said[1].1.ends_with("Standard deviation 13.9%."), "{said:?}");
}

/// Names of a potter's own may hold what XML reads as its own.
const ODD: &str = "Ash & \"white\" <b> ]]> \u{7}";

#[test]
fn all_charts_of_a_glaze_are_one_svg_picture() {
    let bench = Bench::with_kiln();
    bench.fired("6", &IN_ORDER);
    let glaze = bench.first_glaze();
    let named = EditorEntry { id: glaze.clone(), ..editor(EditorKind::Glaze, "", &[("name", ODD)]) };
    bench.studio.save_record(NOW, &named).unwrap();
    let into = bench.folder.path().join("charts.svg");
    bench.studio.write_charts(NOW, &glaze, &into).unwrap();
    let svg = std::fs::read_to_string(&into).unwrap();

    let (mut groups, mut dots, mut words, mut open) = (0, 0, String::new(), 0);
    let mut reader = Reader::from_str(&svg);
    loop {
        match reader.read_event().unwrap() {
            Event::Start(tag) => {
                open += 1;
                groups += usize::from(tag.name().as_ref() == "g");
                for attribute in tag.attributes() {
                    unescape(&attribute.unwrap().value).unwrap();
                }
            }
            Event::Empty(tag) => {
                dots += usize::from(tag.name().as_ref() == "circle");
                for attribute in tag.attributes() {
                    let attribute = attribute.unwrap();
                    let value = unescape(&attribute.value).unwrap();
                    assert!(!value.contains("NaN") && !value.contains("inf"), "{value}");
                }
            }
            Event::End(_) => open -= 1,
            Event::Text(text) => words.push_str(&text),
            Event::GeneralRef(name) => match &*name {
                "amp" => words.push('&'),
                "lt" => words.push('<'),
                "gt" => words.push('>'),
                "quot" => words.push('"'),
                other => panic!("&{other};"),
            },
            Event::Eof => break,
            _ => {}
        }
    }
    assert_eq!(open, 0);
    let view = bench.findings();
    let charts = view.windows.len() + view.sections.iter().filter(|section| section.chart.is_some()).count();
    assert_eq!((charts, groups), (3, 3), "the window, the sizes and the aims");
    // Five of ten came out right, in two charts; ten coats against their aims; three in what stands for what.
    assert_eq!(dots, 5 + 5 + 10 + 3, "{svg}");
    assert!(words.contains("Ash & \"white\" <b> ]]>") && words.contains("Holds, ml"), "{words}");
    let unknown = "01890000-0000-7000-8000-000000000000";
    assert!(matches!(bench.studio.write_charts(NOW, unknown, &into), Err(StudioError::Missing { .. })));
    assert!(bench.studio.write_charts(NOW, &glaze, &bench.folder.path().join("no/such/folder.svg")).is_err());
}
