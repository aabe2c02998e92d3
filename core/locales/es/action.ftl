### From memory, as coached in FIBA countries.

said = { $who } { $what }

## Cuts and dribbles

way = { $verb } { $off } { $to }
makes = hace { $what }
off = { $count ->
    [one] tras el bloqueo de { $screeners }
   *[other] tras los bloqueos de { $screeners }
}
between = entre { $screeners }
round-left = por la izquierda de { $screeners }
round-right = por la derecha de { $screeners }
waits-for-feet = { $who } espera a que { $screener } plante los pies y entonces { $rest }
waits-for-gate = { $who } espera a que { $screeners } estén en posición y entonces { $rest }
beside = junto a { $who }
on-the-run = en carrera

drives = penetra
dribbles = bota
walks = camina
jogs = trota
sprints = esprinta
cuts = corta
goes-backdoor = corta por puerta atrás
zips-up = sube por la línea de la zona
pops-out = sale hacia fuera
curls = riza
fades = se aleja
turns-it-down = rechaza el bloqueo y corta
slips = continúa sin llegar a bloquear
flashes = aparece
fills = reemplaza moviéndose
lifts = sube
drifts = se desliza
loops = da un rodeo
clears-out = aclara
rolls = continúa
rolls-short = hace una continuación corta
pops = se abre
dives = entra a fondo
ducks-in = sella entrando en la zona
seals = sella
follows = sigue su pase
dribbles-over = se acerca botando
pushes = avanza con el balón
drives-hard = penetra con fuerza
backs-out = retrocede botando
hesitates = frena el bote y penetra
crosses-over = cambia de mano y penetra
snakes = bota en serpiente
keeps-behind = deja al defensor a la espalda y bota

## Screens

sets = { $who } { $count ->
    [one] pone
   *[other] ponen
} { $what } { $for } { $where }
for = para { $whom }
screen = bloqueo
    .a = un { screen }

## Passes and hand-offs

pass-to = { $who } { $verb } { $whom } { $where }
passes = pasa a
throws = da { $what } a
bounces = da un pase picado a
skips = cruza el balón a
lobs = lanza un globo a
kicks-out = dobla fuera a
swings = invierte el balón a
throws-in = saca para
leads = pasa por delante a
shovels = da un pase de pala a
pitches = suelta el balón a
hands-off = { $who } entrega en mano a { $whom } { $where }
keeps = { $who } finge el mano a mano con { $whom } y se queda el balón

## Shots

shoots = tira
catches-and-shoots = recibe y tira
shoots-off-screen = tira tras el bloqueo
pulls-up = se para y tira
floats = tira una bomba
lays-up = tira una bandeja

## Holds and fakes

plants-feet = { $count ->
    [one] planta los dos pies
   *[other] plantan los dos pies
}
pivots = { $count ->
    [one] pivota
   *[other] pivotan
}
screens-out = { $count ->
    [one] cierra el rebote
   *[other] cierran el rebote
}
stays = { $count ->
    [one] se queda
   *[other] se quedan
}
jabs = { $count ->
    [one] da un paso de finta
   *[other] dan un paso de finta
}
fakes-shot = { $count ->
    [one] finta el tiro
   *[other] fintan el tiro
}
fakes-cut = { $count ->
    [one] finta el corte
   *[other] fintan el corte
}
fakes-screen = { $count ->
    [one] finta el bloqueo
   *[other] fintan el bloqueo
}
fakes-drive = { $count ->
    [one] finta la penetración
   *[other] fintan la penetración
}
fakes-handoff = { $count ->
    [one] finta el mano a mano
   *[other] fintan el mano a mano
}
fakes-pass = { $count ->
    [one] finta el pase
   *[other] fintan el pase
}
to-whom = a { $whom }
