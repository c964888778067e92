A command line that cannot be understood: what was found, what is nearest, exit code 2.

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
=== run landdrill scrore ada.sheet
=== errors
landdrill: found "scrore"; expected a command
  hint: the nearest is score
=== exit 2
=== run landdrill ada.sheet
=== errors
landdrill: found "ada.sheet"; expected a command
  hint: `landdrill score ada.sheet` scores it
=== exit 2
=== run landdrill frobnicate
=== errors
landdrill: found "frobnicate"; expected a command
  hint: `landdrill help` lists the commands
=== exit 2
=== run landdrill values
=== errors
landdrill values ...

  values list       the value sets that can be named, and where they are
  values show       what a value set says: all of it, one table, or one row
  values check      every mistake in a value set
  values missing    the values that a sheet still needs
  values fill       put a list of codes and values into a set
  values compare    what changed between two sets, and what that does to a sheet
  values copy       a set of your own to change, from one that is there
  values edit       change one value
  values import     take value sets into a season file
  values export     write a set of a season file into a folder
  values undo       take back the last change of a set in a season file
  values redo       bring back the change that was undone last
  values history    every change of a set in a season file: when, what, why
  values remove     take a set out of a season file, with its history

`landdrill help values COMMAND` says more about one of them.
=== exit 2
=== run landdrill values shwo kingfisher-2026
=== errors
landdrill: found "values shwo"; expected one of the values commands
  hint: the nearest is show
=== exit 2
=== run landdrill values frobnicate
=== errors
landdrill: found "values frobnicate"; expected one of the values commands
  hint: `landdrill help values` lists them
=== exit 2
=== run landdrill --brief score ada.sheet
=== errors
landdrill: found --brief; expected a command
  hint: options go after the command
=== exit 2
=== run landdrill score
=== errors
landdrill score: FILE is missing: a sheet; - is standard input
  expected: landdrill score FILE... [OPTION...]
=== exit 2
=== run landdrill score ada.sheet --formt json
=== errors
landdrill score: found --formt; expected an option of `landdrill score`
  hint: the nearest is --format
=== exit 2
=== run landdrill score ada.sheet --write
=== errors
landdrill score: found --write; expected an option of `landdrill score`
  hint: --write belongs to `landdrill tidy`
=== exit 2
=== run landdrill score ada.sheet --frobnicate
=== errors
landdrill score: found --frobnicate; expected an option of `landdrill score`
  hint: `landdrill score --help` lists the options
=== exit 2
=== run landdrill score ada.sheet --format xml
=== errors
landdrill score: found --format "xml"; expected text, json or csv
=== exit 2
=== run landdrill score ada.sheet --format
=== errors
landdrill score: found --format without a value; expected --format text|json|csv
=== exit 2
=== run landdrill score ada.sheet --set ''
=== errors
landdrill score: found --set ""; expected NAME
=== exit 2
=== run landdrill score ada.sheet --brief=yes
=== errors
landdrill score: found --brief=yes; --brief takes no value
=== exit 2
=== run landdrill values copy kingfisher-2026
=== errors
landdrill values copy: FOLDER is missing: the new folder
  expected: landdrill values copy SET FOLDER [OPTION...]
=== exit 2
=== run landdrill values copy kingfisher-2026 a b
=== errors
landdrill values copy: found "b" after everything that was expected
  expected: landdrill values copy SET FOLDER [OPTION...]
=== exit 2
=== run landdrill completions tcsh
=== errors
landdrill completions: found "tcsh"; expected bash, zsh or fish
=== exit 2
=== run landdrill help scrore
=== errors
landdrill help: found "scrore"; expected a command
  hint: the nearest is score
=== exit 2
=== run landdrill help values frobnicate
=== errors
landdrill help: found "values frobnicate"; expected one of the values commands
  hint: `landdrill help values` lists them
=== exit 2
=== run landdrill 
=== errors
landdrill works a routine's score out on dry land.

Sheets
  score             what a routine is worth, line by line, beside a panel
  check             every mistake in a sheet, and every limit the routine breaks
  tidy              the sheet written out neatly, with its comments
  explain           one line of a score, down to the table rows it comes from
  compare           the options of an element side by side: which gives more
  forecast          how likely which score is, line by line and in all
  plan              the best option for every element, within all limits
  train             where training buys most, ranked
  judges            recorded panels judge by judge, and how far the judges agree
  help              this list, or everything about one command

Season book
  book add          keep sheets and lists of marks in the season book
  book swum-as      say of panels which version of their routine was swum
  book list         what is in the season book
  book editions     which editions of value sets the season book keeps
  book export       routines of the season book as sheets
  book score        every panel of the season book, scored again as it was then
  book lessons      how your expected marks compare with what panels gave
  book progress     how a routine went over the season
  book judges       the judges of the panels in the season book
  book backup       a copy of the season file, also while it is in use
  book restore      the season file as it was in a backup
  book check        damage in a season file, and what to do about it

Practice for officials
  practice start    mark what a recorded panel marked, then see how you compare
  practice report   how a trainee's marks compare, now and over the weeks
  practice compare  trainees side by side, and beside the panels or an expert
  practice form     blank forms to mark on by hand, one page a routine
  practice list     who practised when, session by session
  practice add      keep a trainee's marks from a spreadsheet as practice
  practice omit     leave a session out of everything
  practice include  have a session count again that was left out
  practice export   practice marks as a list for a spreadsheet

Value sets
  values list       the value sets that can be named, and where they are
  values show       what a value set says: all of it, one table, or one row
  values check      every mistake in a value set
  values missing    the values that a sheet still needs
  values fill       put a list of codes and values into a set
  values compare    what changed between two sets, and what that does to a sheet
  values copy       a set of your own to change, from one that is there
  values edit       change one value
  values import     take value sets into a season file
  values export     write a set of a season file into a folder
  values undo       take back the last change of a set in a season file
  values redo       bring back the change that was undone last
  values history    every change of a set in a season file: when, what, why
  values remove     take a set out of a season file, with its history

Start with
  landdrill score FILE
  landdrill help COMMAND

Ends with
  0   all is well
  1   a sheet or a table has errors (for check: or breaks a limit; for tidy
      --check: is not tidy)
  2   the command line cannot be understood
  3   a file, a folder, a season file or the output refused

A score is an estimate: only the competition's officials give marks. That a
routine is priced does not say that anyone can safely swim it.
=== exit 2
