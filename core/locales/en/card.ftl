### Role cards: said to the player, as one tells somebody what to do. Parts that are empty take the
### space before them along.

cards = Role cards
title = { $who }: { $parts }
begin = Start { $where }.
begin-with-ball = Start { $where }, with the ball.

## What a player is in a set

shooter = shooter
decoy = decoy
screener = screener
passer = passer
cutter = cutter
spacer = spacer

## What to do; a full stop or a further deed follows

set = set { $what } { $for } { $where }
set-with = with { $others }, set { $what } { $for } { $where }
pass = { $verb } { $whom } { $where }
hand-off = hand off to { $whom } { $where }
keep = fake the hand-off to { $whom } and keep it
come = come for { $whom }’s hand-off
catch = catch { $whom }’s pass { $where }
take = take the ball from { $whom }
hold-place = hold your place { $where }
make = make { $what }
throw = throw { $what } to
then = { $first }, then { $next }

drive = drive
dribble = dribble
walk = walk
jog = jog
sprint = sprint
cut = cut
go-backdoor = go backdoor
zip-up = zip up
pop-out = pop out
curl = curl
fade = fade
turn-it-down = turn the screen down and go
slip = slip
flash = flash
fill = fill
lift = lift
drift = drift
loop = loop
clear-out = clear out
roll = roll
roll-short = roll short
pop = pop
dive = dive
duck-in = duck in
seal = seal
follow = follow your pass
dribble-over = dribble over
push = push the ball
drive-hard = drive hard
back-out = back the dribble out
hesitate = hesitate, then drive
cross-over = cross over and drive
snake = snake the dribble
keep-behind = keep the defender behind and dribble

pass-to = pass to
bounce = bounce it to
skip = skip it to
lob = lob it to
kick-out = kick it out to
swing = swing it to
throw-in = throw in to
lead = lead
shovel = shovel it to
pitch = pitch it to

shoot = shoot
catch-and-shoot = shoot straight from the catch
shoot-off-screen = shoot off the screen
pull-up = pull up
float = float it up
lay-up = take the layup

stay = stay
plant-feet = plant both feet
pivot = pivot
screen-out = screen out
jab = jab
fake-shot = fake a shot
fake-cut = fake a cut
fake-screen = fake a screen
fake-drive = fake a drive
fake-handoff = fake a hand-off
fake-pass = fake a pass

## What to wait for. $when: one of as, once, before, after; $event: an event after “that”

wait-until = Wait until { $event }.
stay-until = Stay until { $event }.
go-when = Go { $when }.
plant-when = Plant { $when }.
come-up-when = Come up to the screen { $when }.
go-by-when = Go by { $when }.
be-set-when = Be set { $when }.
shut-when = Shut it { $when }.
let-go-when = Let it go { $when }.
there-when = The ball is there { $when }.
done-when = Be done { $when }.
meet = The ball and { $who } get there together.
give = Let it go as { $who } comes by.
as = as { $event }
once = once { $event }
before = { $time } before { $event }
after = { $time } after { $event }
you = you

## Events, as whoever waits for them sees them; $count: how many players $who are

has-left = { $who } { $count ->
    [one] has
   *[other] have
} left
is-still = { $who } { $count ->
    [one] is
   *[other] are
} still
is-past = { $who } { $count ->
    [one] is
   *[other] are
} past { $other }
is-through = { $who } { $count ->
    [one] is
   *[other] are
} through
is-there = { $who } { $count ->
    [one] is
   *[other] are
} { $where }
pass-is-gone = { $who }’s pass is on its way
shot-is-up = { $who }’s shot is up

## Where the eyes go

at-ball = Eyes: the ball.
at-ring = Eyes: the ring.
at-mate = Eyes: { $who }.
at-defender = Eyes: X{ $who }.
at-own-defender = Eyes: X{ $who }, your defender.

## What it is good for; $me: the player’s own number

frees = { $who } comes by at { $time }.
sell = Everybody must believe it: while they look at you, the ball goes to { $to }.
sell-fake = Make them believe it: the ball goes to { $to }.
threat = Run it as if the ball was yours: X{ $me } must go with you, and that gives { $to } room.
makes-room = You take X{ $me } along: { $who } comes through at { $time }.
corner = Hold the corner: X{ $me } must stay with you and cannot help.
safety = You are the one who is back. Stay there until the shot is up, and after.
board = Be ready for the rebound.
wide = Stay wide, hands ready: X{ $me } cannot help without leaving you.

## Reads

call = If { $if }: { $do }.
see = see it and say it
