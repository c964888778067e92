#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow event_option = {"--event", "CODE", "only routines of this event"};
constexpr OptionRow from_option = {"--from", "DATE", "only what was swum on this day or later"};
constexpr OptionRow until_option = {"--until", "DATE", "only what was swum on this day or earlier"};
constexpr OptionRow all_option = {"--all", "", "every version, not the latest alone"};

constexpr OperandRow book = {"BOOK", "the season book: a season file", 1, 1, Offers::files};
constexpr OperandRow words = {"WORDS", "words of the title of a routine or a meet", 0, any_number};
constexpr OperandRow added = {"FILE", "a sheet, or a list of marks (.csv)", 1, any_number, Offers::files};
constexpr OperandRow backup = {"BACKUP", "the file of the backup", 1, 1, Offers::files};

}  // namespace

std::vector<Command> book_commands() {
  return {
      {"book add",
       "keep sheets, or recorded marks from a spreadsheet, in the season book",
       "Keeps each routine, each run and each panel of the sheets in the season file, with the value set it "
       "was "
       "priced from. The same again changes nothing; another text for the same routine, run or panel becomes "
       "a new "
       "version, and the old one stays.\n\n"
       "A list of marks is a CSV file with one row a mark: date, meet, routine, element (its number, or an "
       "aspect such "
       "as choreography), judge, mark. Its routines must be in the book already. Everything is added, or, "
       "when "
       "anything is wrong, nothing.",
       {book, added},
       {&format_option, &set_option, &values_option, &season_option},
       {{"landdrill book add club.season harbour-lights.sheet", "the routine, its runs and its panels"},
        {"landdrill book add club.season tarn-open.csv", "the marks of a meet, from a spreadsheet"}},
       book_add},
      {"book list",
       "what is in the season book",
       "Lists routines, runs and panels, with how many versions there are of each. With WORDS: those that "
       "have all of "
       "them in their title.",
       {book, words},
       {&event_option, &from_option, &until_option, &all_option, &format_option},
       {{"landdrill book list club.season", "everything, the latest version of each"},
        {"landdrill book list club.season harbour --all", "every version of one routine"},
        {"landdrill book list club.season --from 2026-05-01 --event duet-free", "what was swum since May"}},
       book_list},
      {"book export",
       "routines of the season book as sheets",
       "Prints the routines that are found, each with its runs and panels, as a sheet that every other "
       "command reads.",
       {book, words},
       {&event_option, &from_option, &until_option, &all_option},
       {{"landdrill book export club.season harbour > harbour-lights.sheet", "a sheet again"}},
       book_export},
      {"book score",
       "every panel of the season book, scored again as it was then",
       "Scores each recorded panel with the edition of the value set that was kept with it, beside the "
       "estimate from "
       "the runs up to that day.",
       {book, words},
       {&event_option, &from_option, &until_option, &all_option, &format_option},
       {{"landdrill book score club.season", "one line a panel"},
        {"landdrill book score club.season harbour --format csv", "one routine, for a spreadsheet"}},
       book_score},
      {"book backup",
       "a copy of the season file, also while it is in use",
       "Copies the whole season file as it is at one moment, also while another program writes to it, and "
       "checks the "
       "copy.",
       {book, backup},
       {},
       {{"landdrill book backup club.season club-2026-06-01.season", "a copy with the day in its name"}},
       book_backup},
      {"book restore",
       "the season file as it was in a backup",
       "Puts the backup in the place of what is in the season file. What was added since the backup is gone, "
       "so back "
       "the season file up first.",
       {book, backup},
       {},
       {{"landdrill book restore club.season club-2026-06-01.season", "back to the first of June"}},
       book_restore},
      {"book check",
       "damage in a season file, and what to do about it",
       "Reads every page of the season file and says whether it is sound.",
       {book},
       {},
       {{"landdrill book check club.season", "says ok, or what is damaged and what to do"}},
       book_check},
  };
}

}  // namespace landdrill::cli
