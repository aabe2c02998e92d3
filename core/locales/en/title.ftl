### Levels and rule sets as people write them.

elite = elite
elite-women = elite women
adult = adult
high-school = high school
under-14 = under 14
under-12 = under 12
recreational = recreational

fiba = FIBA
nba = NBA
wnba = WNBA
ncaa-men = NCAA men
ncaa-women = NCAA women
nfhs = NFHS
