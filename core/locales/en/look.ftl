### Chances, and how the defence plays.

open = open { $n } s
contested = contested
look-open = { $look } with X{ $defender } { $far } away: { $class }, for { $n } s.
look-contested = { $look } with X{ $defender } { $far } away: { $class }, and contested.
look-alone = { $look } with nobody near.
guarded = X{ $defender } is { $far } from the ball.
in-reach = A hand can get to the pass.

catches = { $who } catches
gets-there = { $who } gets to the ring
shoots = { $who } shoots

## Classes of a separation

very-tight = very tight
tight = tight
open-class = open
wide-open = wide open

## Coverages

chase = chase
over = over
through = through
under = under
top-lock = top-lock
switch = switch
show = show
drop = drop
ice = ice
blitz = blitz
weak-side-tag = weak-side tag
