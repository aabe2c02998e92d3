### What an action waits for, as the end of its sentence, and instants of actions as events. `.that` is
### an event after “before” and “after”; other languages have another form of the verb there.

plants = , planting
as = as { $event }
once = once { $event }
before = { $seconds } before { $event }
after = { $seconds } after { $event }
seconds = { $n } seconds

## Events; $count: how many players $who are.

starts-to-pass = { $who } { $count ->
        [one] starts
       *[other] start
    } to pass
    .that = { starts-to-pass }
starts-to-shoot = { $who } { $count ->
        [one] starts
       *[other] start
    } to shoot
    .that = { starts-to-shoot }
starts = { $who } { $count ->
        [one] starts
       *[other] start
    }
    .that = { starts }
gets-there = { $who } { $count ->
        [one] gets
       *[other] get
    } there
    .that = { gets-there }
is-free = { $who } { $count ->
        [one] is
       *[other] are
    } free to leave
    .that = { is-free }
is-done = { $who } { $count ->
        [one] is
       *[other] are
    } done
    .that = { is-done }
plants-event = { $who } { $count ->
        [one] plants
       *[other] plant
    }
    .that = { plants-event }
comes-up = { $who } { $count ->
        [one] comes
       *[other] come
    } up to { $other }
    .that = { comes-up }
passes-by = { $who } { $count ->
        [one] passes
       *[other] pass
    } { $other }
    .that = { passes-by }
is-set = { $who } { $count ->
        [one] is
       *[other] are
    } set
    .that = { is-set }
gate-shuts = the gate shuts
    .that = { gate-shuts }
shoots = { $who } shoots
    .that = { shoots }
hands-off = { $who } hands off
    .that = { hands-off }
lets-go = { $who } lets it go
    .that = { lets-go }
catches = { $other } catches
    .that = { catches }
