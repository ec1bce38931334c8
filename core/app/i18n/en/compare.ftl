### Two pieces side by side: pictures and numbers.

choose = Choose a piece
# An item of a list.
control-piece = control piece
firing = Firing
came-out = Came out

## Labels of what is compared on each zone

glaze = { $zone ->
    [inside] Inside: glaze
    [outside] Outside: glaze
   *[whole] Inside and outside: glaze
}
wet-weight = { $zone ->
    [inside] Inside: wet weight
    [outside] Outside: wet weight
   *[whole] Inside and outside: wet weight
}
laydown = { $zone ->
    [inside] Inside: laydown
    [outside] Outside: laydown
   *[whole] Inside and outside: laydown
}
reading = { $zone ->
    [inside] Inside: verdict
    [outside] Outside: verdict
   *[whole] Inside and outside: verdict
}
sg = { $zone ->
    [inside] Inside: bucket SG
    [outside] Outside: bucket SG
   *[whole] Inside and outside: bucket SG
}
glazed = { $zone ->
    [inside] Inside: glazed
    [outside] Outside: glazed
   *[whole] Inside and outside: glazed
}
