### Not yet read by a native potter.

liked-on-average = note moyenne { $mean } sur 5
page-not-painted = Une page n’a pas pu être dessinée. Rouvrez la planche-contact.
