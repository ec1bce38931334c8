### The editor of the witness cones of a firing, which are placed beside the ware.

three-detail = The target, one below and one above
one-detail = The target alone
others = Other cones
which = Which cones
which-hint = 5, 6, 7
# $cone: what was typed.
no-such-cone = There is no cone { $cone }. Cones run from 022 to 13.
type-cones = Type the numbers of the cones.
# $cones: such as "05, 06, 07".
did-you-mean = Did you mean { $cones }?
yes-meant = Yes, { $cones }
no-typed = No, { $cones }
# $aim: the number of the cone aimed at.
far-from-aim = { $cones } is far from your target, cone { $aim }.
saved = Witness cones { $cones }.
none-saved = No witness cones.
