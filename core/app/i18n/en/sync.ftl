### The sync location: where it is, what came of the last sync, and why one failed: what happened, what is safe, what to do.

## The location, on the phones' page.
none-chosen = They can also sync through a location of yours: a folder, a WebDAV server or an S3 bucket. laydown goes there only when you ask it to.
choose-first = No sync location is chosen yet. Choose one.
# $folder: a name of the potter's.
at-folder = The phones sync in the folder “{ $folder }”.
# $address: a web address. $user: a name on the server.
at-webdav = The phones sync at { $address }, as { $user }.
at-bucket = The phones sync in the bucket “{ $bucket }” at { $address }.
at-bucket-folder = The phones sync in “{ $folder }” of the bucket “{ $bucket }” at { $address }.
encrypted = Encrypted with a passphrase.
not-encrypted = Not encrypted.

## What came of a sync.
not-synced-yet = Not synced yet.
# $moment: a time, such as "10:42". $report: one or more sentences of these here.
last-sync = Last sync: { $moment }. { $report }
tried = Tried { $moment }. { $why }
nothing-new = Nothing was new on either side.
# $entries, $photos: the two below.
came = Received: { $what }.
went = Sent: { $what }.
came-and-went = Received: { $came }. Sent: { $went }.
entries = { $entries ->
    [one] { $entries } entry
   *[other] { $entries } entries
}
photos = { $photos ->
    [one] { $photos } photo
   *[other] { $photos } photos
}
# $entries: such as "3 entries". $photos: such as "1 photo".
both = { $entries } and { $photos }
repaired = { $files ->
    [one] { $files } damaged file was repaired.
   *[other] { $files } damaged files were repaired.
}
more-problems = { $count ->
    [one] And { $count } more like these.
   *[other] And { $count } more like these.
}
photos-missing = { $photos ->
    [one] { $photos } photo is neither here nor there. On the phone that took it, choose “Sync now” on a network that costs nothing.
   *[other] { $photos } photos are neither here nor there. On the phone that took them, choose “Sync now” on a network that costs nothing.
}
# $entries: such as "3 entries".
new-here = New on this phone: { $entries }.
photos-wait = { $photos ->
    [one] { $photos } photo waits for a network that costs nothing.
   *[other] { $photos } photos wait for a network that costs nothing.
}
progress = { $done } of { $all } files

## Why a sync failed, or a file was left out.
no-network = This phone has no network. Nothing is lost: sync again when it is connected.
unknown-host = No server has this name. Nothing is lost: check the address, and that the phone is connected.
no-answer = No answer. Nothing is lost: check that the server is on, then sync again.
timed-out = The server did not answer in time. Nothing is lost: sync again on a better network.
certificate-date = The server's certificate is out of date, or this phone's clock is wrong. Nothing was sent: check date and time here, then ask whoever runs the server.
certificate-host = The certificate belongs to another server, so nothing was sent. Check the address; on a network with a sign-in page, sign in first.
certificate = This phone does not trust the server's certificate, so nothing was sent. Check the address, or install the certificate of your own server on this phone.
broken = The connection broke. What arrived is saved: sync again.
stopped = Stopped. Finished files stay; the rest follows next time.
plain-http = Over http:// anyone on the internet could read your password and files. Use https:// for this server.
wrong-password = The server does not accept the name and password, or the key and secret. Type them again.
wrong-address = Nothing found at this address. Check it letter by letter.
no-folder = Folder not found, or its app does not answer. Your data is safe on this phone: choose the folder again.
full = The sync location is full. Free some space there, or choose another location.
not-allowed = laydown may not write in that folder. Allow it, or choose another one.
wrong-passphrase = { $keys ->
    [one] This is not the passphrase of the files there: it does not open the key of { $keys } phone. Type it again, or choose to start afresh there.
   *[other] This is not the passphrase of the files there: it does not open the keys of { $keys } phones. Type it again, or choose to start afresh there.
}
no-passphrase = The files there are encrypted. Type their passphrase.
strange-files = { $files ->
    [one] { $files } file there is not encrypted with your passphrase and was left out. If another phone of yours put it there, type the same passphrase on it.
   *[other] { $files } files there are not encrypted with your passphrase and were left out. If another phone of yours put them there, type the same passphrase on it.
}
encrypted-files = { $files ->
    [one] { $files } file there is encrypted and was left out. If your phones use a passphrase, type it here too.
   *[other] { $files } files there are encrypted and were left out. If your phones use a passphrase, type it here too.
}
older-than-last-time = The sync location shows older data than last time. Your data is safe on this phone, and it was put there again.
left-open = { $files ->
    [one] { $files } file of this phone is still there from before, not encrypted. Delete the file whose name does not end in “.age”.
   *[other] { $files } files of this phone are still there from before, not encrypted. Delete those whose names do not end in “.age”.
}
# $why: a sentence about a journal file.
damaged-file = { $why } It was left out. On the phone that wrote it, choose “Check the files there”.
newer = Another phone has a newer version. Update laydown here, then choose “Sync now” again.
# $file: the name of a file.
damaged-photo = The photo “{ $file }” is damaged there and was left out. On the phone that took it, choose “Check the files there”.
# $phone: what a phone is called in the middle of a line, such as "tablet by the sink".
entry-missing = Entry { $entry } of { $phone } is missing there. Choose “Sync now” on that phone, then here again.
entries-missing = Entries { $first } to { $last } of { $phone } are missing there. Choose “Sync now” on that phone, then here again.
file-too-long = A file there is too long and was left out. Nothing is lost.
redirected = The server sends laydown to another server, so nothing was sent. Type the address the files have now.
too-many-files = There are more files there than laydown reads. Your data is safe on this phone: choose another location.
too-slow = The server answers too slowly. What arrived is saved: try again on a better network.
failed = The sync location did not respond as expected. Nothing is lost: try again later.
