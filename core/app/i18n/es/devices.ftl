### Not yet read by a native potter.

this-phone = este teléfono
this-phone-named = este teléfono ({ $name })
another-phone = otro teléfono
this-phone-row = Este teléfono
this-phone-named-row = Este teléfono ({ $name })
another-phone-row = Otro teléfono
entries-last = { $entries ->
    [one] { $entries } entrada, última: { $moment }
   *[other] { $entries } entradas, última: { $moment }
}
no-entries = Todavía no hay nada guardado
intro-with-location = Cada teléfono lo tiene todo y funciona por sí solo. La sincronización los pone a todos al día.
intro-without-location = Cada teléfono lo tiene todo y funciona por sí solo. Para compartir, enviar una copia de seguridad al otro teléfono y restaurarla allí.
new-phone-set-up = Para los demás, este es ahora un teléfono nuevo. Todo lo guardado antes queda como está.
clock-behind = { $days ->
    [one] Algunas entradas tienen fecha hasta { $days } día por delante del reloj de este teléfono. No se ha perdido nada. Poner bien la fecha, aquí o en el otro teléfono.
   *[other] Algunas entradas tienen fecha hasta { $days } días por delante del reloj de este teléfono. No se ha perdido nada. Poner bien la fecha, aquí o en el otro teléfono.
}
