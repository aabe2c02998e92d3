### From memory. What is waited for stands in the subjunctive after “espera a que”.

opens = Empieza cuando { $event }.
passes = { $from } pasa a { $to }
hands-off = { $from } entrega el balón a { $to }
catches = { $to } recibe

## Waits

waits = { $who } { $count ->
        [one] espera
       *[other] esperan
    } a que { $event }.
waits-on = { $who } { $count ->
        [one] espera
       *[other] esperan
    } a que { $event }, y { $seconds } más.
times = { $who } { $count ->
        [one] ajusta
       *[other] ajustan
    } la carrera a { $feet }.
waits-for-feet = { $who } { $count ->
        [one] espera
       *[other] esperan
    } a { $feet }.
feet = { $count ->
    [one] los pies de { $who }
   *[other] los pies de { $who }
}
shuts = { $who } { $count ->
        [one] espera
       *[other] esperan
    } a que pase { $whom } y { $count ->
        [one] cierra
       *[other] cierran
    } la puerta.
gives = { $who } aguanta hasta que { $whom } toma el balón.

## Who goes

goes = { $who } { $count ->
        [one] arranca
       *[other] arrancan
    } { $when }.
plants = { $who } { $count ->
        [one] planta
       *[other] plantan
    } los pies { $when }.
lets-go = { $who } { $count ->
        [one] suelta
       *[other] sueltan
    } el balón { $when }.
gets-there = { $who } { $count ->
        [one] llega
       *[other] llegan
    } { $when }.
stands = { $who } { $count ->
        [one] está
       *[other] están
    } en posición { $when }.

## What is waited for

to-start-the-pass = { $who } empiece el pase
to-start-the-shot = { $who } empiece el tiro
to-start = { $who } arranque
to-get-there = { $who } llegue
to-be-free = { $who } pueda irse
to-be-done = { $who } termine
to-plant = { $who } plante los pies
to-come-up = { $who } llegue a la altura de { $other }
to-clear = { $who } pase junto a { $other }
to-shut = la puerta se cierre
to-shoot = { $who } tire
to-hand-off = { $who } entregue el balón
to-let-go = { $who } suelte el balón
to-catch = { $other } reciba
