The gaps are filled from a list pasted from anywhere: semicolons, decimal commas, any heading. First a look, then into the
set, into a new one, or into a season file, where it can be undone.

=== copy examples/tarn-declaration-invented-values.csv
=== run landdrill values copy declared-2024 ours >/dev/null; landdrill values fill ours tarn-declaration-invented-values.csv
=== output
Filled in (5): solo-1, solo-2, solo-3, solo-4, solo-5
Still missing (14): duet-1, duet-2, duet-3, duet-4, duet-5, mixed-duet-1,
mixed-duet-2, mixed-duet-3, mixed-duet-4, team-1, team-2, team-3, team-4, team-5

Nothing is written yet: --write writes into the set, --to FOLDER into a new one.
=== exit 0
=== run landdrill values fill ours tarn-declaration-invented-values.csv --to filled --source 'typed from the list' --status practice --format csv | head -3; grep -h '^solo-1,' ours/parts.csv filled/parts.csv | cut -d, -f4-
=== output
code,outcome
solo-1,filled
solo-2,filled
 solo",,"AS Rules 2022-2025, Appendix II: required elements have numbers; degree of difficulty not found: fill in from the catalogue and rule book that you hold",published
 solo",2.15,typed from the list,practice
=== exit 0
=== run landdrill values fill ours tarn-declaration-invented-values.csv --write | tail -1; grep '^solo-1,' ours/parts.csv | cut -d, -f4-
=== output
Written into ours.
 solo",2.15,typed in,memory
=== exit 0
=== run echo 'solo-1,3.5' | landdrill values fill ours -
=== errors
standard input:1:8: error: found 3.5 for "solo-1"; expected its value 2.15, as in line 2 of parts.csv [has-value]
  solo-1,3.5
         ^~~
  hint: ask for overwriting if the list is right
landdrill: nothing is filled in; --overwrite replaces the values that differ
=== exit 1
=== run echo 'solo-1,3.5' | landdrill values fill ours - --write --overwrite | head -1
=== output
Filled in (1): solo-1
=== exit 0
=== run landdrill values import declared-2024 --season s > /dev/null; echo 'solo-1;3,5' | landdrill values fill declared-2024 - --season s | tail -1; landdrill values show declared-2024 parts solo-1 --season s --format csv | sed 's/catalogue.*/.../; s/,AS Rules.*/.../' | tail -1; landdrill values undo declared-2024 --season s; landdrill values show declared-2024 parts solo-1 --season s --format csv | sed 's/catalogue.*/.../; s/,AS Rules.*/.../' | tail -1
=== output
Written into s.
solo-1,required-solo,"Required element 1, solo",3.5,typed in,memory
undone: declared-2024: all tables
solo-1,required-solo,"Required element 1, solo",,"AS Rules 2022-2025, Appendix II: required elements have numbers; degree of difficulty not found: fill in from the ...
=== exit 0
=== run landdrill values fill declared-2024 tarn-declaration-invented-values.csv --values . --write
=== errors
landdrill: declared-2024: it comes with the program and is not changed
  hint: make a set of your own first: landdrill values copy declared-2024 my-set
=== exit 3
=== run landdrill values fill ours tarn-declaration-invented-values.csv --to filled --overwrite
=== errors
landdrill: filled: there is something of that name already
  hint: give the name of a new folder
=== exit 3
=== run landdrill values fill ours nowhere.csv
=== errors
landdrill: nowhere.csv: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill values fill ours tarn-declaration-invented-values.csv --to new --write
=== errors
landdrill values fill: found --to and --write; expected one of them
=== exit 2
=== run landdrill values fill ours tarn-declaration-invented-values.csv --status rumour
=== errors
landdrill values fill: found --status "rumour"; expected published, practice, memory or invented
=== exit 2
=== run printf 'code;title;dd\nth-9;"Thrust, split";0,85\nth-10;;1,1\n' > thrusts.csv; landdrill values fill ours thrusts.csv --write; echo "exit $?"; landdrill values fill ours thrusts.csv --family thrusts --write; tail -2 ours/parts.csv
=== output
exit 1
New in the set (2): th-9, th-10
Still missing (14): duet-1, duet-2, duet-3, duet-4, duet-5, mixed-duet-1,
mixed-duet-2, mixed-duet-3, mixed-duet-4, team-1, team-2, team-3, team-4, team-5

Written into ours.
th-9,thrusts,"Thrust, split",0.85,typed in,memory
th-10,thrusts,,1.1,typed in,memory
=== errors
thrusts.csv:2:1: error: found "th-9"; expected a code of parts.csv [unknown-name]
  th-9;"Thrust, split";0,85
  ^~~~
thrusts.csv:3:1: error: found "th-10"; expected a code of parts.csv [unknown-name]
  th-10;;1,1
  ^~~~~
landdrill: nothing is filled in; --family FAMILY puts codes that the set does not have in as new parts
=== exit 0
=== run landdrill values fill ours thrusts.csv --family thrust
=== errors
ours/families.csv: error: found no family "thrust" for the new codes; expected one of its codes [unknown-name]
  hint: the nearest is thrusts
=== exit 1
