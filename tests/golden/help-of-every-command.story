Every command has its help, with an example, within the width of a terminal.

=== run for c in $(landdrill completions bash | sed -n 's/.*COMP_CWORD == 1.*-W "\([^"]*\)".*/\1/p'); do [ $c = values ] || { landdrill $c --help | head -1; landdrill $c --help | grep -A1 '^Examples'; }; done
=== output
landdrill score FILE... [OPTION...]
Examples
  landdrill score harbour-lights.sheet
landdrill check FILE... [OPTION...]
Examples
  landdrill check harbour-lights.sheet
landdrill tidy FILE... [OPTION...]
Examples
  landdrill tidy harbour-lights.sheet
landdrill explain FILE [LINE...] [OPTION...]
Examples
  landdrill explain harbour-lights.sheet
landdrill compare FILE [ELEMENT] [OPTION...]
Examples
  landdrill compare harbour-lights.sheet
landdrill forecast FILE [OPTION...]
Examples
  landdrill forecast harbour-lights.sheet
landdrill plan FILE [OPTION...]
Examples
  landdrill plan harbour-lights.sheet
landdrill train FILE [OPTION...]
Examples
  landdrill train harbour-lights.sheet
landdrill book ...
landdrill judges FILE... [OPTION...]
Examples
  landdrill judges harbour-lights.sheet
landdrill practice ...
landdrill help [COMMAND...] [OPTION...]
Examples
  landdrill help
=== exit 0
=== run for c in list show check missing fill compare copy edit import export undo redo history remove; do landdrill values $c --help | head -1; landdrill values $c --help | grep -A1 '^Examples' | tail -1; done
=== output
landdrill values list [OPTION...]
  landdrill values list
landdrill values show SET [TABLE] [ROW...] [OPTION...]
  landdrill values show kingfisher-2026
landdrill values check SET... [OPTION...]
  landdrill values check my-2026
landdrill values missing FILE... [OPTION...]
  landdrill values missing harbour-lights.sheet
landdrill values fill SET LIST.csv [OPTION...]
  landdrill values fill my-2026 catalogue.csv
landdrill values compare SET-A SET-B [SHEET...] [OPTION...]
  landdrill values compare my-2025 my-2026
landdrill values copy SET FOLDER [OPTION...]
  landdrill values copy kingfisher-2026 my-2026
landdrill values edit SET TABLE ROW COLUMN VALUE [OPTION...]
  landdrill values edit my-2026 parts spin-720 value 1.5
landdrill values import SET... [OPTION...]
  landdrill values import kingfisher-2026 --season club.season
landdrill values export SET FOLDER [OPTION...]
  landdrill values export kingfisher-2026 changed-2026 --season club.season
landdrill values undo SET [OPTION...]
  landdrill values undo kingfisher-2026 --season club.season
landdrill values redo SET [OPTION...]
  landdrill values redo kingfisher-2026 --season club.season
landdrill values history SET [OPTION...]
  landdrill values history kingfisher-2026 --season club.season
landdrill values remove SET [OPTION...]
  landdrill values remove kingfisher-2026 --season club.season
=== exit 0
=== run for c in score check tidy explain 'values fill' 'values edit' 'values compare'; do landdrill $c --help | awk -v c="$c" 'length($0) > 110 { print c ": " $0 }'; done
=== exit 0
