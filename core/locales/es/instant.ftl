### From memory.

instant = { $t } segundos de { $all }, fase { $n }{ $title }:
has-ball = { $who } tiene el balón { $where }
in-the-air = el balón está en el aire
comes = { $who } viene a por el balón
beat = Fase
read = Lectura
as-drawn = según el dibujo

runs = { $who } corre { $to }
dribbles = { $who } bota { $to }
screens = { $who } bloquea { $for }
passes = { $who } pasa { $for }
hands-off = { $who } entrega en mano { $for }
shoots = { $who } tira
stays = { $who } se queda
fakes = { $who } finta
