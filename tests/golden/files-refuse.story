Files that cannot be read: not there, a folder, not allowed. All of them are named, and nothing is scored.

=== file ada.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill score ada.sheet nowhere.sheet . also-nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
landdrill: .: this is a folder, not a sheet
  hint: name the files in it: ./*.sheet
landdrill: also-nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill check nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill tidy .
=== errors
landdrill: .: this is a folder, not a sheet
  hint: name the files in it: ./*.sheet
=== exit 3
=== run landdrill explain nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run cp ada.sheet closed.sheet; chmod 000 closed.sheet; $ORDINARY landdrill score closed.sheet
=== errors
landdrill: closed.sheet: you are not allowed to read it
=== exit 3
=== run landdrill values missing nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill values compare kingfisher-2026 kingfisher-2026 nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
