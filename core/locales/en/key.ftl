### The key of marks.

cut = cut
pass = pass
dribble = dribble
screen = screen
handoff = hand-off
shot = shot
waits = waits
