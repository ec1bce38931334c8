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
    /// `choose-scale`
    public static var chooseScale: String { say(22) }
    /// `choice-is`
    public static func choiceIs(_ label: some CustomStringConvertible, _ chosen: some CustomStringConvertible) -> String {
        say(23, [label.description, chosen.description])
    }
    /// `add-form`
    public static var addForm: String { say(24) }
    /// `add-glaze`
    public static var addGlaze: String { say(25) }
    /// `add-scale`
    public static var addScale: String { say(26) }
    /// `way-net`
    public static var wayNet: String { say(27) }
    /// `way-two`
    public static var wayTwo: String { say(28) }
    /// `way-is`
    public static func wayIs(_ way: some CustomStringConvertible, _ other: some CustomStringConvertible) -> String {
        say(29, [way.description, other.description])
    }
    /// `right-is`
    public static func rightIs(_ span: some CustomStringConvertible) -> String {
        say(30, [span.description])
    }
    /// `target-is`
    public static func targetIs(_ wet: some CustomStringConvertible, _ span: some CustomStringConvertible, _ source: some CustomStringConvertible) -> String {
        say(31, [wet.description, span.description, source.description])
    }
    /// `nothing-typed`
    public static var nothingTyped: String { say(32) }
    /// `save`
    public static var save: String { say(33) }
    /// `save-as-is`
    public static var saveAsIs: String { say(34) }
    /// `details`
    public static var details: String { say(35) }
    /// `next-field`
    public static func nextField(_ label: some CustomStringConvertible) -> String {
        say(36, [label.description])
    }
    /// `key-delete`
    public static var keyDelete: String { say(37) }
    /// `key-point`
    public static var keyPoint: String { say(38) }
    /// `first-title`
    public static var firstTitle: String { say(39) }
    /// `first-detail`
    public static var firstDetail: String { say(40) }
    /// `done`
    public static var done: String { say(41) }
    /// `to-do`
    public static var toDo: String { say(42) }
    /// `control`
    public static var control: String { say(43) }
    /// `take-back`
    public static var takeBack: String { say(44) }
    /// `gauge-none`
    public static var gaugeNone: String { say(45) }
    /// `gauge-inside`
    public static var gaugeInside: String { say(46) }
    /// `gauge-below`
    public static var gaugeBelow: String { say(47) }
    /// `gauge-above`
    public static var gaugeAbove: String { say(48) }
    /// `gauge-guess`
    public static var gaugeGuess: String { say(49) }
    /// `gauge-edge`
    public static var gaugeEdge: String { say(50) }
    /// `check`
    public static var check: String { say(51) }
    /// `thin`
    public static var thin: String { say(52) }
    /// `change`
    public static var change: String { say(53) }
    /// `another-bucket`
    public static var anotherBucket: String { say(54) }
    /// `checks`
    public static var checks: String { say(55) }
    /// `needs-check`
    public static var needsCheck: String { say(56) }
    /// `targets-rest-on`
    public static var targetsRestOn: String { say(57) }
    /// `begin-firing`
    public static var beginFiring: String { say(58) }
    /// `add-kiln`
    public static var addKiln: String { say(59) }
    /// `add-kiln-detail`
    public static var addKilnDetail: String { say(60) }
    /// `firings`
    public static var firings: String { say(61) }
    /// `find-pieces`
    public static var findPieces: String { say(62) }
    /// `find-pieces-detail`
    public static var findPiecesDetail: String { say(63) }
    /// `change-firing`
    public static var changeFiring: String { say(64) }
    /// `before-kiln`
    public static var beforeKiln: String { say(65) }
    /// `load-all`
    public static var loadAll: String { say(66) }
    /// `tick-all`
    public static var tickAll: String { say(67) }
    /// `load-ticked`
    public static var loadTicked: String { say(68) }
    /// `which-shelf`
    public static var whichShelf: String { say(69) }
    /// `all-of-them`
    public static func allOfThem(_ count: some CustomStringConvertible) -> String {
        say(70, [count.description])
    }
    /// `one-of-them`
    public static var oneOfThem: String { say(71) }
    /// `move-left`
    public static var moveLeft: String { say(72) }
    /// `move-right`
    public static var moveRight: String { say(73) }
    /// `move-up`
    public static var moveUp: String { say(74) }
    /// `move-down`
    public static var moveDown: String { say(75) }
    /// `take-out`
    public static var takeOut: String { say(76) }
    /// `pieces`
    public static var pieces: String { say(77) }
    /// `earlier-firings`
    public static var earlierFirings: String { say(78) }
    /// `not-yet`
    public static var notYet: String { say(79) }
    /// `yes`
    public static var yes: String { say(80) }
    /// `photograph`
    public static var photograph: String { say(81) }
    /// `from-pictures`
    public static var fromPictures: String { say(82) }
    /// `picture-being-saved`
    public static var pictureBeingSaved: String { say(83) }
    /// `photo-of`
    public static func photoOf(_ number: some CustomStringConvertible, _ count: some CustomStringConvertible) -> String {
        say(84, [number.description, count.description])
    }
    /// `photo-off`
    public static var photoOff: String { say(85) }
    /// `close`
    public static var close: String { say(86) }
    /// `next-piece`
    public static var nextPiece: String { say(87) }
    /// `last-piece`
    public static var lastPiece: String { say(88) }
    /// `previous-piece`
    public static var previousPiece: String { say(89) }
    /// `answer-is`
    public static func answerIs(_ question: some CustomStringConvertible, _ answer: some CustomStringConvertible) -> String {
        say(90, [question.description, answer.description])
    }
    /// `answer-chosen`
    public static func answerChosen(_ question: some CustomStringConvertible, _ answer: some CustomStringConvertible) -> String {
        say(91, [question.description, answer.description])
    }
    /// `fault-chosen`
    public static func faultChosen(_ fault: some CustomStringConvertible) -> String {
        say(92, [fault.description])
    }
    /// `liking`
    public static var liking: String { say(93) }
    /// `faults`
    public static var faults: String { say(94) }
    /// `where-away`
    public static var whereAway: String { say(95) }
    /// `note`
    public static var note: String { say(96) }
    /// `note-hint`
    public static var noteHint: String { say(97) }
    /// `control-piece`
    public static var controlPiece: String { say(98) }
    /// `fire-again`
    public static var fireAgain: String { say(99) }
    /// `as-weighed`
    public static var asWeighed: String { say(100) }
    /// `whole-piece`
    public static var wholePiece: String { say(101) }
    /// `whole-piece-detail`
    public static var wholePieceDetail: String { say(102) }
    /// `fired`
    public static var fired: String { say(103) }
    /// `compare`
    public static var compare: String { say(104) }
    /// `compare-detail`
    public static var compareDetail: String { say(105) }
    /// `beside`
    public static var beside: String { say(106) }
    /// `compare-with`
    public static var compareWith: String { say(107) }
    /// `differs`
    public static func differs(_ label: some CustomStringConvertible) -> String {
        say(108, [label.description])
    }
    /// `left-photo`
    public static var leftPhoto: String { say(109) }
    /// `right-photo`
    public static var rightPhoto: String { say(110) }
    /// `code-on-foot`
    public static var codeOnFoot: String { say(111) }
    /// `code-hint`
    public static var codeHint: String { say(112) }
    /// `contact-sheet`
    public static var contactSheet: String { say(113) }
    /// `contact-sheet-detail`
    public static var contactSheetDetail: String { say(114) }
    /// `share-picture`
    public static var sharePicture: String { say(115) }
    /// `share-pdf`
    public static var sharePdf: String { say(116) }
    /// `print`
    public static var print: String { say(117) }
    /// `page-of`
    public static func pageOf(_ number: some CustomStringConvertible, _ count: some CustomStringConvertible) -> String {
        say(118, [number.description, count.description])
    }
    /// `no-photo`
    public static var noPhoto: String { say(119) }
    /// `nobody-prints`
    public static var nobodyPrints: String { say(120) }
    /// `sizes`
    public static var sizes: String { say(121) }
    /// `sizes-detail`
    public static var sizesDetail: String { say(122) }
    /// `known`
    public static var known: String { say(123) }
    /// `choose-known`
    public static var chooseKnown: String { say(124) }
    /// `save-readable`
    public static var saveReadable: String { say(125) }
    /// `recent-changes`
    public static var recentChanges: String { say(126) }
    /// `its-history`
    public static var itsHistory: String { say(127) }
    /// `take-it-back`
    public static var takeItBack: String { say(128) }
    /// `do-it-again`
    public static var doItAgain: String { say(129) }
    /// `devices`
    public static var devices: String { say(130) }
    /// `devices-detail`
    public static var devicesDetail: String { say(131) }
    /// `phones`
    public static var phones: String { say(132) }
    /// `sync-location`
    public static var syncLocation: String { say(133) }
    /// `choose-place`
    public static var choosePlace: String { say(134) }
    /// `change-place`
    public static var changePlace: String { say(135) }
    /// `sync-now`
    public static var syncNow: String { say(136) }
    /// `check-there`
    public static var checkThere: String { say(137) }
    /// `forget-place`
    public static var forgetPlace: String { say(138) }
    /// `forget-place-question`
    public static var forgetPlaceQuestion: String { say(139) }
    /// `forget-place-detail`
    public static var forgetPlaceDetail: String { say(140) }
    /// `forget`
    public static var forget: String { say(141) }
    /// `new-phone`
    public static var newPhone: String { say(142) }
    /// `new-phone-question`
    public static var newPhoneQuestion: String { say(143) }
    /// `new-phone-detail`
    public static var newPhoneDetail: String { say(144) }
    /// `set-up`
    public static var setUp: String { say(145) }
    /// `sync-begins`
    public static var syncBegins: String { say(146) }
    /// `sync-so-far`
    public static func syncSoFar(_ progressed: some CustomStringConvertible) -> String {
        say(147, [progressed.description])
    }
    /// `stop`
    public static var stop: String { say(148) }
    /// `stopping`
    public static var stopping: String { say(149) }
    /// `choose-folder`
    public static var chooseFolder: String { say(150) }
    /// `choose-another-folder`
    public static var chooseAnotherFolder: String { say(151) }
    /// `no-folder`
    public static var noFolder: String { say(152) }
    /// `no-folders-app`
    public static var noFoldersApp: String { say(153) }
    /// `folder-not-allowed`
    public static var folderNotAllowed: String { say(154) }
    /// `show-secret`
    public static var showSecret: String { say(155) }
    /// `hide-secret`
    public static var hideSecret: String { say(156) }
    /// `secret-not-saved`
    public static var secretNotSaved: String { say(157) }
    /// `backup-for-others`
    public static var backupForOthers: String { say(158) }
    /// `backup`
    public static var backup: String { say(159) }
    /// `back-up`
    public static var backUp: String { say(160) }
    /// `send-backup`
    public static var sendBackup: String { say(161) }
    /// `restore`
    public static var restore: String { say(162) }
    /// `by-itself`
    public static var byItself: String { say(163) }
    /// `how-often`
    public static var howOften: String { say(164) }
    /// `backup-folder`
    public static var backupFolder: String { say(165) }
    /// `folder-not-usable`
    public static var folderNotUsable: String { say(166) }
    /// `back-up-there`
    public static var backUpThere: String { say(167) }
    /// `backed-up-there`
    public static var backedUpThere: String { say(168) }
    /// `for-other-programs`
    public static var forOtherPrograms: String { say(169) }
    /// `tables`
    public static var tables: String { say(170) }
    /// `tables-detail`
    public static var tablesDetail: String { say(171) }
    /// `put-file`
    public static var putFile: String { say(172) }
    /// `send-file`
    public static var sendFile: String { say(173) }
    /// `take-in-heading`
    public static var takeInHeading: String { say(174) }
    /// `import-spreadsheet`
    public static var importSpreadsheet: String { say(175) }
    /// `import-intro`
    public static var importIntro: String { say(176) }
    /// `choose-spreadsheet`
    public static var chooseSpreadsheet: String { say(177) }
    /// `choose-another-spreadsheet`
    public static var chooseAnotherSpreadsheet: String { say(178) }
    /// `import-questions`
    public static var importQuestions: String { say(179) }
    /// `import-columns`
    public static var importColumns: String { say(180) }
    /// `import-readings`
    public static var importReadings: String { say(181) }
    /// `import-row-errors`
    public static var importRowErrors: String { say(182) }
    /// `spreadsheet-not-copied`
    public static var spreadsheetNotCopied: String { say(183) }
    /// `backup-working`
    public static var backupWorking: String { say(184) }
    /// `backup-gone`
    public static var backupGone: String { say(185) }
    /// `no-files-app`
    public static var noFilesApp: String { say(186) }
    /// `no-file`
    public static var noFile: String { say(187) }
    /// `file-not-copied`
    public static var fileNotCopied: String { say(188) }
    /// `preferences`
    public static var preferences: String { say(189) }
    /// `preferences-detail`
    public static var preferencesDetail: String { say(190) }
    /// `cautions`
    public static var cautions: String { say(191) }
    /// `cautions-detail`
    public static var cautionsDetail: String { say(192) }
    /// `row-add`
    public static var rowAdd: String { say(193) }
    /// `row-away`
    public static func rowAway(_ number: some CustomStringConvertible) -> String {
        say(194, [number.description])
    }
    /// `cell-is`
    public static func cellIs(_ column: some CustomStringConvertible, _ row: some CustomStringConvertible) -> String {
        say(195, [column.description, row.description])
    }
    /// `point-away`
    public static var pointAway: String { say(196) }
    /// `picture-in-work`
    public static var pictureInWork: String { say(197) }
    /// `no-picture`
    public static var noPicture: String { say(198) }
    /// `empty-picture`
    public static var emptyPicture: String { say(199) }
    /// `no-camera`
    public static var noCamera: String { say(200) }
    /// `no-gallery`
    public static var noGallery: String { say(201) }
    /// `picture-not-copied`
    public static var pictureNotCopied: String { say(202) }
    /// `letters`
    public static var letters: String { say(203) }
    /// `digits`
    public static var digits: String { say(204) }
    /// `save-or-throw`
    public static var saveOrThrow: String { say(205) }
    /// `save-or-throw-detail`
    public static var saveOrThrowDetail: String { say(206) }
    /// `throw-away`
    public static var throwAway: String { say(207) }
    /// `stay`
    public static var stay: String { say(208) }
    /// `chosen`
    public static var chosen: String { say(209) }
    /// `note-attention`
    public static func noteAttention(_ note: some CustomStringConvertible) -> String {
        say(210, [note.description])
    }
    /// `note-warning`
    public static func noteWarning(_ note: some CustomStringConvertible) -> String {
        say(211, [note.description])
    }
    /// `camera-refused`
    public static var cameraRefused: String { say(212) }

    /// The languages there are.
    public static let languages = ["en"]

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
            "Choose a zone",
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
            "Done",
            "To do",
            "control piece",
            "Remove this coat",
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
            "Checks",
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
            "Five letters and digits",
            "Contact sheet",
            "All pieces of this firing on one page, to share, print or save",
            "Share as a picture",
            "Share as a PDF",
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
    ]
}
