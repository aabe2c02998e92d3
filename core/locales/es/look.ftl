### From memory, as coached in FIBA countries; what Spanish coaches say in English stays.

open = libre { $n }{"\u00A0"}s
contested = con oposición
look-open = { $look } con X{ $defender } a { $far }: { $class }, durante { $n }{"\u00A0"}s.
look-contested = { $look } con X{ $defender } a { $far }: { $class }, y con oposición.
look-alone = { $look } sin nadie cerca.
guarded = X{ $defender } está a { $far } del balón.
in-reach = Una mano puede llegar al pase.

catches = { $who } recibe
gets-there = { $who } llega al aro
shoots = { $who } tira

## Classes of a separation

very-tight = defensa muy cerca
tight = defensa cerca
open-class = libre
wide-open = muy libre

## Coverages

chase = perseguir
over = pasar por encima
through = pasar de tercero
under = pasar por detrás
top-lock = negar por arriba
switch = cambiar
show = salir al bote
drop = contener
ice = negar el centro
blitz = dos contra uno
weak-side-tag = ayuda del lado débil
