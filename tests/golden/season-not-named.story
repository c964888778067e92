The commands that work on a season file want to know which.

=== run landdrill values import kingfisher-2026
=== errors
landdrill values import: --season FILE is missing
  expected: landdrill values import kingfisher-2026 --season club.season
=== exit 2
=== run landdrill values export kingfisher-2026 out
=== errors
landdrill values export: --season FILE is missing
  expected: landdrill values export kingfisher-2026 changed-2026 --season club.season
=== exit 2
=== run landdrill values undo kingfisher-2026
=== errors
landdrill values undo: --season FILE is missing
  expected: landdrill values undo kingfisher-2026 --season club.season
=== exit 2
=== run landdrill values redo kingfisher-2026
=== errors
landdrill values redo: --season FILE is missing
  expected: landdrill values redo kingfisher-2026 --season club.season
=== exit 2
=== run landdrill values history kingfisher-2026
=== errors
landdrill values history: --season FILE is missing
  expected: landdrill values history kingfisher-2026 --season club.season
=== exit 2
=== run landdrill values remove kingfisher-2026
=== errors
landdrill values remove: --season FILE is missing
  expected: landdrill values remove kingfisher-2026 --season club.season
=== exit 2
