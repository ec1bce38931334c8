### What is said on several screens.

# $what: a code of what is gone.
missing = { $what ->
    [body] This body is no longer in the studio. Choose another.
    [bucket] This bucket is no longer in the studio. Choose another.
    [coat] This coat is no longer in the studio. Choose another.
    [check] This check is no longer in the studio. Choose another.
    [bucket_entry] This entry is no longer in the studio. Choose another.
    [control_piece] This control piece is no longer in the studio. Choose another.
    [fault] This fault is not in the list. Choose another.
    [firing] This firing is no longer in the studio. Choose another.
    [form] This form is no longer in the studio. Choose another.
    [glaze] This glaze is no longer in the studio. Choose another.
    [glazed] This time range is not in the list. Choose another.
    [kiln] This kiln is no longer in the studio. Choose another.
    [laydown] This laydown range is not in the list. Choose another.
    [photograph] This photo is no longer in the studio. Choose another.
    [piece] This piece is no longer in the studio. Choose another.
    [scale] This scale is no longer in the studio. Choose another.
    [shelf] This kiln has no such shelf. Choose another.
    [target] This target is no longer in the studio. Choose another.
    [test_tile] This test tile is no longer in the studio. Choose another.
    [thing] This is no longer in the studio. Choose another.
    [to_weigh_with] This form, bucket or scale is no longer in the studio. Choose another.
    [vessel] This vessel is no longer in the studio. Choose another.
    [zone] There is no such zone here. Choose another.
   *[record] This record is no longer in the studio. Choose another.
}
nothing-to-undo = Nothing to undo.
undone = Undone.
# $zone: the name of a zone. $form: the potter's name of a form.
form-and-zone = { $form }, { $zone }
# $number: a specific gravity that was saved and cannot be.
# A value that this version of laydown does not know, as an item of a list or alone.
newer = from a newer version
impossible-sg = { $number } (impossible)
# $sg: a specific gravity.
sg = SG { $sg }

## What a thing without a name of its own is called where a name stands.
the-firing = The firing
the-scale-test = The scale test
the-control-piece = The control piece
the-check = The check
the-entry = The entry
