// Written by tools/bindings from core/app/i18n: change it there.
// swift-format-ignore-file
import Foundation

/// The few fixed labels, in the first of the phone's languages that is known.
/// Whatever depends on the studio comes in words from the core.
public enum Words {
    /// `app-name`
    public static var appName: String { say(0) }
    /// `tab-weigh`
    public static var tabWeigh: String { say(1) }
    /// `tab-buckets`
    public static var tabBuckets: String { say(2) }
    /// `tab-kiln`
    public static var tabKiln: String { say(3) }
    /// `tab-findings`
    public static var tabFindings: String { say(4) }
    /// `tab-studio`
    public static var tabStudio: String { say(5) }
    /// `back`
    public static var back: String { say(6) }
    /// `try-again`
    public static var tryAgain: String { say(7) }
    /// `undo`
    public static var undo: String { say(8) }
    /// `do-again`
    public static var doAgain: String { say(9) }
    /// `other-build`
    public static var otherBuild: String { say(10) }
    /// `library-not-loaded`
    public static var libraryNotLoaded: String { say(11) }
    /// `share-report`
    public static var shareReport: String { say(12) }
    /// `startup-report`
    public static var startupReport: String { say(13) }
    /// `broken`
    public static var broken: String { say(14) }
    /// `form`
    public static var form: String { say(15) }
    /// `glaze`
    public static var glaze: String { say(16) }
    /// `zone`
    public static var zone: String { say(17) }
    /// `scale`
    public static var scale: String { say(18) }
    /// `choose-form`
    public static var chooseForm: String { say(19) }
    /// `choose-glaze`
    public static var chooseGlaze: String { say(20) }
    /// `choose-zone`
    public static var chooseZone: String { say(21) }
    /// `piece-with-coat`
    public static var pieceWithCoat: String { say(22) }
    /// `choose-scale`
    public static var chooseScale: String { say(23) }
    /// `choice-is`
    public static func choiceIs(_ label: some CustomStringConvertible, _ chosen: some CustomStringConvertible) -> String {
        say(24, [label.description, chosen.description])
    }
    /// `add-form`
    public static var addForm: String { say(25) }
    /// `add-glaze`
    public static var addGlaze: String { say(26) }
    /// `add-scale`
    public static var addScale: String { say(27) }
    /// `way-net`
    public static var wayNet: String { say(28) }
    /// `way-two`
    public static var wayTwo: String { say(29) }
    /// `way-is`
    public static func wayIs(_ way: some CustomStringConvertible, _ other: some CustomStringConvertible) -> String {
        say(30, [way.description, other.description])
    }
    /// `right-is`
    public static func rightIs(_ span: some CustomStringConvertible) -> String {
        say(31, [span.description])
    }
    /// `target-is`
    public static func targetIs(_ wet: some CustomStringConvertible, _ span: some CustomStringConvertible, _ source: some CustomStringConvertible) -> String {
        say(32, [wet.description, span.description, source.description])
    }
    /// `nothing-typed`
    public static var nothingTyped: String { say(33) }
    /// `save`
    public static var save: String { say(34) }
    /// `save-as-is`
    public static var saveAsIs: String { say(35) }
    /// `details`
    public static var details: String { say(36) }
    /// `next-field`
    public static func nextField(_ label: some CustomStringConvertible) -> String {
        say(37, [label.description])
    }
    /// `key-delete`
    public static var keyDelete: String { say(38) }
    /// `key-point`
    public static var keyPoint: String { say(39) }
    /// `first-title`
    public static var firstTitle: String { say(40) }
    /// `first-detail`
    public static var firstDetail: String { say(41) }
    /// `existing-studio`
    public static var existingStudio: String { say(42) }
    /// `restore-here`
    public static var restoreHere: String { say(43) }
    /// `restore-here-detail`
    public static var restoreHereDetail: String { say(44) }
    /// `join-here`
    public static var joinHere: String { say(45) }
    /// `join-here-detail`
    public static var joinHereDetail: String { say(46) }
    /// `done`
    public static var done: String { say(47) }
    /// `to-do`
    public static var toDo: String { say(48) }
    /// `control`
    public static var control: String { say(49) }
    /// `take-back`
    public static var takeBack: String { say(50) }
    /// `correct-coat`
    public static var correctCoat: String { say(51) }
    /// `correct-this`
    public static func correctThis(_ coat: some CustomStringConvertible) -> String {
        say(52, [coat.description])
    }
    /// `gauge-none`
    public static var gaugeNone: String { say(53) }
    /// `gauge-inside`
    public static var gaugeInside: String { say(54) }
    /// `gauge-below`
    public static var gaugeBelow: String { say(55) }
    /// `gauge-above`
    public static var gaugeAbove: String { say(56) }
    /// `gauge-guess`
    public static var gaugeGuess: String { say(57) }
    /// `gauge-edge`
    public static var gaugeEdge: String { say(58) }
    /// `check`
    public static var check: String { say(59) }
    /// `thin`
    public static var thin: String { say(60) }
    /// `change`
    public static var change: String { say(61) }
    /// `another-bucket`
    public static var anotherBucket: String { say(62) }
    /// `note-bucket`
    public static var noteBucket: String { say(63) }
    /// `mix-lot`
    public static var mixLot: String { say(64) }
    /// `notebook`
    public static var notebook: String { say(65) }
    /// `needs-check`
    public static var needsCheck: String { say(66) }
    /// `targets-rest-on`
    public static var targetsRestOn: String { say(67) }
    /// `begin-firing`
    public static var beginFiring: String { say(68) }
    /// `add-kiln`
    public static var addKiln: String { say(69) }
    /// `add-kiln-detail`
    public static var addKilnDetail: String { say(70) }
    /// `firings`
    public static var firings: String { say(71) }
    /// `find-pieces`
    public static var findPieces: String { say(72) }
    /// `find-pieces-detail`
    public static var findPiecesDetail: String { say(73) }
    /// `change-firing`
    public static var changeFiring: String { say(74) }
    /// `before-kiln`
    public static var beforeKiln: String { say(75) }
    /// `load-all`
    public static var loadAll: String { say(76) }
    /// `tick-all`
    public static var tickAll: String { say(77) }
    /// `load-ticked`
    public static var loadTicked: String { say(78) }
    /// `which-shelf`
    public static var whichShelf: String { say(79) }
    /// `all-of-them`
    public static func allOfThem(_ count: some CustomStringConvertible) -> String {
        say(80, [count.description])
    }
    /// `one-of-them`
    public static var oneOfThem: String { say(81) }
    /// `move-left`
    public static var moveLeft: String { say(82) }
    /// `move-right`
    public static var moveRight: String { say(83) }
    /// `move-up`
    public static var moveUp: String { say(84) }
    /// `move-down`
    public static var moveDown: String { say(85) }
    /// `take-out`
    public static var takeOut: String { say(86) }
    /// `pieces`
    public static var pieces: String { say(87) }
    /// `earlier-firings`
    public static var earlierFirings: String { say(88) }
    /// `not-yet`
    public static var notYet: String { say(89) }
    /// `yes`
    public static var yes: String { say(90) }
    /// `photograph`
    public static var photograph: String { say(91) }
    /// `from-pictures`
    public static var fromPictures: String { say(92) }
    /// `picture-being-saved`
    public static var pictureBeingSaved: String { say(93) }
    /// `photo-of`
    public static func photoOf(_ number: some CustomStringConvertible, _ count: some CustomStringConvertible) -> String {
        say(94, [number.description, count.description])
    }
    /// `photo-off`
    public static var photoOff: String { say(95) }
    /// `change-piece`
    public static var changePiece: String { say(96) }
    /// `close`
    public static var close: String { say(97) }
    /// `next-piece`
    public static var nextPiece: String { say(98) }
    /// `last-piece`
    public static var lastPiece: String { say(99) }
    /// `previous-piece`
    public static var previousPiece: String { say(100) }
    /// `answer-is`
    public static func answerIs(_ question: some CustomStringConvertible, _ answer: some CustomStringConvertible) -> String {
        say(101, [question.description, answer.description])
    }
    /// `answer-chosen`
    public static func answerChosen(_ question: some CustomStringConvertible, _ answer: some CustomStringConvertible) -> String {
        say(102, [question.description, answer.description])
    }
    /// `fault-chosen`
    public static func faultChosen(_ fault: some CustomStringConvertible) -> String {
        say(103, [fault.description])
    }
    /// `liking`
    public static var liking: String { say(104) }
    /// `faults`
    public static var faults: String { say(105) }
    /// `where-away`
    public static var whereAway: String { say(106) }
    /// `note`
    public static var note: String { say(107) }
    /// `note-hint`
    public static var noteHint: String { say(108) }
    /// `control-piece`
    public static var controlPiece: String { say(109) }
    /// `fire-again`
    public static var fireAgain: String { say(110) }
    /// `as-weighed`
    public static var asWeighed: String { say(111) }
    /// `whole-piece`
    public static var wholePiece: String { say(112) }
    /// `whole-piece-detail`
    public static var wholePieceDetail: String { say(113) }
    /// `fired`
    public static var fired: String { say(114) }
    /// `compare`
    public static var compare: String { say(115) }
    /// `compare-detail`
    public static var compareDetail: String { say(116) }
    /// `beside`
    public static var beside: String { say(117) }
    /// `compare-with`
    public static var compareWith: String { say(118) }
    /// `differs`
    public static func differs(_ label: some CustomStringConvertible) -> String {
        say(119, [label.description])
    }
    /// `left-photo`
    public static var leftPhoto: String { say(120) }
    /// `right-photo`
    public static var rightPhoto: String { say(121) }
    /// `code-on-foot`
    public static var codeOnFoot: String { say(122) }
    /// `code-hint`
    public static var codeHint: String { say(123) }
    /// `note-to-find`
    public static var noteToFind: String { say(124) }
    /// `contact-sheet`
    public static var contactSheet: String { say(125) }
    /// `contact-sheet-detail`
    public static var contactSheetDetail: String { say(126) }
    /// `share-picture`
    public static var sharePicture: String { say(127) }
    /// `share-piece`
    public static var sharePiece: String { say(128) }
    /// `share-piece-detail`
    public static var sharePieceDetail: String { say(129) }
    /// `share-pdf`
    public static var sharePdf: String { say(130) }
    /// `share-charts`
    public static var shareCharts: String { say(131) }
    /// `print`
    public static var print: String { say(132) }
    /// `page-of`
    public static func pageOf(_ number: some CustomStringConvertible, _ count: some CustomStringConvertible) -> String {
        say(133, [number.description, count.description])
    }
    /// `no-photo`
    public static var noPhoto: String { say(134) }
    /// `nobody-prints`
    public static var nobodyPrints: String { say(135) }
    /// `sizes`
    public static var sizes: String { say(136) }
    /// `sizes-detail`
    public static var sizesDetail: String { say(137) }
    /// `known`
    public static var known: String { say(138) }
    /// `choose-known`
    public static var chooseKnown: String { say(139) }
    /// `save-readable`
    public static var saveReadable: String { say(140) }
    /// `recent-changes`
    public static var recentChanges: String { say(141) }
    /// `its-history`
    public static var itsHistory: String { say(142) }
    /// `take-it-back`
    public static var takeItBack: String { say(143) }
    /// `do-it-again`
    public static var doItAgain: String { say(144) }
    /// `devices`
    public static var devices: String { say(145) }
    /// `devices-detail`
    public static var devicesDetail: String { say(146) }
    /// `phones`
    public static var phones: String { say(147) }
    /// `sync-location`
    public static var syncLocation: String { say(148) }
    /// `choose-place`
    public static var choosePlace: String { say(149) }
    /// `change-place`
    public static var changePlace: String { say(150) }
    /// `sync-now`
    public static var syncNow: String { say(151) }
    /// `check-there`
    public static var checkThere: String { say(152) }
    /// `forget-place`
    public static var forgetPlace: String { say(153) }
    /// `forget-place-question`
    public static var forgetPlaceQuestion: String { say(154) }
    /// `forget-place-detail`
    public static var forgetPlaceDetail: String { say(155) }
    /// `forget`
    public static var forget: String { say(156) }
    /// `new-phone`
    public static var newPhone: String { say(157) }
    /// `new-phone-question`
    public static var newPhoneQuestion: String { say(158) }
    /// `new-phone-detail`
    public static var newPhoneDetail: String { say(159) }
    /// `set-up`
    public static var setUp: String { say(160) }
    /// `sync-begins`
    public static var syncBegins: String { say(161) }
    /// `sync-so-far`
    public static func syncSoFar(_ progressed: some CustomStringConvertible) -> String {
        say(162, [progressed.description])
    }
    /// `stop`
    public static var stop: String { say(163) }
    /// `stopping`
    public static var stopping: String { say(164) }
    /// `choose-folder`
    public static var chooseFolder: String { say(165) }
    /// `choose-another-folder`
    public static var chooseAnotherFolder: String { say(166) }
    /// `no-folder`
    public static var noFolder: String { say(167) }
    /// `no-folders-app`
    public static var noFoldersApp: String { say(168) }
    /// `folder-not-allowed`
    public static var folderNotAllowed: String { say(169) }
    /// `show-secret`
    public static var showSecret: String { say(170) }
    /// `hide-secret`
    public static var hideSecret: String { say(171) }
    /// `secret-not-saved`
    public static var secretNotSaved: String { say(172) }
    /// `backup-for-others`
    public static var backupForOthers: String { say(173) }
    /// `backup`
    public static var backup: String { say(174) }
    /// `back-up`
    public static var backUp: String { say(175) }
    /// `send-backup`
    public static var sendBackup: String { say(176) }
    /// `restore`
    public static var restore: String { say(177) }
    /// `by-itself`
    public static var byItself: String { say(178) }
    /// `how-often`
    public static var howOften: String { say(179) }
    /// `backup-folder`
    public static var backupFolder: String { say(180) }
    /// `folder-not-usable`
    public static var folderNotUsable: String { say(181) }
    /// `back-up-there`
    public static var backUpThere: String { say(182) }
    /// `backed-up-there`
    public static var backedUpThere: String { say(183) }
    /// `for-other-programs`
    public static var forOtherPrograms: String { say(184) }
    /// `tables`
    public static var tables: String { say(185) }
    /// `tables-detail`
    public static var tablesDetail: String { say(186) }
    /// `put-file`
    public static var putFile: String { say(187) }
    /// `send-file`
    public static var sendFile: String { say(188) }
    /// `take-in-heading`
    public static var takeInHeading: String { say(189) }
    /// `import-spreadsheet`
    public static var importSpreadsheet: String { say(190) }
    /// `import-intro`
    public static var importIntro: String { say(191) }
    /// `choose-spreadsheet`
    public static var chooseSpreadsheet: String { say(192) }
    /// `choose-another-spreadsheet`
    public static var chooseAnotherSpreadsheet: String { say(193) }
    /// `import-questions`
    public static var importQuestions: String { say(194) }
    /// `import-columns`
    public static var importColumns: String { say(195) }
    /// `import-readings`
    public static var importReadings: String { say(196) }
    /// `import-row-errors`
    public static var importRowErrors: String { say(197) }
    /// `spreadsheet-not-copied`
    public static var spreadsheetNotCopied: String { say(198) }
    /// `backup-working`
    public static var backupWorking: String { say(199) }
    /// `backup-gone`
    public static var backupGone: String { say(200) }
    /// `no-files-app`
    public static var noFilesApp: String { say(201) }
    /// `no-file`
    public static var noFile: String { say(202) }
    /// `file-not-copied`
    public static var fileNotCopied: String { say(203) }
    /// `preferences`
    public static var preferences: String { say(204) }
    /// `preferences-detail`
    public static var preferencesDetail: String { say(205) }
    /// `cautions`
    public static var cautions: String { say(206) }
    /// `cautions-detail`
    public static var cautionsDetail: String { say(207) }
    /// `archived`
    public static var archived: String { say(208) }
    /// `archived-detail`
    public static var archivedDetail: String { say(209) }
    /// `bring-back`
    public static var bringBack: String { say(210) }
    /// `meanwhile`
    public static var meanwhile: String { say(211) }
    /// `keep-ours`
    public static var keepOurs: String { say(212) }
    /// `take-theirs`
    public static var takeTheirs: String { say(213) }
    /// `keep-both`
    public static var keepBoth: String { say(214) }
    /// `what-counts-now`
    public static func whatCountsNow(_ value: some CustomStringConvertible) -> String {
        say(215, [value.description])
    }
    /// `row-add`
    public static var rowAdd: String { say(216) }
    /// `row-away`
    public static func rowAway(_ number: some CustomStringConvertible) -> String {
        say(217, [number.description])
    }
    /// `cell-is`
    public static func cellIs(_ column: some CustomStringConvertible, _ row: some CustomStringConvertible) -> String {
        say(218, [column.description, row.description])
    }
    /// `point-away`
    public static var pointAway: String { say(219) }
    /// `picture-in-work`
    public static var pictureInWork: String { say(220) }
    /// `no-picture`
    public static var noPicture: String { say(221) }
    /// `empty-picture`
    public static var emptyPicture: String { say(222) }
    /// `no-camera`
    public static var noCamera: String { say(223) }
    /// `no-gallery`
    public static var noGallery: String { say(224) }
    /// `picture-not-copied`
    public static var pictureNotCopied: String { say(225) }
    /// `letters`
    public static var letters: String { say(226) }
    /// `digits`
    public static var digits: String { say(227) }
    /// `save-or-throw`
    public static var saveOrThrow: String { say(228) }
    /// `save-or-throw-detail`
    public static var saveOrThrowDetail: String { say(229) }
    /// `throw-away`
    public static var throwAway: String { say(230) }
    /// `stay`
    public static var stay: String { say(231) }
    /// `chosen`
    public static var chosen: String { say(232) }
    /// `note-attention`
    public static func noteAttention(_ note: some CustomStringConvertible) -> String {
        say(233, [note.description])
    }
    /// `note-warning`
    public static func noteWarning(_ note: some CustomStringConvertible) -> String {
        say(234, [note.description])
    }
    /// `camera-refused`
    public static var cameraRefused: String { say(235) }

    /// The languages there are.
    public static let languages = ["en", "de", "es", "fr"]

    /// The one in use: the first of the phone's that is known, else English.
    static let language: Int = {
        for tag in Locale.preferredLanguages {
            let language = tag.split(whereSeparator: { $0 == "-" || $0 == "_" }).first.map(String.init)
            if let found = languages.firstIndex(of: language ?? "") { return found }
        }
        return 0
    }()

    private static func say(_ label: Int, _ arguments: [String] = []) -> String {
        // What is put in stands between these two, by its number.
        let parts = texts[language][label].split(separator: "\u{1}", omittingEmptySubsequences: false)
        return parts.enumerated().map { place, part in
            if place % 2 == 0 { return String(part) }
            guard let number = Int(part), arguments.indices.contains(number) else { return "" }
            return arguments[number]
        }.joined()
    }

    private static let texts: [[String]] = [
        [  // en
            "laydown",
            "Weigh",
            "Buckets",
            "Kiln",
            "Findings",
            "Studio",
            "Back",
            "Try again",
            "Undo",
            "Redo",
            "This install is incomplete. Install laydown again. Nothing was opened or changed.",
            "laydown cannot start on this phone. Your studio was not changed: share the start-up report with whoever gave you the app.",
            "Share start-up report",
            "laydown start-up report",
            "Something went wrong in laydown. Nothing was changed. Try again, or close laydown and open it again.",
            "Form",
            "Glaze, bucket",
            "Zone",
            "Scale",
            "Choose a form",
            "Choose a glaze",
            "Choose a zone or piece",
            "Or a piece that has a coat: the code on its foot",
            "Choose a scale",
            "\u{1}0\u{1}: \u{1}1\u{1}. Tap to change.",
            "Add a form",
            "Add a glaze",
            "Add a scale",
            "After tare",
            "Two weights",
            "How you weigh: \u{1}0\u{1}. Tap to change to: \u{1}1\u{1}.",
            "Target: \u{1}0\u{1}",
            "Aim for \u{1}0\u{1}. \u{1}1\u{1}. \u{1}2\u{1} Tap for more.",
            "Type what the scale shows.",
            "Save",
            "Save as it is",
            "Details",
            "Next: \u{1}0\u{1}",
            "Delete a digit; hold to clear",
            "Decimal mark",
            "Before the first piece",
            "Set up three things, once. Then type the weight and tap Save.",
            "I already have a studio",
            "Restore a backup",
            "From a file, or what another phone sent",
            "Join my other phones",
            "Sync through the folder or server that they use",
            "Done",
            "To do",
            "control piece",
            "Remove this coat",
            "Correct this coat",
            "Correct: \u{1}0\u{1}",
            "Gauge: nothing weighed yet.",
            "Gauge: the reading is inside the target.",
            "Gauge: the reading is below the target.",
            "Gauge: the reading is above the target.",
            "Gauge: the target is a guess. All of the marked span may be right.",
            "Gauge: the reading is on the edge of the target.",
            "Check",
            "Thin",
            "Change",
            "Add another bucket of this glaze",
            "Add a note",
            "Mix a new lot",
            "Notebook",
            "Check it",
            "Targets today are based on",
            "Start a firing",
            "Add a kiln first",
            "Give its shelves, so that you can plan a load.",
            "Firings",
            "Find a piece",
            "By the code on its foot, or by form, glaze, fault or firing",
            "Cone, witness cones, temperature, notes",
            "Before the kiln",
            "Load all waiting pieces",
            "Tick all",
            "Load the ticked pieces",
            "Choose a shelf",
            "All \u{1}0\u{1}",
            "Just one",
            "Move left",
            "Move right",
            "Move up",
            "Move down",
            "Remove from load",
            "Pieces",
            "Earlier firings",
            "Not yet",
            "Yes",
            "Take a photo",
            "Choose a picture on this phone",
            "Saving the picture…",
            "Photo \u{1}0\u{1} of \u{1}1\u{1}. Tap to look closer.",
            "Remove photo",
            "Its name, code and form",
            "Close",
            "Next piece",
            "Back to firing",
            "Previous piece",
            "\u{1}0\u{1}: \u{1}1\u{1}",
            "\u{1}0\u{1}: \u{1}1\u{1}, chosen",
            "\u{1}0\u{1}, chosen",
            "Your rating",
            "Faults",
            "Remove this mark",
            "Note",
            "What you want to remember",
            "Make it a control piece: targets use it",
            "Fire it again: it waits for the next load",
            "As weighed",
            "The whole piece",
            "All its coats, firings and photos",
            "Firings",
            "Compare with another piece",
            "A control piece, or any piece of its form or glaze",
            "Side by side",
            "Compare with",
            "\u{1}0\u{1}, different",
            "Photo of the left piece",
            "Photo of the right piece",
            "Code on the foot",
            "Its first letters will do",
            "Words in a note",
            "Contact sheet",
            "All pieces of this firing on one page, to share, print or save",
            "Share as a picture",
            "This piece as a picture",
            "With its record under it, to share, print or save",
            "Share as a PDF",
            "Share charts",
            "Print",
            "Page \u{1}0\u{1} of \u{1}1\u{1}",
            "No photo",
            "This phone cannot print. Share the picture instead.",
            "Compare sizes",
            "What every form should take, based on one amount you know",
            "Based on",
            "Choose an amount",
            "Save what can be read",
            "Recent changes",
            "History",
            "Undo",
            "Redo",
            "Phones in this studio",
            "Phones that use this studio, and how they sync",
            "Phones",
            "Sync location",
            "Choose a location",
            "Change the location",
            "Sync now",
            "Check the files there",
            "Forget this location",
            "Forget this location?",
            "The files there stay, and nothing on this phone is lost. This phone forgets the password and the passphrase.",
            "Forget it",
            "Set up as a new phone",
            "Set this up as a new phone?",
            "Do this when two phones have saved under one name. Everything saved before stays as it is.",
            "Set up",
            "Checking. You can keep weighing.",
            "\u{1}0\u{1}. You can keep weighing.",
            "Stop",
            "Stopping…",
            "Choose the folder",
            "Choose another folder",
            "No folder was chosen. Nothing was changed.",
            "No app on this phone offers folders. Choose a server instead.",
            "This phone does not allow that folder. Choose another.",
            "Show",
            "Hide",
            "This phone could not store the password. Free some space, then type it and save again.",
            "Send everything to another phone, or restore what it sent",
            "Backup",
            "Make a backup",
            "Send everything to another app or phone",
            "Restore a backup, or what another phone sent",
            "Automatic backup",
            "How often",
            "Backup folder",
            "This folder cannot be used. Choose another.",
            "Back up there now",
            "Backup saved and verified.",
            "For other programs",
            "Tables for a spreadsheet",
            "Readings, fired pieces, buckets and more, as CSV",
            "Save to a folder",
            "Send to another app",
            "Restore and import",
            "Your spreadsheet",
            "Import readings from a spreadsheet. Save it as CSV, then choose it here. You see what would be added before anything is saved.",
            "Choose the file",
            "Choose another file",
            "Questions",
            "Columns",
            "Preview",
            "Lines that cannot be imported",
            "That file cannot be read, or the phone is full. Choose it again, or choose another.",
            "Working. You can keep weighing.",
            "The phone deleted the backup to free space. Make it again.",
            "No app on this phone saves files. Send it instead.",
            "No file was chosen. Nothing was changed.",
            "That place cannot be read or written, or is full. Nothing was changed: choose another.",
            "Units, sound and touch",
            "Which units, and whether laydown speaks and ticks",
            "Cautions",
            "Dust, spraying, hot kilns and food: what to watch for, and whom to ask",
            "Archived",
            "What you archived or removed, and the way back",
            "Bring it back",
            "On your other phones",
            "Keep this phone's",
            "Take theirs",
            "Keep both",
            "\u{1}0\u{1}, counts now",
            "Add a row",
            "Remove row \u{1}0\u{1}",
            "\u{1}0\u{1}, row \u{1}1\u{1}",
            "Remove this point",
            "Finding the piece in the picture…",
            "No picture was taken. Nothing was changed.",
            "The camera gave an empty picture. Take it again.",
            "No camera app responds on this phone. Take the picture another way, then choose it here.",
            "No app on this phone shows pictures to choose from. Take a photo instead.",
            "That picture cannot be read, or the phone is full. Choose it again, or choose another.",
            "Letters",
            "Digits",
            "Save changes?",
            "You changed something on this page.",
            "Discard",
            "Stay here",
            "chosen",
            "Note: \u{1}0\u{1}",
            "Warning: \u{1}0\u{1}",
            "laydown may not use the camera. Allow it in the phone's settings, or choose a picture that is on this phone.",
        ],
        [  // de
            "laydown",
            "Wiegen",
            "Eimer",
            "Ofen",
            "Erkenntnisse",
            "Werkstatt",
            "Zurück",
            "Erneut versuchen",
            "Rückgängig",
            "Wiederholen",
            "Diese Installation ist unvollständig. laydown neu installieren. Es wurde nichts geöffnet oder geändert.",
            "laydown kann auf diesem Handy nicht starten. Die Werkstatt blieb unverändert: den Startbericht an die Person schicken, von der die App kommt.",
            "Startbericht teilen",
            "Startbericht von laydown",
            "In laydown ging etwas schief. Nichts wurde geändert. Erneut versuchen oder laydown schließen und neu öffnen.",
            "Form",
            "Glasur, Eimer",
            "Bereich",
            "Waage",
            "Form wählen",
            "Glasur wählen",
            "Bereich oder Stück wählen",
            "Oder ein Stück mit Auftrag: der Code am Fuß",
            "Waage wählen",
            "\u{1}0\u{1}: \u{1}1\u{1}. Zum Ändern antippen.",
            "Form hinzufügen",
            "Glasur hinzufügen",
            "Waage hinzufügen",
            "Nach dem Tarieren",
            "Zwei Gewichte",
            "Art zu wiegen: \u{1}0\u{1}. Antippen für: \u{1}1\u{1}.",
            "Richtig: \u{1}0\u{1}",
            "Ziel \u{1}0\u{1}. \u{1}1\u{1}. \u{1}2\u{1} Für mehr antippen.",
            "Eingeben, was die Waage zeigt.",
            "Speichern",
            "So speichern",
            "Einzelheiten",
            "Weiter: \u{1}0\u{1}",
            "Eine Ziffer löschen; halten, um alles zu löschen",
            "Dezimalzeichen",
            "Vor dem ersten Stück",
            "Drei Dinge einmal einrichten. Dann das Gewicht eingeben und „Speichern“ antippen.",
            "Ich habe schon eine Werkstatt",
            "Sicherung wiederherstellen",
            "Aus einer Datei oder was ein anderes Handy geschickt hat",
            "Zu meinen anderen Handys dazukommen",
            "Abgleich über den Ordner oder Server, den sie benutzen",
            "Erledigt",
            "Zu tun",
            "Vergleichsstück",
            "Diesen Auftrag entfernen",
            "Auftrag berichtigen",
            "Berichtigen: \u{1}0\u{1}",
            "Skala: noch nichts gewogen.",
            "Skala: Die Ablesung liegt im Ziel.",
            "Skala: Die Ablesung liegt unter dem Ziel.",
            "Skala: Die Ablesung liegt über dem Ziel.",
            "Skala: Das Ziel ist geschätzt. Alles im markierten Bereich kann richtig sein.",
            "Skala: Die Ablesung liegt am Rand des Ziels.",
            "Prüfen",
            "Verdünnen",
            "Ändern",
            "Weiteren Eimer dieser Glasur hinzufügen",
            "Etwas notieren",
            "Neuen Ansatz mischen",
            "Notizbuch",
            "Prüfen",
            "Die Ziele beruhen heute auf",
            "Brand beginnen",
            "Erst einen Ofen hinzufügen",
            "Mit seinen Platten, um einen Besatz zu planen.",
            "Brände",
            "Stück finden",
            "Nach dem Code auf dem Fuß oder nach Form, Glasur, Fehler oder Brand",
            "Kegel, Brennkegel, Temperatur, Notizen",
            "Vor dem Ofen",
            "Alle wartenden Stücke einsetzen",
            "Alle ankreuzen",
            "Angekreuzte Stücke einsetzen",
            "Platte wählen",
            "Alle \u{1}0\u{1}",
            "Nur eines",
            "Nach links",
            "Nach rechts",
            "Nach oben",
            "Nach unten",
            "Aus dem Besatz nehmen",
            "Stücke",
            "Frühere Brände",
            "Noch nicht",
            "Ja",
            "Foto aufnehmen",
            "Bild auf diesem Handy wählen",
            "Bild wird gespeichert…",
            "Foto \u{1}0\u{1} von \u{1}1\u{1}. Zum Vergrößern antippen.",
            "Foto entfernen",
            "Name, Code und Form",
            "Schließen",
            "Nächstes Stück",
            "Zurück zum Brand",
            "Voriges Stück",
            "\u{1}0\u{1}: \u{1}1\u{1}",
            "\u{1}0\u{1}: \u{1}1\u{1}, gewählt",
            "\u{1}0\u{1}, gewählt",
            "Bewertung",
            "Fehler",
            "Diese Markierung entfernen",
            "Notiz",
            "Was in Erinnerung bleiben soll",
            "Als Vergleichsstück nehmen: Die Ziele richten sich danach",
            "Noch einmal brennen: Es wartet auf den nächsten Besatz",
            "Wie gewogen",
            "Das ganze Stück",
            "Alle seine Aufträge, Brände und Fotos",
            "Brände",
            "Mit einem anderen Stück vergleichen",
            "Einem Vergleichsstück oder einem beliebigen derselben Form oder Glasur",
            "Nebeneinander",
            "Vergleichen mit",
            "\u{1}0\u{1}, verschieden",
            "Foto des linken Stücks",
            "Foto des rechten Stücks",
            "Code auf dem Fuß",
            "Die ersten Zeichen genügen",
            "Wörter in einer Notiz",
            "Bilderbogen",
            "Alle Stücke dieses Brandes auf einer Seite, zum Teilen, Drucken oder Speichern",
            "Als Bild teilen",
            "Dieses Stück als Bild",
            "Mit seinen Daten darunter, zum Teilen, Drucken oder Speichern",
            "Als PDF teilen",
            "Diagramme teilen",
            "Drucken",
            "Seite \u{1}0\u{1} von \u{1}1\u{1}",
            "Kein Foto",
            "Dieses Handy kann nicht drucken. Stattdessen das Bild teilen.",
            "Größen vergleichen",
            "Was jede Form braucht, ausgehend von einer bekannten Menge",
            "Beruht auf",
            "Menge wählen",
            "Retten, was lesbar ist",
            "Letzte Änderungen",
            "Verlauf",
            "Rückgängig",
            "Wiederholen",
            "Handys in dieser Werkstatt",
            "Welche Handys diese Werkstatt nutzen und wie sie sich abgleichen",
            "Handys",
            "Abgleichsort",
            "Ort wählen",
            "Ort ändern",
            "Jetzt abgleichen",
            "Dateien dort prüfen",
            "Diesen Ort vergessen",
            "Diesen Ort vergessen?",
            "Die Dateien dort bleiben, und auf diesem Handy geht nichts verloren. Das Handy vergisst Passwort und Passphrase.",
            "Vergessen",
            "Als neues Handy einrichten",
            "Dieses als neues Handy einrichten?",
            "Nur wenn zwei Handys unter einem Namen gespeichert haben. Alles bisher Gespeicherte bleibt, wie es ist.",
            "Einrichten",
            "Wird geprüft. Weiterwiegen ist möglich.",
            "\u{1}0\u{1}. Weiterwiegen ist möglich.",
            "Anhalten",
            "Wird angehalten…",
            "Ordner wählen",
            "Anderen Ordner wählen",
            "Kein Ordner gewählt. Nichts wurde geändert.",
            "Keine App auf diesem Handy bietet Ordner an. Stattdessen einen Server wählen.",
            "Dieses Handy erlaubt den Ordner nicht. Einen anderen wählen.",
            "Anzeigen",
            "Verbergen",
            "Dieses Handy konnte das Passwort nicht ablegen. Platz schaffen, dann neu eingeben und speichern.",
            "Alles an ein anderes Handy schicken oder wiederherstellen, was es geschickt hat",
            "Sicherung",
            "Sicherung erstellen",
            "Alles an eine andere App oder ein anderes Handy schicken",
            "Sicherung wiederherstellen, oder was ein anderes Handy geschickt hat",
            "Automatische Sicherung",
            "Wie oft",
            "Sicherungsordner",
            "Dieser Ordner ist nicht verwendbar. Einen anderen wählen.",
            "Jetzt dort sichern",
            "Sicherung gespeichert und geprüft.",
            "Für andere Programme",
            "Tabellen für ein Tabellenprogramm",
            "Wägungen, gebrannte Stücke, Eimer und mehr, als CSV",
            "In einem Ordner speichern",
            "An eine andere App schicken",
            "Wiederherstellen und importieren",
            "Eigene Tabelle",
            "Wägungen aus einer Tabelle importieren. Sie als CSV speichern, dann hier wählen. Was hinzukäme, ist zu sehen, bevor etwas gespeichert wird.",
            "Datei wählen",
            "Andere Datei wählen",
            "Fragen",
            "Spalten",
            "Vorschau",
            "Zeilen, die sich nicht importieren lassen",
            "Diese Datei ist nicht lesbar, oder das Handy ist voll. Noch einmal wählen oder eine andere.",
            "In Arbeit. Weiterwiegen ist möglich.",
            "Das Handy hat die Sicherung gelöscht, um Platz zu schaffen. Neu erstellen.",
            "Keine App auf diesem Handy speichert Dateien. Stattdessen schicken.",
            "Keine Datei gewählt. Nichts wurde geändert.",
            "Dieser Ort ist nicht lesbar oder beschreibbar, oder er ist voll. Nichts wurde geändert: einen anderen wählen.",
            "Einheiten, Ton und Vibration",
            "Welche Einheiten, und ob laydown spricht und vibriert",
            "Vorsicht",
            "Staub, Spritzen, heiße Öfen und Lebensmittel: worauf zu achten ist und wen man fragt",
            "Archiviert",
            "Was archiviert oder entfernt wurde, und der Weg zurück",
            "Zurückholen",
            "Auf den anderen Handys",
            "Hiesiges behalten",
            "Deren nehmen",
            "Beides behalten",
            "\u{1}0\u{1}, gilt jetzt",
            "Zeile hinzufügen",
            "Zeile \u{1}0\u{1} entfernen",
            "\u{1}0\u{1}, Zeile \u{1}1\u{1}",
            "Diesen Punkt entfernen",
            "Das Stück wird im Bild gesucht…",
            "Kein Bild aufgenommen. Nichts wurde geändert.",
            "Die Kamera hat ein leeres Bild geliefert. Neu aufnehmen.",
            "Keine Kamera-App antwortet auf diesem Handy. Das Bild anders aufnehmen, dann hier wählen.",
            "Keine App auf diesem Handy bietet Bilder zur Auswahl an. Stattdessen ein Foto aufnehmen.",
            "Dieses Bild ist nicht lesbar, oder das Handy ist voll. Noch einmal wählen oder ein anderes.",
            "Buchstaben",
            "Ziffern",
            "Änderungen speichern?",
            "Auf dieser Seite wurde etwas geändert.",
            "Verwerfen",
            "Hierbleiben",
            "gewählt",
            "Hinweis: \u{1}0\u{1}",
            "Warnung: \u{1}0\u{1}",
            "laydown darf die Kamera nicht benutzen. In den Einstellungen des Handys erlauben oder ein Bild wählen, das auf diesem Handy ist.",
        ],
        [  // es
            "laydown",
            "Pesar",
            "Cubos",
            "Horno",
            "Resultados",
            "Taller",
            "Atrás",
            "Intentar otra vez",
            "Deshacer",
            "Rehacer",
            "Esta instalación está incompleta. Instalar laydown de nuevo. No se abrió ni se cambió nada.",
            "laydown no puede iniciarse en este teléfono. El taller no ha cambiado: compartir el informe de inicio con quien proporcionó la aplicación.",
            "Compartir el informe de inicio",
            "Informe de inicio de laydown",
            "Algo falló en laydown. No se cambió nada. Intentarlo otra vez, o cerrar laydown y abrirlo de nuevo.",
            "Forma",
            "Esmalte, cubo",
            "Zona",
            "Báscula",
            "Elegir una forma",
            "Elegir un esmalte",
            "Elegir zona o pieza",
            "O una pieza con capa: el código de su pie",
            "Elegir una báscula",
            "\u{1}0\u{1}: \u{1}1\u{1}. Tocar para cambiar.",
            "Añadir una forma",
            "Añadir un esmalte",
            "Añadir una báscula",
            "Tras tarar",
            "Dos pesos",
            "Modo de pesar: \u{1}0\u{1}. Tocar para cambiar a: \u{1}1\u{1}.",
            "Correcto: \u{1}0\u{1}",
            "Objetivo \u{1}0\u{1}. \u{1}1\u{1}. \u{1}2\u{1} Tocar para ver más.",
            "Escribir lo que muestra la báscula.",
            "Guardar",
            "Guardar tal cual",
            "Detalles",
            "Siguiente: \u{1}0\u{1}",
            "Borrar una cifra; mantener pulsado para borrar todo",
            "Signo decimal",
            "Antes de la primera pieza",
            "Configurar tres cosas, una sola vez. Después, escribir el peso y tocar “Guardar”.",
            "Ya tengo un taller",
            "Restaurar una copia",
            "De un archivo, o de lo que envió otro teléfono",
            "Unirme a mis otros teléfonos",
            "Sincronizar por la carpeta o el servidor que usan",
            "Hecho",
            "Por hacer",
            "pieza de referencia",
            "Quitar esta capa",
            "Corregir esta capa",
            "Corregir: \u{1}0\u{1}",
            "Indicador: todavía no se ha pesado nada.",
            "Indicador: la lectura está dentro del objetivo.",
            "Indicador: la lectura está por debajo del objetivo.",
            "Indicador: la lectura está por encima del objetivo.",
            "Indicador: el objetivo es una estimación. Todo el tramo marcado puede ser correcto.",
            "Indicador: la lectura está en el límite del objetivo.",
            "Comprobar",
            "Diluir",
            "Cambiar",
            "Añadir otro cubo de este esmalte",
            "Anotar algo",
            "Preparar más esmalte",
            "Cuaderno",
            "Comprobar",
            "Hoy los objetivos se basan en",
            "Empezar una cocción",
            "Añadir primero un horno",
            "Con sus placas, para planear una carga.",
            "Cocciones",
            "Buscar una pieza",
            "Por el código del pie, o por forma, esmalte, defecto o cocción",
            "Cono, conos testigo, temperatura, notas",
            "Antes del horno",
            "Cargar todas las piezas en espera",
            "Marcar todas",
            "Cargar las piezas marcadas",
            "Elegir una placa",
            "Las \u{1}0\u{1}",
            "Solo una",
            "Mover a la izquierda",
            "Mover a la derecha",
            "Mover arriba",
            "Mover abajo",
            "Quitar de la carga",
            "Piezas",
            "Cocciones anteriores",
            "Todavía no",
            "Sí",
            "Hacer una foto",
            "Elegir una imagen de este teléfono",
            "Guardando la imagen…",
            "Foto \u{1}0\u{1} de \u{1}1\u{1}. Tocar para verla de cerca.",
            "Quitar la foto",
            "Su nombre, su código y su forma",
            "Cerrar",
            "Pieza siguiente",
            "Volver a la cocción",
            "Pieza anterior",
            "\u{1}0\u{1}: \u{1}1\u{1}",
            "\u{1}0\u{1}: \u{1}1\u{1}, elegido",
            "\u{1}0\u{1}, elegido",
            "Valoración",
            "Defectos",
            "Quitar esta marca",
            "Nota",
            "Lo que conviene recordar",
            "Usar como pieza de referencia: los objetivos se basan en ella",
            "Cocer otra vez: espera la próxima carga",
            "Como se pesó",
            "La pieza completa",
            "Todas sus capas, cocciones y fotos",
            "Cocciones",
            "Comparar con otra pieza",
            "Una pieza de referencia, o cualquiera de su forma o esmalte",
            "Lado a lado",
            "Comparar con",
            "\u{1}0\u{1}, diferente",
            "Foto de la pieza izquierda",
            "Foto de la pieza derecha",
            "Código del pie",
            "Bastan los primeros caracteres",
            "Palabras en una nota",
            "Hoja de contactos",
            "Todas las piezas de esta cocción en una página, para compartir, imprimir o guardar",
            "Compartir como imagen",
            "Esta pieza como imagen",
            "Con sus datos debajo, para compartir, imprimir o guardar",
            "Compartir como PDF",
            "Compartir los gráficos",
            "Imprimir",
            "Página \u{1}0\u{1} de \u{1}1\u{1}",
            "Sin foto",
            "Este teléfono no puede imprimir. Compartir la imagen en su lugar.",
            "Comparar tamaños",
            "Lo que debe llevar cada forma, a partir de una cantidad conocida",
            "Basado en",
            "Elegir una cantidad",
            "Guardar lo que se pueda leer",
            "Cambios recientes",
            "Historial",
            "Deshacer",
            "Rehacer",
            "Teléfonos de este taller",
            "Los teléfonos que usan este taller y cómo se sincronizan",
            "Teléfonos",
            "Lugar de sincronización",
            "Elegir un lugar",
            "Cambiar el lugar",
            "Sincronizar ahora",
            "Comprobar los archivos de allí",
            "Olvidar este lugar",
            "¿Olvidar este lugar?",
            "Los archivos de allí se quedan, y en este teléfono no se pierde nada. Este teléfono olvida la contraseña y la frase de contraseña.",
            "Olvidar",
            "Configurar como teléfono nuevo",
            "¿Configurar este como teléfono nuevo?",
            "Solo cuando dos teléfonos han guardado con el mismo nombre. Todo lo guardado antes queda como está.",
            "Configurar",
            "Comprobando. Se puede seguir pesando.",
            "\u{1}0\u{1}. Se puede seguir pesando.",
            "Parar",
            "Parando…",
            "Elegir la carpeta",
            "Elegir otra carpeta",
            "No se eligió ninguna carpeta. No se cambió nada.",
            "Ninguna aplicación de este teléfono ofrece carpetas. Elegir un servidor en su lugar.",
            "Este teléfono no permite esa carpeta. Elegir otra.",
            "Mostrar",
            "Ocultar",
            "Este teléfono no pudo guardar la contraseña. Liberar espacio, escribirla y guardar otra vez.",
            "Enviar todo a otro teléfono, o restaurar lo que envió",
            "Copia de seguridad",
            "Hacer una copia",
            "Enviar todo a otra aplicación o teléfono",
            "Restaurar una copia, o lo que envió otro teléfono",
            "Copia automática",
            "Cada cuánto",
            "Carpeta de las copias",
            "Esta carpeta no se puede usar. Elegir otra.",
            "Hacer una copia allí ahora",
            "Copia guardada y verificada.",
            "Para otros programas",
            "Tablas para una hoja de cálculo",
            "Pesadas, piezas cocidas, cubos y más, en CSV",
            "Guardar en una carpeta",
            "Enviar a otra aplicación",
            "Restaurar e importar",
            "Hoja de cálculo propia",
            "Importar pesadas de una hoja de cálculo. Guardarla como CSV y elegirla aquí. Se ve lo que se añadiría antes de guardar nada.",
            "Elegir el archivo",
            "Elegir otro archivo",
            "Preguntas",
            "Columnas",
            "Vista previa",
            "Líneas que no se pueden importar",
            "Ese archivo no se puede leer, o el teléfono está lleno. Elegirlo otra vez, o elegir otro.",
            "En marcha. Se puede seguir pesando.",
            "El teléfono borró la copia para liberar espacio. Hacerla de nuevo.",
            "Ninguna aplicación de este teléfono guarda archivos. Enviarlo en su lugar.",
            "No se eligió ningún archivo. No se cambió nada.",
            "Ese lugar no se puede leer ni escribir, o está lleno. No se cambió nada: elegir otro.",
            "Unidades, sonido y vibración",
            "Qué unidades, y si laydown habla y vibra",
            "Precauciones",
            "Polvo, pulverizado, hornos calientes y alimentos: a qué prestar atención y a quién preguntar",
            "Archivado",
            "Lo archivado o quitado, y cómo recuperarlo",
            "Recuperar",
            "En los otros teléfonos",
            "Dejar lo de aquí",
            "Tomar lo suyo",
            "Guardar ambos",
            "\u{1}0\u{1}, cuenta ahora",
            "Añadir una fila",
            "Quitar la fila \u{1}0\u{1}",
            "\u{1}0\u{1}, fila \u{1}1\u{1}",
            "Quitar este punto",
            "Buscando la pieza en la imagen…",
            "No se hizo ninguna foto. No se cambió nada.",
            "La cámara dio una imagen vacía. Hacerla otra vez.",
            "Ninguna aplicación de cámara responde en este teléfono. Hacer la foto de otro modo y elegirla aquí.",
            "Ninguna aplicación de este teléfono muestra imágenes para elegir. Hacer una foto en su lugar.",
            "Esa imagen no se puede leer, o el teléfono está lleno. Elegirla otra vez, o elegir otra.",
            "Letras",
            "Cifras",
            "¿Guardar los cambios?",
            "Se ha cambiado algo en esta página.",
            "Descartar",
            "Quedarse aquí",
            "elegido",
            "Aviso: \u{1}0\u{1}",
            "Advertencia: \u{1}0\u{1}",
            "laydown no puede usar la cámara. Permitirlo en los ajustes del teléfono, o elegir una imagen que esté en este teléfono.",
        ],
        [  // fr
            "laydown",
            "Peser",
            "Seaux",
            "Four",
            "Constats",
            "Atelier",
            "Retour",
            "Réessayer",
            "Annuler",
            "Rétablir",
            "Cette installation est incomplète. Installez laydown de nouveau. Rien n’a été ouvert ni modifié.",
            "laydown ne peut pas démarrer sur ce téléphone. Votre atelier n’a pas changé : partagez le rapport de démarrage avec la personne qui vous a donné l’application.",
            "Partager le rapport de démarrage",
            "Rapport de démarrage de laydown",
            "Quelque chose a échoué dans laydown. Rien n’a été modifié. Réessayez, ou fermez laydown et rouvrez-le.",
            "Forme",
            "Émail, seau",
            "Zone",
            "Balance",
            "Choisir une forme",
            "Choisir un émail",
            "Choisir une zone ou une pièce",
            "Ou une pièce déjà émaillée : le code sur son pied",
            "Choisir une balance",
            "\u{1}0\u{1} : \u{1}1\u{1}. Touchez pour changer.",
            "Ajouter une forme",
            "Ajouter un émail",
            "Ajouter une balance",
            "Après tare",
            "Deux poids",
            "Façon de peser : \u{1}0\u{1}. Touchez pour passer à : \u{1}1\u{1}.",
            "Cible : \u{1}0\u{1}",
            "Visez \u{1}0\u{1}. \u{1}1\u{1}. \u{1}2\u{1} Touchez pour en savoir plus.",
            "Saisissez ce que montre la balance.",
            "Enregistrer",
            "Enregistrer tel quel",
            "Détails",
            "Suivant : \u{1}0\u{1}",
            "Effacer un chiffre ; maintenir pour tout effacer",
            "Signe décimal",
            "Avant la première pièce",
            "Préparez trois choses, une fois pour toutes. Ensuite, saisissez le poids et touchez Enregistrer.",
            "J’ai déjà un atelier",
            "Restaurer une sauvegarde",
            "D’un fichier, ou de ce qu’un autre téléphone a envoyé",
            "Rejoindre mes autres téléphones",
            "Synchroniser par le dossier ou le serveur qu’ils utilisent",
            "Fait",
            "À faire",
            "pièce témoin",
            "Retirer cette couche",
            "Corriger cette couche",
            "Corriger : \u{1}0\u{1}",
            "Jauge : rien de pesé pour l’instant.",
            "Jauge : la lecture est dans la cible.",
            "Jauge : la lecture est sous la cible.",
            "Jauge : la lecture est au-dessus de la cible.",
            "Jauge : la cible est une estimation. Toute la plage marquée peut être juste.",
            "Jauge : la lecture est à la limite de la cible.",
            "Contrôler",
            "Diluer",
            "Modifier",
            "Ajouter un autre seau de cet émail",
            "Noter quelque chose",
            "Préparer un nouveau lot",
            "Carnet",
            "À contrôler",
            "Les cibles du jour reposent sur",
            "Commencer une cuisson",
            "Ajouter d’abord un four",
            "Indiquez ses plaques, pour prévoir un enfournement.",
            "Cuissons",
            "Chercher une pièce",
            "Par le code sur son pied, ou par forme, émail, défaut ou cuisson",
            "Cône, cônes témoins, température, remarques",
            "Avant le four",
            "Enfourner toutes les pièces en attente",
            "Tout cocher",
            "Enfourner les pièces cochées",
            "Choisir une plaque",
            "Les \u{1}0\u{1}",
            "Une seule",
            "Vers la gauche",
            "Vers la droite",
            "Vers le haut",
            "Vers le bas",
            "Retirer de l’enfournement",
            "Pièces",
            "Cuissons précédentes",
            "Pas encore",
            "Oui",
            "Prendre une photo",
            "Choisir une image sur ce téléphone",
            "Enregistrement de l’image…",
            "Photo \u{1}0\u{1} sur \u{1}1\u{1}. Touchez pour voir de plus près.",
            "Retirer la photo",
            "Son nom, son code et sa forme",
            "Fermer",
            "Pièce suivante",
            "Retour à la cuisson",
            "Pièce précédente",
            "\u{1}0\u{1} : \u{1}1\u{1}",
            "\u{1}0\u{1} : \u{1}1\u{1}, choisi",
            "\u{1}0\u{1}, choisi",
            "Votre note",
            "Défauts",
            "Retirer cette marque",
            "Remarque",
            "Ce que vous voulez retenir",
            "Prendre comme pièce témoin : les cibles en tiennent compte",
            "Recuire : elle attend le prochain enfournement",
            "À la pesée",
            "La pièce entière",
            "Toutes ses couches, cuissons et photos",
            "Cuissons",
            "Comparer à une autre pièce",
            "Une pièce témoin, ou une pièce de même forme ou de même émail",
            "Côte à côte",
            "Comparer à",
            "\u{1}0\u{1}, différent",
            "Photo de la pièce de gauche",
            "Photo de la pièce de droite",
            "Code sur le pied",
            "Les premiers caractères suffisent",
            "Mots d’une remarque",
            "Planche-contact",
            "Toutes les pièces de cette cuisson sur une page, à partager, imprimer ou enregistrer",
            "Partager en image",
            "Cette pièce en image",
            "Avec ses données dessous, à partager, imprimer ou garder",
            "Partager en PDF",
            "Partager les diagrammes",
            "Imprimer",
            "Page \u{1}0\u{1} sur \u{1}1\u{1}",
            "Pas de photo",
            "Ce téléphone ne peut pas imprimer. Partagez plutôt l’image.",
            "Comparer les tailles",
            "Ce que devrait prendre chaque forme, d’après une quantité que vous connaissez",
            "D’après",
            "Choisir une quantité",
            "Enregistrer ce qui est lisible",
            "Modifications récentes",
            "Historique",
            "Annuler",
            "Rétablir",
            "Téléphones de cet atelier",
            "Les téléphones qui utilisent cet atelier, et leur synchronisation",
            "Téléphones",
            "Lieu de synchronisation",
            "Choisir un lieu",
            "Changer de lieu",
            "Synchroniser",
            "Vérifier les fichiers du lieu",
            "Oublier ce lieu",
            "Oublier ce lieu ?",
            "Les fichiers y restent, et rien n’est perdu sur ce téléphone. Ce téléphone oublie le mot de passe et la phrase de passe.",
            "Oublier",
            "Configurer comme nouveau téléphone",
            "Configurer comme nouveau téléphone ?",
            "À faire quand deux téléphones ont enregistré sous un même nom. Tout ce qui a été enregistré avant reste tel quel.",
            "Configurer",
            "Vérification. Vous pouvez continuer à peser.",
            "\u{1}0\u{1}. Vous pouvez continuer à peser.",
            "Arrêter",
            "Arrêt…",
            "Choisir le dossier",
            "Choisir un autre dossier",
            "Aucun dossier n’a été choisi. Rien n’a été modifié.",
            "Aucune application de ce téléphone ne propose de dossiers. Choisissez plutôt un serveur.",
            "Ce téléphone n’autorise pas ce dossier. Choisissez-en un autre.",
            "Afficher",
            "Masquer",
            "Ce téléphone n’a pas pu garder le mot de passe. Faites de la place, puis saisissez-le et enregistrez de nouveau.",
            "Tout envoyer à un autre téléphone, ou restaurer ce qu’il a envoyé",
            "Sauvegarde",
            "Faire une sauvegarde",
            "Tout envoyer à une autre application ou à un autre téléphone",
            "Restaurer une sauvegarde, ou l’envoi d’un autre téléphone",
            "Sauvegarde automatique",
            "Rythme",
            "Dossier des sauvegardes",
            "Ce dossier est inutilisable. Choisissez-en un autre.",
            "Y faire une sauvegarde maintenant",
            "Sauvegarde enregistrée et vérifiée.",
            "Pour d’autres programmes",
            "Tableaux pour un tableur",
            "Pesées, pièces cuites, seaux et plus, en CSV",
            "Enregistrer dans un dossier",
            "Envoyer à une autre application",
            "Restaurer et importer",
            "Votre feuille de calcul",
            "Importez les pesées d’une feuille de calcul. Enregistrez-la en CSV, puis choisissez-la ici. Vous voyez ce qui serait ajouté avant tout enregistrement.",
            "Choisir le fichier",
            "Choisir un autre fichier",
            "Questions",
            "Colonnes",
            "Aperçu",
            "Lignes impossibles à importer",
            "Ce fichier est illisible, ou le téléphone est plein. Choisissez-le de nouveau, ou choisissez-en un autre.",
            "En cours. Vous pouvez continuer à peser.",
            "Le téléphone a supprimé la sauvegarde pour faire de la place. Refaites-la.",
            "Aucune application de ce téléphone n’enregistre de fichiers. Envoyez-le plutôt.",
            "Aucun fichier n’a été choisi. Rien n’a été modifié.",
            "Impossible de lire ou d’écrire à cet endroit, ou il est plein. Rien n’a été modifié : choisissez-en un autre.",
            "Unités, son et toucher",
            "Quelles unités, et si laydown parle et vibre",
            "Précautions",
            "Poussière, pulvérisation, four chaud et aliments : à quoi faire attention, et à qui demander",
            "Archives",
            "Ce que vous avez archivé ou supprimé, et le retour",
            "Faire revenir",
            "Sur vos autres téléphones",
            "Garder celui d’ici",
            "Prendre le leur",
            "Garder les deux",
            "\u{1}0\u{1}, compte actuellement",
            "Ajouter une ligne",
            "Retirer la ligne \u{1}0\u{1}",
            "\u{1}0\u{1}, ligne \u{1}1\u{1}",
            "Retirer ce point",
            "Recherche de la pièce dans l’image…",
            "Aucune photo n’a été prise. Rien n’a été modifié.",
            "L’appareil photo a donné une image vide. Reprenez la photo.",
            "Aucune application photo ne répond sur ce téléphone. Prenez l’image autrement, puis choisissez-la ici.",
            "Aucune application de ce téléphone ne montre d’images à choisir. Prenez plutôt une photo.",
            "Cette image est illisible, ou le téléphone est plein. Choisissez-la de nouveau, ou choisissez-en une autre.",
            "Lettres",
            "Chiffres",
            "Enregistrer les modifications ?",
            "Vous avez modifié quelque chose sur cette page.",
            "Abandonner",
            "Rester ici",
            "choisi",
            "À noter : \u{1}0\u{1}",
            "Attention : \u{1}0\u{1}",
            "laydown n’a pas accès à l’appareil photo. Autorisez-le dans les réglages du téléphone, ou choisissez une image qui est sur ce téléphone.",
        ],
    ]
}
