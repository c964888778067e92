explain prices as score does: another option, other runs, another set, in colour.

=== copy examples/harbour-lights.sheet
=== run landdrill explain harbour-lights.sheet element 2 difficulty --option 2=safer --colour never
=== output
declared difficulty: 2.70
  = base + sum(parts) + 0.1 * max(0, families - 2) = 0.5 + 2.1 + 0.1 * max(0, 3
    - 2)
  from kinds.csv hybrid, line 2 [1]
  part thrust-high: 0.80 (Thrust, water at the hips)
    from parts.csv line 5 [1]
  part spin-360: 0.90 (Spin down through 360 degrees)
    from parts.csv line 11 [1]
  part split-hold: 0.40 (Split, held)
    from parts.csv line 33 [1]

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
=== run landdrill explain harbour-lights.sheet element 2 mark --runs none
=== output
mark: 7.25 (expected on the sheet)
  from panels.csv duet-free execution, line 11 [1]

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
=== run landdrill values copy kingfisher-2026 ours >/dev/null; landdrill values edit ours parts thrust-high value 0.9 --why 'new catalogue' >/dev/null; landdrill explain harbour-lights.sheet element 2 difficulty --set ours --values .
=== output
declared difficulty: 4.10
  = base + sum(parts) + 0.1 * max(0, families - 2) = 0.5 + 3.4 + 0.1 * max(0, 4
    - 2)
  from kinds.csv hybrid, line 2 [1]
  part thrust-high: 0.90 (Thrust, water at the hips)
    from parts.csv line 5 [2]
  part spin-720: 1.40 (Spin down through 720 degrees)
    from parts.csv line 12 [1]
  part split-hold x2: 0.80 (Split, held)
    = 2 x 0.40
    from parts.csv line 33 [1]
  part join-foot: 0.30 (Joined by a foot)
    from parts.csv line 42 [1]

Where the values of ours are from
  [1] invented: invented for the Kingfisher demo league
  [2] memory: typed in, value was 0.8 before: new catalogue
=== exit 0
=== run landdrill values import ours --season club.season >/dev/null; landdrill explain harbour-lights.sheet element 2 difficulty --season club.season --set ours | tail -3
=== output
Where the values of ours are from
  [1] invented: invented for the Kingfisher demo league
  [2] memory: typed in, value was 0.8 before: new catalogue
=== exit 0
