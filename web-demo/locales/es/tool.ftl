### From memory.

## backcut check

clean = { $name }: todo en orden. { $about }
no-faults = { $name }: sin errores. { $about }
about = { $title }, { $beats ->
    [one] { $beats } fase
   *[other] { $beats } fases
}, { $actions ->
    [one] { $actions } acción
   *[other] { $actions } acciones
}.
note = nota
warning = atención
violation = infracción
part = … y esto participa
more = { $n } más

## backcut time

from = desde
to = hasta
spare = margen
holds-up = marca el ritmo
nobody-waits = nadie espera
what-holds-up = Lo que marca el ritmo
waits-for = , espera a { $what }
left-at = La línea se deja en { $t }
leaves-out = { $who } deja algo sin hacer
waits-no-longer = { $who } ya no espera lo que no se hace
reads = Lecturas
never = nunca

# Plain kinds, then to or for whom.
cut = corte
dribble = bote
screen = bloqueo
pass = pase
handoff = entrega
shot = tiro
hold = espera
fake = finta
to-player = { $what } a { $who }
for-player = { $what } para { $who }

## backcut looks

title-open = { $title }: segundos libre
nobody = Nadie recibe, penetra ni tira.
catch = { $who } recibe en { $t }
drive = { $who } penetra en { $t }
finish = { $who } tira en { $t }
in-file = { $coverage } (archivo)
needs = Recibir y tirar pide unos { $s } s. * una mano puede estar en la línea de pase.
likely = Probable, no seguro: los defensores deciden.
which-read = Qué lectura gana a qué defensa
asked = en { $t } { $title }: { $seen }
open = segundos libre
in-the-end = Al final de cada lectura. + la defensa muestra lo que pide, = se le manda a un defensor.
