### An instant in words, for who cannot see the picture.

# $title: a comma and the beat's name, or nothing.
instant = { $t } seconds of { $all }, beat { $n }{ $title }:
has-ball = { $who } has the ball { $where }
in-the-air = the ball is in the air
comes = { $who } comes for the ball
# A number follows these two.
beat = Beat
read = What if
# The line of a set that no read leaves.
as-drawn = as drawn

runs = { $who } runs { $to }
dribbles = { $who } dribbles { $to }
screens = { $who } screens { $for }
passes = { $who } passes { $for }
hands-off = { $who } hands off { $for }
shoots = { $who } shoots
stays = { $who } stays
fakes = { $who } fakes
