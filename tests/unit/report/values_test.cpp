// What is said of value sets: which there are, what is in one, what changed, what is missing.
#include "engine/report/pages/values.h"

#include <gtest/gtest.h>

#include <boost/json.hpp>

#include "engine/report/render.h"
#include "sample.h"
#include "tables/decimal.h"
#include "tests/unit/kit/kit.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string text_of(const Page& page, int width = 80) {
  return render_text(page, {false, width, false});
}
boost::json::value json_of(const Page& page) {
  return boost::json::parse(render_json(page));
}

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
  EXPECT_EQ(text_of(*values_show_page(club(), "parts", "")),
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
  const std::string text = text_of(*values_show_page(club(), "", ""));
  EXPECT_LT(text.find("set.csv"), text.find("parts.csv"));
  EXPECT_NE(text.find("parts.csv"), std::string::npos);
}

TEST(ShowSet, ShowsARowWithWhatItsColumnsMean) {
  const std::string text = text_of(*values_show_page(club(), "parts", "spin-720"), 100);
  EXPECT_TRUE(text.starts_with("parts.csv line 3: spin-720\n")) << text;
  EXPECT_TRUE(holds(text, "\nvalue   gap                    what it is worth; empty: a gap to fill in\n"))
      << text;
}

TEST(ShowSet, FindsARowWithoutItsTable) {
  EXPECT_EQ(text_of(*values_show_page(club(), "", "spin-720")),
            text_of(*values_show_page(club(), "parts", "spin-720")));
}

TEST(ShowSet, SaysWhatThereIsInsteadOfWhatIsNotThere) {
  const auto mistake = [](std::string_view table, std::string_view row) {
    const Answer page = values_show_page(club(), table, row);
    return page ? "" : page.error();
  };
  EXPECT_EQ(mistake("parts", "spin-720"), "");
  EXPECT_EQ(mistake("parts", "spin-730"),
            "found \"spin-730\"; expected a row of parts in club-2026\n  hint: the nearest are spin-720, "
            "spin-360");
  EXPECT_EQ(
      mistake("parts", "xxxxxxx"),
      "found \"xxxxxxx\"; expected a row of parts in club-2026\n  hint: there is spin-360, spin-720, thrust");
  EXPECT_EQ(mistake("faults", ""), "club-2026 has no table faults");
  EXPECT_EQ(mistake("prats", ""), "found \"prats\"; expected a table\n  hint: the nearest is parts");
}

TEST(ShowSet, WritesEveryCellAsCsvAndJson) {
  EXPECT_EQ(render_csv(*values_show_page(club(), "parts", "thrust")),
            "code,family,title,value,source,status\nthrust,thrusts,\"Thrust, high\",10.25,invented for the "
            "test,invented\n");
  EXPECT_EQ(render_csv(*values_show_page(club(), "", "")),
            "title,edition,note,source,status\nClub,2026,,invented for the test,invented\n");
  const boost::json::value shown = json_of(*values_show_page(club(), "", ""));
  EXPECT_EQ(shown.at("report"), "values show");
  EXPECT_EQ(shown.at("name"), "club-2026");
  EXPECT_EQ(shown.at_pointer("/set/0/edition"), "2026");
  EXPECT_EQ(json_of(*values_show_page(club(), "parts", "")).at("set"), "club-2026");
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
    const std::string shown = text_of(*values_show_page(wide, "parts", ""), width);
    EXPECT_EQ(layout_fault(shown, width), "");
    for (int i = 0; i < 20; ++i) EXPECT_TRUE(holds(shown, "cell" + std::to_string(i) + "b")) << i;
  }
}

TEST(ShowSet, NamesTheRowsThereAre) {
  EXPECT_EQ(row_keys(club(), "parts"), (std::vector<std::string>{"spin-360", "spin-720", "thrust"}));
  EXPECT_EQ(row_keys(club(), "faults"), std::vector<std::string>());
}

ListedSets two_sets() {
  return {{{"club-2026", "Club league", "2026", 214, {}, "/home/sets/club-2026", 2, {"/usr/sets/club-2026"}},
           {"old", "Old rules", "1996", 12, {}, "/usr/sets/old", 3}},
          {{"the folders that --values names"},
           {"your own folder", {"/home/sets"}},
           {"the program", {"/usr/sets"}}}};
}

TEST(SetList, TellsWhichOfTwoSetsOfOneNameCountsAndWhy) {
  EXPECT_EQ(text_of(values_list_page(two_sets())),
            "name       title        edition  rows  place\n"
            "club-2026  Club league  2026      214      2\n"
            "old        Old rules    1996       12      3\n"
            "\n"
            "Places of sets: the first that is found counts\n"
            "  1. the folders that --values names\n"
            "  2. your own folder\n"
            "     /home/sets\n"
            "  3. the program\n"
            "     /usr/sets\n"
            "\n"
            "There are 2 sets called club-2026. The first one here counts, the other does\n"
            "not:\n"
            "  - /home/sets/club-2026\n"
            "  - /usr/sets/club-2026\n");
}

TEST(SetList, SaysThatASeasonFileIsTheOnlyPlace) {
  const ListedSets season{{{"old", "Old rules", "1996", 12, 3, "club.season"}}, {}, "club.season"};
  EXPECT_EQ(text_of(values_list_page(season)),
            "name  title      edition  rows  edits\n"
            "old   Old rules  1996       12      3\n"
            "\n"
            "With --season, sets come from that file alone: club.season\n");
  EXPECT_TRUE(
      text_of(values_list_page({{}, {}, "club.season"})).starts_with("No value sets.\n\nWith --season"));
}

TEST(SetList, GivesProgramsTheWholePlaces) {
  EXPECT_EQ(render_csv(values_list_page(two_sets())),
            "name,title,edition,rows,edits,place,hidden\n"
            "club-2026,Club league,2026,214,,/home/sets/club-2026,/usr/sets/club-2026\n"
            "old,Old rules,1996,12,,/usr/sets/old,\n");
  const boost::json::value json = json_of(values_list_page(two_sets()));
  EXPECT_EQ(json.at_pointer("/sets/0/rows"), 214);
  EXPECT_TRUE(json.at_pointer("/sets/0/edits").is_null());
  EXPECT_EQ(json.at_pointer("/sets/0/hidden/0"), "/usr/sets/club-2026");
  EXPECT_EQ(json.at_pointer("/sets/1/hidden").as_array().size(), 0u);
}

TEST(CheckedSet, SaysInOneLineWhetherItCanBeUsedAndWhatIsStillToFillIn) {
  const Loaded pond = load(kit::Tables().files());
  ASSERT_TRUE(pond.set);
  EXPECT_EQ(text_of(values_check_page("pond", pond)), "pond: ok; 9 values still to fill in\n");
  const boost::json::value json = json_of(values_check_page("pond", pond));
  EXPECT_EQ(json.at("can_be_used"), true);
  EXPECT_EQ(json.at("to_fill_in"), gaps_in(*pond.set));
}

TEST(CheckedSet, OfMistakesSaysTheirNumberAndGivesThemToPrograms) {
  kit::Tables broken;
  broken.replace("parts.csv", "spin-a,spins", "spin-a,spinns")
      .replace("parts.csv", "Fast spin,1.4,", "Fast spin,1.4x,");
  const Loaded loaded = load(broken.files());
  EXPECT_EQ(text_of(values_check_page("pond", loaded)), "pond: 2 errors\n");
  const boost::json::value json = json_of(values_check_page("pond", loaded));
  EXPECT_EQ(json.at("can_be_used"), false);
  EXPECT_EQ(json.at("messages").as_array().size(), 2u);
}

SetComparison two_changes() {
  return {{{"parts", "spin-360", RowChange::What::changed, {{"value", "0.9", "1.0"}, {"source", "a", "b"}}},
           {"faults", "splash", RowChange::What::gone, {}}}};
}

ComparedSets compared(std::vector<SheetMove> moves) {
  return {"club-2026", "club-2027", two_changes(), "harbour.sheet", std::move(moves)};
}

TEST(Comparison, TellsEachCellThatChangedAndWhatItDoesToASheet) {
  EXPECT_EQ(text_of(values_compare_page(
                compared({{"2 Undertow", Decimal::parse("4.00"), Decimal::parse("4.10"), 2}}))),
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
  EXPECT_EQ(text_of(values_compare_page({"a", "b", {}, "x.sheet"})), "From a to b: no value differs.\n");
  EXPECT_TRUE(holds(text_of(values_compare_page(compared({}))),
                    "\n\nNothing in harbour.sheet is worth more or less.\n"));
}

TEST(Comparison, ReadsBackFromCsvAndJson) {
  const Page page =
      values_compare_page(compared({{"2 Undertow", Decimal::parse("4.00"), Decimal::parse("4.10"), 2}}));
  EXPECT_TRUE(holds(render_csv(page), "parts,spin-360,changed,value,0.9,1.0\n"));
  EXPECT_TRUE(holds(render_csv(page), "\nsheet,2 Undertow,moved,difficulty,4.00,4.10\n"));
  const boost::json::value json = json_of(page);
  EXPECT_EQ(json.at("after"), "club-2027");
  EXPECT_EQ(json.at_pointer("/changes/0/after"), "1.0");
  EXPECT_EQ(json.at_pointer("/changes/2/change"), "gone");
  EXPECT_EQ(json.at_pointer("/moves/0/change"), "+0.10");
}

TEST(History, TellsEachEditAndWhichAreUndone) {
  const std::vector<HistoryLine> edits = {
      {1, "2026-04-14T18:03:11Z", "parts", "spin-360", "value", "0.9", "1.0", "new catalogue"},
      {2, "2026-04-14T18:03:11Z", "parts", "spin-360", "source", "a", "b", "goes with it", false, true},
      {3, "2026-04-15T07:00:00Z", "parts", "spin-720", "value", "", "1.4", "", true},
      {4, "2026-04-15T07:00:00Z", "replaced"}};
  const Page page = values_history_page("club-2026", edits);
  EXPECT_EQ(text_of(page, 100),
            "no.  at                    edit\n"
            "  1  2026-04-14T18:03:11Z  parts spin-360: value 0.9 to 1.0 (new catalogue)\n"
            "  3  2026-04-15T07:00:00Z  parts spin-720: value nothing to 1.4              undone\n"
            "  4  2026-04-15T07:00:00Z  replaced\n");
  EXPECT_TRUE(holds(render_csv(page), "number,at,table,row,column,before,after,why,undone\n"));
  EXPECT_TRUE(holds(render_csv(page), "\n3,2026-04-15T07:00:00Z,parts,spin-720,value,,1.4,,undone\n"));
  const boost::json::value json = json_of(page);
  EXPECT_EQ(json.at_pointer("/edits/0/number"), 1);
  EXPECT_EQ(json.at_pointer("/edits/1/why"), "goes with it");
  EXPECT_FALSE(json.at_pointer("/edits/0").as_object().contains("edit"));
  EXPECT_EQ(text_of(values_history_page("club-2026", {})), "club-2026 has not been edited.\n");
}

TEST(FilledIn, TellsWhatIsFilledAndWhatIsMissingStill) {
  Filled outcome;
  outcome.filled = {"a", "b"};
  outcome.still_missing = {"c"};
  const Page page = values_fill_page(outcome, "ours");
  EXPECT_EQ(text_of(page), "Filled in (2): a, b\nStill missing (1): c\n\nWritten into ours.\n");
  EXPECT_EQ(render_csv(page), "code,outcome\na,filled\nb,filled\nc,missing\n");
  EXPECT_EQ(json_of(page).at_pointer("/codes/2/outcome"), "missing");
  EXPECT_EQ(text_of(values_fill_page({}, "ours")), "Nothing to fill in.\n\nWritten into ours.\n");
  EXPECT_TRUE(holds(text_of(values_fill_page({}, "")), "Nothing is written yet"));
  EXPECT_TRUE(json_of(values_fill_page({}, "")).at("written_into").is_null());
}

TEST(Gaps, NameTheRowsToFillIn) {
  const Page page =
      values_missing_page({"duet.sheet", "Reeds", "declared-2024", {{"parts", "2rb", "value"}}});
  EXPECT_EQ(text_of(page),
            "duet.sheet: Reeds\n"
            "To fill in, in declared-2024, before this sheet can be scored:\n"
            "table  row  column\n"
            "parts  2rb  value\n"
            "\n"
            "To fill them in:\n"
            "  landdrill values fill declared-2024 LIST.csv --write\n"
            "      with a code and a value on each line of LIST.csv\n");
  EXPECT_EQ(render_csv(page), "table,row,column\nparts,2rb,value\n");
  EXPECT_EQ(json_of(page).at("file"), "duet.sheet");
  EXPECT_EQ(json_of(page).at_pointer("/gaps/0/row"), "2rb");
  EXPECT_EQ(text_of(values_missing_page({"duet.sheet", "Reeds", "declared-2024", {}})),
            "duet.sheet: Reeds\ndeclared-2024 has every value that this sheet needs.\n");
}

TEST(Gaps, AreFilledInInACopyWhereTheSetComesWithTheProgram) {
  const Page page =
      values_missing_page({"duet.sheet", "Reeds", "declared-2024", {{"quotas", "duet", "most"}}, true});
  EXPECT_TRUE(holds(text_of(page),
                    "To fill them in:\n"
                    "  landdrill values copy declared-2024 my-set\n"
                    "      a set of your own; name it in the sheet: values my-set\n"
                    "  landdrill values edit my-set quotas \"duet\" most VALUE\n"));
}

RowChange change_of_value(std::string before, std::string after) {
  return {"parts", "spin-360", RowChange::What::changed, {{"value", std::move(before), std::move(after)}}};
}

TEST(ChangedCell, TellsWhatItWasAndWhatGoesWithIt) {
  RowChange change = change_of_value("", "1.0");
  change.cells.push_back({"status", "published", "memory"});
  const Page page = values_change_page("values edit", "ours", change);
  EXPECT_EQ(text_of(page), "ours parts spin-360: value nothing -> 1.0\n  its status is now \"memory\"\n");
  EXPECT_EQ(json_of(page).at("set"), "ours");
  EXPECT_EQ(json_of(page).at_pointer("/changes/0/after"), "1.0");
  EXPECT_EQ(json_of(page).at_pointer("/changes/1/column"), "status");
}

TEST(ChangedCell, ThatSaysSoAlreadyIsNoChange) {
  const Page page = values_change_page("values edit", "ours", change_of_value("1.0", "1.0"));
  EXPECT_EQ(text_of(page), "ours parts spin-360: value is 1.0 already\n");
  EXPECT_TRUE(json_of(page).at("changes").as_array().empty());
}

TEST(ChangedCell, OfAnUndoIsTheWishedOneAlone) {
  RowChange change = change_of_value("1.0", "0.9");
  change.cells.push_back({"status", "memory", "published"});
  EXPECT_EQ(text_of(values_change_page("values undo", "ours", change)),
            "undone: ours parts spin-360: value 1.0 -> 0.9\n");
  EXPECT_EQ(text_of(values_change_page("values redo", "ours", {})), "done again: ours: all tables\n");
}

TEST(SetsOfASeasonFile, AreToldInOneLineHoweverLongTheirNames) {
  const std::string file = std::string(100, 'a') + ".season";
  EXPECT_EQ(text_of(values_import_page({"ours", file, 229})), "ours: 229 rows are in " + file + "\n");
  EXPECT_EQ(text_of(values_import_page({"ours", file, 229, true})), "ours is in " + file + " already\n");
  EXPECT_EQ(text_of(values_remove_page("ours", file)), "ours is no longer in " + file + "\n");
  EXPECT_EQ(json_of(values_import_page({"ours", file, 229})).at("rows"), 229);
  EXPECT_EQ(json_of(values_copy_page("values export", {"ours", "out/new", "new"})).at("written_into"),
            "out/new");
}

}  // namespace
}  // namespace landdrill::report
