### The words of FIBA’s rules in Spanish where they are a rule’s (bloqueo ilegal, tres segundos, saque,
### pista trasera), else as coached in FIBA countries; from memory.

## What leads the sentence of a finding that holds under one coverage.

if-theirs = Contra cinco que siguen cada cual a su par:
if-chase = Si persiguen:
if-over = Si pasan por encima:
if-through = Si pasan de tercero:
if-under = Si pasan por detrás:
if-top-lock = Si niegan por arriba:
if-switch = Si cambian:
if-show = Si salen al bote:
if-drop = Si el defensor del bloqueo contiene:
if-ice = Si niegan el centro:
if-blitz = Si hacen dos contra uno:
if-tag = Si ayudan desde el lado débil:

## Screens

screen-late = { $a } llega { $n } tarde: { $b } ya ha pasado.
screen-just = { $a } está en posición solo { $n } antes de que pase { $b }.
screen-early = { $a } lleva { $n } en posición cuando pasa { $b }: la defensa ve el bloqueo.
cutter-early = { $b } arranca antes de que { $a } plante los pies.
moving-screen = { $a } aún se mueve cuando pasa { $b }: un contacto ahora es probablemente un bloqueo ilegal; decide quien arbitra.
loose-brush = { $b } deja { $n } hasta { $a }: cabe un defensor en medio.
through-screener = { $b } atraviesa a { $a }.
screen-angle = { $a } está a { $n } del ángulo recto: el defensor de { $b } se escurre.
screen-spot = Desde aquí { $a } no puede cerrar el camino al defensor de { $b }, mire hacia donde mire.
screen-left = { $a } se va { $n } antes de que { $b } haya pasado.
screen-stays = { $a } sigue ahí { $n } después de que { $b } haya pasado.
gate-late = La puerta de { $all } se cierra { $n } después de que llegue quien persigue: probablemente un bloqueo ilegal; decide quien arbitra.
gate-on-cutter = { $a } cierra la puerta sobre { $b }.
handoff-far = Entre { $a } y { $b } hay { $n }, de mano a mano: demasiado lejos para entregar el balón.
giver-moves = Los pies de { $a } se mueven en el mano a mano: probablemente un bloqueo ilegal; decide quien arbitra.

## Passes

pass-before-open = { $a } pasa { $n } antes de que { $b } supere el bloqueo.
pass-off-dribble = { $a } pasa desde el bote, todavía corriendo a { $n }.
fast-catch = { $b } recibe a { $n }: demasiado rápido para tirar.
not-looking = { $b } no ve venir el balón.
passer-turned = { $a } pasa con el pecho girado { $n } respecto a { $b }.
pass-through-body = El pase de { $a } a { $b } atraviesa a { $c }.
long-pass = { $a } pasa a { $b } desde { $n }: cualquier defensa tiene tiempo de llegar.
pass-through-board = El pase de { $a } a { $b } da en el tablero.

## Rules and clocks

three-seconds = { $a } está en la zona durante { $n }: probablemente pitan tres segundos; decide quien arbitra.
near-three-seconds = { $a } está en la zona durante { $n }: cerca de los tres segundos.
throw-in-late = El saque sale de las manos de { $a } a los { $n }, y se permiten { $m }.
throw-in-tight = El saque sale de las manos de { $a } a los { $n }. Va justo: se permiten { $m }.
shot-clock = El tiro llega a los { $n }, y el reloj de lanzamiento da { $m }.
out-screening = { $a } bloquea con un pie en la línea { $where }.
out-with-ball = { $a } tiene el balón con un pie en la línea { $where }.
out = { $a } pisa la línea { $where }.
backcourt = { $a } vuelve a pista trasera con el balón.

## Spacing and rhythm

lane-crowd = { $all } coinciden en la zona durante { $n }: sus defensores también.
long-set = La jugada dura { $n }: es larga.
holder-stands = { $a } se queda con el balón durante { $n }: con un defensor cerca, eso son cinco segundos.
statue = { $a } no participa durante { $n }, ni tiene opción.
collision-under-ring = { $a } y { $b } chocan bajo el aro a { $m }. Peligro: no se debe correr así.
collision = { $a } y { $b } chocan { $where } a { $m }.
crowding = { $a } y { $b } quedan a { $n } { $where }: un solo defensor cubre a los dos.
corners-empty = Las dos esquinas están vacías al final.
side-not-emptied = { $b } estorba la puerta atrás de { $a }: la ayuda ya está allí.
no-safety = Al final no hay balance defensivo.
one-side = El balón se queda en un lado durante { $n }: la ayuda no tiene que moverse.
one-speed = { $a } sale del bloqueo de { $rest } sin acelerar: no hay cambio de ritmo.
marching = { $all } arrancan en el mismo instante: nadie lee a nadie.
side-loaded = { $all } están en un mismo lado durante { $n }: sus defensores también.
parked = { $b } se ha quedado en el camino de la penetración de { $a }: la ayuda ya está allí.

## Against five

closely-guarded = { $x } sigue muy cerca de { $a } durante { $n }: probablemente pitan a los { $m }; decide quien arbitra.
nearly-closely-guarded = { $x } sigue muy cerca de { $a } durante { $n }, y se cuentan { $m }.
pass-stolen = { $x } mete la mano en el pase de { $a } a { $b }.
lane-shut = { $x } puede meter la mano en el pase de { $a } a { $b }.
pass-too-soon = { $a } pasa demasiado pronto: { $x } está a { $n } de { $b } en la recepción, y { $b } queda libre { $m } después.
tight-catch = { $b } recibe con { $x } a solo { $n }.
screen-too-close-moving = { $a } deja a { $x } { $n } para parar, y se deben { $m }: probablemente pitan; decide quien arbitra.
screen-too-close = { $x } no puede ver el bloqueo de { $a } y le quedan { $n }, no { $m }: probablemente pitan; decide quien arbitra.
screen-contact = { $a } choca con { $x } a { $n } por el camino: probablemente un bloqueo ilegal; decide quien arbitra.
runs-into = { $a } choca con { $x } { $where } a { $n }: un contacto del que { $a } puede ser responsable; decide quien arbitra.
decoy-ignored = { $a } no arrastra a nadie: { $x } sigue ahí, a { $n }, cuando { $b } recibe.
no-look = Todas las opciones tienen oposición: { $n } de espacio es lo máximo, y es de { $a }.

## Reads; $read is the title.

read-never = “{ $read }” no llega nunca: ninguna defensa que este sistema encuentra la provoca, y a quien se le pide no se le ve hacerlo.
read-not-played = “{ $read }” no se puede jugar: su instante no llega nunca, el tiro ya ha salido o sus esperas se contradicen.
read-worse = “{ $read }” lo empeora: al final { $a } queda libre { $n }; sin la lectura { $b } queda libre { $m }.
read-stolen = “{ $read }” lo empeora: una mano llega a su pase { $n } antes que el balón.

## For later

above-screens = Un bloqueo como el de { $a } es para más adelante: con menos de 12 años basta uno en el lado contrario. Decide quien entrena y supervisa.
above-chains = Los bloqueos encadenados, como aquí el de { $a }, son para más adelante. Decide quien entrena y supervisa.
above-blind = { $a } pone un bloqueo ciego: para más adelante. Decide quien entrena y supervisa.
above-gates = { $a } pone una puerta: para más adelante. Decide quien entrena y supervisa.
