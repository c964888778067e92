Which recorded panel stands beside the estimate: by its title, by its date, none; and one that is not there.

=== copy examples/harbour-lights.sheet
=== run landdrill score harbour-lights.sheet --brief --panel 'tarn open'
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      237.2000    209.7167    -27.4833
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --panel 2026-05-09
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      237.2000    209.7167    -27.4833
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --panel none
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      237.2000
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --panel 'Tarn Opn'
=== errors
landdrill score: found --panel "Tarn Opn"; expected the title or date of a panel in the sheet, or none
  hint: the nearest is Tarn Open
=== exit 2
