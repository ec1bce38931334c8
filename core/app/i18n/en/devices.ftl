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
intro-with-location = Each phone has everything and works on its own. Syncing brings them all up to date.
intro-without-location = Each phone has everything and works on its own. To share, send a backup to the other phone and restore it there.
new-phone-set-up = The others now see this as a new phone. Everything saved before stays as it is.
clock-behind = { $days ->
    [one] Some entries are dated up to { $days } day ahead of this phone's clock. Nothing is lost. Set the date right, here or on the other phone.
   *[other] Some entries are dated up to { $days } days ahead of this phone's clock. Nothing is lost. Set the date right, here or on the other phone.
}
