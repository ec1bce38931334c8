### The editor of a bucket: one mixed lot of a glaze.

# $glaze: the name of the glaze.
new = { $glaze }: new bucket
# $glaze: the name of the glaze.
title = { $glaze }: bucket
archive = Archive this bucket
name-hint = Big bucket
volume = Volume, if known
