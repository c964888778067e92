The coach types as it comes; tidy writes it out neatly and keeps her comments. Nothing is changed until she says so, and
then the file keeps its permissions.

=== file ada.sheet
ROUTINE   “Ada”   # free
event figure-evening



values    kingfisher-2026
element 1 figure
parts fig-heron # once
    expect 7,25
=== run landdrill tidy ada.sheet
=== output
routine "Ada"  # free
event    figure-evening

values   kingfisher-2026
element 1 figure
  parts  fig-heron  # once
  expect 7.25
=== exit 0
=== run landdrill tidy --check ada.sheet
=== output
ada.sheet
=== exit 1
=== run chmod 640 ada.sheet; landdrill tidy --write ada.sheet; stat -c %a ada.sheet; cat ada.sheet
=== output
ada.sheet: tidied
640
routine "Ada"  # free
event    figure-evening

values   kingfisher-2026
element 1 figure
  parts  fig-heron  # once
  expect 7.25
=== exit 0
=== run landdrill tidy --check ada.sheet
=== exit 0
=== run landdrill tidy --write ada.sheet
=== exit 0
=== run landdrill tidy - < ada.sheet | cmp - ada.sheet
=== exit 0
