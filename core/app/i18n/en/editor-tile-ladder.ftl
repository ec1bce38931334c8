### The editor of a ladder of test tiles: one glaze from thin to thick.

title = Ladder of test tiles
save = Save these tiles
count = How many tiles
count-help = In equal steps from 60% to 140% of the glaze’s target. An odd number has one on the target.
# $fewest, $most: whole numbers.
count-impossible = A ladder has { $fewest } to { $most } tiles.
sg = SG of the bucket
firing = Add them to a firing
no-firing = Not yet
# $laydown: dry glaze on an area.
aim = Target of this glaze: { $laydown }.
# $label: what to scratch, such as "B3". $wet: a weight. $share: a percentage.
rung = { $label }: { $wet } wet, { $share } of the target.
scratch = Scratch the label into each tile before bisque, or write it in underglaze: pencil burns off.
# $share: a percentage.
thin-ones = Tiles under { $share } of the target show the thin end only; targets leave them out.
planned = { $tiles ->
    [one] { $tiles } tile planned. Weigh its coat and type it in its entry.
   *[other] { $tiles } tiles planned. Weigh each coat and type it in its entry.
}
# What a tile is called in a firing. $label: what is scratched into it.
piece = Test tile { $label }
# The button on the Studio screen.
section = Ladders of test tiles
add = Plan a ladder of tiles
none = One glaze from thin to thick on a row of tiles shows the thickness it wants.
