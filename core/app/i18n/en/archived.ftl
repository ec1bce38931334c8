### What was archived or removed, and the way back.

nothing = Nothing is archived.
# $kind: a code.
section = { $kind ->
    [form] Forms
    [glaze] Glazes
    [bucket] Buckets
    [bisque_lot] Bisque lots
    [body] Clay bodies
    [control] Control pieces
    [tile] Test tiles
    [firing] Firings
    [piece] Pieces not weighed
    [scale_test] Scale tests
    [scale] Scales
    [kiln] Kilns
    [check] Checks
    [bucket_entry] Bucket entries
   *[vessel] Vessels
}
# $moment: a time, such as "3 Nov 10:42". $phone: "this phone", "another phone", or a name.
archived-when = Archived { $moment }, { $phone }
# $glaze and $bucket: their names.
bucket-of = { $glaze }, { $bucket }
# $form and $glaze: their names.
control-of = { $form }, { $glaze }
# $name: what was brought back.
is-back = { $name } is back.
never-archived = This is never archived.
# $name: what was archived, as the potter calls it.
is-archived = { $name } is archived.
firing-removed = The firing is removed.
piece-removed = The piece is removed.
piece-was-fired = You noted how this piece came out, so it stays.
control-archived = The control piece is archived.
cannot-be-removed = This cannot be removed.
entry-removed = Removed from the notebook.
