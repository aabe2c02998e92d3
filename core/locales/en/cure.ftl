### What can be done about a finding, and what that costs. $count: how many players $who are.

wait-for = Let { $who } wait for { $whom }.
wait-to-pass = Let { $who } hold the ball until { $whom } is open.
stop-to-pass = Let { $who } stop first, then pass.
wait-for-catch = Let { $who } pass to where { $whom } stops.
wait = Let { $who } wait.
later = Start { $who } { $n } later.
sooner = Start { $who } { $n } earlier.
pass-later = Pass { $n } later.
pass-sooner = Pass { $n } earlier.
hold = Let { $who } hold for { $n }.
take = Let { $who } take { $n } for it.
throw = Throw { $what }.
let-walk = Let { $who } walk.
let-jog = Let { $who } jog.
let-run = Let { $who } run.
let-sprint = Let { $who } sprint.
move-end = Move the end of { $who }’s way { $n } { $place }.
move-way = Move { $who }’s way { $n } { $place }.
move-place = Move { $who } { $n } { $place }.
send = Send { $who } { $place } instead, { $n } away.
begin = Start { $who } { $place }.

costs = Costs { $n }.
saves = Saves { $n }.
free = Costs no time.
