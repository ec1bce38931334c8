### The Backup page: everything in one file, such a file restored, backups that are made automatically, and tables for other programs.

intro = Everything in one file: weights, firings and photos. Keep a copy off this phone; laydown can restore it on any phone. Anyone who has the file can read it.
# $moment: a time, such as "10:42" or "3 Nov 10:42".
last-backup = Last backup: { $moment }.
none-yet = No backup has been made on this phone.
# $contents: what the backup holds, standing by itself, such as "12 entries and 3 photographs".
saved-and-verified = Backup saved and verified: { $contents }.
# $new and $held: what was new and what the file holds, each standing by itself.
restored = Restored: { $new }, of { $held } in the file.
all-here-already = All of it was here already: { $contents }.
nothing-new = Nothing was new.
# $names: the beginnings of the names of files, with commas.
photos-left-out = { $photos ->
    [one] { $photos } photograph could not be read and stayed out: { $names }.
   *[other] { $photos } photographs could not be read and stayed out: { $names }.
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
    [one] { $photos } photograph
   *[other] { $photos } photographs
}
# $contents: one of the two above.
with-missing-photos = { $missing ->
    [one] { $contents } ({ $missing } photograph more could not be found)
   *[other] { $contents } ({ $missing } photographs more could not be found)
}

## On the Studio screen, in one line.
last-backup-line = Last one: { $moment }
none-yet-line = Everything in one file, to keep elsewhere

## While there has been none for long.
too-long-ago = { $days ->
    [one] The last backup is { $days } day old. A lost phone loses everything since.
   *[other] The last backup is { $days } days old. A lost phone loses everything since.
}
never = There has never been a backup. A lost phone loses everything: Studio, Backup.

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
choose-folder = Choose a folder for automatic backups: on a memory card, or one that another app copies to your computer.
# $rhythm: a code. $backups: how many are kept.
automatic = { $rhythm ->
    [month] Made every month if something is new. laydown keeps its newest { $backups } and removes only older ones of its own.
   *[week] Made every week if something is new. laydown keeps its newest { $backups } and removes only older ones of its own.
}
# $automatic: the sentences above.
automatic-and-last = { $automatic } Last one: { $moment }.
# Why there is none. $trouble: a code.
not-made = { $trouble ->
    [place_gone] No backup was made ({ $moment }): backup folder not found. Your data is safe on this phone. Reconnect the card, or choose another folder.
    [not_allowed] No backup was made ({ $moment }): laydown may no longer write into the folder. Choose the folder again.
    [place_full] No backup was made ({ $moment }): there is no room in the folder. Make room there, or choose another folder.
    [phone_full] No backup was made ({ $moment }): there is no room left on this phone. Free some space, then try again.
    [not_made] No backup was made ({ $moment }): it could not be made on this phone. Use “Make a backup” to see why.
    [not_whole] No backup was made ({ $moment }): the file in the folder is not what laydown wrote. Try again, or choose another folder.
   *[no_answer] No backup was made ({ $moment }): the folder did not answer. Try again; if that does not help, choose another folder.
}

## For other programs.
journal = The journal as JSON lines
journal-detail = Every entry as it was made, for a program to read. Without photos. laydown can restore it.
all-tables = All tables
all-tables-detail = One zip with a file for each
# $table: the name of its file.
table = { $table ->
    [readings] Readings
    [pieces] Fired pieces
    [firings] Firings
    [buckets] Buckets
    [checks] Checks of SG
    [glazes] Glazes
   *[forms] Forms
}
table-detail = { $table ->
    [readings] A line for each coat: form, glaze, weight, verdict
    [pieces] A line for each piece in a firing
    [firings] A line for each firing
    [buckets] A line for each bucket, with its last SG
    [checks] A line for each check
    [glazes] A line for each glaze
   *[forms] A line for each form, with its areas
}
table-not-listed = Choose a table from the list.
journal-written = { $entries ->
    [one] Written: { $entries } entry. laydown can restore them like a backup.
   *[other] Written: { $entries } entries. laydown can restore them like a backup.
}
tables-written = { $tables ->
    [one] Written: { $tables } table in one zip.
   *[other] Written: { $tables } tables in one zip.
}
# $table: the title of a table, as above.
table-written = Written: { $table }. Open the file in a spreadsheet.
