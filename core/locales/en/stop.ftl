### Why a walk through a set stops: a sentence a reason.

opens = It opens as { $event }.
passes = { $from } passes to { $to }
hands-off = { $from } hands off to { $to }
catches = { $to } catches

## Waits; $count: how many players $who are, $event: one of the last group.

waits = { $who } { $count ->
        [one] waits
       *[other] wait
    } for { $event }.
waits-on = { $who } { $count ->
        [one] waits
       *[other] wait
    } for { $event }, and { $seconds } more.
# Who leaves before the feet are down, and comes when they are.
times = { $who } { $count ->
        [one] times
       *[other] time
    } the run to { $feet }.
waits-for-feet = { $who } { $count ->
        [one] waits
       *[other] wait
    } for { $feet }.
feet = { $count ->
    [one] { $who }’s feet
   *[other] the feet of { $who }
}
shuts = { $who } { $count ->
        [one] waits
       *[other] wait
    } until { $whom } is through, then { $count ->
        [one] shuts
       *[other] shut
    } the gate.
gives = { $who } stands until { $whom } takes the ball.

## Who goes by an instant of somebody else; $when: “as 3 starts”, “0.2 seconds before 3 starts”.

goes = { $who } { $count ->
        [one] goes
       *[other] go
    } { $when }.
plants = { $who } { $count ->
        [one] plants
       *[other] plant
    } { $when }.
lets-go = { $who } { $count ->
        [one] lets
       *[other] let
    } it go { $when }.
gets-there = { $who } { $count ->
        [one] gets
       *[other] get
    } there { $when }.
stands = { $who } { $count ->
        [one] stands
       *[other] stand
    } { $when }.

## What is waited for.

to-start-the-pass = { $who } to start the pass
to-start-the-shot = { $who } to start the shot
to-start = { $who } to start
to-get-there = { $who } to get there
to-be-free = { $who } to be free to leave
to-be-done = { $who } to be done
to-plant = { $who } to plant
to-come-up = { $who } to come up to { $other }
to-clear = { $who } to clear { $other }
to-shut = the gate to shut
to-shoot = { $who } to shoot
to-hand-off = { $who } to hand off
to-let-go = { $who } to let it go
to-catch = { $other } to catch
