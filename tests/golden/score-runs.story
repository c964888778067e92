Four ways to rest the estimate on run-throughs, and a day on which there was none.

=== copy examples/harbour-lights.sheet
=== run landdrill score harbour-lights.sheet --brief --runs latest
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      237.2000    209.7167    -27.4833
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --runs mean
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      235.7750    209.7167    -26.0583
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --runs none
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      237.8625    209.7167    -28.1458
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --runs 2026-04-14
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     18.85      203.9000    209.7167     +5.8167
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --runs 2026-04-15
=== errors
landdrill score: found --runs 2026-04-15; expected latest, mean, none, or the date of a run in the sheet
  hint: the nearest are 2026-04-14, 2026-05-07
=== exit 2
=== run landdrill score harbour-lights.sheet --brief --runs lastest
=== errors
landdrill score: found --runs lastest; expected latest, mean, none, or the date of a run in the sheet
  hint: the nearest is latest
=== exit 2
