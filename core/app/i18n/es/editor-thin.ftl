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
