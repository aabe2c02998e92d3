### From memory: categories as clubs in FIBA countries name them.

elite = élite
elite-women = élite femenina
adult = sénior
high-school = instituto
under-14 = sub-14
under-12 = sub-12
recreational = de ocio

fiba = FIBA
nba = NBA
wnba = WNBA
ncaa-men = NCAA masculina
ncaa-women = NCAA femenina
nfhs = NFHS
