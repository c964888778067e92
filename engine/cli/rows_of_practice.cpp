#include "engine/cli/call.h"
#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow name_option = {"--name", "NAME", "whose marks these are"};
constexpr OptionRow lines_option = {"--lines", "NUMBER", "how many lines to mark (otherwise 12)"};
constexpr OptionRow mark_seconds = {"--seconds", "NUMBER",
                                    "how long you have for each mark (otherwise as long as you like)"};
constexpr OptionRow weak_option = {"--weak", "",
                                   "draw more of what you were furthest off on, by kind and by level"};
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

const std::vector<Command> practice_commands = {
    {"practice start",
     "mark what a recorded panel marked, then see how you compare",
     "Draws lines from the recorded panels of the season book, the judges' marks hidden, and asks for "
     "yours, one by one. b goes back, s skips, p pauses; every mark is kept as soon as you give it, so a "
     "closed window loses nothing. After the last one you see your marks beside the panel's.\n\n"
     "A paused session is gone on with when you ask for nothing else or for the same: with other words, "
     "days, lines or seconds, or with --new, another one begins and the paused ones stay; --session names "
     "one of them.\n\n"
     "This trains the eye. It does not make anyone a judge: courses and licences are your federation's.",
     {book_operand, words_operand},
     {&name_option, &lines_option, &mark_seconds, &weak_option, &seed_option, &new_option, &paused_option,
      &event_option, &from_option, &until_option, &colour_option},
     {{"landdrill practice start club.season --name Robin", "twelve lines, as long as you like"},
      {"landdrill practice start club.season tarn open --name Robin --seconds 20 --lines 30",
       "one meet, with twenty seconds a mark"},
      {"landdrill practice start club.season --name Robin --weak", "more of what you find hard"}},
     practice_start},
    {"practice report",
     "how a trainee's marks compare, now and over the weeks",
     "Shows the last finished session again, an older one with --session, or, with --curve, all of them: "
     "bias, how far off, the share within a step, and whether the order is the panel's.",
     {book_operand},
     {&name_option, &session_option, &curve_option, &format_option, &colour_option},
     {{"landdrill practice report club.season --name Robin", "the last session"},
      {"landdrill practice report club.season --name Robin --session 2", "the second of all"},
      {"landdrill practice report club.season --name Robin --curve",
       "all sessions, to see whether it gets better"}},
     practice_report},
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
     "is refused.",
     {book_operand, list_operand},
     {&unnamed_option, &format_option},
     {{"landdrill practice add club.season robin.csv", "the marks of a spreadsheet"},
      {"landdrill practice add club.season tarn-open.csv --name Robin", "a list that does not say whose"}},
     practice_add},
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
