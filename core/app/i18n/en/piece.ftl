### The life of one piece, from its form to its firings.

unfired = It has been in no firing yet.
not-looked-at = Not looked at yet
