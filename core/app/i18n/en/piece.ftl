### The life of one piece, from its form to its firings.

unfired = Not fired yet.
not-looked-at = Not looked at yet
