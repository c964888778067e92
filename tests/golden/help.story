What the program can do, and everything about each command. All of it is made from the one command table.

=== run landdrill help
=== output
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
=== exit 0
=== run landdrill --help | cmp - <(landdrill help)
=== exit 0
=== run landdrill -h | cmp - <(landdrill help)
=== exit 0
=== run landdrill --version
=== output
landdrill <version>
=== exit 0
=== run landdrill help values
=== output
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
=== exit 0
=== run landdrill values --help | cmp - <(landdrill help values)
=== exit 0
=== run landdrill help score
=== output
landdrill score FILE... [OPTION...]

  what a routine is worth, line by line, beside a panel

Prices the routine from its value set, puts in the marks you expect (written
down, or from your run-throughs), and adds it all up. When the sheet holds a
recorded panel, its marks stand beside yours, and below stands what led from the
one total to the other.

The files are read one after the other as one long sheet: every `routine` line
starts a new routine, and runs and panels belong to the routine above them, even
from another file. One routine gets the full report; several get one line each,
however many they are.

  FILE...               a sheet; - is standard input

  --panel NAME|DATE|none
                        the recorded panel to lay beside the estimate (otherwise
                        the last of the sheet)
  --runs latest|mean|none|DATE
                        the run-throughs that the estimate rests on: the latest,
                        the mean of all, none, or one day's
  --option NUMBER=TITLE
                        swim an element by one of its options
  --format text|json|csv
                        how to print
  --full                the whole build-up below, and every value that is not
                        published by name
  --brief               one line a sheet, even for a single one
  --set NAME            price from this value set, whatever the sheet says
  --values FOLDER       look for value sets in this folder first
  --season FILE         take the value sets from this season file, not from
                        folders
  --colour auto|always|never
                        colour the report (auto: on a terminal only)
  --help                this text

Examples
  landdrill score harbour-lights.sheet
      the report, beside the last panel of the sheet
  landdrill score harbour-lights.sheet --option 2=safer
      the same with the safer second element
  landdrill score harbour-lights.sheet --panel none --runs mean
      the estimate alone, from all run-throughs
  landdrill score club/*.sheet
      one line a routine
  landdrill score - --format csv < season.sheet > season.csv
      any number of routines, for a spreadsheet

Ends with
  0   all is well
  1   a sheet or a table has errors (for check: or breaks a limit; for tidy
      --check: is not tidy)
  2   the command line cannot be understood
  3   a file, a folder, a season file or the output refused
=== exit 0
=== run landdrill score --nonsense --help | cmp - <(landdrill help score)
=== exit 0
=== run landdrill help values edit
=== output
landdrill values edit SET TABLE ROW COLUMN VALUE [OPTION...]

  change one value

Changes one cell of a set and leaves every other byte alone. The row's source
then says that you changed it and from what, and its status becomes memory,
unless you say --source and --status. In a folder the old value is gone; in a
season file the change has a history and can be undone. The sets that come with
the program are never changed: copy one first.

  SET                   a value set: its name, or its folder
  TABLE                 the table, such as parts
  ROW                   the row's code (quote it when there are several:
                        "duet-free execution")
  COLUMN                the column, such as value
  VALUE                 the new value; '' empties the cell

  --why TEXT            the reason, for the history
  --source TEXT         where the value is from, for the row's source
  --status published|practice|memory|invented
                        how far the value can be trusted (otherwise memory)
  --format text|json    how to print
  --values FOLDER       look for value sets in this folder first
  --season FILE         take the value sets from this season file, not from
                        folders
  --help                this text

Examples
  landdrill values edit my-2026 parts spin-720 value 1.5
      in a folder of yours
  landdrill values edit kingfisher-2026 parts spin-720 value 1.5 --season club.season --why "new catalogue"
      in a season file

Ends with
  0   all is well
  1   a sheet or a table has errors (for check: or breaks a limit; for tidy
      --check: is not tidy)
  2   the command line cannot be understood
  3   a file, a folder, a season file or the output refused
=== exit 0
=== run landdrill help --markdown
=== output
| Command | What it does |
|---|---|
| `landdrill score FILE...` | what a routine is worth, line by line, beside a panel |
| `landdrill check FILE...` | every mistake in a sheet, and every limit the routine breaks |
| `landdrill tidy FILE...` | the sheet written out neatly, with its comments |
| `landdrill explain FILE [LINE...]` | one line of a score, down to the table rows it comes from |
| `landdrill compare FILE [ELEMENT]` | the options of an element side by side: which gives more |
| `landdrill forecast FILE` | how likely which score is, line by line and in all |
| `landdrill plan FILE` | the best option for every element, within all limits |
| `landdrill train FILE` | where training buys most, ranked |
| `landdrill values list` | the value sets that can be named, and where they are |
| `landdrill values show SET [TABLE] [ROW...]` | what a value set says: all of it, one table, or one row |
| `landdrill values check SET...` | every mistake in a value set |
| `landdrill values missing FILE...` | the values that a sheet still needs |
| `landdrill values fill SET LIST.csv` | put a list of codes and values into a set |
| `landdrill values compare SET-A SET-B [SHEET...]` | what changed between two sets, and what that does to a sheet |
| `landdrill values copy SET FOLDER` | a set of your own to change, from one that is there |
| `landdrill values edit SET TABLE ROW COLUMN VALUE` | change one value |
| `landdrill values import SET...` | take value sets into a season file |
| `landdrill values export SET FOLDER` | write a set of a season file into a folder |
| `landdrill values undo SET` | take back the last change of a set in a season file |
| `landdrill values redo SET` | bring back the change that was undone last |
| `landdrill values history SET` | every change of a set in a season file: when, what, why |
| `landdrill values remove SET` | take a set out of a season file, with its history |
| `landdrill book add BOOK FILE...` | keep sheets and lists of marks in the season book |
| `landdrill book swum-as BOOK VERSION [WORDS...]` | say of panels which version of their routine was swum |
| `landdrill book list BOOK [WORDS...]` | what is in the season book |
| `landdrill book editions BOOK [WORDS...]` | which editions of value sets the season book keeps |
| `landdrill book export BOOK [WORDS...]` | routines of the season book as sheets |
| `landdrill book score BOOK [WORDS...]` | every panel of the season book, scored again as it was then |
| `landdrill book lessons BOOK [WORDS...]` | how your expected marks compare with what panels gave |
| `landdrill book progress BOOK [WORDS...]` | how a routine went over the season |
| `landdrill book judges BOOK [WORDS...]` | the judges of the panels in the season book |
| `landdrill judges FILE...` | recorded panels judge by judge, and how far the judges agree |
| `landdrill book backup BOOK BACKUP` | a copy of the season file, also while it is in use |
| `landdrill book restore BOOK BACKUP` | the season file as it was in a backup |
| `landdrill book check BOOK` | damage in a season file, and what to do about it |
| `landdrill practice start BOOK [WORDS...]` | mark what a recorded panel marked, then see how you compare |
| `landdrill practice report BOOK` | how a trainee's marks compare, now and over the weeks |
| `landdrill practice compare BOOK` | trainees side by side, and beside the panels or an expert |
| `landdrill practice form BOOK [WORDS...]` | blank forms to mark on by hand, one page a routine |
| `landdrill practice list BOOK` | who practised when, session by session |
| `landdrill practice add BOOK FILE...` | keep a trainee's marks from a spreadsheet as practice |
| `landdrill practice omit BOOK` | leave a session out of everything |
| `landdrill practice include BOOK` | have a session count again that was left out |
| `landdrill practice export BOOK` | practice marks as a list for a spreadsheet |
| `landdrill help [COMMAND...]` | this list, or everything about one command |
=== exit 0
