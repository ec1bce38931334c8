import LaydownCore

/// A page that lies on top of a tab.
public enum Place: Hashable, Sendable {
    /// The record of one coat.
    case coat(String)
    /// One bucket.
    case bucket(String)
    /// Something that is filled in: a new one where `id` is empty. `subject` is the glaze of a bucket, the bucket of a check.
    case sheet(SheetKind, id: String = "", subject: String = "")
    /// What every form should take.
    case sizes
    /// Every caution in full.
    case cautions
    /// Everything into one file.
    case backup
    /// One firing.
    case firing(String)
    /// A piece of a firing after it; the first one not yet looked at where `piece` is empty.
    case look(firing: String, piece: String = "")
    /// A firing on a page.
    case contactSheet(firing: String)
    /// The life of one piece.
    case piece(String)
    /// A piece beside another.
    case compare(String)
    /// Pieces that are looked for.
    case find
}
