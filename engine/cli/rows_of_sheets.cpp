#include "engine/cli/call.h"
#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow brief_option = {"--brief", "", "one line a sheet, even for a single one"};
constexpr OptionRow tidy_write = {"--write", "", "rewrite the files in place, each whole or not at all"};
constexpr OptionRow tidy_check = {"--check", "",
                                  "print nothing but the names of files that are not tidy, and end with 1"};

constexpr OptionRow compare_full = {"--full", "", "part by part as well, and how every number comes about"};
constexpr OptionRow forecast_full = {"--full", "", "the model, and each line with what went into it"};
constexpr OptionRow plan_full = {"--full", "", "how each element of the best programme comes about as well"};
constexpr OptionRow spread_option = {
    "--spread", "MARKS", "how far judges' marks scatter (standard deviation), whatever the sheet says"};
constexpr OptionRow day_option = {"--day", "MARKS",
                                  "how far good and bad days shift all marks (standard deviation)"};
constexpr OptionRow spreads_option = {"--spreads", "sheet|panels|set",
                                      "take both from the sheet, its recorded panels or the value set only",
                                      "sheet panels set"};
constexpr OptionRow forecast_target = {"--target", "POINTS",        "say how likely this total is reached",
                                       {},         Offers::nothing, true};
constexpr OptionRow against_option = {
    "--against", "FILE", "say how likely the routine of this sheet is beaten", {}, Offers::files};
constexpr OptionRow within_option = {
    "--within", "POINTS", "how far a total may lie from where it truly is, at most (finer takes longer)"};
constexpr OptionRow aim_option = {
    "--aim", "expected|SHARE%",
    "the highest expected total, or the highest that is missed no more often than SHARE % of the time"};
constexpr OptionRow plan_target = {"--target", "POINTS", "the best chance to reach this total"};
constexpr OptionRow limit_option = {"--limit", "LIMIT",         "a limit as in a sheet: \"throw most 2\"",
                                    {},        Offers::nothing, true};
constexpr OptionRow keep_option = {
    "--keep", "NUMBER[=TITLE]", "the element stays, as written or with this option",
    {},       Offers::nothing,  true};
constexpr OptionRow optional_option = {"--optional", "NUMBER",        "the element may be left out",
                                       {},           Offers::nothing, true};
constexpr OptionRow ignore_option = {"--ignore-limits", "",
                                     "plan without the limits of the event; yours still hold"};
constexpr OptionRow plan_seconds = {"--seconds", "SECONDS", "how long to look at most (otherwise 10)"};
constexpr OptionRow top_option = {"--top", "NUMBER", "the first so many lines only"};

}  // namespace

const std::vector<Command> sheet_commands = {
    {"score",
     "what a routine is worth, line by line, beside a panel",
     "Prices the routine from its value set, puts in the marks you expect (written down, or from your "
     "run-throughs), and adds it all up. When the sheet holds a recorded panel, its marks stand beside "
     "yours, and below stands what led from the one total to the other.\n\n"
     "The files are read one after the other as one long sheet: every `routine` line starts a new "
     "routine, and runs and panels belong to the routine above them, even from another file. One routine "
     "gets the full report; several get one line each, however many they are.",
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
     score},
    {"check",
     "every mistake in a sheet, and every limit the routine breaks",
     "Reads the sheets as score does and reports everything that is wrong with them, but prices nothing. "
     "Ends with 1 when there is an error or a broken limit.",
     {sheets_operand},
     {&text_or_json, &set_option, &values_option, &season_option},
     {{"landdrill check harbour-lights.sheet", "says ok, or what to mend and where"},
      {"landdrill check club/*.sheet", "all sheets of the club in one go"}},
     check},
    {"tidy",
     "the sheet written out neatly, with its comments",
     "Prints the tidied sheet. Nothing is changed unless you say --write. A file with errors is refused, "
     "so that nothing you typed can be lost.",
     {sheets_operand},
     {&tidy_write, &tidy_check, &text_or_json},
     {{"landdrill tidy harbour-lights.sheet", "look at it"},
      {"landdrill tidy --write club/*.sheet", "rewrite the files"},
      {"landdrill tidy --check club/*.sheet", "which files are not tidy?"}},
     tidy},
    {"explain",
     "one line of a score, down to the table rows it comes from",
     "Shows how one number of the report came about: the rule, the numbers in it, and for each of them "
     "the row of the value set, its source and how far it can be trusted. A line of the recorded panel is "
     "asked for with the word panel in front. Without LINE it lists the lines that can be asked for.",
     {sheet_operand, {"LINE", "the words of the line: element 2 difficulty", 0, any_number}},
     {&panel_option, &runs_option, &option_option, &text_or_json, &set_option, &values_option, &season_option,
      &colour_option},
     {{"landdrill explain harbour-lights.sheet", "which lines there are"},
      {"landdrill explain harbour-lights.sheet element 2 difficulty", "what the element is worth, and why"},
      {"landdrill explain harbour-lights.sheet panel element 2",
       "what the panel gave for it, judge by judge"}},
     explain},
    {"compare",
     "the options of an element side by side: which gives more",
     "For each option: what it is worth as declared and on the base mark, and what that comes to by the "
     "chance of the base mark (`slip` in the sheet, or your run-throughs). Then which gives more and why, "
     "step by step, and how far the mark of the harder one may fall, or its base marks may become more "
     "frequent, before the easier one is better. Without ELEMENT: every element that has options.\n\n"
     "This compares ways to swim an element. What changed between two value sets is told by `landdrill "
     "values compare`.",
     {sheet_operand, {"ELEMENT", "its number or its title", 0, 1}},
     {&runs_option, &option_option, &spread_option, &day_option, &spreads_option, &format_option,
      &compare_full, &set_option, &values_option, &season_option, &colour_option},
     {{"landdrill compare harbour-lights.sheet", "every element that has options"},
      {"landdrill compare harbour-lights.sheet 2", "the second element"},
      {"landdrill compare harbour-lights.sheet Beacon --full", "one element, part by part"}},
     compare},
    {"forecast",
     "how likely which score is, line by line and in all",
     "The expected marks are where the judges' marks lie on average. How far they scatter, how good and "
     "bad days shift them, how often an element gets its base mark and how many sync errors there are "
     "comes from the sheet (`spread`, `day`, `slip`, `errors`, `risk`), from its recorded panels and "
     "runs, or from the value set; the report says which. The odds are worked out, not drawn, and "
     "the report says how far a total or a chance may be off for the way they are added up.\n\n"
     "The model. A good or bad day shifts every mark of the performance by the same amount: a bell curve. "
     "Each judge gives her own mark around the expected one so shifted, another bell curve, on the nearest "
     "step of the scale and never outside it; once the day is known, judges are independent of each other. "
     "An "
     "element gets its base mark with its own chance, whatever the marks and the other elements. Sync errors "
     "come one by one, so many on average; a penalty comes with its chance. High and low are dropped and "
     "points rounded as the value set says. Nothing else is in it: no judge, say, who is strict all "
     "along.\n\n"
     "--against takes the other sheet as it is written; each of the two has a good or bad "
     "day of its own. --spread and --day hold for both.",
     {sheet_operand},
     {&forecast_target, &against_option, &spread_option, &day_option, &spreads_option, &within_option,
      &runs_option, &option_option, &format_option, &forecast_full, &set_option, &values_option,
      &season_option, &colour_option},
     {{"landdrill forecast harbour-lights.sheet", "what to expect, and how far off it may be"},
      {"landdrill forecast harbour-lights.sheet --target 210 --target 220", "how likely are these?"},
      {"landdrill forecast harbour-lights.sheet --against rival.sheet", "who is likely to win?"},
      {"landdrill forecast harbour-lights.sheet --spread 0.5 --day 0.25",
       "when judges differ more, and days too"}},
     forecast},
    {"plan",
     "the best option for every element, within all limits",
     "Chooses one option for each element, and leaves out what the sheet calls `optional` where that is "
     "better, so that the expected total is highest (or what --aim or --target ask for). It keeps the "
     "limits of the event (how many elements of which kind, families, time, and what may be in one "
     "element) and your own (`limit` and `stays` in the sheet, --limit and --keep here). It says whether "
     "that is proved to be the best, what each limit costs, what the next best programmes are and how much "
     "the answer hangs on what you wrote. Where no change brings a gain that anyone would notice, it says "
     "to stay as you are. When no programme keeps all limits, it says which ones contradict each other, and "
     "ends with 1.",
     {sheet_operand},
     {&aim_option, &plan_target, &limit_option, &keep_option, &optional_option, &ignore_option, &plan_seconds,
      &spread_option, &day_option, &spreads_option, &runs_option, &option_option, &format_option, &plan_full,
      &set_option, &values_option, &season_option, &colour_option},
     {{"landdrill plan harbour-lights.sheet", "the highest expected total"},
      {"landdrill plan harbour-lights.sheet --target 210", "the best chance of 210 points"},
      {"landdrill plan harbour-lights.sheet --aim 25%", "a total to be reached three times in four"},
      {"landdrill plan harbour-lights.sheet --limit \"breath most 14.5\" --keep 6=dimmed",
       "no more than 14.5 s under water in one go, and a dimmed Beacon"}},
     plan},
    {"train",
     "where training buys most, ranked",
     "For each element and each mark: what the expected total would gain by a tenth of a mark, by half "
     "the chance of the base mark, by one sync error or penalty less. Ranked by what it brings.",
     {sheet_operand},
     {&top_option, &runs_option, &option_option, &format_option, &full_option, &set_option, &values_option,
      &season_option, &colour_option},
     {{"landdrill train harbour-lights.sheet", "everything, best first"},
      {"landdrill train harbour-lights.sheet --top 5", "the five that bring most"}},
     train},
};

}  // namespace landdrill::cli
