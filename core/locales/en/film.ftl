### The user's own film, compared with the set at a mark. “Ours” is what was filmed.

here = { $verdict }.
when = { $verdict }: { $event }.

first = Both are counted from here
on-time = Ours was on time here
late = Ours was { $n } s late here
early = Ours was { $n } s early here

backwards = Not tied: between this mark and another the film would run backwards. Move the film, or remove the other mark.
out-of-range = Not tied: a set can be marked up to a minute, a film up to a day.
full = Not tied: a set has room for 50 marks.
