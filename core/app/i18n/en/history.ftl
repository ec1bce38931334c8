### Recent changes on all phones, and all that was ever saved of one thing. A line under a change is a list: the time, the phone, what became of it.

recent-changes = Recent changes
nothing-done = Nothing has been done yet.
how-to-read = Newest first. Changes made on this phone can be undone and redone.
how-to-read-one = Newest first. Where two phones saved different values, the later one counts; the other stays listed here.
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
    [control] Known amount
    [coat] Coat
    [firing] Firing
    [placement] In the kiln
    [finding] What came out
    [photo] Photograph
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
not-here = one that is not here

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
    [this] set anew on this phone
    [this-named] set anew on this phone ({ $name })
    [another] set anew on another phone
   *[named] set anew on { $name }
}
not-shown = not shown, since what it belongs to was undone or has not arrived
# $fields: names of fields, with commas.
left-out = impossible, so left out: { $fields }
# $thing: a code.
its-was-undone = { $thing ->
    [glaze] its glaze was undone: redo that to have it back
    [bucket] its bucket was undone: redo that to have it back
    [vessel] its vessel was undone: redo that to have it back
    [form] its form was undone: redo that to have it back
    [body] its body was undone: redo that to have it back
    [scale] its scale was undone: redo that to have it back
    [kiln] its kiln was undone: redo that to have it back
    [firing] its firing was undone: redo that to have it back
   *[other] its { $thing } was undone: redo that to have it back
}

# A field and what it was set to.
field-and-value = { $field }: { $value }
# The name of a field, by its code; $words is the code of one that only a newer version knows.
field = { $field ->
    [name] name
    [sensitivity] sensitivity
    [powder_density] powder density
    [starting_laydown] starting laydown
    [gone] put away
    [glaze] glaze
    [volume] volume
    [mixed_at] mixed at
    [bucket] bucket
    [at] when
    [specific_gravity] specific gravity
    [standard_uncertainty] standard uncertainty
    [how] how
    [vessel] vessel
    [full] full
    [temperature] temperature
    [flow] flow
    [note] note
    [empty] empty
    [with_water] with water
    [water_temperature] water temperature
    [class] class
    [capacity] capacity
    [inside_area] inside area
    [outside_area] outside area
    [profile] profile
    [traced] traced
    [stage] stage
    [body] body
    [wall] wall
    [floor] floor
    [foot_width] foot width
    [foot_height] foot height
    [bare_foot] bare foot
    [overlap] overlap
    [fill] fill
    [handle_length] handle length
    [handle_girth] handle girth
    [extra_area] extra area
    [bisque] bisque
    [to_bisque] to bisque
    [to_fired] to fired
    [bisque_density] bisque density
    [step] step
    [minimum] minimum
    [repeatability] repeatability
    [piece] piece
    [form] form
    [zone] zone
    [scale] scale
    [bare] bare
    [glazed] glazed
    [net] wet weight
    [sg_uncertainty] sg uncertainty
    [area] area
    [aim] aim
    [low] low
    [high] high
    [source] source
    [verdict] verdict
    [laydown] laydown
    [control] control piece
    [code] code
    [round] round
    [across] across
    [deep] deep
    [shelves] shelves
    [kiln] kiln
    [cone] cone
    [cone_kind] cone kind
    [state] state
    [program] program
    [fired_at] fired at
    [top] top
    [minutes] minutes
    [witnesses] witnesses
    [checked] checked
    [firing] firing
    [shelf] shelf
    [x] x
    [y] y
    [inside] inside
    [outside] outside
    [faults] faults
    [liking] liking
    [again] to be fired again
    [sha256] sha256
    [width] width
    [height] height
    [dry] dry
    [mass] mass
    [length] length
    [decimal] decimal
    [speak] speak
    [tick] tick
    [code_pieces] code pieces
    [phone] phone
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
value-kept = kept
# A stored code in words: its field, a hyphen, the code. $words is the code of one that only a newer version knows.
value-code = { $code ->
    [class-cylinder_mug] cylinder mug
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
    [stage-bisque] bisque
    [stage-thrown] thrown
    [stage-fired] fired
    [sensitivity-low] low
    [sensitivity-medium] medium
    [sensitivity-high] high
    [how-vessel] vessel
    [how-volume] volume
    [how-hydrometer] hydrometer
    [how-typed] typed
    [source-control] control
    [source-control_by_area] control by area
    [source-control_by_capacity] control by capacity
    [source-tile] tile
    [source-starting] starting
    [source-told] told
    [verdict-within] within
    [verdict-short] short
    [verdict-over] over
    [verdict-cannot_tell] cannot tell
    [cone_kind-self_supporting] self supporting
    [cone_kind-large] large
    [state-loading] loading
    [state-fired] fired
    [state-done] done
    [zone-inside] inside
    [zone-outside] outside
    [zone-whole] whole
    [inside-thin] thin
    [inside-right] right
    [inside-thick] thick
    [outside-thin] thin
    [outside-right] right
    [outside-thick] thick
    [overlap-thin] thin
    [overlap-right] right
    [overlap-thick] thick
   *[other] { $words }
}
