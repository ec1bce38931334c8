### What all editors share: the fields that most of them have, what is wrong with a field, and what is said after saving.

save = Save
name = Name
glaze = Glaze
form = Form
dipped-at = SG when dipped
# $laydown: dry glaze on an area, such as "5.5 g/dm²".
laydown-is = Laydown { $laydown }.
# $kind: the stored code of what there is none of yet.
add-first = { $kind ->
    [form] Add a form first.
    [kiln] Add a kiln first.
   *[glaze] Add a glaze first.
}
saved = Saved.
# $name: what was saved, as the potter calls it.
is-saved = { $name } is saved.
nothing-to-save = There is nothing to save here.
# $field: what a field is called.
write-here = { $field }: type something here.
# $field: what a field is called.
type-here = { $field }: type it here.
# $field: what a field is called.
choose-here = { $field }: choose one here.
# $field: what a field is called.
fill-in = { $field }: fill this in.
# $field: what a field is called.
choose-from-list = { $field }: choose one from the list.
# $most: a whole number, 80 or more.
too-long = Too long. Use { $most } characters at most.
# $fewest: a whole number, such as 8.
too-short = Too short. Use at least { $fewest } characters.
no-day = Choose a day, at most a year ahead.
# Stands among the things to choose from for a thing that has not reached this phone, or was undone.
not-on-this-phone = Not on this phone
secret-saved = Saved on this phone. Type to replace it.
