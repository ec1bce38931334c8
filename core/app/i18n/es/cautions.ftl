### Not yet read by a native potter.

dust = Polvo
dust-text = El esmalte y la arcilla secos contienen sílice, que daña los pulmones para siempre. Limpiar en húmedo y no barrer nunca en seco. Echar el polvo al agua, no el agua al polvo. Si no se puede evitar el polvo, usar protección respiratoria certificada para sílice. Lo primero son las normas del lugar de trabajo y las fichas de datos de seguridad.
materials = Materias tóxicas y solubles
materials-text = Algunas materias primas de esmalte son venenosas, y algunas se disuelven y atraviesan la piel. Leer cada ficha de datos de seguridad, usar guantes, no comer ni beber allí y lavarse las manos. Eliminar los residuos según las normas locales.
spraying = Pulverizado
spraying-text = La niebla del pulverizado llega al fondo de los pulmones. Pulverizar solo en una cabina con extracción que funcione y usar protección respiratoria certificada para ello. Consultar la extracción con un profesional autorizado.
food = Comida y bebida
food-text = La cantidad correcta no hace que un esmalte sea apto para alimentos. Solo un análisis de laboratorio de la pieza cocida puede decir qué se desprende de ella, y la ley local dice qué se permite.
crazing = Cuarteado y agua hirviendo
crazing-text = Una pieza cuarteada o gruesa puede romperse al echarle agua hirviendo. Ensayar las piezas sin probar a la distancia del brazo, sobre un fregadero, y no venderlas nunca a ciegas para bebidas calientes.
edges = Bordes cortantes
edges-text = Las gotas de esmalte cocido y los bordes desportillados cortan como cuchillas. Alisarlos antes de cocer, usar protección ocular y guantes al lijar y no tocar los fragmentos recién rotos.
kiln = El horno
kiln-text = Los hornos queman, sueltan gases y llevan tensiones peligrosas. Ventilar la sala, alejar bien todo lo que pueda arder y seguir el manual del fabricante. La instalación eléctrica y el gas son cosa de profesionales autorizados.
