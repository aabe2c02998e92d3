### Numbers with their units, and lists.

metres = { $n } m
feet = { $n } ft
feet-and-inches = { $feet }′ { $inches }″
inches = { $inches }″
seconds = { $n } s
speed = { $n } m/s
speed-in-feet = { $n } ft/s
degrees = { $n }°
# With a point, which becomes the decimal mark.
half-metre = 0.5 m

# What stands between the last two of a list.
and = and
