//! What another phone archived, removed or renamed meanwhile is said once, and where two phones disagree, the potter is asked.

use std::sync::Arc;

use laydown_app::{
    ClashAnswer, EditorEntry, EditorKind, MeanwhileView, Now, Studio, SyncRequest, Value, WeighEntry, sync_now,
};
use laydown_sync::{Connection, RemoteConfig, RetryPolicy};
use tempfile::TempDir;

const START: i64 = 1_795_600_000_000;

/// A studio on two phones that meet in a folder.
struct Two {
    _folders: [TempDir; 3],
    tablet: Studio,
    phone: Studio,
    way: Connection,
    clock: std::cell::Cell<i64>,
}

impl Two {
    fn new() -> Two {
        let folders = [(); 3].map(|()| tempfile::tempdir().unwrap());
        let open = |folder: &TempDir| Studio::open(&folder.path().join("studio.laydown"), at(START)).unwrap();
        let (tablet, phone) = (open(&folders[0]), open(&folders[1]));
        let place = RemoteConfig::Folder(folders[2].path().to_owned());
        let way = Connection::open(&place, None, RetryPolicy::default()).unwrap();
        let two = Two { _folders: folders, tablet, phone, way, clock: std::cell::Cell::new(START) };
        for (studio, name) in [(&two.tablet, "tablet by the sink"), (&two.phone, "phone")] {
            two.save(studio, EditorKind::SyncLocation, "", &[("kind", "folder"), ("folder", "Shelf\nhandle")]);
            two.save(studio, EditorKind::Preference, "", &[("phone", name)]);
        }
        let mug = [("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")];
        two.save(&two.phone, EditorKind::Form, "", &mug);
        two.save(&two.phone, EditorKind::Glaze, "", &[("name", "Ash white"), ("specific_gravity", "1.45")]);
        two.save(&two.phone, EditorKind::Scale, "", &[("name", "Bench scale"), ("capacity", "2000"), ("step", "0.1")]);
        two.meet();
        two
    }

    /// A later moment at each call.
    fn now(&self) -> Now {
        self.clock.set(self.clock.get() + 60_000);
        at(self.clock.get())
    }

    fn save(&self, studio: &Studio, kind: EditorKind, id: &str, values: &[(&str, &str)]) -> String {
        let values = values.iter().map(|(key, text)| Value { key: (*key).into(), text: (*text).into() }).collect();
        let entry = EditorEntry { kind, id: id.into(), subject: String::new(), values, draft: String::new() };
        studio.save_record(self.now(), &entry).unwrap().id
    }

    fn sync(&self, studio: &Studio) {
        let folder = Some(&self.way as &dyn laydown_sync::RemoteStore);
        let how =
            SyncRequest { secrets: &[], metered: false, check: false, folder, client: None, stop: Arc::default() };
        sync_now(studio, self.now(), &how, &mut |_| ()).unwrap();
    }

    /// Each sends, then each has what the other sent.
    fn meet(&self) {
        self.sync(&self.tablet);
        self.sync(&self.phone);
        self.sync(&self.tablet);
    }

    fn named(&self, kind: EditorKind) -> (String, String) {
        let sections = self.phone.setup(self.now()).unwrap().sections;
        let row = sections.into_iter().find(|section| section.editor == kind).unwrap().rows.remove(0);
        (row.id, row.title)
    }

    fn said(&self, studio: &Studio) -> MeanwhileView {
        studio.meanwhile(self.now()).unwrap()
    }
}

fn at(unix_ms: i64) -> Now {
    Now { unix_ms, utc_offset_s: 0 }
}

#[test]
fn what_was_archived_or_renamed_elsewhere_is_said_once() {
    let two = Two::new();
    for studio in [&two.tablet, &two.phone] {
        let said = two.said(studio);
        assert!(said.news.is_empty() && said.clashes.is_empty(), "a phone's past is no news: {said:?}");
    }
    let (form, scale) = (two.named(EditorKind::Form).0, two.named(EditorKind::Scale).0);
    two.save(&two.tablet, EditorKind::Form, &form, &[("name", "Breakfast mug")]);
    two.tablet.remove(two.now(), EditorKind::Scale, &scale).unwrap();
    // What came and went on the tablet alone is missed by nobody.
    let jar =
        two.save(&two.tablet, EditorKind::Vessel, "", &[("name", "Jar"), ("empty", "100"), ("with_water", "350")]);
    two.tablet.remove(two.now(), EditorKind::Vessel, &jar).unwrap();
    two.meet();
    let said = two.said(&two.phone);
    assert_eq!(
        said.news,
        [
            "Form: Breakfast mug: it was Small mug until tablet by the sink renamed it.",
            "Scale: Bench scale: archived on tablet by the sink. You find it under Archived.",
        ]
    );
    assert_eq!(
        two.phone.setup(two.now()).unwrap().meanwhile,
        "2 things were archived, removed or renamed on other phones"
    );
    assert_eq!(two.said(&two.tablet).news, Vec::<String>::new(), "its own doing is no news");
    two.phone.meanwhile_read(two.now()).unwrap();
    two.meet();
    assert_eq!(two.said(&two.phone).nothing, "Nothing new from your other phones.");
    // Something that is undone there is said too.
    let body =
        two.save(&two.phone, EditorKind::Body, "", &[("name", "Stoneware"), ("to_bisque", "6"), ("to_fired", "12")]);
    two.meet();
    two.tablet.remove(two.now(), EditorKind::Body, &body).unwrap();
    two.meet();
    assert!(two.said(&two.phone).news[0].starts_with("Body: Stoneware: archived on"), "{:?}", two.said(&two.phone));
}

#[test]
fn where_two_phones_disagree_one_is_asked_and_nothing_is_lost() {
    let two = Two::new();
    let (form, _) = two.named(EditorKind::Form);
    let weigh = WeighEntry { net: "19.6".into(), ..WeighEntry::default() };
    let coat = two.phone.save(two.now(), two.phone.weigh(two.now(), Some(weigh)).unwrap().entry).unwrap().id;
    two.meet();
    // Neither has heard of the other.
    two.save(&two.phone, EditorKind::Form, &form, &[("name", "Mug")]);
    two.save(&two.phone, EditorKind::Coat, &coat, &[("net", "19.8")]);
    two.save(&two.tablet, EditorKind::Form, &form, &[("name", "Beaker")]);
    two.save(&two.tablet, EditorKind::Coat, &coat, &[("net", "20.4")]);
    two.sync(&two.phone);
    two.sync(&two.tablet);
    two.sync(&two.phone);
    for studio in [&two.phone, &two.tablet] {
        let said = two.said(studio);
        let titles: Vec<&str> = said.clashes.iter().map(|clash| clash.title.split(':').next().unwrap()).collect();
        assert_eq!(titles.len(), 2, "{said:?}");
        assert!(titles.contains(&"Form") && titles.contains(&"Coat"), "{titles:?}");
    }
    let clash = |studio: &Studio, of: &str| {
        two.said(studio).clashes.into_iter().find(|clash| clash.title.starts_with(of)).unwrap()
    };
    let weight = clash(&two.phone, "Coat");
    assert_eq!((weight.ours.as_str(), weight.ours_counts), ("This phone: Wet weight: 19.8 g", false));
    assert_eq!(weight.theirs, "tablet by the sink: Wet weight: 20.4 g");
    // Both: the weight that counts stays, and the note says the other.
    two.phone.settle_clash(two.now(), &weight.id, ClashAnswer::Both).unwrap();
    let lines = two.phone.coat(two.now(), &coat).unwrap().lines;
    let lines = lines.iter().map(|line| line.value.as_str()).collect::<Vec<_>>().join("|");
    assert!(lines.contains("20.4 g") && lines.contains("The other phone said: Wet weight: 19.8 g."), "{lines}");
    // This phone's name: it counts again, on both.
    let name = clash(&two.phone, "Form");
    assert_eq!(name.both, "The name becomes Mug / Beaker.");
    let undo = two.phone.settle_clash(two.now(), &name.id, ClashAnswer::Ours).unwrap().undo;
    assert_eq!(two.named(EditorKind::Form).1, "Mug");
    two.phone.undo(two.now(), &undo).unwrap();
    assert_eq!(two.named(EditorKind::Form).1, "Beaker");
    assert!(two.said(&two.phone).clashes.is_empty(), "answered");
    assert!(two.phone.settle_clash(two.now(), &name.id, ClashAnswer::Theirs).is_err());
    // On the other phone, both names.
    let name = clash(&two.tablet, "Form");
    two.tablet.settle_clash(two.now(), &name.id, ClashAnswer::Both).unwrap();
    two.meet();
    assert_eq!(two.named(EditorKind::Form).1, "Beaker / Mug");
}

#[test]
fn what_was_changed_after_hearing_of_the_other_is_no_disagreement() {
    let two = Two::new();
    let (form, _) = two.named(EditorKind::Form);
    two.save(&two.phone, EditorKind::Form, &form, &[("name", "Mug")]);
    two.meet();
    two.save(&two.tablet, EditorKind::Form, &form, &[("name", "Beaker")]);
    two.meet();
    two.save(&two.phone, EditorKind::Form, &form, &[("name", "Cup")]);
    two.meet();
    assert!(two.said(&two.phone).clashes.is_empty() && two.said(&two.tablet).clashes.is_empty());
}
