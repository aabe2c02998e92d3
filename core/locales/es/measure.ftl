### A space that does not break stands before the unit (ISO 80000-1, 7.1.4; the Ortografía of the
### Spanish academies, 2010).

metres = { $n }{"\u00A0"}m
feet = { $n }{"\u00A0"}pies
feet-and-inches = { $feet }′{"\u00A0"}{ $inches }″
inches = { $inches }″
seconds = { $n }{"\u00A0"}s
speed = { $n }{"\u00A0"}m/s
speed-in-feet = { $n }{"\u00A0"}pies/s
degrees = { $n }°
half-metre = 0.5{"\u00A0"}m

and = y
