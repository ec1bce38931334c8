/// The few fixed labels, the same as on Android, under the same names. Whatever depends on the studio comes in words from
/// the core.
// Each says itself what it is.
// swift-format-ignore: AllPublicDeclarationsHaveDocumentation
public enum Words {
    public static let tabWeigh = "Weigh"
    public static let tabBuckets = "Buckets"
    public static let tabKiln = "Kiln"
    public static let tabFindings = "Findings"
    public static let tabStudio = "Studio"
    public static let back = "Back"
    public static let tryAgain = "Try again"
    public static let undo = "Undo"
    public static let doAgain = "Redo"
    public static let otherBuild = """
        This install is incomplete. Install laydown again. \
        Nothing was opened or changed.
        """
    public static let broken = """
        Something went wrong in laydown. Nothing was changed. Try again, or close laydown and open \
        it again.
        """
    public static let form = "Form"
    public static let glaze = "Glaze, bucket"
    public static let zone = "Zone"
    public static let scale = "Scale"
    public static let chooseForm = "Choose a form"
    public static let chooseGlaze = "Choose a glaze"
    public static let chooseZone = "Choose a zone"
    public static let chooseScale = "Choose a scale"
    public static func choiceIs(_ label: String, _ chosen: String) -> String {
        "\(label): \(chosen). Tap to change."
    }
    public static let addForm = "Add a form"
    public static let addGlaze = "Add a glaze"
    public static let addScale = "Add a scale"
    public static let wayNet = "After tare"
    public static let wayTwo = "Two weights"
    public static func wayIs(_ way: String, _ other: String) -> String {
        "How you weigh: \(way). Tap to change to: \(other)."
    }
    public static func rightIs(_ span: String) -> String {
        "Target: \(span)"
    }
    public static func targetIs(_ wet: String, _ span: String, _ source: String) -> String {
        "Aim for \(wet). \(span). \(source) Tap for more."
    }
    public static let nothingTyped = "Type what the scale shows."
    public static let save = "Save"
    public static let saveAsIs = "Save as it is"
    public static let details = "Details"
    public static func nextField(_ label: String) -> String {
        "Next: \(label)"
    }
    public static let keyDelete = "Delete a digit; hold to clear"
    public static let keyPoint = "Decimal mark"
    public static let firstTitle = "Before the first piece"
    public static let firstDetail = "Set up three things, once. Then type the weight and tap Save."
    public static let done = "Done"
    public static let toDo = "To do"
    public static let control = "control piece"
    public static let takeBack = "Remove this coat"
    public static let gaugeNone = "Gauge: nothing weighed yet."
    public static let gaugeInside = "Gauge: the reading is inside the target."
    public static let gaugeBelow = "Gauge: the reading is below the target."
    public static let gaugeAbove = "Gauge: the reading is above the target."
    public static let gaugeGuess = "Gauge: the target is a guess. All of the marked span may be right."
    public static let gaugeEdge = "Gauge: the reading is on the edge of the target."
    public static let check = "Check"
    public static let thin = "Thin"
    public static let change = "Change"
    public static let anotherBucket = "Add another bucket of this glaze"
    public static let checks = "Checks"
    public static let needsCheck = "Check it"
    public static let targetsRestOn = "Targets today are based on"
    public static let beginFiring = "Start a firing"
    public static let addKiln = "Add a kiln first"
    public static let addKilnDetail = "Give its shelves, so that you can plan a load."
    public static let firings = "Firings"
    public static let findPieces = "Find a piece"
    public static let findPiecesDetail = "By the code on its foot, or by form, glaze, fault or firing"
    public static let changeFiring = "Cone, witness cones, temperature, notes"
    public static let beforeKiln = "Before the kiln"
    public static let loadAll = "Load all waiting pieces"
    public static let tickAll = "Tick all"
    public static let loadTicked = "Load the ticked pieces"
    public static let whichShelf = "Choose a shelf"
    public static func allOfThem(_ count: Int) -> String {
        "All \(count)"
    }
    public static let oneOfThem = "Just one"
    public static let moveLeft = "Move left"
    public static let moveRight = "Move right"
    public static let moveUp = "Move up"
    public static let moveDown = "Move down"
    public static let takeOut = "Remove from load"
    public static let pieces = "Pieces"
    public static let earlierFirings = "Earlier firings"
    public static let notYet = "Not yet"
    public static let yes = "Yes"
    public static let photograph = "Take a photo"
    public static let fromPictures = "Choose a picture on this phone"
    public static let pictureBeingSaved = "Saving the picture…"
    public static func photoOf(_ number: Int, _ count: Int) -> String {
        "Photo \(number) of \(count). Tap to look closer."
    }
    public static let photoOff = "Remove photo"
    public static let close = "Close"
    public static let nextPiece = "Next piece"
    public static let lastPiece = "Back to firing"
    public static let previousPiece = "Previous piece"
    public static func answerIs(_ question: String, _ answer: String) -> String {
        "\(question): \(answer)"
    }
    public static func answerChosen(_ question: String, _ answer: String) -> String {
        "\(question): \(answer), chosen"
    }
    public static func faultChosen(_ fault: String) -> String {
        "\(fault), chosen"
    }
    public static let liking = "Your rating"
    public static let faults = "Faults"
    public static let whereAway = "Remove this mark"
    public static let note = "Note"
    public static let noteHint = "What you want to remember"
    public static let controlPiece = "Make it a control piece: targets use it"
    public static let fireAgain = "Fire it again: it waits for the next load"
    public static let asWeighed = "As weighed"
    public static let wholePiece = "The whole piece"
    public static let wholePieceDetail = "All its coats, firings and photos"
    public static let fired = "Firings"
    public static let compare = "Compare with another piece"
    public static let compareDetail = "A control piece, or any piece of its form or glaze"
    public static let beside = "Side by side"
    public static let compareWith = "Compare with"
    public static func differs(_ label: String) -> String {
        "\(label), different"
    }
    public static let leftPhoto = "Photo of the left piece"
    public static let rightPhoto = "Photo of the right piece"
    public static let codeOnFoot = "Code on the foot"
    public static let codeHint = "Five letters and digits"
    public static let contactSheet = "Contact sheet"
    public static let contactSheetDetail = "All pieces of this firing on one page, to share, print or save"
    public static let sharePicture = "Share as a picture"
    public static let sharePdf = "Share as a PDF"
    public static let print = "Print"
    public static func pageOf(_ number: Int, _ count: Int) -> String {
        "Page \(number) of \(count)"
    }
    public static let noPhoto = "No photo"
    public static let sizes = "Compare sizes"
    public static let sizesDetail = "What every form should take, based on one amount you know"
    public static let known = "Based on"
    public static let chooseKnown = "Choose an amount"
    public static let importSpreadsheet = "Your spreadsheet"
    public static let importIntro = """
        Import readings from a spreadsheet. Save it as CSV, then choose it here. You see what \
        would be added before anything is saved.
        """
    public static let chooseSpreadsheet = "Choose the file"
    public static let chooseAnotherSpreadsheet = "Choose another file"
    public static let importQuestions = "Questions"
    public static let importColumns = "Columns"
    public static let importReadings = "Preview"
    public static let importRowErrors = "Lines that cannot be imported"
    public static let spreadsheetNotCopied = """
        That file cannot be read, or the phone is full. Choose it again, or choose another.
        """
    public static let saveReadable = "Save what can be read"
    public static let recentChanges = "Recent changes"
    public static let itsHistory = "History"
    public static let takeItBack = "Undo"
    public static let doItAgain = "Redo"
    public static let devices = "Phones in this studio"
    public static let devicesDetail = "Phones that use this studio, and how they sync"
    public static let phones = "Phones"
    public static let syncLocation = "Sync location"
    public static let choosePlace = "Choose a location"
    public static let changePlace = "Change the location"
    public static let syncNow = "Sync now"
    public static let checkThere = "Check the files there"
    public static let forgetPlace = "Forget this location"
    public static let newPhone = "Set up as a new phone"
    public static let newPhoneQuestion = "Set this up as a new phone?"
    public static let newPhoneDetail = """
        Do this when two phones have saved under one name. Everything saved before stays as it is.
        """
    public static let setUp = "Set up"
    public static let forgetPlaceQuestion = "Forget this location?"
    public static let forgetPlaceDetail = """
        The files there stay, and nothing on this phone is lost. This phone forgets the password \
        and the passphrase.
        """
    public static let forget = "Forget it"
    public static let syncBegins = "Checking. You can keep weighing."
    public static func syncSoFar(_ progressed: String) -> String {
        "\(progressed). You can keep weighing."
    }
    public static let stop = "Stop"
    public static let stopping = "Stopping…"
    public static let chooseFolder = "Choose the folder"
    public static let chooseAnotherFolder = "Choose another folder"
    public static let noFolder = "No folder was chosen. Nothing was changed."
    public static let folderNotAllowed = "This phone does not allow that folder. Choose another."
    public static let showSecret = "Show"
    public static let hideSecret = "Hide"
    public static let secretNotSaved = """
        This phone could not store the password. \
        Free some space, then type it and save again.
        """
    public static let backup = "Backup"
    public static let backupForOthers = "Send everything to another phone, or restore what it sent"
    public static let backUp = "Make a backup"
    public static let sendBackup = "Send everything to another app or phone"
    public static let restore = "Restore a backup, or what another phone sent"
    public static let byItself = "Automatic backup"
    public static let howOften = "How often"
    public static let backupFolder = "Backup folder"
    public static let folderNotUsable = "This folder cannot be used. Choose another."
    public static let backUpThere = "Back up there now"
    public static let backedUpThere = "Backup saved and verified."
    public static let forOtherPrograms = "For other programs"
    public static let tables = "Tables for a spreadsheet"
    public static let tablesDetail = "Readings, fired pieces, buckets and more, as CSV"
    public static let takeInHeading = "Restore and import"
    public static let backupWorking = "Working. You can keep weighing."
    public static let noFile = "No file was chosen. Nothing was changed."
    public static let fileNotCopied = """
        That place cannot be read or written, or is full. Nothing was changed: choose another.
        """
    public static let preferences = "Units, sound and touch"
    public static let preferencesDetail = "Which units, and whether laydown speaks and ticks"
    public static let cautions = "Cautions"
    public static let cautionsDetail = "Dust, spraying, hot kilns and food: what to watch for, and whom to ask"
    public static let rowAdd = "Add a row"
    public static func rowAway(_ number: Int) -> String {
        "Remove row \(number)"
    }
    public static func cellIs(_ column: String, _ row: Int) -> String {
        "\(column), row \(row)"
    }
    public static let pointAway = "Remove this point"
    public static let pictureInWork = "Finding the piece in the picture…"
    public static let noPicture = "No picture was taken. Nothing was changed."
    public static let emptyPicture = "The camera gave an empty picture. Take it again."
    public static let noCamera = """
        No camera app responds on this phone. Take the picture another way, then choose it here.
        """
    public static let pictureNotCopied = """
        That picture cannot be read, or the phone is full. Choose it again, or choose another.
        """
    public static let saveOrThrow = "Save changes?"
    public static let saveOrThrowDetail = "You changed something on this page."
    public static let throwAway = "Discard"
    public static let stay = "Stay here"
    public static func noteAttention(_ note: String) -> String {
        "Note: \(note)"
    }
    public static func noteWarning(_ note: String) -> String {
        "Warning: \(note)"
    }

    // MARK: Only on the iPhone

    public static let cameraRefused = """
        laydown may not use the camera. Allow it in the phone's settings, or choose a picture that is on this phone.
        """
}
