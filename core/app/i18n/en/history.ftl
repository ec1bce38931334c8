### Recent changes on all phones, and all that was ever saved of one thing. A line under a change is a list: the time, the phone, what became of it.

recent-changes = Recent changes
nothing-done = No changes yet.
how-to-read = Newest first. You can undo and redo changes made on this phone.
how-to-read-one = Newest first. Where two phones saved different values, the later one counts. The other stays listed here.
nothing-to-redo = Nothing to redo.
redone = Redone.

# What was changed, on a line of its own. $kind: a code.
kind = { $kind ->
    [glaze] Glaze
    [bucket] Bucket
    [vessel] Vessel
    [form] Form
    [body] Body
    [scale] Scale
    [kiln] Kiln
    [tile] Test tile
    [check] Check
    [bucket_entry] Bucket entry
    [control] Control piece
    [coat] Coat
    [firing] Firing
    [piece] Piece
    [placement] In the kiln
    [finding] What came out
    [photo] Photo
    [scale_test] Scale test
    [bisque_lot] Bisque
    [preference] Units, sound and touch
   *[other] Something from a newer version
}
# $kind: one of the words above. $name: what the potter calls it.
kind-and-name = { $kind }: { $name }
# $title: the first thing that was changed. $more: how many others were changed with it.
title-and-more = { $more ->
    [one] { $title }, and { $more } more
   *[other] { $title }, and { $more } more
}
# Stands in place of a name.
not-here = one that is not on this phone

# $moment: a time, such as "10:42" or "3 Nov 10:42". $phone: "this phone", "another phone", or a name.
when-and-where = { $moment }, { $phone }
# $fields: names of fields, with commas.
changed = changed: { $fields }
undone = undone
# $undone and $edited: which phone, as a code; each with the phone's name, where it has one.
came-back = undone on { $undone ->
    [this] this phone
    [this-named] this phone ({ $undone-name })
    [another] another phone
   *[named] { $undone-name }
}, but { $edited ->
    [this] this phone
    [this-named] this phone ({ $edited-name })
    [another] another phone
   *[named] { $edited-name }
} had changed it, so it came back. Undo it again to remove it
# $phone: which phone, as a code. $name: its name, where it has one.
set-anew = { $phone ->
    [this] changed later on this phone
    [this-named] changed later on this phone ({ $name })
    [another] changed later on another phone
   *[named] changed later on { $name }
}
not-shown = hidden, since what it belongs to was undone or has not arrived
# $fields: names of fields, with commas.
left-out = left out as impossible: { $fields }
# $thing: a code.
its-was-undone = { $thing ->
    [glaze] its glaze was undone: redo that to get it back
    [bucket] its bucket was undone: redo that to get it back
    [vessel] its vessel was undone: redo that to get it back
    [form] its form was undone: redo that to get it back
    [body] its body was undone: redo that to get it back
    [scale] its scale was undone: redo that to get it back
    [kiln] its kiln was undone: redo that to get it back
    [firing] its firing was undone: redo that to get it back
   *[other] its { $thing } was undone: redo that to get it back
}

# A field and what it was set to.
field-and-value = { $field }: { $value }
# The name of a field, by its code; $words is the code of one that only a newer version knows.
field = { $field ->
    [name] name
    [sensitivity] sensitivity to thickness
    [powder_density] powder density
    [starting_laydown] starting laydown
    [drift_answered_at] drift answered
    [gone] removed or archived
    [glaze] glaze
    [volume] volume
    [mixed_at] mixed
    [bucket] bucket
    [at] date
    [specific_gravity] SG
    [standard_uncertainty] SG uncertainty
    [how] method
    [vessel] vessel
    [full] weight with glaze
    [temperature] glaze temperature
    [flow] flow cup time
    [note] note
    [empty] weight empty
    [with_water] weight with water
    [water_temperature] water temperature
    [class] shape
    [capacity] capacity
    [inside_area] glazed area inside
    [outside_area] glazed area outside
    [profile] outside profile
    [traced] uncertainty of the photo outline
    [stage] when measured
    [body] body
    [wall] wall thickness
    [floor] floor thickness
    [foot_width] foot ring width
    [foot_height] foot ring height
    [bare_foot] bare foot
    [overlap] overlap
    [fill] fill line
    [handle_length] handle length
    [handle_girth] handle girth
    [extra_area] extra glazed area
    [bisque] bisque weight
    [to_bisque] shrinkage to bisque
    [to_fired] shrinkage to glaze-fired
    [bisque_density] bisque density
    [step] step
    [minimum] minimum
    [repeatability] repeatability
    [piece] piece
    [form] form
    [zone] zone
    [scale] scale
    [bare] bare weight
    [glazed] glazed weight
    [net] wet weight
    [added] added in a touch-up
    [rubbed_off] rubbed off
    [hand] who glazed
    [sg_uncertainty] SG uncertainty
    [area] glazed area
    [aim] aim
    [low] least accepted
    [high] most accepted
    [source] aim based on
    [verdict] verdict
    [laydown] laydown
    [control] control piece
    [code] code on the foot
    [round] round shelves
    [across] shelf width
    [deep] shelf depth
    [shelves] number of shelves
    [kiln] kiln
    [cone] target cone
    [cone_kind] cone type
    [state] firing stage
    [number] firing number
    [fires] what is fired
    [program] program
    [fired_at] fired
    [top] top temperature
    [minutes] firing time in minutes
    [witnesses] witness cones
    [checked] checklist
    [firing] firing
    [shelf] shelf
    [x] distance from the left
    [y] distance from the front
    [inside] inside
    [outside] outside
    [faults] faults
    [liking] rating
    [again] to be fired again
    [sha256] picture file
    [width] picture width
    [height] picture height
    [dry] dry coat weight
    [dry_uncertainty] uncertainty of the dry weight
    [dip] dip or pour time
    [ask_dip] ask for dip times
    [accuracy_class] accuracy class
    [readings] test readings
    [known] known weight
    [shown] known weight as shown
    [soaking] way of soaking
    [bone_dry] bone-dry weight
    [soaked] soaked weight
    [suspended] weight in water
    [coats] number of coats
    [mass] weights
    [length] lengths
    [decimal] decimal mark
    [speak] speak the verdict
    [tick] tick on every key
    [code_pieces] code each piece
    [phone] phone name
    [materials] materials
    [density_from] source of the powder density
    [hazards] corrected hazards
    [working_sg] working SG
    [diameter] bucket diameter
    [depth] bucket depth
    [cup] flow cup
    [what] what was done
    [amount] amount
    [level] level
   *[other] { $words }
}
# What a field was set to.
value-none = none
value-yes = yes
value-no = no
value-list = { $entries ->
    [one] { $entries } entry
   *[other] { $entries } entries
}
value-kept = saved
# A stored code in words: its field, a hyphen, the code. $words is the code of one that only a newer version knows.
value-code = { $code ->
    [class-cylinder_mug] straight mug
    [class-rounded_mug] rounded mug
    [class-open_bowl] open bowl
    [class-deep_bowl] deep bowl
    [class-plate] plate
    [class-bottle] bottle
    [class-jar] jar
    [class-vase] vase
    [class-teapot] teapot
    [class-planter] planter
    [class-tile] tile
    [stage-bisque] as bisque
    [stage-thrown] just thrown
    [stage-fired] glaze-fired
    [sensitivity-low] forgiving
    [sensitivity-medium] normal
    [sensitivity-high] sensitive
    [how-vessel] vessel
    [how-volume] measured volume
    [how-hydrometer] hydrometer
    [how-typed] typed in
    [source-control] control piece
    [source-control_by_area] control piece, by area
    [source-control_by_capacity] control piece, by capacity
    [source-tile] test tile
    [source-starting] starting value
    [source-told] spreadsheet
    [verdict-within] within
    [verdict-short] short
    [verdict-over] over
    [verdict-cannot_tell] can't tell
    [cone_kind-self_supporting] self-supporting
    [cone_kind-large] large
    [state-loading] being loaded
    [state-fired] fired, to be unloaded
    [state-done] unloaded
    [fires-glazed] glazed ware
    [fires-bisque] bisque
    [soaking-boil] boiled
    [soaking-cold] cold-soaked
    [soaking-vacuum] vacuum-soaked
    [zone-inside] inside
    [zone-outside] outside
    [zone-whole] inside and outside
    [inside-thin] thin
    [inside-right] right
    [inside-thick] thick
    [outside-thin] thin
    [outside-right] right
    [outside-thick] thick
    [overlap-thin] thin
    [overlap-right] right
    [overlap-thick] thick
    [density_from-materials] from the materials
    [density_from-own] own figure
    [what-water] water added
    [what-water_off] water taken off
    [what-powder] dry glaze added
    [what-flocculant] flocculant
    [what-deflocculant] deflocculant
    [what-sieved] sieved
    [what-level] level
    [what-weighed] weighed with its glaze
    [what-note] note
   *[other] { $words }
}
