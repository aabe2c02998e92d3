### Said to one player, with “tú”. From memory, as coached in FIBA countries. Events stand in the
### subjunctive: all of them are still to come.

cards = Fichas de función
title = { $who }: { $parts }
begin = Empieza { $where }.
begin-with-ball = Empieza { $where }, con el balón.

## What a player is in a set

shooter = quien tira
decoy = señuelo
screener = quien bloquea
passer = quien pasa
cutter = quien corta
spacer = quien da espacio

## What to do

set = pon { $what } { $for } { $where }
set-with = con { $others }, pon { $what } { $for } { $where }
pass = { $verb } { $whom } { $where }
hand-off = entrega en mano a { $whom } { $where }
keep = finge el mano a mano con { $whom } y quédate el balón
come = ven a por el mano a mano de { $whom }
catch = recibe el pase de { $whom } { $where }
take = coge el balón de { $whom }
hold-place = mantén tu sitio { $where }
make = haz { $what }
throw = da { $what } a
then = { $first }, luego { $next }

drive = penetra
dribble = bota
walk = camina
jog = trota
sprint = esprinta
cut = corta
go-backdoor = corta por puerta atrás
zip-up = sube por la línea de la zona
pop-out = sal hacia fuera
curl = riza
fade = aléjate
turn-it-down = rechaza el bloqueo y corta
slip = continúa sin llegar a bloquear
flash = aparece
fill = reemplaza
lift = sube
drift = deslízate
loop = da un rodeo
clear-out = aclara
roll = continúa
roll-short = haz una continuación corta
pop = ábrete
dive = entra a fondo
duck-in = sella entrando en la zona
seal = sella
follow = sigue tu pase
dribble-over = acércate botando
push = avanza con el balón
drive-hard = penetra con fuerza
back-out = retrocede botando
hesitate = frena el bote y penetra
cross-over = cambia de mano y penetra
snake = bota en serpiente
keep-behind = deja al defensor a la espalda y bota

pass-to = pasa a
bounce = da un pase picado a
skip = cruza el balón a
lob = lanza un globo a
kick-out = dobla fuera a
swing = invierte el balón a
throw-in = saca para
lead = pasa por delante a
shovel = da un pase de pala a
pitch = suelta el balón a

shoot = tira
catch-and-shoot = tira según recibes
shoot-off-screen = tira tras el bloqueo
pull-up = párate y tira
float = tira una bomba
lay-up = tira una bandeja

stay = quédate
plant-feet = planta los dos pies
pivot = pivota
screen-out = cierra el rebote
jab = da un paso de finta
fake-shot = finta el tiro
fake-cut = finta el corte
fake-screen = finta el bloqueo
fake-drive = finta la penetración
fake-handoff = finta el mano a mano
fake-pass = finta el pase

## What to wait for

wait-until = Espera a que { $event }.
stay-until = Quédate hasta que { $event }.
go-when = Sal { $when }.
plant-when = Planta los pies { $when }.
come-up-when = Llega al bloqueo { $when }.
go-by-when = Pasa { $when }.
be-set-when = Está en posición { $when }.
shut-when = Ciérrala { $when }.
let-go-when = Suelta el balón { $when }.
there-when = El balón llega { $when }.
done-when = Termina { $when }.
meet = El balón y { $who } llegan a la vez.
give = Suéltalo cuando { $who } pase a tu lado.
as = cuando { $event }
once = en cuanto { $event }
before = { $time } antes de que { $event }
after = { $time } después de que { $event }
you = ti

## Events

has-left = { $who } { $count ->
    [one] se haya
   *[other] se hayan
} ido
is-still = { $who } { $count ->
    [one] esté
   *[other] estén
} en posición
is-past = { $who } { $count ->
    [one] haya
   *[other] hayan
} pasado junto a { $other }
is-through = { $who } { $count ->
    [one] haya
   *[other] hayan
} pasado
is-there = { $who } { $count ->
    [one] esté
   *[other] estén
} { $where }
pass-is-gone = el pase de { $who } esté en el aire
shot-is-up = el tiro de { $who } esté en el aire

## Where the eyes go

at-ball = Mira el balón.
at-ring = Mira el aro.
at-mate = Mira a { $who }.
at-defender = Mira a X{ $who }.
at-own-defender = Mira a X{ $who }, tu defensor.

## What it is good for

frees = { $who } pasa a tu lado a los { $time }.
sell = Todos deben creerlo: mientras te miran, el balón va a { $to }.
sell-fake = Haz que lo crean: el balón va a { $to }.
threat = Corre como si el balón fuera para ti: X{ $me } debe seguirte, y eso da espacio a { $to }.
makes-room = Te llevas a X{ $me }: { $who } pasa por ahí a los { $time }.
corner = Mantén la esquina: X{ $me } debe quedarse contigo y no puede ayudar.
safety = Eres quien guarda el balance. Quédate ahí hasta el tiro, y después.
board = Prepárate para el rebote.
wide = Mantén el espacio, manos listas: X{ $me } no puede ayudar sin dejarte libre.

## Reads

call = Si { $if }: { $do }.
see = míralo y dilo
