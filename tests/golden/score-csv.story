The score of one routine for a spreadsheet.

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
panel 2026-05-09 "Tarn Open"
  element 1: 7 7.25 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== run landdrill score ada.sheet --format csv
=== output
file,routine,panel,line,number,title,kind,option,weight,declared,credited,base_mark,mark,points,left,rests_on,recorded_credited,recorded_base_mark,recorded_mark,recorded_points,difference
ada.sheet,Ada,2026-05-09 Tarn Open,element,1,Heron,Figure,,,1.60,1.60,,7.00,,7.3846,expected,1.60,,7.00,,
ada.sheet,Ada,2026-05-09 Tarn Open,element,2,Otter,Figure,,,1.20,1.20,,7.00,,5.5385,expected,1.20,,7.00,,
ada.sheet,Ada,2026-05-09 Tarn Open,element,3,Reed,Figure,,,1.40,1.40,,7.00,,6.4615,expected,1.40,,6.9167,,
ada.sheet,Ada,2026-05-09 Tarn Open,element,4,Weir,Figure,,,2.30,2.30,,7.00,,10.6154,expected,2.30,,7.00,,
ada.sheet,Ada,2026-05-09 Tarn Open,elements together,,,,,,,,,,70.0000,,,,,,69.8205,-0.1795
ada.sheet,Ada,2026-05-09 Tarn Open,total,,,,,,6.50,6.50,,,70.0000,,,6.50,,,69.8205,-0.1795
=== exit 0
