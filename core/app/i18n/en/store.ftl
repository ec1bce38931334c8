### Why the studio's file, a photograph, a backup or a journal could not be read or kept: what happened, what is safe, what to do.

## The studio's file.
not-a-studio = The studio's file was not made by laydown and was left unchanged. Move it elsewhere, then try again.
newer = This studio was saved by a newer version and was left unchanged. Update laydown, then open it again.
damaged = The studio's file is damaged and was left unchanged. Save what can be read: that makes a new file and keeps the damaged one.
busy = Another copy of laydown is busy with this studio. Close it, then try again. Nothing was lost.
full = The phone's storage is full. Nothing was lost, but this was not saved. Free some space, then save it again.
not-allowed = The phone does not let laydown write its file. Allow it in the phone's settings, then try again.
no-folder = The folder for this studio is missing. Make it, then try again.
removed = The studio's file was moved or deleted while laydown was open, and this was not saved. Put the file back, then open laydown again.
io = The phone's storage did not answer. Nothing was lost, but this was not done. Try again.
forked = Two phones have written under one name, as when a studio is copied from one to the other. What is here was left as it is. Set one of them up as a new device.
bad-event = This record cannot be used. Nothing was changed.
fault = Something in laydown went wrong. Nothing was lost. Please report it.

## A photograph.
photo-empty = The camera gave an empty picture. Take it again.
photo-heic = This is a HEIC picture, which cannot be read here. Set the camera to save JPEG, then take it again.
photo-no-picture = This is no JPEG or PNG picture, or it was cut short. Take it again, or set the camera to save JPEG.
photo-too-large = This picture is too large: at most 60 megapixels and 64 MB. Set the camera to a smaller size.

## A backup, or a journal of JSON lines.
not-a-backup = This file is not a laydown backup. Choose another.
backup-gone = File not found. Choose it again.
backup-unreadable = This file cannot be read. Copy it onto the phone, then choose it there.
backup-newer = This backup was made by a newer version. Update laydown, then restore it.
# $file: the name of a file within the backup.
backup-damaged = This backup is damaged: “{ $file }” is not as it was written. Nothing was restored. Use another backup.
backup-behind = This copy lacks some of what this studio has. Your data is safe on this phone. Make the backup again.
journal-damaged = This journal is damaged: it is not as it was written. Nothing was restored. Use another file.
# $why: a sentence.
backup-partly = { $events ->
    [one] 1 entries of this file were added, then it stopped. { $why } What was added is safe: restore the file again for the rest.
   *[other] { $events } entries of this file were added, then it stopped. { $why } What was added is safe: restore the file again for the rest.
}

## Entries of another phone that were not taken in. $why: a code.
refused = { $entries ->
    [one] Not added: 1 entry that laydown cannot have made ({ $why ->
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
    [one] Not added: 1 entry of a phone whose name is used twice. Your data is safe. Set up one of the two as a new phone: Studio, Phones.
   *[other] Not added: { $entries } entries of a phone whose name is used twice. Your data is safe. Set up one of the two as a new phone: Studio, Phones.
}
refused-of-others = { $entries ->
    [one] Not added: 1 entries of other phones.
   *[other] Not added: { $entries } entries of other phones.
}

## A damaged studio, read as far as it can be.
recovered-nothing = No entry could be read. The damaged file was kept beside a new, empty one. If you have a backup, restore it now.
recovered-all = { $saved ->
    [one] All 1 entries that are known of were saved. The damaged file was kept beside the new one.
   *[other] All { $saved } entries that are known of were saved. The damaged file was kept beside the new one.
}
# $all: how many there were.
recovered-some = { $saved ->
    [one] 1 of { $all } entries were saved. The damaged file was kept beside the new one. If you have a backup, restore it now: it may bring back the rest.
   *[other] { $saved } of { $all } entries were saved. The damaged file was kept beside the new one. If you have a backup, restore it now: it may bring back the rest.
}

## A file of the journal in the sync location. $name: the name of the file.
segment-name = The journal file “{ $name }” cannot be used: its name is none that laydown gives.
segment-cut = The journal file “{ $name }” cannot be used: it is cut short.
segment-packing = The journal file “{ $name }” cannot be used: it is damaged.
segment-sum = The journal file “{ $name }” cannot be used: it is damaged, its sum is not right.
segment-foreign = The journal file “{ $name }” cannot be used: it is no laydown segment.
segment-newer = The journal file “{ $name }” cannot be used: a newer laydown wrote it, update the app.
segment-device = The journal file “{ $name }” cannot be used: it holds the events of another device.
segment-gap = The journal file “{ $name }” cannot be used: it does not hold the events that its name says.
segment-line = The journal file “{ $name }” cannot be used: line { $line } makes no sense.
segment-too-large = The journal file “{ $name }” cannot be used: it is too large.
