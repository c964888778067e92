#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow name_option = {"--name", "NAME", "whose marks these are"};
constexpr OptionRow lines_option = {"--lines", "NUMBER", "how many lines to mark (otherwise 12)"};
constexpr OptionRow seconds_option = {"--seconds", "NUMBER",
                                      "how long you have for each mark (otherwise as long as you like)"};
constexpr OptionRow weak_option = {"--weak", "", "draw more of what you were furthest off on"};
constexpr OptionRow seed_option = {"--seed", "NUMBER", "draw the same lines as anyone with this number"};
constexpr OptionRow new_option = {"--new", "", "start anew, and leave the paused session as it is"};
constexpr OptionRow curve_option = {"--curve", "", "every session, one line each"};
constexpr OptionRow event_option = {"--event", "CODE", "only routines of this event"};
constexpr OptionRow from_option = {"--from", "DATE", "only what was swum on this day or later"};
constexpr OptionRow until_option = {"--until", "DATE", "only what was swum on this day or earlier"};

constexpr OperandRow book = {"BOOK", "the season book: a season file", 1, 1, Offers::files};
constexpr OperandRow words = {"WORDS", "words of the title of a routine or a meet", 0, any_number};

}  // namespace

std::vector<Command> practice_commands() {
  return {
      {"practice start",
       "mark what a recorded panel marked, then see how you compare",
       "Draws lines from the recorded panels of the season book, the judges' marks hidden, and asks for "
       "yours, one by "
       "one. b goes back, s skips, p pauses; every mark is kept as soon as you give it, so a closed window "
       "loses "
       "nothing, and the same command goes on where you stopped. After the last one you see your marks "
       "beside the "
       "panel's.\n\nThis trains the eye. It does not make anyone a judge: courses and licences are your "
       "federation's.",
       {book, words},
       {&name_option, &lines_option, &seconds_option, &weak_option, &seed_option, &new_option, &event_option,
        &from_option, &until_option, &colour_option},
       {{"landdrill practice start club.season --name Robin", "twelve lines, as long as you like"},
        {"landdrill practice start club.season tarn open --name Robin --seconds 20 --lines 30",
         "one meet, with twenty seconds a mark"},
        {"landdrill practice start club.season --name Robin --weak", "more of what you find hard"}},
       practice_start},
      {"practice report",
       "how a trainee's marks compare, now and over the weeks",
       "Shows the last finished session again, or, with --curve, all of them: bias, how far off, the share "
       "within a "
       "step, and whether the order is the panel's.",
       {book},
       {&name_option, &curve_option, &format_option, &colour_option},
       {{"landdrill practice report club.season --name Robin", "the last session"},
        {"landdrill practice report club.season --name Robin --curve",
         "all sessions, to see whether it gets better"}},
       practice_report},
  };
}

}  // namespace landdrill::cli
