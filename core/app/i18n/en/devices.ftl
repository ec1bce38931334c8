### The phones of the studio: which have written here, until when, and whether their clocks can be right.

# A phone, named in the middle of a line.
this-phone = this phone
# $name: what this phone is called.
this-phone-named = this phone ({ $name })
another-phone = another phone
# The same as the title of a row.
this-phone-row = This phone
this-phone-named-row = This phone ({ $name })
another-phone-row = Another phone
# $moment: a time, such as "10:42" or "3 Nov 10:42".
entries-last = { $entries ->
    [one] { $entries } entry, last { $moment }
   *[other] { $entries } entries, last { $moment }
}
no-entries = Nothing saved yet
intro-with-location = Each phone has everything and works on its own. After a sync they all have the same.
intro-without-location = Each phone has everything and works on its own. To share, send a backup to the other phone and restore it there.
new-phone-set-up = This is a new phone to the others now. Everything saved before stays as it is.
clock-behind = { $days ->
    [one] Entries are dated up to { $days } day later than this phone's clock shows. Nothing is lost by it. Set the date right, here or on the other phone.
   *[other] Entries are dated up to { $days } days later than this phone's clock shows. Nothing is lost by it. Set the date right, here or on the other phone.
}
