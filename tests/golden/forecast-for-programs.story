A forecast for a spreadsheet, with options; on a finer grid; with the set from elsewhere.

=== copy examples/harbour-lights.sheet
=== run landdrill forecast harbour-lights.sheet --option 2=safer --runs none --target 220 --format csv | cut -d , -f 1-6,9-13
=== output
what,line,mark,spread,spread_from,base_chance,q05,q25,q50,q75,q95
element,1 Lantern,7.5,0.235,panels,,16.2917,16.8667,17.25,17.6333,18.2083
element,2 Undertow,7.75,0.235,panels,3,19.575,20.475,20.925,21.375,22.05
element,3 Weathervane,7.5,0.235,panels,5,4.5,24.2,24.75,25.3,26.125
element,4 Anchor chain,7,0.235,panels,8,3.5417,25.65,26.6,27.2333,27.8667
element,5 Slack Water,7.75,0.235,panels,2,19.8,20.475,20.925,21.375,22.05
element,6 Beacon,6.75,0.45,sheet,20,3.2917,25.9667,27.3333,28.3583,29.3833
element,7 Mooring,7.75,0.235,panels,1,15.7667,16.3042,16.6625,17.0208,17.5583
impression,Choreography and music,7.5,0.188,panels,,28.6667,29.3333,30,30.6667,31.3333
impression,Performance,7.75,0.188,panels,,22.25,22.75,23.25,23.75,24.25
impression,Transitions,7.25,0.188,panels,,20.75,21.25,21.75,22.25,22.75
sync,Sync errors,,,,,-1.3,-0.8,-0.5,-0.2,-0.1
penalties,Penalties,,,,,-1,0,0,0,0
total,,,,,,194.845833,209.4125,224.654167,231.0625,238.245833
reach,220,,,,,,,,,
=== exit 0
=== run landdrill forecast harbour-lights.sheet --format json --within 0.005 | grep -E '"(grid|bound)": "'
=== output
    "grid": "0.004167",
    "bound": "0.000273",
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other && landdrill forecast harbour-lights.sheet --values sets --set other --colour never | grep -v '^Values from' | cmp <(landdrill forecast harbour-lights.sheet | grep -v '^Values from') -
=== output
kingfisher-2026 is written into sets/other. In a sheet beside it, the line is
  values other
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season && landdrill forecast harbour-lights.sheet --season club.season | grep -v '^Values from' | cmp <(landdrill forecast harbour-lights.sheet | grep -v '^Values from') -
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
