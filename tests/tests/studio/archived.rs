//! What was archived has a list, and comes back with what went with it.

use laydown_app::{ArchivedRow, EditorKind};

use crate::{Bench, NOW};

impl Bench {
    fn archived(&self) -> Vec<(String, Vec<ArchivedRow>)> {
        let sections = self.studio.archived(NOW).unwrap().sections;
        sections.into_iter().map(|section| (section.title, section.rows)).collect()
    }

    fn bring_back(&self, title: &str) -> String {
        let rows: Vec<ArchivedRow> = self.archived().into_iter().flat_map(|(_, rows)| rows).collect();
        let row = rows.iter().find(|row| row.title == title).unwrap_or_else(|| panic!("{title}: {rows:?}"));
        self.studio.unarchive(NOW, row.kind, &row.id).unwrap().undo
    }
}

#[test]
fn what_was_archived_is_listed_and_comes_back_whole() {
    let (bench, pieces) = Bench::glazed(2);
    assert_eq!(bench.studio.archived(NOW).unwrap().nothing, "Nothing is archived.");
    let before = bench.dump();
    let glaze = bench.studio.findings(NOW).unwrap().glazes[0].id.clone();
    let firing = bench.firings()[0].clone();
    bench.studio.load(NOW, &firing, &pieces, 0).unwrap();
    let spare = bench.save(EditorKind::Bucket, &glaze, &[("name", "Spare")]);
    bench.studio.remove(NOW, EditorKind::Bucket, &spare).unwrap();
    bench.studio.remove(NOW, EditorKind::Glaze, &glaze).unwrap();
    bench.studio.remove(NOW, EditorKind::Firing, &firing).unwrap();
    assert!(bench.studio.buckets(NOW).unwrap().buckets.is_empty() && bench.firings().is_empty());
    let listed: Vec<(String, usize)> = bench.archived().into_iter().map(|(title, rows)| (title, rows.len())).collect();
    let expected = [("Glazes", 1), ("Buckets", 2), ("Firings", 1)].map(|(title, rows)| (title.to_owned(), rows));
    assert_eq!(listed, expected);
    let row = &bench.archived()[0].1[0];
    assert_eq!((row.title.as_str(), row.detail.as_str()), ("Ash white", "Archived 10:46, this phone"));

    // A glaze brings the buckets that went with it, not the one that was archived by itself before.
    bench.bring_back("Ash white");
    assert_eq!(bench.studio.buckets(NOW).unwrap().buckets.len(), 1);
    let undo = bench.bring_back("Firing 1: cone 6, Garden kiln");
    assert_eq!(bench.firing(&firing).pieces.len(), 2, "with its load");
    bench.studio.undo(NOW, &undo).unwrap();
    assert!(bench.firings().is_empty());
    bench.bring_back("Firing 1: cone 6, Garden kiln");
    // A bucket is of no use without its glaze.
    bench.studio.remove(NOW, EditorKind::Glaze, &glaze).unwrap();
    bench.bring_back("Ash white, Spare");
    assert!(bench.studio.buckets(NOW).unwrap().buckets.iter().any(|row| row.id == spare));
    assert!(bench.studio.unarchive(NOW, EditorKind::Preference, &glaze).is_err());
    assert!(bench.studio.unarchive(NOW, EditorKind::Form, &glaze).is_err());
    assert_ne!(bench.dump(), before);
}
