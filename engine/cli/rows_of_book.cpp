#include "engine/cli/call.h"
#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow all_option = {"--all", "", "every version, not the latest alone"};

constexpr OperandRow added_operand = {"FILE", "a sheet, or a list of marks (.csv)", 1, any_number,
                                      Offers::files};
constexpr OperandRow backup_operand = {"BACKUP", "the file of the backup", 1, 1, Offers::files};

constexpr OperandRow version_operand = {"VERSION", "the number of a version of the routine", 1, 1};
constexpr OptionRow swum_as_option = {"--swum-as", "VERSION",
                                      "the panels of the lists were swum as this version of their routine"};

constexpr OptionRow judges_full = {"--full", "",
                                   "the coefficients of agreement, every pair, and bias by kind"};
constexpr OptionRow same_judges = {"--same-judges", "",
                                   "the same judges sat in the same seats at all meets: take all together"};
constexpr OptionRow sheet_option = {
    "--sheet", "FILE", "a sheet whose expected marks to calibrate", {}, Offers::files};
constexpr OptionRow progress_full = {"--full", "", "elements, impression and announced results as well"};

// Of practice.
constexpr OptionRow name_option = {"--name", "NAME", "whose marks these are"};
constexpr OptionRow lines_option = {"--lines", "NUMBER", "how many lines to mark (otherwise 12)"};
constexpr OptionRow mark_seconds = {"--seconds", "NUMBER",
                                    "how long you have for each mark (otherwise as long as you like)"};
constexpr OptionRow weak_option = {"--weak", "",
                                   "draw more of what you were furthest off on, by kind and by level"};
constexpr OptionRow kind_option = {"--kind", "WORD",          "only this kind of element, or this aspect",
                                   {},       Offers::nothing, true};
constexpr OptionRow routines_option = {"--routines", "NUMBER",
                                       "so many whole routines, every line in the order in which it is swum"};
constexpr OptionRow tell_option = {"--tell", "",
                                   "tell the panel's marks behind each line, which then stays as it is"};
constexpr OptionRow expert_option = {"--expert", "NAME",
                                     "the marks of this person stand in the place of the panels'"};
constexpr OptionRow correct_option = {"--correct", "",
                                      "marks that differ take the place of those that are kept"};
constexpr OptionRow compared_option = {
    "--name", "NAME",          "this trainee, and no others than those named (otherwise everyone)",
    {},       Offers::nothing, true};
constexpr OptionRow counted_option = {"--session", "NUMBER|DATE",
                                      "which one, by its number or the day it was started"};
constexpr OptionRow seed_option = {"--seed", "NUMBER", "draw the same lines as anyone with this number"};
constexpr OptionRow new_option = {"--new", "", "start anew, and leave paused sessions as they are"};
constexpr OptionRow curve_option = {"--curve", "", "every session, one line each"};
constexpr OptionRow paused_option = {"--session", "NUMBER", "go on with this paused session"};
constexpr OptionRow session_option = {"--session", "NUMBER|DATE",
                                      "an older session, by its number or the day it was started"};
constexpr OptionRow whose_option = {"--name", "NAME", "of this trainee alone"};
constexpr OptionRow unnamed_option = {"--name", "NAME",
                                      "whose marks those are that the list does not say it of"};

constexpr OperandRow list_operand = {"FILE", "a list of marks (.csv)", 1, any_number, Offers::files};

}  // namespace

const std::vector<Command> book_commands = {
    {"book add",
     "keep sheets and lists of marks in the season book",
     "Keeps each routine, each run and each panel of the sheets in the season file, with the value set it "
     "was priced from. The same again changes nothing; another text for the same routine, run or panel "
     "becomes a new version, and the old one stays. Everything is added, or, when anything is wrong, "
     "nothing.\n\n"
     "A panel belongs to the version of the routine that stood above it when it was first added, also "
     "when the routine changes or a mark is corrected later. What is kept already in the same words may "
     "stay in the sheet although it no longer fits the changed routine; it is left where it is. Where "
     "several versions of a routine are added at once, as `book export --all` writes them, everything "
     "belongs to the version that it stands below.\n\n"
     "A list of marks is a CSV file with one row a mark: date, meet, routine, element (its number, or an "
     "aspect such as choreography), judge, mark (- where the judge is missing); and, where it is needed, "
     "event, and base (yes where the base mark was given; a list with this column says it of every "
     "element in it). Its routines must be in the book already. Marks for a panel that is kept take the "
     "places of the kept ones; everything else of that panel stays. A new panel belongs to the latest "
     "version of its routine, unless --swum-as says another. Sync errors, penalties and announced results "
     "are written in a sheet.\n\n"
     "A routine of one event, and a run or panel of one routine and day, keep the title that they have: "
     "one that differs in nothing but case, blanks or signs is refused as misspelled.",
     {book_operand, added_operand},
     {&swum_as_option, &format_option, &set_option, &values_option, &season_option},
     {{"landdrill book add club.season harbour-lights.sheet", "the routine, its runs and its panels"},
      {"landdrill book add club.season tarn-open.csv", "the marks of a meet, from a spreadsheet"},
      {"landdrill book add club.season spring-cup.csv --swum-as 1",
       "marks of the spring, when the routine was as it was first"}},
     book_add},
    {"book swum-as",
     "say of panels which version of their routine was swum",
     "Puts the panels that are found to this version of their routine, in the words that they have; they "
     "are priced and compared as that from then on. `landdrill book list --all` shows the versions. When "
     "one of them does not fit the version, nothing is changed.",
     {book_operand, version_operand, words_operand},
     {&event_option, &from_option, &until_option, &format_option},
     {{"landdrill book swum-as club.season 1 harbour tarn open", "one panel was swum as version 1"},
      {"landdrill book swum-as club.season 2 harbour --from 2026-06-01",
       "everything since June as version 2"}},
     book_swum_as},
    {"book list",
     "what is in the season book",
     "Lists routines, runs and panels, with how many versions there are of each. With WORDS: those that "
     "have all of them in their title.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &all_option, &format_option},
     {{"landdrill book list club.season", "everything, the latest version of each"},
      {"landdrill book list club.season harbour --all", "every version of one routine"},
      {"landdrill book list club.season --from 2026-05-01 --event duet-free", "what was swum since May"}},
     book_list},
    {"book editions",
     "which editions of value sets the season book keeps",
     "Lists every edition that something was swum under: when it came and with which routine, and how "
     "many routines, versions of them, runs and panels rest on it. With WORDS: those that have all of "
     "them in their name, or under which a routine or a meet with these words was swum.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &format_option},
     {{"landdrill book editions club.season", "all of them"},
      {"landdrill book editions club.season tarn open", "under which edition one meet was swum"}},
     book_editions},
    {"book export",
     "routines of the season book as sheets",
     "Prints the routines that are found, each with its runs and panels, as a sheet that every other "
     "command reads. What was swum of different versions of a routine comes with its version.\n\n"
     "With --all: every version, in its order, with all that runs and panels were ever called. Added "
     "to the same book it changes nothing; added to an empty one it makes the same book, but for the "
     "editions of the value sets: those are not in the sheets. `landdrill book backup` copies them "
     "too.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &all_option},
     {{"landdrill book export club.season harbour > harbour-lights.sheet", "a sheet again"},
      {"landdrill book export club.season --all > club.sheet", "the whole book as text"}},
     book_export},
    {"book score",
     "every panel of the season book, scored again as it was then",
     "Scores each recorded panel with the edition of the value set that was kept with it, beside the "
     "estimate from the runs before that day.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &format_option},
     {{"landdrill book score club.season", "one line a panel"},
      {"landdrill book score club.season harbour --format csv", "one routine, for a spreadsheet"}},
     book_score},
    {"book lessons",
     "how your expected marks compare with what panels gave",
     "For every element that a panel of the book marked and that had an expected mark before that day: "
     "how far the panel's mean lay off, on average, by kind, by family of parts and by fault. What chance "
     "suffices for is not said: marks of one day go up and down together, so days count, not elements, "
     "and fewer than three say nothing yet. Few marks tell little, so beside the average stands one to "
     "go by, drawn towards the others. Then whether calibrating your marks by it would have helped this "
     "season, each day judged by earlier days alone.\n\n"
     "With --sheet: the expected marks of that sheet beside the calibrated ones, and both totals. "
     "Each panel is compared with the version of the routine that it saw, and with no run of its own "
     "day.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &sheet_option, &format_option, &set_option, &values_option,
      &season_option, &colour_option},
     {{"landdrill book lessons club.season", "the whole season"},
      {"landdrill book lessons club.season --sheet harbour-lights.sheet",
       "and what it makes of the next meet"}},
     book_lessons},
    {"book progress",
     "how a routine went over the season",
     "A line for each run-through and each panel of the routines that are found: the difficulty that was "
     "credited, the mean mark of the elements, base marks, points taken off, the total. What was swum of "
     "different versions of a routine stands apart; the first panel is compared with the last by their "
     "days, whatever the version. A latest version that was not swum yet is told with its difficulty.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &progress_full, &format_option, &colour_option},
     {{"landdrill book progress club.season harbour", "one routine"},
      {"landdrill book progress club.season --format csv", "all of them, for a spreadsheet"}},
     book_progress},
    {"book judges",
     "the judges of the panels in the season book",
     "As `landdrill judges`, for the panels that are kept in the season book.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option, &same_judges, &judges_full, &format_option, &colour_option},
     {{"landdrill book judges club.season \"tarn open\"", "one meet"},
      {"landdrill book judges club.season --event duet-free --same-judges",
       "the same panel all season long"}},
     book_judges},
    {"judges",
     "recorded panels judge by judge, and how far the judges agree",
     "For each meet and event of the sheets: who marks higher or lower than the others and by how much, "
     "what to look at again together, and how often each judge's mark was dropped. Nobody is named where "
     "chance would do, with as many judges and kinds of element as are looked at. In full also bias, "
     "spread and order of each judge, every pair, and how far all of them agree: intraclass correlation, "
     "Kendall's W, Krippendorff's alpha. A missing mark counts for nothing here, also where the set fills "
     "something in for the score.\n\n"
     "A panel that comes twice in the same words, as when a sheet is named twice, is counted once.\n\n"
     "Judges go by the number of their seat. Within one event of one meet the same judges are taken to "
     "sit in the same seats; --same-judges takes them to do so at all.",
     {sheets_operand},
     {&same_judges, &judges_full, &format_option, &set_option, &values_option, &season_option,
      &colour_option},
     {{"landdrill judges harbour-lights.sheet", "the panels of one sheet"},
      {"landdrill judges *.sheet", "a meet: all routines that the panel saw"},
      {"landdrill judges harbour-lights.sheet --full", "how far they agree, in numbers, and every pair"}},
     judges},
    {"book backup",
     "a copy of the season file, also while it is in use",
     "Copies the whole season file as it is at one moment, also while another program writes to it, "
     "and checks the copy.",
     {book_operand, backup_operand},
     {&text_or_json},
     {{"landdrill book backup club.season club-2026-06-01.season", "a copy with the day in its name"}},
     book_backup},
    {"book restore",
     "the season file as it was in a backup",
     "Puts the backup in the place of what is in the season file. What was added since the backup is "
     "gone, so back the season file up first.",
     {book_operand, backup_operand},
     {&text_or_json},
     {{"landdrill book restore club.season club-2026-06-01.season", "back to the first of June"}},
     book_restore},
    {"book check",
     "damage in a season file, and what to do about it",
     "Reads every page and every text of the season file and says whether it is sound: the file's "
     "structure, what belongs to what, and whether each sheet and each value set is still what was kept. "
     "When it is not: go back to a backup, or save what can be read with `landdrill book export --all`.",
     {book_operand},
     {&text_or_json},
     {{"landdrill book check club.season", "says ok, or what is damaged and what to do"}},
     book_check},
    {"practice start",
     "mark what a recorded panel marked, then see how you compare",
     "Draws lines from the recorded panels of the season book, the judges' marks hidden, and asks for "
     "yours, one by one. b goes back, s skips, p pauses; every mark is kept as soon as you give it, so a "
     "closed window loses nothing. After the last one you see your marks beside the panel's. Lines that "
     "you met before come only when no others are left, and are left out of your figures: you know what "
     "the panel gave.\n\n"
     "A paused session is gone on with when you ask for nothing else or for the same: with other words, "
     "days, lines, kinds or seconds, or with --new, another one begins and the paused ones stay; --session "
     "names one of them.\n\n"
     "This trains the eye. It does not make anyone a judge: courses and licences are your federation's.",
     {book_operand, words_operand},
     {&name_option, &lines_option, &routines_option, &kind_option, &mark_seconds, &tell_option, &weak_option,
      &seed_option, &new_option, &paused_option, &event_option, &from_option, &until_option, &colour_option},
     {{"landdrill practice start club.season --name Robin", "twelve lines, as long as you like"},
      {"landdrill practice start club.season --name Robin --routines 1 --tell",
       "one whole routine, with the panel's marks behind each line"},
      {"landdrill practice start club.season --name Robin --kind lift --kind choreography",
       "lifts and one aspect alone"},
      {"landdrill practice start club.season tarn open --name Robin --seconds 20 --lines 30",
       "one meet, with twenty seconds a mark"},
      {"landdrill practice start club.season --name Robin --weak", "more of what you find hard"}},
     practice_start},
    {"practice report",
     "how a trainee's marks compare, now and over the weeks",
     "Shows the last finished session again, an older one with --session, or, with --curve, all of them: "
     "bias, how far off, the share within a step, and whether the order is the panel's. Of trainees who "
     "mark as judges do, at most one in twenty is told a fault by chance; numbers come with the interval "
     "that holds them 95 times in 100.\n\n"
     "With --expert: beside the marks of an expert who practised on the same lines, instead of the panel's.",
     {book_operand},
     {&name_option, &session_option, &curve_option, &expert_option, &format_option, &colour_option},
     {{"landdrill practice report club.season --name Robin", "the last session"},
      {"landdrill practice report club.season --name Robin --session 2", "the second of all"},
      {"landdrill practice report club.season --name Robin --curve",
       "all sessions, to see whether it gets better"}},
     practice_report},
    {"practice compare",
     "trainees side by side, and beside the panels or an expert",
     "A line for each trainee over all finished sessions, and one for any two who marked the same lines. "
     "Only what is larger than chance makes it, among so many comparisons, is said in words.",
     {book_operand},
     {&compared_option, &expert_option, &format_option, &colour_option},
     {{"landdrill practice compare club.season", "everyone against the panels"},
      {"landdrill practice compare club.season --expert Ash --name Robin --name Sam",
       "two of them against the marks of an expert"}},
     practice_compare},
    {"practice form",
     "blank forms to mark on by hand, one page a routine",
     "Prints a form for the latest version of each routine that is found: a line for each element and "
     "aspect with its scale and room for a mark. It fits a sheet of A4. Names and marks are not on it.",
     {book_operand, words_operand},
     {&event_option, &from_option, &until_option},
     {{"landdrill practice form club.season harbour | lp", "one routine, to the printer"}},
     practice_form},
    {"practice list",
     "who practised when, session by session",
     "Lists the sessions that are kept in the season book, with the number by which `practice report` "
     "and, while one is paused, `practice start` know each.",
     {book_operand},
     {&whose_option, &format_option},
     {{"landdrill practice list club.season", "everyone's"},
      {"landdrill practice list club.season --name Robin", "Robin's"}},
     practice_list},
    {"practice add",
     "keep a trainee's marks from a spreadsheet as practice",
     "A list is a CSV file with one row a mark: trainee, session (the day when she marked), date, meet, "
     "routine, element (its number, or an aspect such as choreography), mark. Date, meet and routine are "
     "those of the recorded panel, which must be in the book. Without a column for the session, she "
     "marked on the day of the panel; without one for the trainee, --name says who she is.\n\n"
     "A list is added as a whole or, when anything is wrong, not at all. The same again changes nothing; "
     "rows that are new to a session are added to it; another mark for the same line of the same session "
     "is refused, or, with --correct, takes the place of the kept one.",
     {book_operand, list_operand},
     {&unnamed_option, &correct_option, &format_option},
     {{"landdrill practice add club.season robin.csv", "the marks of a spreadsheet"},
      {"landdrill practice add club.season tarn-open.csv --name Robin", "a list that does not say whose"},
      {"landdrill practice add club.season robin.csv --correct", "a mark in it was mistyped at first"}},
     practice_add},
    {"practice omit",
     "leave a session out of everything",
     "The session keeps its marks and its number, and is left out of every report until `practice "
     "include` has it count again.",
     {book_operand},
     {&name_option, &counted_option, &text_or_json},
     {{"landdrill practice omit club.season --name Robin --session 2", "the second session of Robin"}},
     practice_omit},
    {"practice include",
     "have a session count again that was left out",
     "The session is in every report again, as it was.",
     {book_operand},
     {&name_option, &counted_option, &text_or_json},
     {{"landdrill practice include club.season --name Robin --session 2", "the second session of Robin"}},
     practice_include},
    {"practice export",
     "practice marks as a list for a spreadsheet",
     "Prints the marks of all finished sessions as CSV, one row a mark, as `practice add` reads them.",
     {book_operand},
     {&whose_option},
     {{"landdrill practice export club.season > practice.csv", "everyone's"},
      {"landdrill practice export club.season --name Robin > robin.csv", "Robin's"}},
     practice_export},
};

}  // namespace landdrill::cli
