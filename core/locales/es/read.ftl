### From memory, as coached in FIBA countries.

then = { $a } y después { $b }

## What decides a read, to follow an "if".

they-chase = persiguen
they-over = pasan por encima
they-through = pasan de tercero
they-under = pasan por detrás
they-top-lock = niegan por arriba
they-switch = cambian
they-show = salen al bote
they-drop = el defensor del bloqueo contiene
they-ice = niegan el centro
they-blitz = hacen dos contra uno
they-tag = ayudan desde el lado débil
trails = { $x } persigue
goes-round = { $x } rodea el bloqueo
goes-round-left = { $x } rodea el bloqueo por la izquierda
goes-round-right = { $x } rodea el bloqueo por la derecha
shoots-the-gap = { $x } pasa por detrás
top-locks = { $x } niega por arriba
switches = { $x } cambia
steps-out = { $x } sale
sags = { $x } flota
looks-away = { $x } no mira
stays-low = { $x } se queda del lado de la línea de fondo
within = { $x } está a menos de { $n }
pass-shut = el pase de { $a } a { $b } está cerrado

## What was seen

nothing = Aún no se ve nada.
plays = Juegan a { $coverage }.
behind = { $x } está { $n } por detrás de { $man }.
in-front = { $x } está { $n } por delante de { $man }.
to-the-left = { $x } va { $n } a la izquierda del camino de { $man }.
to-the-right = { $x } va { $n } a la derecha del camino de { $man }.
nearer = { $x } está { $n } más cerca que { $man } de donde sale { $man }.
farther = { $x } está { $n } más lejos que { $man } de donde sale { $man }.
between = { $x } está a { $n } de { $man } hacia el bloqueo, a { $m } de la línea.
not-between = { $x } no está entre { $man } y el bloqueo.
still-on = { $x } sigue con { $man }.
has-taken = { $x } ha cogido a { $man }.
away = { $x } está a { $n } de { $man }.
lower = { $x } está { $n } más cerca que { $man } de la línea de fondo.
higher = { $x } está { $n } más lejos que { $man } de la línea de fondo.
turned = { $x } mira a { $n } de { $man }.
lane-free = Ninguna mano llega a un pase de { $a } a { $b }.
lane-open = Un pase de { $a } a { $b } llega { $n } antes que la mano de { $x }.
lane-shut = La mano de { $x } llega { $n } antes que un pase de { $a } a { $b }.

## What it comes to

answer = { $if } { $line }. { $end }
end = { $look }, { $open }.
end-shut = { $look }, { $open }; una mano puede llegar a un pase del camino.
no-end = Sin opción.
