### The words of FIBA’s rules in Spanish (Reglas Oficiales de Baloncesto, art. 33: cilindro, bloqueo);
### from memory.

still = Los bloqueos se ponen sin moverse: pies plantados, brazos pegados, dentro del propio cilindro.
limbs = Ni cadera, ni pierna, ni brazo en el camino de quien corre.
hard = Quien choca con un bloqueo puede llevarse un golpe fuerte. Primero, caminando.
blind = Los bloqueos ciegos dejan un paso de espacio, y el propio equipo avisa: «¡bloqueo!».
gate = La puerta está cerrada y quieta antes de que llegue quien persigue; si no, se queda abierta.
cross = Nunca se cruzan dos corriendo bajo el aro.
land = Quien tira necesita espacio para caer.
lob = Globos, solo con el aro despejado.
u12 = Menos de 12 años: basta un bloqueo en el lado contrario y un mano a mano al trote. Lo demás, más adelante.
u14 = Menos de 14 años: bloqueo directo, bloqueo vertical y flex. Ni bloqueos ciegos ni puertas.
coach = Decide quien entrena y supervisa.
