### From memory.

wait-for = { $count ->
    [one] Que { $who } espere a { $whom }.
   *[other] Que { $who } esperen a { $whom }.
}
wait-to-pass = { $count ->
    [one] Que { $who } aguante el balón hasta que { $whom } quede libre.
   *[other] Que { $who } aguanten el balón hasta que { $whom } quede libre.
}
stop-to-pass = { $count ->
    [one] Que { $who } pare primero y luego pase.
   *[other] Que { $who } paren primero y luego pasen.
}
wait-for-catch = { $count ->
    [one] Que { $who } pase al lugar donde { $whom } se detiene.
   *[other] Que { $who } pasen al lugar donde { $whom } se detiene.
}
wait = { $count ->
    [one] Que { $who } espere.
   *[other] Que { $who } esperen.
}
later = { $count ->
    [one] Que { $who } arranque { $n } más tarde.
   *[other] Que { $who } arranquen { $n } más tarde.
}
sooner = { $count ->
    [one] Que { $who } arranque { $n } antes.
   *[other] Que { $who } arranquen { $n } antes.
}
pass-later = Pasar { $n } más tarde.
pass-sooner = Pasar { $n } antes.
hold = { $count ->
    [one] Que { $who } aguante { $n }.
   *[other] Que { $who } aguanten { $n }.
}
take = { $count ->
    [one] Que { $who } tarde { $n } en hacerlo.
   *[other] Que { $who } tarden { $n } en hacerlo.
}
throw = Dar { $what }.
let-walk = { $count ->
    [one] Que { $who } camine.
   *[other] Que { $who } caminen.
}
let-jog = { $count ->
    [one] Que { $who } trote.
   *[other] Que { $who } troten.
}
let-run = { $count ->
    [one] Que { $who } corra.
   *[other] Que { $who } corran.
}
let-sprint = { $count ->
    [one] Que { $who } esprinte.
   *[other] Que { $who } esprinten.
}
move-end = Mover el final del recorrido de { $who } { $n } { $place }.
move-way = Mover el recorrido de { $who } { $n } { $place }.
move-place = Mover a { $who } { $n } { $place }.
send = Mejor, mandar a { $who } { $place }, a { $n }.
begin = Colocar a { $who } { $place } al empezar.

costs = Cuesta { $n }.
saves = Ahorra { $n }.
free = No cuesta tiempo.
