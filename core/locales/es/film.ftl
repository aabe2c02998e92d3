### From memory.

here = { $verdict }.
when = { $verdict }: { $event }.

first = Desde aquí se cuentan los dos
on-time = Lo nuestro llegó aquí a tiempo
late = Lo nuestro llegó aquí { $n }{"\u00A0"}s tarde
early = Lo nuestro llegó aquí { $n }{"\u00A0"}s antes

backwards = Sin marcar: entre esta marca y otra el vídeo iría hacia atrás. Hay que mover el vídeo o quitar la otra marca.
out-of-range = Sin marcar: en la jugada se puede marcar hasta un minuto, en el vídeo hasta un día.
full = Sin marcar: en una jugada caben 50 marcas.
