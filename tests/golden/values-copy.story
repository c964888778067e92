A set of one's own, byte for byte; never over something that is there.

=== run landdrill values copy kingfisher-2026 my-2026 && diff -r my-2026 $REPOSITORY/tables/data/kingfisher-2026
=== output
kingfisher-2026 is written into my-2026. In a sheet beside it, the line is
  values my-2026
=== exit 0
=== run landdrill values copy kingfisher-2026 my-2026
=== errors
landdrill: my-2026: there is something of that name already
  hint: give the name of a new folder
=== exit 3
=== run landdrill values copy my-2026 again --values . && diff -r again my-2026
=== output
my-2026 is written into again. In a sheet beside it, the line is
  values again
=== exit 0
=== run landdrill values import my-2026 --season s; landdrill values copy my-2026 out --season s && diff -r out my-2026
=== output
my-2026: 229 rows are in s
my-2026 is written into out. In a sheet beside it, the line is
  values out
=== exit 0
=== run landdrill values copy kingfisher-2026 /proc/nowhere/x
=== errors
landdrill: /proc/nowhere/x: No such file or directory
=== exit 3
