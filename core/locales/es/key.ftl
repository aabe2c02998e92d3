### From memory.

cut = corte
pass = pase
dribble = bote
screen = bloqueo
handoff = mano a mano
shot = tiro
waits = espera
