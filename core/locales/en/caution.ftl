### What must be said wherever a set asks for it. The reasons are those of the rule books (FIBA Official
### Basketball Rules, Art. 33: cylinder and screening; NFHS Rule 4-40: first contact with a screen can
### be severe).

still = Screens are set still: feet planted, arms in, inside the own cylinder.
limbs = No hip, leg or arm in the runner’s way.
hard = Whoever runs into a screen may hit it hard. Walk it first.
blind = Blind screens leave a step of room, and the own side calls “screen”.
gate = A gate is shut and still before the chaser arrives, else it stays open.
cross = Two runners never cross under the ring.
land = Leave the shooter room to land.
lob = Lobs only over an empty rim.
u12 = Under 12: a screen away and a hand-off at a jog are enough. Leave the rest for later.
u14 = Under 14: ball screen, pin-down and flex. No blind screens and no gates.
coach = The supervising coach decides.
