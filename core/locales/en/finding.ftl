### What is wrong. Never blame: what happens, to whom, by how much.
###
### $a, $b, $c: the finding’s players in order; $all: those together; $rest: all but the first;
### $x: its first defender; $n: a number with its unit, $m: a second one; $where: a place.

## What leads the sentence of a finding that holds under one coverage.

if-theirs = Against five who stay with their own:
if-chase = If they chase:
if-over = If they go over:
if-through = If they go through:
if-under = If they go under:
if-top-lock = If they top-lock:
if-switch = If they switch:
if-show = If they show:
if-drop = If the big drops:
if-ice = If they ice it:
if-blitz = If they trap:
if-tag = If they tag from the weak side:

## Screens

screen-late = { $a } arrives { $n } late: { $b } is already past.
screen-just = { $a } is set only { $n } before { $b } comes by.
screen-early = { $a } stands { $n } before { $b } comes by: the defence sees the screen.
cutter-early = { $b } runs before { $a }’s feet are down.
moving-screen = { $a } is still on the move as { $b } comes by: contact now is likely a moving screen; the referee decides.
loose-brush = { $b } leaves { $n } to { $a }: a defender fits between.
through-screener = { $b } runs through { $a }.
screen-angle = { $a } is { $n } off square: { $b }’s own defender slides by.
screen-spot = From here { $a } cannot block the way of { $b }’s own defender, however { $a } turns.
screen-left = { $a } leaves { $n } before { $b } is by.
screen-stays = { $a } stands { $n } after { $b } is by.
gate-late = The gate of { $all } is shut { $n } after the chaser comes: likely a moving screen; the referee decides.
gate-on-cutter = { $a } shuts the gate on { $b }.
handoff-far = { $a } and { $b } are { $n } apart, hand to hand: too far to hand off.
giver-moves = { $a }’s feet move in the hand-off: likely a moving screen; the referee decides.

## Passes

pass-before-open = { $a } passes { $n } before { $b } is past the screen.
pass-off-dribble = { $a } throws it off the dribble, still running at { $n }.
fast-catch = { $b } catches at { $n }: too fast to shoot.
not-looking = { $b } does not see the ball coming.
passer-turned = { $a } passes with the chest turned { $n } away from { $b }.
pass-through-body = The pass from { $a } to { $b } goes through { $c }.
long-pass = { $a } throws { $n } to { $b }: long enough for any defence to get there.
pass-through-board = The pass from { $a } to { $b } hits the board.

## Rules and clocks

three-seconds = { $a } is in the lane for { $n }: likely a three-second call; the referee decides.
near-three-seconds = { $a } is in the lane for { $n }: close to three seconds.
throw-in-late = The throw-in leaves { $a }’s hands after { $n }, and { $m } are allowed.
throw-in-tight = The throw-in leaves { $a }’s hands after { $n }. That is tight: { $m } are allowed.
shot-clock = The shot comes after { $n }, and the shot clock gives { $m }.
out-screening = { $a } screens with a foot on the line { $where }.
out-with-ball = { $a } has the ball with a foot on the line { $where }.
out = { $a } steps on the line { $where }.
backcourt = { $a } goes back over the half-court line with the ball.

## Spacing and rhythm

lane-crowd = { $all } are in the lane together for { $n }: their defenders are too.
long-set = The set takes { $n }: that is long.
holder-stands = { $a } stands with the ball for { $n }: a close defender makes that five seconds.
statue = { $a } has no part for { $n }, and no look.
collision-under-ring = { $a } and { $b } run into each other under the ring at { $m }. Danger: do not run it like this.
collision = { $a } and { $b } run into each other { $where } at { $m }.
crowding = { $a } and { $b } come within { $n } { $where }: one defender guards both.
corners-empty = Both corners are empty at the end.
side-not-emptied = { $b } is in the way of { $a }’s backdoor cut: help is already there.
no-safety = Nobody is back at the end.
one-side = The ball stays on one side for { $n }: the help need not move.
one-speed = { $a } comes off { $rest } no faster than to it: no change of pace.
marching = { $all } start in the same instant: nobody reads anybody.
side-loaded = { $all } are on one side for { $n }: so are their defenders.
parked = { $b } has parked in the way of { $a }’s drive: help is already there.

## Against five

closely-guarded = { $x } stays close to { $a } for { $n }: likely a call after { $m }; the referee decides.
nearly-closely-guarded = { $x } stays close to { $a } for { $n }, and { $m } are counted.
pass-stolen = { $x } has a hand on the pass from { $a } to { $b }.
lane-shut = { $x } can get a hand on the pass from { $a } to { $b }.
pass-too-soon = { $a } passes too soon: { $x } is { $n } from { $b } at the catch, and { $b } is open { $m } later.
tight-catch = { $b } catches with { $x } only { $n } away.
screen-too-close-moving = { $a } leaves { $x } { $n } to stop, and { $m } are due: likely a call; the referee decides.
screen-too-close = { $x } cannot see { $a }’s screen and has { $n } left, not { $m }: likely a call; the referee decides.
screen-contact = { $a } runs into { $x } at { $n } on the way: likely a moving screen; the referee decides.
runs-into = { $a } runs into { $x } { $where } at { $n }: contact that { $a } may answer for; the referee decides.
decoy-ignored = { $a } pulls nobody: { $x } is still there, { $n } away, as { $b } catches.
no-look = Every chance is contested: { $n } of room is the most, and { $a } has it.

## Reads; $read is the title.

read-never = “{ $read }” never comes up: no coverage that this set meets makes it true, and nobody told to do it is seen doing it.
read-not-played = “{ $read }” cannot be played: its instant never comes, the shot is gone by then, or its waits contradict each other.
read-worse = “{ $read }” makes it worse: { $a } is open { $n } in the end; without the read { $b } is open { $m }.
read-stolen = “{ $read }” makes it worse: a hand is on its pass, { $n } before the ball.

## For later

above-screens = A screen like { $a }’s is for later: under 12, a screen away is enough. The supervising coach decides.
above-chains = Screens that follow each other, as { $a }’s here, are for later. The supervising coach decides.
above-blind = { $a } sets a blind screen: for later. The supervising coach decides.
above-gates = { $a } sets a gate: for later. The supervising coach decides.
