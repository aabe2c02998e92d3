### The words of the element in English, in Project Fluent's syntax. A name between braces is put in as
### it is given; NUMBER writes it as the reader's country does. `.ci/words.mjs` makes modules of them.

## Playing

play = Play
pause = Pause
again = Again
next-beat = Next beat
previous-beat = Previous beat
next-frame = Next frame
previous-frame = Previous frame
beat = Beat
frame = Frame
slow = Slow
half = Half
half-speed = Half speed
other-speed = Speed × { NUMBER($rate, minimumFractionDigits: 2, maximumFractionDigits: 2) }
game-speed = Game speed
speed = Speed

## The reader

loading = Loading the set
captions = Captions
full-screen = Full screen
close = Close
more = More
less = Less
all-rows = all rows
court = Court
enlarge = Close-up: show large
reduce = Close-up: show the whole court
time = Time
beat-of = beat { $beat } of { $beats }
beat-told = Beat { $beat } of { $beats }, { $title }. { $caption }
beat-pictured = Beat { $beat }, { $title }: { $caption }
marks = Marks along the lines are 1 m.
bodies = Marks along the lines are 1 m. Bodies × { NUMBER($scale, minimumFractionDigits: 1, maximumFractionDigits: 1) }.
key = Key of marks: { $marks }
seconds = { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } s
instant = { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) } s
where = { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } seconds of { NUMBER($duration, minimumFractionDigits: 1, maximumFractionDigits: 1) }, beat { $beat }: { $title }

## Where there is no set

no-set = This set cannot be shown
more-faults = { $count } more
open-file = Open the set file
fault-in-line = Line { $line }: { $fault }
file-wrong = The file is wrong.
no-start = The player could not start.
no-file = The page names no set file.
no-answer = The set file did not come.
refused = The set file did not come: { $status }.

## Whom to follow

follow = Follow
all = all
follow-all = Follow all
follow-everybody = Follow all
follow-player = Follow { $player }
follow-several = Follow some
# Switch: a press on a player adds that one.
several = several

## Against a defence

defence = Defence
defence-none = Defence none
defence-as = Defence { $coverage }
notes = Notes
holds-up = What holds it up
timing = In ink: what holds it up. Dots after it: time to spare.
nothing-found = Nothing to note.
likely = Computed, so likely, never certain: the referee decides what is called, the supervising coach what is run.
note = Note:
warning = Warning:
violation = Violation:
show-instant = Show { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } s
against-all = Against every defence: seconds open
open-against-all = Seconds open against every defence
open = { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) }
open-told = { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) ->
    [one] { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) } second: { $look }
   *[other] { NUMBER($seconds, minimumFractionDigits: 1, maximumFractionDigits: 1) } seconds: { $look }
  }
hand = hand
answered-by = Answered by
classes = From the instant of each look until a defender can contest it. “Hand” stands where a hand can get to the pass. Tight to wide open: by distance, in the classes of the NBA’s public shot dashboards.

## Keys

keys = Keys
keys-act = They act while the focus is in this set.
characters-act = Letters, digits and marks act too
play-or-pause = Play or pause
second-back = 1 second back
second-on = 1 second on
second-back-in-strip = 1 second back, in the strip
second-on-in-strip = 1 second on, in the strip
frame-back = 1 frame back
frame-on = 1 frame on
beat-back = Beat back
to-start = To the start
to-end = To the end
slower = Slower
faster = Faster
follow-again = Follow that player too; again: no longer
this-list = This list
space-key = Space
left-key = Left
right-key = Right
up-key = Up
down-key = Down
page-up-key = Page Up
page-down-key = Page Down
home-key = Home
end-key = End
enter-key = Enter
escape-key = Esc
shift-key = Shift
handle-earlier = Handle { NUMBER($by, minimumFractionDigits: 1, maximumFractionDigits: 1) } s earlier
handle-later = Handle { NUMBER($by, minimumFractionDigits: 1, maximumFractionDigits: 1) } s later
handle-earliest = Handle to the start
handle-latest = Handle to the end
press-or-answer = Now, or answer
move-cross = Move the cross, or the instant
move-cross-far = Move the cross 1 m

## Sharing

share = Share
sharing-failed = What sharing needs did not come. Try again later.
send = Send
copy-link = Copy link
copy-link-at = Copy link at { NUMBER($time, minimumFractionDigits: 1, maximumFractionDigits: 1) } s
copy-frame = Copy frame
copy-tag = Copy tag
copy-file = Copy set file
qr-code = QR code
download = Download set
to-copy = To copy
copied = { $what ->
    [link] The link is copied.
    [frame] The frame is copied.
    [tag] The tag is copied.
   *[file] The set file is copied.
  }
copy-by-hand = { $what ->
    [link] The browser lets nothing be copied here. Copy the link by hand:
    [frame] The browser lets nothing be copied here. Copy the frame by hand:
    [tag] The browser lets nothing be copied here. Copy the tag by hand:
   *[file] The browser lets nothing be copied here. Copy the set file by hand:
  }
opens-set = Opens the set.
opens-page = Opens this page: the set itself is too long for a phone to read.
qr-of-set = QR code that opens the set
qr-of-page = QR code that opens this page
too-long-for-qr = The set is too long for a QR code.
too-long-for-link = The set is too long for a link. Share its file.
frame-title = { $title }, a set play

## Teaching

what-if = What if
what-if-read = What if: { $read }
as-drawn = What if: as drawn
as-defended = What if: as the defence plays
teach = Teach
teaching-failed = What this needs did not come. Try again later.
roles = Roles
role-cards = Role cards
print = Print
cards-of = Cards of
card-of = Card of { $player }

## A film of the reader's own

film = Film
pick-film = Pick a film
another-film = Another film
picture-in-picture = Picture in picture
side-by-side = Side by side
sound = Sound
film-alone = Move the film alone
mark-this = Mark this
film-frame-back = Film: previous frame
film-frame-on = Film: next frame
film-time = { NUMBER($film, minimumFractionDigits: 2, maximumFractionDigits: 2) } of { NUMBER($length, minimumFractionDigits: 1, maximumFractionDigits: 1) } s
film-at = Film { NUMBER($film, minimumFractionDigits: 2, maximumFractionDigits: 2) } s
film-stays = The film stays on this device. Nothing is uploaded.
film-apart = The set stands at { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) } s. Bring the film to the same instant, then mark it.
film-tied = { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) } s of the set is { NUMBER($film, minimumFractionDigits: 2, maximumFractionDigits: 2) } s of the film.
film-of-drawn = From { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) } s on this is a read; the film shows the set as drawn.
tie-as-drawn = Marks tie the film to the set as drawn. Choose that under What if first.
film-untied = Not tied yet: the film starts with the set. Move the film alone to an instant you know, and mark it.
film-ended = The film ends here. Play goes on with the set alone.
film-unplayable = The browser cannot play this film. MP4 and WebM are the surest.
film-absent = The film of this page did not come, or the browser cannot play it.
film-refused = This page’s policy keeps out films of your own. Whoever runs it can allow them: media-src has to name the scheme blob.
remove = Remove
remove-mark = Remove { NUMBER($time, minimumFractionDigits: 2, maximumFractionDigits: 2) } s
copy-marked = Copy set file with the marks
marks-copied = The set file is copied, with the marks in it.
marks-by-hand = The browser lets nothing be copied here. Copy the set file by hand:
marked-file = Set file

## Quiz

quiz = Quiz
end-quiz = End the quiz
question-of = Question { $question } of { $questions }
points = { $points ->
    [one] { $points } point
   *[other] { $points } points
  }
points-so-far = { $points ->
    [one] { $points } point, best { $best }
   *[other] { $points } points, best { $best }
  }
answer-place = Tap the place on the court. Or move the cross with the arrow keys, a metre with Shift, and press Enter.
answer-instant = Press Play and watch. Then press Now, tap the court or press Space at the right instant.
answer-still = Move the slider to the right instant and press Answer. Arrow keys move it too.
answer-choice = Choose, then press Answer.
now = Now
answer = Answer
next-question = Next question
see-sum = See the sum
see-again = See it again
next-picture = Next picture
sum-of = { $points } of { $most } points
best-kept = Your best of this set: { $points } points. Kept on this device only.
best-yet = Your best of this set so far. Kept on this device only.
not-kept = This page may not keep results on this device.
another-round = Another round
forget-results = Forget my results
forgotten = Forgotten.
nothing-to-ask = There is nothing to ask about this set.
choose-defence = Choose a defence before the quiz, and it asks about the defenders too.

## A walk through the set, and a stretch of it over and over

walk-through = Walk-through
# Button: plays to the next stop.
go-on = Go on
again-from-start = Again
to-last-stop = Back
leave-walk = Leave
slow-stretches = Slow stretches
# $n: which stop; $all: how many there are.
stop-of = { $n } of { $all }
walked-through = That was all of it.
loop = Loop
loop-from = Start here
loop-to = End here
loop-beat = This beat
loop-clear = Clear
loop-starts = Start of the loop
loop-ends = End of the loop
looped = Over and over from { NUMBER($from, minimumFractionDigits: 1, maximumFractionDigits: 1) } to { NUMBER($to, minimumFractionDigits: 1, maximumFractionDigits: 1) } seconds.
# Where nothing moves by itself: frames, and the button below, go on from the end to the start.
stepped-round = Steps go round from { NUMBER($from, minimumFractionDigits: 1, maximumFractionDigits: 1) } to { NUMBER($to, minimumFractionDigits: 1, maximumFractionDigits: 1) } seconds.
picture-on = Half a second on
nothing-looped = Nothing is looped.
at-seconds = { NUMBER($t, minimumFractionDigits: 1, maximumFractionDigits: 1) } seconds
