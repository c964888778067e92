Options side by side for other programs: a spreadsheet and JSON, with every number in full; the set from elsewhere.

=== file solo.sheet
routine "Ripple"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
  expect 7.5
  slip   4%
  option "with a full spin"
    parts  thrust-mid, spin-360, split-hold
    expect 7
    slip   15%
impression choreography 7, performance 7, transitions 7
=== run landdrill compare solo.sheet --format csv --spreads set | grep -v 'gain at'
=== output
element,what,option,against,cause,step,part,times,difficulty,base_difficulty,mark,chance,chance_from,points_declared,points_base,points,scatter,total,easier_part,easier_points,harder_part,harder_points,breaks
1 Eddy,option,as written,,,,,,2.00,0.5,7.5,4,slip,15,3.75,14.5500,2.2645,84.5500,,,,,
1 Eddy,part,as written,,,,thrust-mid,1,0.6,,,,,,,-4.32,,,thrust-one-leg,-0.7200,thrust-flick,1.4400,
1 Eddy,part,as written,,,,spin-180,1,0.6,,,,,,,-4.32,,,,,spin-up-180,1.4400,
1 Eddy,part,as written,,,,split-hold,1,0.5,,,,,,,-3.6,,,arch-hold,-0.7200,split-open,0.7200,
1 Eddy,option,with a full spin,,,,,,2.40,0.5,7,15,slip,16.8,3.5,14.8050,4.785,84.8050,,,,,
1 Eddy,part,with a full spin,,,,thrust-mid,1,0.6,,,,,,,-3.57,,,thrust-one-leg,-0.5950,thrust-flick,1.1900,
1 Eddy,part,with a full spin,,,,spin-360,1,1,,,,,,,-5.95,,,spin-bent,-0.5950,spin-open,1.1900,
1 Eddy,part,with a full spin,,,,split-hold,1,0.5,,,,,,,-2.975,,,arch-hold,-0.5950,split-open,0.5950,
1 Eddy,step,with a full spin,as written,part,without spin-180,,,,,,,,,,-4.3200,,,,,,,
1 Eddy,step,with a full spin,as written,part,with spin-360,,,,,,,,,,7.2000,,,,,,,
1 Eddy,step,with a full spin,as written,execution,mark 7.50 -> 7.00,,,,,,,,,,-1.1620,,,,,,,
1 Eddy,step,with a full spin,as written,base mark,base chance 4 % -> 15 %,,,,,,,,,,-1.4630,,,,,,,
1 Eddy,gain,with a full spin,as written,,,,,,,,,,,,0.2550,,,,,,,
1 Eddy,lowest mark,with a full spin,as written,,,,,,,7,,,,,,,,,,,,
1 Eddy,even mark,with a full spin,as written,,,,,,,6.879433,,,,,,,,,,,,
1 Eddy,highest chance,with a full spin,as written,,,,,,,,16.91,,,,,,,,,,,
=== exit 0
=== run landdrill compare solo.sheet --format json | grep -A 6 '"options"'
=== output
      "options": [
        {
          "option": "as written",
          "mark": "7.5",
          "declared": "2.00",
          "points_declared": "15",
          "base_chance": "4",
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other && landdrill compare solo.sheet --values sets --set other --colour never | grep -v '^Values from' | cmp <(landdrill compare solo.sheet --colour never | grep -v '^Values from') -
=== output
kingfisher-2026 is written into sets/other. In a sheet beside it, the line is
  values other
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season && landdrill compare solo.sheet --season club.season | grep -v '^Values from' | cmp <(landdrill compare solo.sheet | grep -v '^Values from') -
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
=== run landdrill compare solo.sheet --colour always | grep -c $'\e'
=== output
7
=== exit 0
