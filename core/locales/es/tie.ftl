### From memory. `.that` is the subjunctive after “antes de que” and “después de que”.

plants = , plantando los pies
as = cuando { $event }
once = en cuanto { $event }
before = { $seconds } antes de que { $event }
after = { $seconds } después de que { $event }
seconds = { $n ->
    [one] { $n } segundo
   *[other] { $n } segundos
}

## Events

starts-to-pass = { $who } { $count ->
        [one] empieza
       *[other] empiezan
    } a pasar
    .that = { $who } { $count ->
        [one] empiece
       *[other] empiecen
    } a pasar
starts-to-shoot = { $who } { $count ->
        [one] empieza
       *[other] empiezan
    } a tirar
    .that = { $who } { $count ->
        [one] empiece
       *[other] empiecen
    } a tirar
starts = { $who } { $count ->
        [one] arranca
       *[other] arrancan
    }
    .that = { $who } { $count ->
        [one] arranque
       *[other] arranquen
    }
gets-there = { $who } { $count ->
        [one] llega
       *[other] llegan
    }
    .that = { $who } { $count ->
        [one] llegue
       *[other] lleguen
    }
is-free = { $who } { $count ->
        [one] puede
       *[other] pueden
    } irse
    .that = { $who } { $count ->
        [one] pueda
       *[other] puedan
    } irse
is-done = { $who } { $count ->
        [one] termina
       *[other] terminan
    }
    .that = { $who } { $count ->
        [one] termine
       *[other] terminen
    }
plants-event = { $who } { $count ->
        [one] planta
       *[other] plantan
    } los pies
    .that = { $who } { $count ->
        [one] plante
       *[other] planten
    } los pies
comes-up = { $who } { $count ->
        [one] llega
       *[other] llegan
    } a la altura de { $other }
    .that = { $who } { $count ->
        [one] llegue
       *[other] lleguen
    } a la altura de { $other }
passes-by = { $who } { $count ->
        [one] pasa
       *[other] pasan
    } junto a { $other }
    .that = { $who } { $count ->
        [one] pase
       *[other] pasen
    } junto a { $other }
is-set = { $who } { $count ->
        [one] está
       *[other] están
    } en posición
    .that = { $who } { $count ->
        [one] esté
       *[other] estén
    } en posición
gate-shuts = la puerta se cierra
    .that = la puerta se cierre
shoots = { $who } tira
    .that = { $who } tire
hands-off = { $who } entrega el balón
    .that = { $who } entregue el balón
lets-go = { $who } suelta el balón
    .that = { $who } suelte el balón
catches = { $other } recibe
    .that = { $other } reciba
