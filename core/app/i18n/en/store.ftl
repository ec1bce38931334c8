### Why the studio's file, a photograph, a backup or a journal could not be read or kept: what happened, what is safe, what to do.

## The studio's file.
not-a-studio = The studio's file was not made by laydown, so it was left unchanged. Move it somewhere else, then try again.
newer = A newer version saved this studio, so it was left unchanged. Update laydown, then open it again.
damaged = The studio's file is damaged and was left unchanged. Save what can be read: that makes a new file and keeps the damaged one.
busy = Another copy of laydown is using this studio. Nothing was lost: close the other copy, then try again.
full = The phone is full, so this was not saved; nothing else was lost. Free some space, then save it again.
not-allowed = The phone does not let laydown write its file. Allow it in the phone's settings, then try again.
no-folder = The folder for this studio is missing. Create it, then try again.
removed = The studio's file was moved or deleted while laydown was open, and this was not saved. Put the file back, then open laydown again.
io = The phone's storage did not respond, so this was not done; nothing was lost. Try again.
forked = Two phones have written under one name, as when a studio is copied from one to the other. Nothing here was changed: set one of them up as a new phone.
bad-event = This record cannot be used. Nothing was changed.
fault = Something went wrong in laydown, but nothing was lost. Please report it.

## A photograph.
photo-empty = The camera gave an empty picture. Take it again.
photo-heic = This is a HEIC picture, which laydown cannot read. Set the camera to save JPEG, then take it again.
photo-no-picture = This picture is not JPEG or PNG, or part of it is missing. Take it again, or set the camera to save JPEG.
photo-too-large = This picture is too large: the limit is 60 megapixels and 64 MB. Set the camera to a smaller size.

## A backup, or a journal of JSON lines.
not-a-backup = This file is not a laydown backup. Choose another.
backup-gone = File not found. Choose it again.
backup-unreadable = This file cannot be read. Copy it onto the phone, then choose it there.
backup-newer = A newer version made this backup. Update laydown, then restore it.
# $file: the name of a file within the backup.
backup-damaged = This backup is damaged (“{ $file }” has changed), so nothing was restored. Use another backup.
backup-behind = This copy is missing some of what this studio has; your data is safe on this phone. Make the backup again.
journal-damaged = This journal is damaged, so nothing was restored. Use another file.
# $why: a sentence.
backup-partly = { $events ->
    [one] { $events } entry of this file was added, then it stopped. { $why } What was added is safe: restore the file again for the rest.
   *[other] { $events } entries of this file were added, then it stopped. { $why } What was added is safe: restore the file again for the rest.
}

## Entries of another phone that were not taken in. $why: a code.
refused = { $entries ->
    [one] Not added: { $entries } entry that laydown cannot have made ({ $why ->
        [too_large] too large
        [too_many] too many about one thing
        [too_many_devices] too many phones
       *[no_such_number] impossible numbers
    }). Everything else was added.
   *[other] Not added: { $entries } entries that laydown cannot have made ({ $why ->
        [too_large] too large
        [too_many] too many about one thing
        [too_many_devices] too many phones
       *[no_such_number] impossible numbers
    }). Everything else was added.
}
refused-forked = { $entries ->
    [one] Not added: { $entries } entry from a phone whose name is used twice. Your data is safe: set up one of the two as a new phone in Studio, Phones.
   *[other] Not added: { $entries } entries from a phone whose name is used twice. Your data is safe: set up one of the two as a new phone in Studio, Phones.
}
refused-of-others = { $entries ->
    [one] Not added: { $entries } entry from other phones.
   *[other] Not added: { $entries } entries from other phones.
}

## A damaged studio, read as far as it can be.
recovered-nothing = No entry could be read. The damaged file was kept beside a new, empty one: if you have a backup, restore it now.
recovered-all = { $saved ->
    [one] The { $saved } known entry was saved. The damaged file was kept beside the new one.
   *[other] All { $saved } known entries were saved. The damaged file was kept beside the new one.
}
# $all: how many there were.
recovered-some = { $saved ->
    [one] { $saved } of { $all } entries was saved, and the damaged file was kept beside the new one. If you have a backup, restore it now: it may bring back the rest.
   *[other] { $saved } of { $all } entries were saved, and the damaged file was kept beside the new one. If you have a backup, restore it now: it may bring back the rest.
}

## A file of the journal in the sync location. $name: the name of the file.
segment-name = The journal file “{ $name }” cannot be used: laydown gives no such name.
segment-cut = The journal file “{ $name }” cannot be used: part of it is missing.
segment-packing = The journal file “{ $name }” cannot be used: it is damaged.
segment-sum = The journal file “{ $name }” cannot be used: it is damaged (its checksum is wrong).
segment-foreign = The journal file “{ $name }” cannot be used: it is not a laydown file.
segment-newer = The journal file “{ $name }” cannot be used: a newer version wrote it. Update laydown.
segment-device = The journal file “{ $name }” cannot be used: it holds another phone's entries.
segment-gap = The journal file “{ $name }” cannot be used: it does not hold the entries its name says.
segment-line = The journal file “{ $name }” cannot be used: line { $line } cannot be read.
segment-too-large = The journal file “{ $name }” cannot be used: it is too large.
