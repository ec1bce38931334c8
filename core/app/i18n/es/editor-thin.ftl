### Not yet read by a native potter.

title = Diluir: { $glaze }, { $bucket }
from = Densidad ahora
to = Densidad deseada
volume = Esmalte en el cubo
there-already = Ya tiene esta densidad.
add-water = Añadir { $water } de agua.
add-in-parts = Añadir dos tercios, remover, comprobar y luego añadir el resto: el agua no se puede sacar el mismo día.
take-off-water = Dejar que asiente y retirar { $water } de agua clara.
or-add-powder = O mezclar { $powder } del esmalte seco.
dust = El esmalte seco es polvo: usar protección respiratoria, echarlo al agua, limpiar en húmedo.
done = Hecho: comprobar ahora
goal = Llevarlo a
to-working = La densidad de trabajo
to-control = Como para la pieza de referencia
to-check = Como se comprobó { $when }
to-typed = Otra densidad
by = Cómo
by-water = Quitar agua
by-powder = Añadir esmalte seco
done-water = Agua, como se hizo de verdad
done-powder = Esmalte seco, como se hizo de verdad
done-help = Cambiarlo si fue menos.
