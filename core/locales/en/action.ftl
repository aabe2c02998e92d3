### One action as a sentence. Parts that are empty take the space before them along.

# $count: how many players $who are.
said = { $who } { $what }

## Cuts and dribbles: what they do, off whom, where to.

# $off: one of the four below; $to: a form of a spot.
way = { $verb } { $off } { $to }
makes = makes { $what }
# $count: how many players $screeners are.
off = off { $screeners }
between = between { $screeners }
round-left = round the left of { $screeners }
round-right = round the right of { $screeners }
waits-for-feet = { $who } waits for { $screener }’s feet, then { $rest }
waits-for-gate = { $who } waits for { $screeners } to stand, then { $rest }
beside = beside { $who }
on-the-run = on the run

drives = drives
dribbles = dribbles
walks = walks
jogs = jogs
sprints = sprints
cuts = cuts
goes-backdoor = goes backdoor
zips-up = zips up
pops-out = pops out
curls = curls
fades = fades
turns-it-down = turns the screen down and goes
slips = slips
flashes = flashes
fills = fills
lifts = lifts
drifts = drifts
loops = loops
clears-out = clears out
rolls = rolls
rolls-short = rolls short
pops = pops
dives = dives
ducks-in = ducks in
seals = seals
follows = follows the pass
dribbles-over = dribbles over
pushes = pushes the ball
drives-hard = drives hard
backs-out = backs the dribble out
hesitates = hesitates, then drives
crosses-over = crosses over and drives
snakes = snakes the dribble
keeps-behind = keeps the defender behind and dribbles

## Screens

# $count: how many players $who are.
sets = { $who } { $count ->
    [one] sets
   *[other] set
} { $what } { $for } { $where }
for = for { $whom }
screen = screen
    .a = a { screen }

## Passes and hand-offs

pass-to = { $who } { $verb } { $whom } { $where }
passes = passes to
throws = throws { $what } to
bounces = bounces it to
skips = skips it to
lobs = lobs it to
kicks-out = kicks it out to
swings = swings it to
throws-in = throws in to
leads = leads
shovels = shovels it to
pitches = pitches it to
hands-off = { $who } hands off to { $whom } { $where }
keeps = { $who } fakes the hand-off to { $whom } and keeps it

## Shots

shoots = shoots
catches-and-shoots = catches and shoots
shoots-off-screen = shoots off the screen
pulls-up = pulls up
floats = floats it up
lays-up = takes the layup

## Holds and fakes, by how many do it

plants-feet = { $count ->
    [one] plants both feet
   *[other] plant both feet
}
pivots = { $count ->
    [one] pivots
   *[other] pivot
}
screens-out = { $count ->
    [one] screens out
   *[other] screen out
}
stays = { $count ->
    [one] stays
   *[other] stay
}
jabs = { $count ->
    [one] jabs
   *[other] jab
}
fakes-shot = { $count ->
    [one] fakes a shot
   *[other] fake a shot
}
fakes-cut = { $count ->
    [one] fakes a cut
   *[other] fake a cut
}
fakes-screen = { $count ->
    [one] fakes a screen
   *[other] fake a screen
}
fakes-drive = { $count ->
    [one] fakes a drive
   *[other] fake a drive
}
fakes-handoff = { $count ->
    [one] fakes a hand-off
   *[other] fake a hand-off
}
fakes-pass = { $count ->
    [one] fakes a pass
   *[other] fake a pass
}
to-whom = to { $whom }
