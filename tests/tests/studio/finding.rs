//! Finding pieces by the beginning of a code, a rating, an answer, a note, among control pieces; all of them, page by page.

use laydown_app::{Assessment, EditorKind, StudioError, Value};

use crate::{Bench, NOW, editor, net};

impl Bench {
    fn found_by(&self, wanted: &[(&str, &str)]) -> Vec<String> {
        let mut found: Vec<String> = self.find(wanted).unwrap().pieces.into_iter().map(|piece| piece.id).collect();
        found.sort();
        found
    }
}

#[test]
fn pieces_are_found_by_rating_answer_note_and_control() {
    let (bench, pieces) = Bench::glazed(4);
    let firing = bench.firings()[0].clone();
    bench.studio.load(NOW, &firing, &pieces, 0).unwrap();
    bench.studio.advance(NOW, &firing).unwrap();
    let say = |piece: usize, look: Assessment| bench.say(&firing, &pieces[piece], look);
    say(0, Assessment::Liking { stars: 5 });
    say(1, Assessment::Liking { stars: 3 });
    say(1, Assessment::Thickness { zone: "inside".into(), thickness: "thick".into() });
    say(2, Assessment::Note { text: "Ask Élodie about the Ash".into() });
    say(3, Assessment::Control { on: true });
    let one = |piece: usize| vec![pieces[piece].clone()];
    assert_eq!(bench.found_by(&[("liking", "5")]), one(0));
    assert_eq!(bench.found_by(&[("answer", "thick")]), one(1));
    assert_eq!(bench.found_by(&[("answer", "thick"), ("liking", "5")]), Vec::<String>::new());
    assert_eq!(bench.found_by(&[("note", "ÉLODIE")]), one(2));
    assert_eq!(bench.found_by(&[("control", "yes")]), one(3));
    let row = bench.find(&[("liking", "3")]).unwrap().pieces.remove(0);
    assert!(
        row.detail.ends_with("inside thick, rated 3 of 5") && row.photo.is_empty() && !row.outline.is_empty(),
        "{row:?}"
    );
    bench.studio.save_photo(NOW, &pieces[0], &firing, &bench.photograph("one.jpg")).unwrap();
    assert!(std::path::Path::new(&bench.find(&[("liking", "5")]).unwrap().pieces[0].photo).is_file());
    for wrong in [("liking", "many"), ("answer", "fat")] {
        assert!(bench.find(&[wrong]).is_err(), "{wrong:?}");
    }
    for key in ["liking", "answer", "control"] {
        assert!(bench.find(&[]).unwrap().filters.iter().any(|filter| filter.key == key && filter.rows.len() > 1));
    }
}

#[test]
fn the_first_letters_of_a_code_narrow() {
    let (bench, pieces) = Bench::glazed(3);
    let code = |piece: &str| bench.studio.piece(NOW, piece).unwrap().title.rsplit(' ').next().unwrap().to_owned();
    let own = code(&pieces[0]);
    for letters in 1..=own.len() {
        let begun = &own[..letters];
        let mut expected: Vec<String> = pieces.iter().filter(|piece| code(piece).starts_with(begun)).cloned().collect();
        expected.sort();
        assert_eq!(bench.found_by(&[("code", &begun.to_lowercase())]), expected, "{begun}");
    }
    let firing = bench.firings()[0].clone();
    let teapot = editor(EditorKind::Piece, &firing, &[("name", "Teapot"), ("code", "B 17")]);
    let teapot = bench.studio.save_record(NOW, &teapot).unwrap().id;
    assert_eq!(bench.found_by(&[("code", "b1")]), vec![teapot.clone()], "also one that was never weighed");
    assert!(bench.found_by(&[]).contains(&teapot));
    assert_eq!(bench.found_by(&[("glazed", "before")]), Vec::<String>::new());
    assert!(matches!(bench.find(&[("code", "3O79A")]), Err(StudioError::Refused { .. })));
}

#[test]
fn all_pieces_are_listed_page_by_page() {
    let bench = Bench::set_up();
    for _ in 0..130 {
        bench.studio.save(NOW, bench.weigh(net("19.6")).entry).unwrap();
    }
    let wanted: Vec<Value> = Vec::new();
    let (mut limit, mut sizes) = (0, Vec::new());
    loop {
        let view = bench.studio.find_pieces(NOW, &wanted, limit).unwrap();
        sizes.push(view.pieces.len());
        limit = view.more;
        if limit == 0 {
            assert_eq!(view.found, "130 pieces");
            break;
        }
        assert!(view.found.starts_with("The ") && view.found.ends_with("Scroll for more."), "{}", view.found);
    }
    assert_eq!(sizes, [60, 120, 130]);
}
