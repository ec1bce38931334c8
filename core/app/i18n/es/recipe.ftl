### Not yet read by a native potter.

no-amount = Línea { $line }: escribir la cantidad después del nombre, por ejemplo Sílice 30.
which-amount = La línea { $line } tiene un número en cada extremo. Escribir el nombre, un punto y coma y luego la cantidad.
no-name = La línea { $line } no tiene nombre. Escribir el material y luego la cantidad.
long-name = Línea { $line }: el nombre es demasiado largo. 80 letras como mucho.
figure = Línea { $line }: { $why }
nothing = Estos materiales no suman nada. Dar las partes de al menos uno que no sea un añadido.
too-many = Un esmalte tiene { $most } materiales como mucho. Quitar las líneas que no lo son.
hurts-silica = Sílice: el polvo daña los pulmones para siempre. Usar protección respiratoria, echar el polvo al agua, limpiar en húmedo.
hurts-barium = Bario: venenoso al tragar o respirar. Usar guantes y protección respiratoria, y lavarse las manos.
hurts-manganese = Manganeso: el polvo y los humos del horno dañan los nervios. Usar protección respiratoria y ventilar el horno.
hurts-lithium = Litio: venenoso al tragar. Usar guantes y mantenerlo lejos de la comida y de los niños.
hurts-cobalt = Cobalto: puede causar alergias y quizá cáncer. Usar guantes y protección respiratoria.
hurts-chromium = Cromo: algunos tipos causan cáncer, y la cocción puede formarlos. Usar guantes y protección respiratoria, y ventilar el horno.
hurts-nickel = Níquel: puede causar alergias, y su polvo quizá cáncer. Usar guantes y protección respiratoria.
hurts-vanadium = Vanadio: venenoso, el polvo quema los pulmones. Usar guantes y protección respiratoria.
hurts-copper = Cobre: dañino al tragar, y muchos esmaltes lo sueltan. Solo un ensayo de laboratorio de la pieza cocida lo dice.
hurts-soluble = Material soluble: irrita la piel y los ojos. Usar guantes y no verterlo por el desagüe.
hurts-lead = Plomo: un veneno que se acumula en el cuerpo. No usarlo nunca para comida o bebida, y preguntar a un experto antes de manejarlo.
hurts-cadmium = Cadmio: venenoso, y causa cáncer. No usarlo nunca para comida o bebida, y preguntar a un experto antes de manejarlo.
