### Not yet read by a native potter.

newer-profile = Una versión más nueva guardó un perfil de este taller. Actualizar laydown y abrirlo de nuevo.
weight-off-at-point = { $weight ->
    [heavier] La pieza pesada es un { $percent } % más pesada que este dibujo de ella. Revisar el punto { $point }: sin él coinciden.
   *[lighter] La pieza pesada es un { $percent } % más ligera que este dibujo de ella. Revisar el punto { $point }: sin él coinciden.
}
weight-off = { $weight ->
    [heavier] La pieza pesada es un { $percent } % más pesada que este dibujo de ella. Revisar la pared, el fondo, la unidad y cuándo se midió.
   *[lighter] La pieza pesada es un { $percent } % más ligera que este dibujo de ella. Revisar la pared, el fondo, la unidad y cuándo se midió.
}
overlap = Los dos esmaltes se solapan en los { $band } de arriba: si ahí queda grueso, se recogen o chorrean. Mantener fina la segunda capa en esa franja.
wide-floor = El fondo es ancho y el esmalte se encharca ahí. Vaciar enseguida y dejar escurrir boca abajo.
