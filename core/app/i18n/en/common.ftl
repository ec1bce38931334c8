### What is said on several screens.

# $what: a code of what is gone.
missing = { $what ->
    [body] This body is not in the studio any more. Choose another one.
    [bucket] This bucket is not in the studio any more. Choose another one.
    [coat] This coat is not in the studio any more. Choose another one.
    [control_piece] This control piece is not in the studio any more. Choose another one.
    [fault] This fault is not in the studio any more. Choose another one.
    [firing] This firing is not in the studio any more. Choose another one.
    [form] This form is not in the studio any more. Choose another one.
    [glaze] This glaze is not in the studio any more. Choose another one.
    [glazed] This glazed is not in the studio any more. Choose another one.
    [kiln] This kiln is not in the studio any more. Choose another one.
    [laydown] This laydown is not in the studio any more. Choose another one.
    [photograph] This photograph is not in the studio any more. Choose another one.
    [piece] This piece is not in the studio any more. Choose another one.
    [scale] This scale is not in the studio any more. Choose another one.
    [shelf] This shelf is not in the studio any more. Choose another one.
    [target] This target is not in the studio any more. Choose another one.
    [test_tile] This test tile is not in the studio any more. Choose another one.
    [thing] This thing is not in the studio any more. Choose another one.
    [to_weigh_with] This form, bucket or scale is not in the studio any more. Choose another one.
    [vessel] This vessel is not in the studio any more. Choose another one.
    [zone] This zone is not in the studio any more. Choose another one.
   *[record] This record is not in the studio any more. Choose another one.
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
the-control-piece = The control piece
