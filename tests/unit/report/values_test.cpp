#include "engine/report/values.h"

#include <gtest/gtest.h>

#include <boost/json.hpp>

#include "sample.h"
#include "tables/csv.h"

namespace landdrill::report {
namespace {

using namespace report_test;

const TableFiles& club() {
  static const TableFiles files{
      "club-2026",
      "",
      {{"parts.csv",
        "code,family,title,value,source,status\n"
        "spin-360,spins,Spin of 360 degrees,0.9,invented for the test,invented\n"
        "spin-720,spins,Spin of 720 degrees,,invented for the test,invented\n"
        "thrust,thrusts,\"Thrust, high\",10.25,invented for the test,invented\n"},
       {"set.csv", "title,edition,note,source,status\nClub,2026,,invented for the test,invented\n"}}};
  return files;
}

TEST(ShowSet, AlignsATableAndCallsAGapAGap) {
  EXPECT_EQ(show_set(club(), {"parts", ""}, Format::text, {}),
            "club-2026\n"
            "\n"
            "parts.csv: the parts of elements and what they are worth\n"
            "in every row: source invented for the test; status invented\n"
            "\n"
            "code      family   title                value\n"
            "spin-360  spins    Spin of 360 degrees   0.9\n"
            "spin-720  spins    Spin of 720 degrees    gap\n"
            "thrust    thrusts  Thrust, high         10.25\n"
            "\n"
            "Still to fill in: 1 gap.\n");
}

TEST(ShowSet, ShowsTheTablesInReadingOrder) {
  const std::string text = show_set(club(), {}, Format::text, {});
  EXPECT_LT(text.find("set.csv"), text.find("parts.csv"));
  EXPECT_NE(text.find("parts.csv"), std::string::npos);
}

TEST(ShowSet, ShowsARowWithWhatItsColumnsMean) {
  const std::string text = show_set(club(), {"parts", "spin-720"}, Format::text, {false, 100, false});
  EXPECT_TRUE(text.starts_with("parts.csv line 3: spin-720\n")) << text;
  EXPECT_TRUE(holds(text, "\nvalue   gap                    what it is worth; empty: a gap to fill in\n"))
      << text;
}

TEST(ShowSet, FindsARowWithoutItsTable) {
  EXPECT_EQ(show_set(club(), {"", "spin-720"}, Format::text, {}),
            show_set(club(), {"parts", "spin-720"}, Format::text, {}));
}

TEST(ShowSet, IsEmptyForWhatIsNotThere) {
  for (const Format format : {Format::text, Format::csv, Format::json}) {
    EXPECT_EQ(show_set(club(), {"parts", "spin-730"}, format, {}), "");
    EXPECT_EQ(show_set(club(), {"faults", ""}, format, {}), "");
    EXPECT_EQ(show_set(club(), {"nothing", ""}, format, {}), "");
  }
}

TEST(ShowSet, WritesEveryCellAsCsvAndJson) {
  EXPECT_EQ(show_set(club(), {"parts", "thrust"}, Format::csv, {}),
            "code,family,title,value,source,status\nthrust,thrusts,\"Thrust, high\",10.25,invented for the "
            "test,invented\n");
  const boost::json::value shown = boost::json::parse(show_set(club(), {"parts", ""}, Format::json, {}));
  EXPECT_EQ(shown.at("set"), "club-2026");
  EXPECT_EQ(shown.at_pointer("/parts/0/value"), "0.9");
  EXPECT_TRUE(shown.at_pointer("/parts/1/value").is_null());
}

TEST(ShowSet, PutsATableThatIsTooWideBelowItself) {
  TableFiles wide{"wide", "", {{"parts.csv", "code,value"}}};
  std::string& text = wide.files[0].text;
  for (int i = 0; i < 20; ++i) text += ",column_number_" + std::to_string(i);
  for (const char* code : {"\na,1", "\nb,2"}) {
    text += code;
    for (int i = 0; i < 20; ++i) text += ",cell" + std::to_string(i) + code[1];
  }
  text += "\n";
  for (int width = 60; width < 130; ++width) {
    const std::string shown = show_set(wide, {"parts", ""}, Format::text, {false, width, false});
    EXPECT_EQ(layout_fault(shown, width), "");
    for (int i = 0; i < 20; ++i) EXPECT_TRUE(holds(shown, "cell" + std::to_string(i) + "b")) << i;
  }
}

TEST(ShowSet, NamesTheRowsThereAre) {
  EXPECT_EQ(row_keys(club(), "parts"), (std::vector<std::string>{"spin-360", "spin-720", "thrust"}));
  EXPECT_EQ(row_keys(club(), "faults"), std::vector<std::string>());
}

TEST(SetList, ShowsEachSetOnceAndEachPlaceOnce) {
  const std::vector<SetLine> sets = {{"club-2026", "Club league", "2026", "values", 214, {}},
                                     {"old", "Old rules", "1996", "values", 12, 3}};
  EXPECT_EQ(set_list(sets, Format::text, {}),
            "name       title        edition  rows  edits\n"
            "club-2026  Club league  2026      214\n"
            "old        Old rules    1996       12      3\n"
            "\n"
            "kept in values\n");
  EXPECT_EQ(set_list(sets, Format::csv, {}),
            "name,title,edition,rows,edits,place\nclub-2026,Club league,2026,214,,values\nold,Old "
            "rules,1996,12,3,values\n");
  EXPECT_EQ(boost::json::parse(set_list(sets, Format::json, {})).at_pointer("/sets/1/edits"), "3");
  EXPECT_EQ(set_list({}, Format::text, {}), "No value sets.\n");
}

SetComparison two_changes() {
  return {{{"parts", "spin-360", RowChange::What::changed, {{"value", "0.9", "1.0"}, {"source", "a", "b"}}},
           {"faults", "splash", RowChange::What::gone, {}}}};
}

TEST(Comparison, TellsEachCellThatChangedAndWhatItDoesToASheet) {
  const SetComparison changes = two_changes();
  EXPECT_EQ(
      comparison(
          {"club-2026", "club-2027", &changes, "harbour.sheet", {{"2 Undertow", "4.00", "4.10", "+0.10"}}},
          Format::text, {}),
      "From club-2026 to club-2027\n"
      "\n"
      "table   row       change   column  before  after\n"
      "parts   spin-360  changed  value   0.9     1.0\n"
      "parts   spin-360  changed  source  a       b\n"
      "faults  splash    gone\n"
      "\n"
      "What that does to the difficulty of harbour.sheet\n"
      "\n"
      "line        before  after  change\n"
      "2 Undertow    4.00   4.10   +0.10\n");
}

TEST(Comparison, SaysWhenNothingDiffers) {
  const SetComparison same, changes = two_changes();
  EXPECT_EQ(comparison({"a", "b", &same, "", {}}, Format::text, {}), "From a to b: no value differs.\n");
  EXPECT_TRUE(holds(comparison({"a", "b", &changes, "x.sheet", {}}, Format::text, {}),
                    "Nothing in x.sheet is worth more or less.\n"));
}

TEST(Comparison, ReadsBackFromCsvAndJson) {
  const SetComparison changes = two_changes();
  const ComparedSets compared{"a", "b", &changes, "x.sheet", {{"2 Undertow", "4.00", "4.10", "+0.10"}}};
  const std::string csv = comparison(compared, Format::csv, {});
  EXPECT_TRUE(holds(csv, "parts,spin-360,changed,value,0.9,1.0\n"));
  EXPECT_TRUE(holds(csv, "sheet,2 Undertow,moved,difficulty,4.00,4.10\n"));
  const boost::json::value json = boost::json::parse(comparison(compared, Format::json, {}));
  EXPECT_EQ(json.at_pointer("/changes/0/after"), "1.0");
  EXPECT_EQ(json.at_pointer("/changes/2/change"), "gone");
  EXPECT_EQ(json.at_pointer("/moves/0/change"), "+0.10");
}

TEST(History, TellsEachEditAndWhichAreUndone) {
  const std::vector<HistoryLine> edits = {
      {"1", "2026-04-14T18:03:11Z", "parts", "spin-360", "value", "0.9", "1.0", "new catalogue", false},
      {"2", "2026-04-15T07:00:00Z", "parts", "spin-720", "value", "", "1.4", "", true}};
  EXPECT_EQ(history("club-2026", edits, Format::text, {false, 100, false}),
            "no.  at                    edit\n"
            "  1  2026-04-14T18:03:11Z  parts spin-360: value 0.9 to 1.0 (new catalogue)\n"
            "  2  2026-04-15T07:00:00Z  parts spin-720: value nothing to 1.4              undone\n");
  EXPECT_TRUE(holds(history("club-2026", edits, Format::csv, {}),
                    "\n2,2026-04-15T07:00:00Z,parts,spin-720,value,,1.4,,undone\n"));
  EXPECT_EQ(boost::json::parse(history("club-2026", edits, Format::json, {})).at_pointer("/edits/0/why"),
            "new catalogue");
  EXPECT_EQ(history("club-2026", {}, Format::text, {}), "club-2026 has not been edited.\n");
}

TEST(FilledIn, TellsWhatIsFilledAndWhatIsMissingStill) {
  Filled outcome;
  outcome.filled = {"a", "b"};
  outcome.still_missing = {"c"};
  EXPECT_EQ(filled(outcome, Format::text, {}), "Filled in (2): a, b\nStill missing (1): c\n");
  EXPECT_EQ(filled(outcome, Format::csv, {}), "code,outcome\na,filled\nb,filled\nc,missing\n");
  EXPECT_EQ(filled({}, Format::text, {}), "Nothing to fill in.\n");
}

TEST(Gaps, NameTheRowsToFillIn) {
  EXPECT_EQ(gaps({{"parts", "2rb", "value"}}, "declared-2024", Format::text, {}),
            "To fill in, in declared-2024, before this sheet can be scored:\ntable  row  column\nparts  2rb  "
            "value\n");
  EXPECT_EQ(gaps({}, "declared-2024", Format::text, {}),
            "declared-2024 has every value that this sheet needs.\n");
}

}  // namespace
}  // namespace landdrill::report
