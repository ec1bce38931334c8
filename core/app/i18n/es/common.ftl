### Not yet read by a native potter.

missing = { $what ->
    [body] Esta pasta ya no está en el taller. Elegir otra.
    [bucket] Este cubo ya no está en el taller. Elegir otro.
    [coat] Esta capa ya no está en el taller. Elegir otra.
    [check] Esta comprobación ya no está en el taller. Elegir otra.
    [bucket_entry] Esta nota ya no está en el taller. Elegir otra.
    [control_piece] Esta pieza de referencia ya no está en el taller. Elegir otra.
    [fault] Este defecto no está en la lista. Elegir otro.
    [firing] Esta cocción ya no está en el taller. Elegir otra.
    [form] Esta forma ya no está en el taller. Elegir otra.
    [glaze] Este esmalte ya no está en el taller. Elegir otro.
    [glazed] Este periodo no está en la lista. Elegir otro.
    [kiln] Este horno ya no está en el taller. Elegir otro.
    [laydown] Este intervalo de gramaje no está en la lista. Elegir otro.
    [photograph] Esta foto ya no está en el taller. Elegir otra.
    [piece] Esta pieza ya no está en el taller. Elegir otra.
    [scale] Esta báscula ya no está en el taller. Elegir otra.
    [shelf] Este horno no tiene esa placa. Elegir otra.
    [target] Este objetivo ya no está en el taller. Elegir otro.
    [test_tile] Esta plaqueta de prueba ya no está en el taller. Elegir otra.
    [thing] Esto ya no está en el taller. Elegir otra cosa.
    [to_weigh_with] Esta forma, este cubo o esta báscula ya no está en el taller. Elegir de nuevo.
    [vessel] Este recipiente ya no está en el taller. Elegir otro.
    [zone] Aquí no existe esa zona. Elegir otra.
   *[record] Este registro ya no está en el taller. Elegir otro.
}
nothing-to-undo = Nada que deshacer.
undone = Deshecho.
form-and-zone = { $form }, { $zone }
newer = de una versión más nueva
impossible-sg = { $number } (imposible)
sg = Densidad { $sg }

the-firing = La cocción
the-scale-test = La prueba de báscula
the-control-piece = La pieza de referencia
the-check = La comprobación
the-entry = La nota
