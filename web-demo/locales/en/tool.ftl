### What the tool's tables and lists say beside what the core tells. Whoever reads by program asks for JSON.

## backcut check

clean = { $name }: clean. { $about }
no-faults = { $name }: no faults. { $about }
about = { $title }, { $beats ->
    [one] { $beats } beat
   *[other] { $beats } beats
}, { $actions ->
    [one] { $actions } action
   *[other] { $actions } actions
}.
note = note
warning = warning
violation = violation
part = … and this takes part
more = { $n } more

## backcut time

from = from
to = to
spare = time to spare
holds-up = holds it up
nobody-waits = nobody waits
what-holds-up = What holds it up
waits-for = , waits for { $what }
left-at = The line is left at { $t }
leaves-out = { $who } leaves something out
waits-no-longer = { $who } no longer waits for what is left out
reads = Reads
never = never

# What is done, where its kind has no name of its own; then to or for whom.
cut = cut
dribble = dribble
screen = screen
pass = pass
handoff = hand-off
shot = shot
hold = hold
fake = fake
to-player = { $what } to { $who }
for-player = { $what } for { $who }

## backcut looks

title-open = { $title }: seconds open
nobody = Nobody catches, drives or shoots.
catch = { $who } catch at { $t }
drive = { $who } drive at { $t }
finish = { $who } shot at { $t }
in-file = { $coverage } (file)
needs = A catch-and-shoot needs about { $s } s. * a hand can be in the passing lane.
likely = Likely, not certain: defenders choose.
which-read = Which read beats which coverage
asked = at { $t } { $title }: { $seen }
open = seconds open
in-the-end = In the end of each read's line. + the defence shows what it asks for, = a defender is told to.
