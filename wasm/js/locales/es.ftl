### The words of the element in Spanish, as coached in FIBA countries. From memory. A space that does
### not break stands before a unit (ISO 80000-1, 7.1.4).

## Playing

play = Ver
pause = Pausa
again = Otra vez
next-beat = Fase siguiente
previous-beat = Fase anterior
next-frame = Imagen siguiente
previous-frame = Imagen anterior
beat = Fase
frame = Imagen
slow = Lento
half = Medio
half-speed = Media velocidad
other-speed = Velocidad × { NUMBER($rate, minimumFractionDigits: 2, maximumFractionDigits: 2) }
game-speed = Ritmo real
speed = Velocidad

## The reader

loading = Cargando la jugada
captions = Textos
full-screen = Pantalla completa
close = Cerrar
more = Más
less = Menos
all-rows = más filas
court = Pista
enlarge = Detalle: ampliar
reduce = Detalle: ver toda la pista
time = Tiempo
beat-of = fase { $beat } de { $beats }
beat-told = Fase { $beat } de { $beats }, { $title }. { $caption }
beat-pictured = Fase { $beat }, { $title }: { $caption }
marks = Las marcas junto a las líneas miden 1{"\u00A0"}m.
bodies = Las marcas junto a las líneas miden 1{"\u00A0"}m. Cuerpos × { NUMBER($scale, minimumFractionDigits: 1, maximumFractionDigits: 1) }.
key = Significado de las marcas: { $marks }
seconds = { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) }{"\u00A0"}s
instant = { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s
where = { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundos de { NUMBER($duration, minimumFractionDigits: 1, maximumFractionDigits: 1) }, fase { $beat }: { $title }

## Where there is no set

no-set = Esta jugada no se puede mostrar
more-faults = y { $count } más
open-file = Abrir el archivo de la jugada
fault-in-line = Línea { $line }: { $fault }
file-wrong = El archivo tiene errores.
no-start = El reproductor no ha podido arrancar.
no-file = La página no indica ningún archivo de jugada.
no-answer = El archivo de la jugada no ha llegado.
refused = El archivo de la jugada no ha llegado: { $status }.

## Whom to follow

follow = Seguir
all = equipo
follow-all = Equipo
follow-everybody = Seguir a todo el equipo
follow-player = Seguir al { $player }
follow-several = Seguir varios
# Switch: a press on a player adds that one.
several = varios

## Against a defence

defence = Defensa
defence-none = Sin defensa
defence-as = Defensa: { $coverage }
notes = Avisos
holds-up = Qué la retrasa
timing = En tinta: lo que la retrasa. Los puntos después: tiempo de sobra.
nothing-found = Nada que señalar.
likely = Está calculado: es probable, nunca seguro. Qué se pita lo decide quien arbitra; qué se juega, quien entrena al equipo.
note = Nota:
warning = Atención:
violation = Infracción:
show-instant = Ver { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) }{"\u00A0"}s
against-all = Contra cada defensa: segundos sin oposición
open-against-all = Segundos sin oposición contra cada defensa
open = { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) }
open-told = { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) ->
    [one] { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundo: { $look }
   *[other] { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundos: { $look }
  }
hand = mano
answered-by = Respuesta
classes = Desde el instante de cada ocasión hasta que un defensor puede puntearla. Pone «mano» donde una mano puede llegar al pase. De defensa muy cerca a muy libre: por distancia, según las clases de las tablas públicas de tiro de la NBA.

## Keys

keys = Teclas
keys-act = Funcionan mientras el foco está en esta jugada.
characters-act = También letras, cifras y signos
play-or-pause = Ver o pausar
second-back = 1 segundo atrás
second-on = 1 segundo adelante
second-back-in-strip = 1 segundo atrás, en la banda
second-on-in-strip = 1 segundo adelante, en la banda
frame-back = 1 imagen atrás
frame-on = 1 imagen adelante
beat-back = Fase atrás
to-start = Al principio
to-end = Al final
slower = Más lento
faster = Más rápido
follow-again = Seguir también a ese número; otra vez: dejar de seguirlo
this-list = Esta lista
space-key = Espacio
left-key = Izquierda
right-key = Derecha
up-key = Arriba
down-key = Abajo
page-up-key = Re Pág
page-down-key = Av Pág
home-key = Inicio
end-key = Fin
enter-key = Intro
escape-key = Esc
shift-key = Mayús
handle-earlier = Tirador { NUMBER($by, minimumFractionDigits: 1, maximumFractionDigits: 1) }{"\u00A0"}s antes
handle-later = Tirador { NUMBER($by, minimumFractionDigits: 1, maximumFractionDigits: 1) }{"\u00A0"}s después
handle-earliest = Tirador al principio
handle-latest = Tirador al final
press-or-answer = Ahora, o responder
move-cross = Mover la cruz, o el instante
move-cross-far = Mover la cruz 1 m

## Sharing

share = Compartir
sharing-failed = No ha llegado lo que hace falta para compartir. Vuelve a intentarlo más tarde.
send = Enviar
copy-link = Copiar enlace
copy-link-at = Copiar enlace a los { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) }{"\u00A0"}s
copy-frame = Copiar marco
copy-tag = Copiar etiqueta
copy-file = Copiar archivo
qr-code = Código QR
download = Descargar jugada
to-copy = Para copiar
copied = { $what ->
    [link] Enlace copiado.
    [frame] Marco copiado.
    [tag] Etiqueta copiada.
   *[file] Archivo copiado.
  }
copy-by-hand = { $what ->
    [link] El navegador no deja copiar nada aquí. Copia el enlace a mano:
    [frame] El navegador no deja copiar nada aquí. Copia el marco a mano:
    [tag] El navegador no deja copiar nada aquí. Copia la etiqueta a mano:
   *[file] El navegador no deja copiar nada aquí. Copia el archivo a mano:
  }
opens-set = Abre la jugada.
opens-page = Abre esta página: la jugada entera es demasiado larga para que la lea un teléfono.
qr-of-set = Código QR que abre la jugada
qr-of-page = Código QR que abre esta página
too-long-for-qr = La jugada es demasiado larga para un código QR.
too-long-for-link = La jugada es demasiado larga para un enlace. Comparte su archivo.
frame-title = { $title }, jugada

## Teaching

what-if = ¿Y si…?
what-if-read = ¿Y si…? { $read }
as-drawn = Según el dibujo
as-defended = Según la defensa
teach = Enseñar
teaching-failed = No ha llegado lo que hace falta para esto. Vuelve a intentarlo más tarde.
roles = Funciones
role-cards = Fichas de función
print = Imprimir
cards-of = Fichas de
card-of = Ficha del { $player }

## A film of the reader's own

film = Vídeo
pick-film = Elegir un vídeo
another-film = Otro vídeo
picture-in-picture = Imagen en imagen
side-by-side = Uno al lado del otro
sound = Sonido
film-alone = Mover solo el vídeo
mark-this = Marcar aquí
film-frame-back = Vídeo: imagen anterior
film-frame-on = Vídeo: imagen siguiente
film-time = { NUMBER($film, minimumFractionDigits: 2, maximumFractionDigits: 2) } de { NUMBER($length, minimumFractionDigits: 1, maximumFractionDigits: 1) }{"\u00A0"}s
film-at = Vídeo { NUMBER($film, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s
film-stays = El vídeo se queda en este dispositivo. No se sube nada.
film-apart = La jugada está en { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s. Lleva el vídeo al mismo instante y márcalo.
film-tied = { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s de la jugada son { NUMBER($film, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s del vídeo.
film-of-drawn = A partir de { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s esto es una lectura; el vídeo muestra la jugada como está dibujada.
tie-as-drawn = Las marcas unen el vídeo a la jugada como está dibujada. Elígela primero en «¿Y si…?».
film-untied = Sin marcas todavía: el vídeo empieza con la jugada. Mueve solo el vídeo hasta un instante que conozcas y márcalo.
film-ended = El vídeo acaba aquí. Si sigues, la jugada continúa sola.
film-unplayable = El navegador no puede reproducir este vídeo. MP4 y WebM son lo más seguro.
film-absent = El vídeo de esta página no ha llegado, o el navegador no puede reproducirlo.
film-refused = Las normas de esta página no dejan entrar vídeos tuyos. Quien la lleva puede permitirlos: media-src tiene que nombrar el esquema blob.
remove = Quitar
remove-mark = Quitar { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) }{"\u00A0"}s
copy-marked = Copiar archivo con las marcas
marks-copied = Archivo copiado, con las marcas.
marks-by-hand = El navegador no deja copiar nada aquí. Copia el archivo a mano:
marked-file = Archivo de la jugada

## Quiz

quiz = Preguntas
end-quiz = Terminar las preguntas
question-of = Pregunta { $question } de { $questions }
points = { $points ->
    [one] { $points } punto
   *[other] { $points } puntos
  }
points-so-far = { $points ->
    [one] { $points } punto, tu mejor resultado { $best }
   *[other] { $points } puntos, tu mejor resultado { $best }
  }
answer-place = Toca el lugar en la pista. O mueve la cruz con las flechas, un metro con Mayús, y pulsa Intro.
answer-instant = Pulsa Ver y mira. Luego pulsa Ahora, toca la pista o pulsa Espacio en el momento justo.
answer-still = Mueve el control hasta el momento justo y pulsa Responder. Las flechas también lo mueven.
answer-choice = Elige y pulsa Responder.
now = Ahora
answer = Responder
next-question = Siguiente pregunta
see-sum = Ver el resultado
see-again = Verlo otra vez
next-picture = Siguiente imagen
sum-of = { $points } de { $most } puntos
best-kept = Tu mejor resultado con esta jugada: { $points } puntos. Se guarda solo en este dispositivo.
best-yet = Es tu mejor resultado con esta jugada. Se guarda solo en este dispositivo.
not-kept = Esta página no puede guardar resultados en este dispositivo.
another-round = Otra ronda
forget-results = Olvidar mis resultados
forgotten = Olvidado.
nothing-to-ask = No hay nada que preguntar sobre esta jugada.
choose-defence = Elige una defensa antes de empezar y también se pregunta por los defensores.

## A walk through the set, and a stretch of it over and over

walk-through = Paso a paso
go-on = Seguir
again-from-start = Otra vez
to-last-stop = Atrás
leave-walk = Salir
slow-stretches = Tramos lentos
stop-of = { $n } de { $all }
walked-through = Eso es todo.
loop = Bucle
loop-from = Empieza aquí
loop-to = Acaba aquí
loop-beat = Esta fase
loop-clear = Quitar
loop-starts = Inicio del bucle
loop-ends = Fin del bucle
looped = Una y otra vez de { NUMBER($from, minimumFractionDigits: 1, maximumFractionDigits: 1) } a { NUMBER($to, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundos.
stepped-round = Los pasos dan la vuelta de { NUMBER($from, minimumFractionDigits: 1, maximumFractionDigits: 1) } a { NUMBER($to, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundos.
picture-on = Medio segundo adelante
nothing-looped = No se repite nada.
at-seconds = { NUMBER($t, minimumFractionDigits: 1, maximumFractionDigits: 1) } segundos
