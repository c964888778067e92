#include "engine/cli/command_rows.h"
#include "engine/cli/command_table.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow text_or_json = {"--format", "text|json", "how to print", "text json"};
constexpr OptionRow brief_option = {"--brief", "", "one line a sheet, even for a single one"};
constexpr OptionRow tidy_write = {"--write", "", "rewrite the files in place, each whole or not at all"};
constexpr OptionRow tidy_check = {"--check", "",
                                  "print nothing but the names of files that are not tidy, and end with 1"};

Command score_row() {
  return {
      "score",
      "what a routine is worth, line by line, beside a panel",
      "Prices the routine from its value set, puts in the marks you expect (written down, or from your "
      "run-throughs), "
      "and adds it all up. When the sheet holds a recorded panel, its marks stand beside yours, and below "
      "stands what "
      "led from the one total to the other.\n\n"
      "The files are read one after the other as one long sheet: every `routine` line starts a new routine, "
      "and runs "
      "and panels belong to the routine above them, even from another file. One routine gets the full "
      "report; several "
      "get one line each, however many they are.",
      {sheets_operand},
      {&panel_option, &runs_option, &option_option, &format_option, &full_option, &brief_option, &set_option,
       &values_option, &season_option, &colour_option},
      {{"landdrill score harbour-lights.sheet", "the report, beside the last panel of the sheet"},
       {"landdrill score harbour-lights.sheet --option 2=safer", "the same with the safer second element"},
       {"landdrill score harbour-lights.sheet --panel none --runs mean",
        "the estimate alone, from all run-throughs"},
       {"landdrill score club/*.sheet", "one line a routine"},
       {"landdrill score - --format csv < season.sheet > season.csv",
        "any number of routines, for a spreadsheet"}},
      score};
}

Command check_row() {
  return {
      "check",
      "every mistake in a sheet, and every limit the routine breaks",
      "Reads the sheets as score does and reports everything that is wrong with them, but prices nothing. "
      "Ends with 1 "
      "when there is an error or a broken limit.",
      {sheets_operand},
      {&text_or_json, &set_option, &values_option, &season_option},
      {{"landdrill check harbour-lights.sheet", "says ok, or what to mend and where"},
       {"landdrill check club/*.sheet", "all sheets of the club in one go"}},
      check};
}

Command tidy_row() {
  return {
      "tidy",
      "the sheet written out neatly, with its comments",
      "Prints the tidied sheet. Nothing is changed unless you say --write. A file with errors is refused, "
      "so that "
      "nothing you typed can be lost.",
      {sheets_operand},
      {&tidy_write, &tidy_check},
      {{"landdrill tidy harbour-lights.sheet", "look at it"},
       {"landdrill tidy --write club/*.sheet", "rewrite the files"},
       {"landdrill tidy --check club/*.sheet", "which files are not tidy?"}},
      tidy};
}

Command explain_row() {
  return {
      "explain",
      "one line of a score, down to the table rows it comes from",
      "Shows how one number of the report came about: the rule, the numbers in it, and for each of them the "
      "row of the "
      "value set, its source and how far it can be trusted. A line of the recorded panel is asked for with "
      "the word "
      "panel in front. Without LINE it lists the lines that can be asked for.",
      {sheet_operand, {"LINE", "the words of the line: element 2 difficulty", 0, any_number}},
      {&panel_option, &runs_option, &option_option, &text_or_json, &set_option, &values_option,
       &season_option, &colour_option},
      {{"landdrill explain harbour-lights.sheet", "which lines there are"},
       {"landdrill explain harbour-lights.sheet element 2 difficulty", "what the element is worth, and why"},
       {"landdrill explain harbour-lights.sheet panel element 2",
        "what the panel gave for it, judge by judge"}},
      explain};
}

}  // namespace

std::vector<Command> sheet_commands() {
  return {score_row(), check_row(), tidy_row(), explain_row()};
}

}  // namespace landdrill::cli
