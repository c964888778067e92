#include "engine/cli/call.h"
#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow overwrite_option = {"--overwrite", "", "replace values that are there and differ"};
constexpr OptionRow source_option = {"--source", "TEXT", "where the value is from, for the row's source"};
constexpr OptionRow status_option = {"--status", "published|practice|memory|invented",
                                     "how far the value can be trusted (otherwise memory)",
                                     "published practice memory invented"};
constexpr OptionRow to_option = {
    "--to", "FOLDER", "write the filled set into this new folder", {}, Offers::folders};
constexpr OptionRow family_option = {"--family", "FAMILY",
                                     "put codes that the set does not have in as new parts of this family"};
constexpr OptionRow fill_write = {"--write", "", "write into the set itself"};
constexpr OptionRow why_option = {"--why", "TEXT", "the reason, for the history"};
constexpr OptionRow replace_option = {"--replace", "", "replace a set of the same name that is different"};
constexpr OptionRow season_here = {"--season", "FILE", "the season file", {}, Offers::files};

}  // namespace

const std::vector<Command> set_commands = {
    {"values list",
     "the value sets that can be named, and where they are",
     "Below the sets: the places that are looked in, in their order, and what counts where two sets have "
     "one name. With --season: the sets of that season file.",
     {},
     {&format_option, &values_option, &season_option},
     {{"landdrill values list", "all sets"},
      {"landdrill values list --season club.season", "the sets of a season file"}},
     values_list},
    {"values show",
     "what a value set says: all of it, one table, or one row",
     "Without TABLE: what the set holds and which tables there are. With TABLE: its rows. With ROW: "
     "everything the row says, with its source.",
     {set_operand,
      {"TABLE", "one table, such as parts", 0, 1, Offers::tables},
      {"ROW", "the row's code, or its codes", 0, any_number}},
     {&format_option, &values_option, &season_option},
     {{"landdrill values show kingfisher-2026", "what is in it"},
      {"landdrill values show kingfisher-2026 parts", "every part with its value"},
      {"landdrill values show kingfisher-2026 parts spin-720", "one part, with its source"},
      {"landdrill values show kingfisher-2026 panels duet-free execution", "a row that two codes name"}},
     values_show},
    {"values check",
     "every mistake in a value set",
     "Reads the set and reports everything that is wrong with it: numbers that are none, codes that occur "
     "twice, formulas and limits that cannot work.",
     {{"SET", "a value set: its name, or its folder", 1, any_number, Offers::sets}},
     {&text_or_json, &values_option, &season_option},
     {{"landdrill values check my-2026", "says ok, or what to mend and where"}},
     values_check},
    {"values missing",
     "the values that a sheet still needs",
     "Lists every value that the sheet needs and its set does not have yet, with what to do about it. "
     "Ends with 1 when something is missing.",
     {sheets_operand},
     {&format_option, &set_option, &values_option, &season_option},
     {{"landdrill values missing harbour-lights.sheet", "what you still have to look up"}},
     values_missing},
    {"values fill",
     "put a list of codes and values into a set",
     "The list is what you typed or pasted: a code and a value on each line, with comma, semicolon or tab "
     "between them, point or comma in the number, a heading or none; a column with a heading such as "
     "\"title\" names new codes. Shows what would be filled in; to write it, say --write (into the set "
     "itself), --to FOLDER (into a new one), or --season FILE. A value that is there already and differs "
     "is kept unless you say --overwrite.",
     {set_operand, {"LIST.csv", "the list; - is standard input", 1, 1, Offers::files}},
     {&family_option, &overwrite_option, &source_option, &status_option, &to_option, &fill_write,
      &format_option, &values_option, &season_option},
     {{"landdrill values fill my-2026 catalogue.csv", "what would it fill in?"},
      {"landdrill values fill my-2026 catalogue.csv --write --source \"catalogue of 2026\" --status "
       "published",
       "fill it in, and say where it is from"},
      {"landdrill values fill my-2026 thrusts.csv --write --family thrusts",
       "and take in the thrusts that the set does not have yet"}},
     values_fill},
    {"values compare",
     "what changed between two sets, and what that does to a sheet",
     "Lists the rows that are new, gone or changed. With sheets: what each element and the total would "
     "move by. A set with a / in its name is a folder; with --season the other names are looked up in the "
     "season file first.\n\n"
     "This compares value sets. The options of a sheet's elements are compared by `landdrill compare`.",
     {{"SET-A", "the set before", 1, 1, Offers::sets},
      {"SET-B", "the set after", 1, 1, Offers::sets},
      {"SHEET", "sheets to price from both", 0, any_number, Offers::files}},
     {&runs_option, &option_option, &format_option, &values_option, &season_option},
     {{"landdrill values compare my-2025 my-2026", "what is new?"},
      {"landdrill values compare my-2025 my-2026 harbour-lights.sheet", "and what does it do to our duet?"}},
     values_compare},
    {"values copy",
     "a set of your own to change, from one that is there",
     "Writes the set into a new folder, byte for byte. The folder's name is the new set's name.",
     {set_operand, {"FOLDER", "the new folder", 1, 1, Offers::folders}},
     {&text_or_json, &values_option, &season_option},
     {{"landdrill values copy kingfisher-2026 my-2026", "then write `values my-2026` in your sheets"}},
     values_copy},
    {"values edit",
     "change one value",
     "Changes one cell of a set and leaves every other byte alone. The row's source then says that you "
     "changed it and from what, and its status becomes memory, unless you say --source and --status. In a "
     "folder the old value is gone; in a season file the change has a history and can be undone. The sets "
     "that come with the program are never changed: copy one first.",
     {set_operand,
      {"TABLE", "the table, such as parts", 1, 1, Offers::tables},
      {"ROW", "the row's code (quote it when there are several: \"duet-free execution\")"},
      {"COLUMN", "the column, such as value"},
      {"VALUE", "the new value; '' empties the cell"}},
     {&why_option, &source_option, &status_option, &text_or_json, &values_option, &season_option},
     {{"landdrill values edit my-2026 parts spin-720 value 1.5", "in a folder of yours"},
      {"landdrill values edit kingfisher-2026 parts spin-720 value 1.5 --season club.season --why \"new "
       "catalogue\"",
       "in a season file"}},
     values_edit},
    {"values import",
     "take value sets into a season file",
     "The season file is one file that holds value sets with the history of every change. It is made "
     "when it is not there yet.",
     {{"SET", "a value set: its name, or its folder", 1, any_number, Offers::sets}},
     {&season_here, &why_option, &replace_option, &text_or_json, &values_option},
     {{"landdrill values import kingfisher-2026 --season club.season", "start a season file"}},
     values_import},
    {"values export",
     "write a set of a season file into a folder",
     "Writes the CSV files as they were imported, byte for byte but for the values changed since.",
     {{"SET", "a set of the season file", 1, 1, Offers::sets},
      {"FOLDER", "the new folder", 1, 1, Offers::folders}},
     {&season_here, &text_or_json},
     {{"landdrill values export kingfisher-2026 changed-2026 --season club.season", "for a spreadsheet"}},
     values_export},
    {"values undo",
     "take back the last change of a set in a season file",
     "Takes back the last change that stands; again for the one before.",
     {{"SET", "a set of the season file", 1, 1, Offers::sets}},
     {&season_here, &text_or_json},
     {{"landdrill values undo kingfisher-2026 --season club.season", "as it was before"}},
     values_undo},
    {"values redo",
     "bring back the change that was undone last",
     "Brings it back, unless something else was changed since.",
     {{"SET", "a set of the season file", 1, 1, Offers::sets}},
     {&season_here, &text_or_json},
     {{"landdrill values redo kingfisher-2026 --season club.season", "changed your mind again"}},
     values_redo},
    {"values history",
     "every change of a set in a season file: when, what, why",
     "Lists all changes, also those taken back.",
     {{"SET", "a set of the season file", 1, 1, Offers::sets}},
     {&season_here, &format_option},
     {{"landdrill values history kingfisher-2026 --season club.season", "who changed what, and why"}},
     values_history},
    {"values remove",
     "take a set out of a season file, with its history",
     "The folder it was imported from, if there is one, is left alone.",
     {{"SET", "a set of the season file", 1, 1, Offers::sets}},
     {&season_here, &text_or_json},
     {{"landdrill values remove kingfisher-2026 --season club.season", "gone from the season file"}},
     values_remove},
};

}  // namespace landdrill::cli
