### From memory.

where-goes = ¿Adónde va { $who }?
when-goes = ¿Cuándo sale { $who }?
where-defender = ¿Dónde está X{ $who }?
what-now = ¿Y ahora qué?
who-open = ¿Quién está libre?
who-gets-it = ¿Quién recibe el balón?

go-on = Seguir según el dibujo

## Who stands where, for who cannot see it

stands = { $who } está { $where }
defends = X{ $who } está { $where }

# Where a cross on the floor is.
cross = { $where }: a { $x } { $side ->
    [left] a la izquierda del aro
   *[right] a la derecha del aro
}, { $y } { $depth ->
    [behind] por detrás
   *[out] hacia fuera
}

## How far off an answer was

had-it = Acertaste.
off = Te faltaron { $far }: { $who } acaba { $where }.
off-defender = Te faltaron { $far }.
on-time = Acertaste el momento.
early = Te adelantaste { $n }
late = Te retrasaste { $n }
no-press = No pulsaste.
not-this = No es { $who }.

## When somebody leaves, and what that does to a screen

leaves = { $who } sale a los { $t }
to-pass = { $screeners } { $count ->
    [one] está
   *[other] están
} en posición a los { $t }, justo antes de que { $who } llegue.
not-set = { $screeners } aún no { $count ->
    [one] está
   *[other] están
} en posición.
barely-set = { $screeners } { $count ->
    [one] llevaría
   *[other] llevarían
} solo { $n } en posición.
stood = { $screeners } ya { $count ->
    [one] llevaba
   *[other] llevaban
} { $n } en posición.

## Where a defender is, and what now

guards = X{ $who } está a { $far } de { $man }, { $where }.
no-read = Nada pide aquí otro camino.
