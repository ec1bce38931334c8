### The Backup page: everything in one file, such a file restored, backups that are made automatically, and tables for other programs.

intro = One file holds everything: weights, firings and photos. Keep a copy off this phone; you can restore it on any phone. Anyone who has the file can read it.
# $moment: a time, such as "10:42" or "3 Nov 10:42".
last-backup = Last backup: { $moment }.
none-yet = No backup made on this phone yet.
# $contents: what the backup holds, standing by itself, such as "12 entries and 3 photographs".
saved-and-verified = Backup saved and verified: { $contents }.
# $new and $held: what was new and what the file holds, each standing by itself.
restored = Restored: { $new }. The file holds { $held }.
all-here-already = Nothing to restore. This phone already has { $contents }.
nothing-new = There was nothing new to restore.
# $names: the beginnings of the names of files, with commas.
photos-left-out = { $photos ->
    [one] { $photos } photo could not be read and was left out: { $names }.
   *[other] { $photos } photos could not be read and were left out: { $names }.
}
# The beginning of the name of a file.
photo-name = “{ $letters }…”

## What a backup holds.
entries = { $entries ->
    [one] { $entries } entry
   *[other] { $entries } entries
}
entries-and-photos = { $entries ->
    [one] { $entries } entry
   *[other] { $entries } entries
} and { $photos ->
    [one] { $photos } photo
   *[other] { $photos } photos
}
# $contents: one of the two above.
with-missing-photos = { $missing ->
    [one] { $contents } ({ $missing } more photo was not found)
   *[other] { $contents } ({ $missing } more photos were not found)
}

## On the Studio screen, in one line.
last-backup-line = Last backup: { $moment }
none-yet-line = Everything in one file, to keep off this phone

## While there has been none for long.
too-long-ago = { $days ->
    [one] The last backup is { $days } day old. If you lose this phone, you lose everything since.
   *[other] The last backup is { $days } days old. If you lose this phone, you lose everything since.
}
never = There is no backup yet. If you lose this phone, you lose everything: make one in Studio, Backup.

## Automatic backups.
# How often. $rhythm: a code.
rhythm = { $rhythm ->
    [week] Every week
    [month] Every month
   *[never] Never
}
rhythm-not-listed = Choose how often from the list.
no-folder = No folder was chosen.
folder-first = Choose a folder for the backups first.
off = Automatic backup is off.
choose-folder = Choose a folder for automatic backups, on a memory card or one that another app copies to your computer.
# $rhythm: a code. $backups: how many are kept.
automatic = { $rhythm ->
    [month] Backs up every month if anything is new. Keeps the newest { $backups }, and removes only older backups that laydown made.
   *[week] Backs up every week if anything is new. Keeps the newest { $backups }, and removes only older backups that laydown made.
}
# $automatic: the sentences above.
automatic-and-last = { $automatic } Last backup: { $moment }.
# Why there is none. $trouble: a code.
not-made = { $trouble ->
    [place_gone] No backup was made ({ $moment }): backup folder not found. Your data is safe on this phone. Reconnect the card, or choose another folder.
    [not_allowed] No backup was made ({ $moment }): laydown may no longer write to the folder. Choose the folder again.
    [place_full] No backup was made ({ $moment }): the folder is full. Free some space there, or choose another folder.
    [phone_full] No backup was made ({ $moment }): this phone is full. Free some space, then try again.
    [not_made] No backup was made ({ $moment }): something went wrong on this phone. Tap “Make a backup” to see why.
    [not_whole] No backup was made ({ $moment }): the file in the folder does not match what laydown wrote. Try again, or choose another folder.
   *[no_answer] No backup was made ({ $moment }): the folder did not respond. Try again, or choose another folder.
}

## For other programs.
journal = Journal as JSON lines
journal-detail = Every entry as it was made, for other programs. No photos. laydown can restore it.
all-tables = All tables
all-tables-detail = One zip with a file for each table
# $table: the name of its file.
table = { $table ->
    [readings] Readings
    [pieces] Fired pieces
    [firings] Firings
    [buckets] Buckets
    [checks] SG checks
    [glazes] Glazes
   *[forms] Forms
}
table-detail = { $table ->
    [readings] One line per coat: form, glaze, weight, verdict
    [pieces] One line per piece in a firing
    [firings] One line per firing
    [buckets] One line per bucket, with its last SG
    [checks] One line per check
    [glazes] One line per glaze
   *[forms] One line per form, with its areas
}
table-not-listed = Choose a table from the list.
journal-written = { $entries ->
    [one] Saved: { $entries } entry. laydown can restore it like a backup.
   *[other] Saved: { $entries } entries. laydown can restore them like a backup.
}
tables-written = { $tables ->
    [one] Saved: { $tables } table in one zip.
   *[other] Saved: { $tables } tables in one zip.
}
# $table: the title of a table, as above.
table-written = Saved: { $table }. Open the file in a spreadsheet.
