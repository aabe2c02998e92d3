### Reads: what decides them, what was seen, which line answers which coverage.
###
### $x: a defender; $man: the own man; $n: a number with its unit, $m: a second one.

# One read within another.
then = { $a }, then { $b }

## What decides a read, to follow an "if".

they-chase = they chase
they-over = they go over
they-through = they go through
they-under = they go under
they-top-lock = they top-lock
they-switch = they switch
they-show = they show
they-drop = the big drops
they-ice = they ice it
they-blitz = they trap
they-tag = they tag from the weak side
trails = { $x } trails
goes-round = { $x } goes round
goes-round-left = { $x } goes round on the left
goes-round-right = { $x } goes round on the right
shoots-the-gap = { $x } shoots the gap
top-locks = { $x } top-locks
switches = { $x } switches
steps-out = { $x } steps out
sags = { $x } sags
looks-away = { $x } looks away
stays-low = { $x } stays on the low side
within = { $x } is within { $n }
pass-shut = the pass from { $a } to { $b } is shut

## What was seen

nothing = Nothing shows yet.
plays = They play { $coverage }.
behind = { $x } is { $n } behind { $man }.
in-front = { $x } is { $n } in front of { $man }.
to-the-left = { $x } heads { $n } to the left of { $man }’s way.
to-the-right = { $x } heads { $n } to the right of { $man }’s way.
nearer = { $x } is { $n } nearer than { $man } to where { $man } comes out.
farther = { $x } is { $n } farther than { $man } from where { $man } comes out.
between = { $x } stands { $n } from { $man } toward the screen, { $m } off the line.
not-between = { $x } does not stand between { $man } and the screen.
still-on = { $x } is still on { $man }.
has-taken = { $x } has taken { $man }.
away = { $x } is { $n } from { $man }.
lower = { $x } is { $n } nearer than { $man } to the baseline.
higher = { $x } is { $n } farther than { $man } from the baseline.
turned = { $x } looks { $n } away from { $man }.
lane-free = No hand can reach a pass from { $a } to { $b }.
lane-open = A pass from { $a } to { $b } is { $n } ahead of { $x }’s hand.
lane-shut = { $x }’s hand is { $n } ahead of a pass from { $a } to { $b }.

## What it comes to

# $if is "If they chase:", $line the title of a read, $end one of the next three.
answer = { $if } { $line }. { $end }
end = { $look }, { $open }.
end-shut = { $look }, { $open }; a hand can get to a pass on the way.
no-end = No look.
