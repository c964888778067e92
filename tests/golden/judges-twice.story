A sheet that is named twice, or that is kept in an old copy too: the same panel counts once, and another wording of it is said.

=== file low-water.sheet
routine  "Low Water"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50

panel 2026-05-09 "Tarn Open"
  element 1: 7.50 7.75 7.50 7.75 7.50
=== run landdrill judges low-water.sheet low-water.sheet | grep 'elements*,'
=== output
Execution: 1 element, 5 judges
=== errors
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water came before in the same words; it is counted once
=== exit 0
=== run sed 's/7.75 7.50$/7.75 7.25/' low-water.sheet > old.sheet; landdrill judges low-water.sheet old.sheet | grep 'elements*,'
=== output
Execution: 2 elements, 5 judges
=== errors
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water came before with something else in it; both are counted
=== exit 0
