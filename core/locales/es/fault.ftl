### From memory. Words of the file itself stay in English.
## How a fault is told

line = línea { $line }, columna { $column }
more = { $n } más
meant = ¿Querías decir { $word }?
and = { $first } y { $last }
then = { $first }; { $then }

## The file as a whole

file-is = el archivo es { $what }
a-group = una jugada es un grupo {"{"} {"}"} de campos con nombre
no-version = el archivo no dice de qué versión es
begins = una jugada empieza con "backcut": 1
newer = hecho con un Backcut más nuevo: versión { $version }
reads-version = este lee la versión { $version }
bad-version = { $what } no es una versión
version-is = "backcut" es { $version }
name-twice = este nombre está aquí por segunda vez
name-once = cada nombre una sola vez en un grupo
too-large = el archivo es demasiado grande
most-kilobytes = como mucho 256 kB
empty = el archivo está vacío
no-text = desde aquí el archivo no es texto legible
save-utf8 = guárdalo como UTF-8
list-shown = una lista [ ]
group-shown = un grupo {"{"} {"}"}

## JSON

ends-here = el archivo termina aquí, tras su último corchete
stops = el archivo se corta a la mitad
found = hay { $what }
unseen = hay un carácter que no se ve
put-comma = Pon una coma antes de esto.
straight-quotes = Usa comillas dobles rectas: "así".
no-comments = En JSON no hay comentarios; usa un campo "x-note".
value-here = aquí va un texto entre comillas dobles, un número, true, false, [ o {"{"}
digit-here = aquí el número sigue con una cifra
no-zero = un número no empieza por 0 y otra cifra
found-number = hay el número { $digits }
too-large-number = ningún número de una jugada es tan grande
broken-text = un salto de línea o un tabulador dentro de un texto
one-line = un texto está en una sola línea, de comilla a comilla
close-quotes = Cierra las comillas en la misma línea, o escribe \n.
text-ends = un texto termina con una comilla doble
bad-backslash = una barra invertida con algo que no es un carácter
after-backslash = tras una barra invertida viene " \ / b f n r t o u y cuatro cifras
two-backslashes = Para la propia barra invertida, escribe dos.
too-deep = corchetes dentro de corchetes, a más de { $n } niveles
too-many-fields = un grupo tiene más de { $n } campos
never-needed = una jugada nunca necesita tantos
comma-or-bracket = aquí va una coma o ]
comma-or-brace = aquí va una coma o {"}"}
last-comma = una coma sin nada detrás
commas-between = las comas solo van entre entradas
remove-comma = Quita esta coma.
name-here = aquí va el nombre de un campo entre comillas dobles
colon-here = aquí van dos puntos, tras el nombre del campo

## Fields

field-is = "{ $name }" es { $what }
has-no = falta "{ $name }" en { $what }
has-no-field = en { $what } no hay campo { $name }
fields = campos: { $names }; notas propias: "x-…"
verb-has-no = una acción "{ $verb }" no lleva "{ $name }"
belongs = "{ $name }" es de: { $verbs }
long-text = "{ $name }" tiene { $n } caracteres
at-most = como mucho { $n }
empty-list = "{ $name }" está vacío
one-entry = lleva al menos una entrada
entries = "{ $name }" tiene { $n } entradas
no-player = no hay jugador { $name }
players-are = los jugadores son "1", "2", "3", "4" y "5"
least-two = una jugada tiene al menos dos
most-five = una jugada tiene como mucho cinco
kind-of = una clase de { $verb }
is-not = { $word } no es { $what }
is-one-of = { $what } es una de estas palabras: { $words }
say-side = Di de qué lado: "left { $word }" o "right { $word }".
is-kind-of = { $word } es una clase de { $verb }.
write-kind = Escribe "do": "{ $verb }", "kind": { $word }.
sided = { $words }; con left o right delante: { $sided }

## What may stand in a field

flag = true o false
number = un número de { $from } a { $to }
seconds = un número de segundos de { $from } a { $to }
angle = radianes: 0 mira al aro, 1.57 a la derecha del ataque
whole = un número entero de 1 a { $to }
player-number = el número de un jugador, de 1 a 5
defender = un defensor, de "X1" a "X5"
text = un texto entre comillas dobles
short-name = un nombre corto entre comillas dobles
quoted = { $what } entre comillas dobles
point = {"["}x, y] en metros desde el aro
group = { $what }, un grupo {"{"} {"}"}
or-list = { $what }, o una lista
list = una lista; cada entrada es { $what }
players = un grupo {"{"}"1": …, "2": …{"}"} de jugadores por número

## Lists of words

court = una pista
level = un nivel
verb = algo que un jugador puede hacer
kind = una clase de esta acción
spot = un puesto
pace = un ritmo
side = un lado
off-side = un lado de un bloqueo
edge = un instante de una acción
coverage = una defensa
deed = algo que hace un defensor
faked = algo que fintar
closed = una palabra para una línea de pase

## Groups of the file

near-spot = un sitio cerca de un puesto
beside-mate = un sitio junto a otro jugador
use-of-screen = el uso de un bloqueo
screener-to-pass = un bloqueador por el que pasar
any-place = un sitio: un puesto como "left wing", [x, y] en metros, o un sitio junto a otro jugador
beat-or-instant = el número de una fase, o un instante como {"{"}"id": "gate", "edge": "shut"{"}"}
place-or-player = un sitio como "left wing" o [x, y], o el número de un jugador, de 1 a 5
place-or-screener = un sitio como "left wing" o [x, y], o un bloqueador por el que pasar: {"{"}"off": 4{"}"}
screener = el número de un bloqueador, o {"{"}"who": 5, "side": "under"{"}"}
tie = una espera
tied-to = el id de una acción, o {"{"}"id": …, "edge": …{"}"}
action = una acción
beat = una fase
instant = un instante
deciding-coverage = la defensa que decide
deciding-deed = el acto que decide
deciding-distance = la distancia que decide
deciding-lane = la línea de pase que decide
condition = {"{"}"coverage": …{"}"}, {"{"}"who": "X3", "does": …{"}"}, {"{"}"who": "X3", "under": metros{"}"} o {"{"}"lane": "closed", "from": 1, "to": 3{"}"}
read = una lectura
player = un jugador
instruction = una instrucción a un defensor
defence = la defensa
slow-stretch = un tramo lento
film-mark = una marca de vídeo
set = una jugada

## Ids

id-taken = el id { $id } ya está ocupado
id-once = cada id nombra una sola acción
no-ids = ninguna acción tiene id todavía
ids = ids: { $ids }
no-such-id = ninguna acción tiene el id { $id }

## Who, to whom, where

several-do-one = { $n } jugadores hacen una sola acción "{ $verb }"
one-each = solo un bloqueo, una espera y una finta se hacen entre varios como una; escribe una acción por jugador
twice-in-list = un jugador está dos veces en esta lista
each-once = cada jugador una vez
passes-to-self = { $own } pasa a { $own }
hands-to-self = { $own } entrega el balón a { $own }
screens-for-self = { $own } bloquea para { $own }
fakes-at-self = { $own } finta a { $own }
own-screen = { $own } no puede usar un bloqueo de { $own }
name-mate = nombra a otro jugador
to-a-place = esto va a un sitio, no a un jugador
nobody-receives = nadie recibe este pase
nobody-takes = nadie toma este mano a mano
to-is-mate = "to" es el número de otro jugador
catch-is-at = El sitio de la recepción o de la entrega es "at".
verb-needs-place = una acción "{ $verb }" va a un sitio, no a un jugador
place-forms = un puesto, [x, y], o {"{"}"beside": 4, "side": "left"{"}"}
verb-lacks-to = falta "to" en una acción "{ $verb }"
to-is-end = "to" es donde termina: un puesto como "left wing", o [x, y]
for-nobody = este bloqueo no es para nadie
for-is-mate = "for" es el número de otro jugador
no-gate-alone = un solo jugador no puede ser una puerta
gate-of = { $n } jugadores son una puerta
two-screeners = dos bloqueadores, como lista: "who": [4, 5]
not-in-set = { $who } no juega en esta jugada
players-here = jugadores: { $players }
beside-self = { $who } no puede ponerse junto a { $who }
beside = junto a otro jugador
off-court = este sitio está fuera de la pista
court-is = x de -{ $side } a { $side }, y de -{ $back } a { $half }, en metros desde el aro
throw-in-spots = Quien saca está en un puesto: "left sideline throw-in", "right baseline throw-in".

## The ball

nobody-has-ball = nadie tiene el balón
one-has-it-written = lo tiene un jugador: "ball": true
both-have-ball = { $a } y { $b } tienen el balón a la vez
one-has-it = lo tiene un jugador
passes = { $own } pasa
dribbles = { $own } bota
shoots = { $own } tira
hands-off = { $own } entrega el balón
fakes-with-ball = { $own } finta con el balón
without-ball = { $does }, pero el balón lo tiene { $holder }
only-holder = solo puede quien tiene el balón; lo que está escrito antes ocurre antes
after-shot = { $does } después del tiro
shot-ends = el tiro acaba la posesión; escríbelo al final

## Ties, reads, stretches, film

waits-for-itself = esta acción se espera a sí misma
another-id = el id de otra acción
no-instant = esta acción "{ $verb }" no tiene "{ $edge }"
has-instants = tiene: { $edges }
only-off = Solo un corte con "off" pasa un bloqueo.
only-gate = Solo una puerta se cierra.
no-screeners = ningún bloqueador participa en esa acción
screeners-there = bloqueadores de esa acción: { $screeners }
no-screener = { $who } no es bloqueador ahí
is-beat = "{ $name }" es la fase { $n }
beats-are = las fases van de 1 a { $n }, la anterior primero
rate-zero = con un ritmo de 0 no se movería
rate-is = un número mayor que 0, como mucho 1
mark-not-later = esta marca no es posterior a la de antes
marks-in-order = marcas en orden de tiempo

## Waits that contradict each other

circle = estas esperas dan la vuelta en círculo, faltan { $n } s: { $waits }
take-out = quita una de las esperas, o dale menos desfase
comes-after = { $mine } va después de { $theirs }
waits-for-ball = { $mine } espera el balón de { $theirs }
waits-for-beat = { $mine } espera su fase, que se abre con { $theirs }
waits-for-feet = { $mine } espera los pies de { $who }
stays-until = { $mine } se queda hasta que { $who } pasa
meet-at-catch = { $mine } y { $theirs } coinciden en la recepción
comes-with = { $mine } va con { $theirs }
shuts-behind = { $mine } se cierra tras { $theirs }
follows = { $mine } sigue a { $theirs }
meet-at-exchange = { $mine } y { $theirs } coinciden en la entrega
is-tied = { $mine } está ligado a { $theirs }
whose = la acción "{ $verb }" de { $who }
whose-screen = el bloqueo de { $who }
the-start = el comienzo

## Links

no-link = en este enlace no hay ninguna jugada
link-has = un enlace a una jugada lleva #set= y letras detrás
copy-again = Cópialo otra vez, entero, de donde vino.
link-version = este enlace es de una versión que aquí no se conoce
link-begins = set=1. y letras detrás
newer-program = Cópialo otra vez, entero; si no basta, hace falta un programa más nuevo.
link-long = el enlace es demasiado largo
most-characters = como mucho { $n } caracteres
send-file = Envía mejor el archivo de la jugada.
link-letter = una letra que ningún enlace tiene: { $letter }
link-letters = letras del inglés, cifras, - y _
link-damaged = el enlace está dañado: se cortó o cambió por el camino
every-letter = cada letra tal como se hizo
link-large = la jugada es demasiado grande para un enlace
most-in-link = como mucho { $n } kB como archivo, y { $characters }
link-asks = el enlace pide { $what }
link-time = segundos, o desde y hasta: t=3.4 o t=3.4,6
link-beat = una fase, contando desde 1: beat=3
link-read = una lectura, contando desde 1: read=2
link-follow = jugadores de 1 a 5: follow=1,4
link-coverage = una defensa: coverage=switch
link-speed = veces la velocidad real, hasta 16: speed=0.5
link-paused = paused, o paused=false

## How many a set has

set-has = la jugada tiene { $count }
count-players = { $n ->
    [0] ningún jugador
    [one] un jugador
   *[other] { $n } jugadores
}
count-actions = { $n ->
    [0] ninguna acción
    [one] una acción
   *[other] { $n } acciones
}

## What a page asks for

asks-for = la página pide { $what ->
    [court] la pista
    [level] el nivel
    [coverage] la defensa
   *[read] la lectura
} «{ $name }»
reads-of-set = lecturas de la jugada, contando desde 1
never-comes = su instante no llega nunca
shot-is-gone = en su instante el tiro ya se ha ido
