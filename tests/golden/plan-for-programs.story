A plan for other programs, with how it comes about; with the set from elsewhere.

=== copy examples/harbour-lights.sheet
=== run landdrill plan harbour-lights.sheet --format csv --runs none --option 2=safer | grep -vE '^element,[2-6]'
=== output
what,rank,number,title,option,total,quantile,chance,seconds,behind,by,least,most,used,one_more,one_less
programme,1,,,,229.918375,218.75,,150,,,,,,,
element,1,1,Lantern,as written,,,,,,,,,,,
element,1,2,Undertow,as written,,,,,,,,,,,
element,1,3,Weathervane,as written,,,,,,,,,,,
element,1,4,Anchor chain,as written,,,,,,,,,,,
element,1,5,Slack Water,as written,,,,,,,,,,,
element,1,6,Beacon,long way down,,,,,,,,,,,
element,1,7,Mooring,as written,,,,,,,,,,,
programme,2,,,,225.923375,214.083333,,150,3.9950,,,,,,
programme,3,,,,224.546625,214.6,,150,5.3718,,,,,,
programme,4,,,,224.376875,217.3875,,150,5.5415,,,,,,
programme,5,,,,222.146375,213.2875,,150,7.7720,,,,,,
programme,6,,,,220.381875,209.416667,,150,9.5365,,,,,,
as written,,,,,220.381875,209.416667,,150,9.5365,,,,,,
limit,,,duet-free: 4 to 5 hybrid elements,,,,,,,quotas.csv line 9,4,5,5,0,0
limit,,,duet-free: at least 1 hybrid element with a part of thrusts,,,,,,,quotas.csv line 10,1,,2,,0
limit,,,duet-free: at least 1 hybrid element with a part of spins,,,,,,,quotas.csv line 11,1,,4,,0
limit,,,duet-free: 1 to 3 hybrid elements with a part of connections,,,,,,,quotas.csv line 12,1,3,2,0,0
limit,,,duet-free: 1 to 2 lift elements,,,,,,,quotas.csv line 13,1,2,2,0,0
limit,,,duet-free: 6 to 7 elements,,,,,,,quotas.csv line 14,6,7,7,0,0
limit,,,duet-free: at most 0 throw elements,,,,,,,quotas.csv line 32,,0,0,0,
limit,,,duet-free: at most 0 required elements,,,,,,,quotas.csv line 33,,0,0,0,
limit,,,at most 12 parts of connections in the routine,,,,,,,families.csv line 7,,12,2,0,
limit,,,at most 5 parts of solo-set in the routine,,,,,,,families.csv line 16,,5,0,0,
limit,,,at most 5 parts of duet-set in the routine,,,,,,,families.csv line 17,,5,0,0,
limit,,,at most 5 parts of team-set in the routine,,,,,,,families.csv line 18,,5,0,0,
limit,,,duet-free: 140 to 160 s,,,,,,,events.csv line 4,140,160,150,0,0
limit,,,at most 2 lift elements,,,,,,,the sheet,,2,2,0,
limit,,,at most 16 s under water in one go,,,,,,,the sheet,,16,15,0,
proved,,,,,,,,,,,,,,,
=== exit 0
=== run landdrill plan harbour-lights.sheet --format json | grep -A 4 -E '"(aim|proved)"'
=== output
  "aim": {
    "for": "expected",
    "per_cent": null,
    "target": null
  },
--
  "proved": true,
  "tried": 0,
  "not_told_apart": 0,
  "gap": null,
  "noticed": "0.11",
=== exit 0
=== run landdrill plan harbour-lights.sheet --full | grep -A 12 'How this'
=== output
How this programme comes about
  - Every choice of options, within the limits, is a programme. Groups of
    choices that cannot be better than the best one found are left out; the
    answer is the one that trying all would give.
  - expected: what the element brings on average, as declared and on the base
    mark by their chances, at the mark expected. `landdrill compare --full`
    shows it for every option.

element 1 Lantern: 17.2500
  = (22.5 / 3) x 2.30 x 1, rounded half-up to 4 places
  from panels.csv duet-free execution, line 11 [1]
  declared difficulty: 2.30
    = base + sum(parts) + 0.15 * max(0, families - 3) = 0.6 + 1.7 + 0.15 *
=== exit 0
=== run landdrill plan harbour-lights.sheet --target 225 --spread 0.3 --day 0.1 --format csv | grep -c programme
=== output
6
=== exit 0
=== run landdrill plan harbour-lights.sheet --aim 10% --spreads set --format csv | grep -c programme
=== output
6
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other && landdrill plan harbour-lights.sheet --values sets --set other --colour never | grep -v '^Values from' | cmp <(landdrill plan harbour-lights.sheet | grep -v '^Values from') -
=== output
kingfisher-2026 is written into sets/other. In a sheet beside it, the line is
  values other
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season && landdrill plan harbour-lights.sheet --season club.season | grep -v '^Values from' | cmp <(landdrill plan harbour-lights.sheet | grep -v '^Values from') -
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
