### What is wrong with a file or a link. Words of the file itself are in English in every language.
## How a fault is told

line = line { $line }, column { $column }
more = { $n } more
meant = Did you mean { $word }?
and = { $first } and { $last }
then = { $first }; { $then }

## The file as a whole

file-is = the file is { $what }
a-group = a set is a group {"{"} {"}"} of named fields
no-version = the file does not say which version it is
begins = a set begins with "backcut": 1
newer = made by a newer Backcut: version { $version }
reads-version = this one reads version { $version }
bad-version = { $what } is no version
version-is = "backcut" is { $version }
name-twice = this name stands here for the second time
name-once = each name once in a group
too-large = the file is too large
most-kilobytes = at most 256 kB
empty = the file is empty
no-text = from here on the file is no readable text
save-utf8 = save it as UTF-8
list-shown = a list [ ]
group-shown = a group {"{"} {"}"}

## JSON

ends-here = the file ends here, after its last bracket
stops = the file stops in the middle
found = found { $what }
unseen = found a character that cannot be seen
put-comma = Put a comma before this.
straight-quotes = Use straight double quotes: "like this".
no-comments = There are no comments in JSON; use a field "x-note".
value-here = text in double quotes, a number, true, false, [ or {"{"} comes here
digit-here = a number goes on with a digit here
no-zero = a number does not begin with 0 and another digit
found-number = found the number { $digits }
too-large-number = no number in a set is that large
broken-text = a line break or tab within a text
one-line = a text stands on one line, from quote to quote
close-quotes = Close the quotes on the same line, or write \n.
text-ends = a text ends with a double quote
bad-backslash = a backslash with something that is no character
after-backslash = a backslash is followed by " \ / b f n r t or u and four digits
two-backslashes = For a backslash itself, write two.
too-deep = brackets within brackets, more than { $n } deep
too-many-fields = a group has more than { $n } fields
never-needed = a set never needs so many
comma-or-bracket = a comma or ] comes here
comma-or-brace = a comma or {"}"} comes here
last-comma = a comma with nothing after it
commas-between = commas stand between entries only
remove-comma = Remove this comma.
name-here = the name of a field in double quotes comes here
colon-here = a colon comes here, after the name of the field

## Fields

field-is = "{ $name }" is { $what }
has-no = { $what } has no "{ $name }"
has-no-field = { $what } has no field { $name }
fields = fields: { $names }; notes of your own: "x-…"
verb-has-no = a { $verb } has no "{ $name }"
belongs = "{ $name }" belongs to: { $verbs }
long-text = "{ $name }" has { $n } characters
at-most = at most { $n }
empty-list = "{ $name }" is empty
one-entry = at least one entry stands in it
entries = "{ $name }" has { $n } entries
no-player = there is no player { $name }
players-are = players are "1", "2", "3", "4" and "5"
least-two = a set has at least two
most-five = a set has at most five
kind-of = a kind of { $verb }
is-not = { $word } is not { $what }
is-one-of = { $what } is one of: { $words }
say-side = Say on which side: "left { $word }" or "right { $word }".
is-kind-of = { $word } is a kind of { $verb }.
write-kind = Write "do": "{ $verb }", "kind": { $word }.
sided = { $words }; with left or right before it: { $sided }

## What may stand in a field

flag = true or false
number = a number from { $from } to { $to }
seconds = a number of seconds from { $from } to { $to }
angle = radians: 0 looks at the ring, 1.57 to the offence's right
whole = a whole number from 1 to { $to }
player-number = a player's number from 1 to 5
defender = a defender, "X1" to "X5"
text = a text in double quotes
short-name = a short name in double quotes
quoted = { $what } in double quotes
point = {"["}x, y] in metres from the ring
group = { $what }, a group {"{"} {"}"}
or-list = { $what }, or a list of them
list = a list; each entry is { $what }
players = a group {"{"}"1": …, "2": …{"}"} of players by number

## Lists of words

court = a court
level = a level
verb = something a player can do
kind = a kind of this action
spot = a spot
pace = a pace
side = a side
off-side = a side of a screen
edge = an instant of an action
coverage = a coverage
deed = something a defender does
faked = something to fake
closed = a word for a lane

## Groups of the file

near-spot = a place near a spot
beside-mate = a place beside a team mate
use-of-screen = the use of a screen
screener-to-pass = a screener to pass
any-place = a place: a spot like "left wing", [x, y] in metres, or a place beside a team mate
beat-or-instant = the number of a beat, or an instant like {"{"}"id": "gate", "edge": "shut"{"}"}
place-or-player = a place like "left wing" or [x, y], or a player's number from 1 to 5
place-or-screener = a place like "left wing" or [x, y], or a screener to pass: {"{"}"off": 4{"}"}
screener = a screener's number, or {"{"}"who": 5, "side": "under"{"}"}
tie = a tie
tied-to = the id of an action, or {"{"}"id": …, "edge": …{"}"}
action = an action
beat = a beat
instant = an instant
deciding-coverage = the coverage that decides
deciding-deed = the deed that decides
deciding-distance = the distance that decides
deciding-lane = the lane that decides
condition = {"{"}"coverage": …{"}"}, {"{"}"who": "X3", "does": …{"}"}, {"{"}"who": "X3", "under": metres{"}"} or {"{"}"lane": "closed", "from": 1, "to": 3{"}"}
read = a read
player = a player
instruction = an instruction to a defender
defence = the defence
slow-stretch = a slow stretch
film-mark = a film mark
set = a set

## Ids

id-taken = the id { $id } is taken
id-once = each id names one action
no-ids = no action has an id yet
ids = ids: { $ids }
no-such-id = no action has the id { $id }

## Who, to whom, where

several-do-one = { $n } players do one { $verb }
one-each = only a screen, a hold and a fake are done by several as one; write one action for each player
twice-in-list = a player stands twice in this list
each-once = each player once
passes-to-self = { $own } passes to { $own }
hands-to-self = { $own } hands the ball to { $own }
screens-for-self = { $own } screens for { $own }
fakes-at-self = { $own } fakes at { $own }
own-screen = { $own } cannot use a screen of { $own }
name-mate = name a team mate
to-a-place = this goes to a place, not to a player
nobody-receives = nobody receives this pass
nobody-takes = nobody takes this hand-off
to-is-mate = "to" is the number of a team mate
catch-is-at = The place of the catch or the exchange is "at".
verb-needs-place = a { $verb } goes to a place, not to a player
place-forms = a spot, [x, y], or {"{"}"beside": 4, "side": "left"{"}"}
verb-lacks-to = a { $verb } has no "to"
to-is-end = "to" is where it ends: a spot like "left wing", or [x, y]
for-nobody = this screen is for nobody
for-is-mate = "for" is the number of a team mate
no-gate-alone = one player cannot be a gate
gate-of = { $n } players are a gate
two-screeners = two screeners, as a list: "who": [4, 5]
not-in-set = { $who } does not play in this set
players-here = players: { $players }
beside-self = { $who } cannot stand beside { $who }
beside = beside a team mate
off-court = this place is off the court
court-is = x from -{ $side } to { $side }, y from -{ $back } to { $half }, in metres from the ring
throw-in-spots = Who throws in stands at a spot: "left sideline throw-in", "right baseline throw-in".

## The ball

nobody-has-ball = nobody has the ball
one-has-it-written = one player has it: "ball": true
both-have-ball = { $a } and { $b } both have the ball
one-has-it = one player has it
passes = { $own } passes
dribbles = { $own } dribbles
shoots = { $own } shoots
hands-off = { $own } hands the ball off
fakes-with-ball = { $own } fakes with the ball
without-ball = { $does }, but { $holder } has the ball
only-holder = only the player with the ball can; what is written earlier happens first
after-shot = { $does } after the shot
shot-ends = the shot ends all possession; write it last

## Ties, reads, stretches, film

waits-for-itself = this action waits for itself
another-id = the id of another action
no-instant = this { $verb } has no "{ $edge }"
has-instants = it has: { $edges }
only-off = Only a cut "off" somebody passes a screen.
only-gate = Only a gate shuts.
no-screeners = no screener takes part in that action
screeners-there = screeners of that action: { $screeners }
no-screener = { $who } is no screener there
is-beat = "{ $name }" is beat { $n }
beats-are = beats are 1 to { $n }, the earlier one first
rate-zero = a rate of 0 would stand still
rate-is = a number above 0, at most 1
mark-not-later = this mark is not later than the one before
marks-in-order = marks in order of time

## Waits that contradict each other

circle = these waits go round in a circle, { $n } s short: { $waits }
take-out = take one of the ties out, or give it less lag
comes-after = { $mine } comes after { $theirs }
waits-for-ball = { $mine } waits for the ball from { $theirs }
waits-for-beat = { $mine } waits for its beat, which opens with { $theirs }
waits-for-feet = { $mine } waits for the feet of { $who }
stays-until = { $mine } stays until { $who } is by
meet-at-catch = { $mine } and { $theirs } meet at the catch
comes-with = { $mine } comes with { $theirs }
shuts-behind = { $mine } shuts behind { $theirs }
follows = { $mine } follows { $theirs }
meet-at-exchange = { $mine } and { $theirs } meet at the exchange
is-tied = { $mine } is tied to { $theirs }
whose = { $who }'s { $verb }
whose-screen = { $who }'s screen
the-start = the start

## Links

no-link = no set is in this link
link-has = a link to a set has #set= and letters behind it
copy-again = Copy it again, whole, from where it came.
link-version = this link is of a version that is not known here
link-begins = set=1. and letters behind it
newer-program = Copy it again, whole; if that does not help, it needs a newer program.
link-long = the link is too long
most-characters = at most { $n } characters
send-file = Send the set file instead.
link-letter = a letter that no link has: { $letter }
link-letters = letters of English, digits, - and _
link-damaged = the link is damaged: it was cut short or changed on its way
every-letter = every letter as it was made
link-large = the set is too large for a link
most-in-link = at most { $n } kB as a file, and { $characters }
link-asks = the link asks for { $what }
link-time = seconds, or from and until: t=3.4 or t=3.4,6
link-beat = a beat, counted from 1: beat=3
link-read = a read, counted from 1: read=2
link-follow = players from 1 to 5: follow=1,4
link-coverage = a coverage: coverage=switch
link-speed = times the real speed, up to 16: speed=0.5
link-paused = paused, or paused=false

## How many a set has

set-has = the set has { $count }
count-players = { $n ->
    [0] no player
    [one] one player
   *[other] { $n } players
}
count-actions = { $n ->
    [0] no action
    [one] one action
   *[other] { $n } actions
}

## What a page asks for

asks-for = the page asks for the { $what ->
    [court] court
    [level] level
    [coverage] coverage
   *[read] read
} “{ $name }”
reads-of-set = reads of the set, counted from 1
never-comes = its instant never comes
shot-is-gone = at its instant the shot is gone
