// Two editions of a set, row by row.
#include "tables/edit_cell.h"

#include <gtest/gtest.h>

#include "kit.h"

namespace landdrill {
namespace {

using test::base_set;
using test::edited;

// One line a change: "parts spin-360 changed value 0.9 -> 1".
std::string changes(const TableFiles& before, const TableFiles& after) {
  std::string text;
  for (const RowChange& row : compare_sets(before, after).rows) {
    const char* what = row.what == RowChange::What::added  ? "added"
                       : row.what == RowChange::What::gone ? "gone"
                                                           : "changed";
    text += row.table + " " + row.key + " " + what;
    for (const CellChange& cell : row.cells)
      text += " " + cell.column + " " + cell.before + " -> " + cell.after;
    text += "\n";
  }
  return text;
}

TEST(CompareSets, FindsNoChangeInTheSameSet) {
  EXPECT_EQ(changes(base_set(), base_set()), "");
}

TEST(CompareSets, ShowsTheCellsThatChanged) {
  TableFiles after = edited(base_set(), "parts.csv", "spin-360,spins,Spin of a full turn,0.9",
                            "spin-360,spins,Full spin,1.0");
  after = edited(after, "panels.csv", "times-difficulty,1.2", "times-difficulty,1.3");
  EXPECT_EQ(changes(base_set(), after),
            "parts spin-360 changed title Spin of a full turn -> Full spin value 0.9 -> 1.0\n"
            "panels solo execution changed weight 1.2 -> 1.3\n");
}

TEST(CompareSets, ShowsRowsThatCameAndWent) {
  const TableFiles after = edited(base_set(), "parts.csv", "spin-360,", "spin-540,");
  EXPECT_EQ(changes(base_set(), after), "parts spin-360 gone\nparts spin-540 added\n");
}

TEST(CompareSets, ShowsTablesThatCameAndWent) {
  const TableFiles without = test::without(base_set(), "sync.csv");
  EXPECT_EQ(changes(base_set(), without), "sync small gone\nsync clear gone\n");
  EXPECT_EQ(changes(without, base_set()), "sync small added\nsync clear added\n");
}

TEST(CompareSets, MatchesRowsByKeyAndNotByPlace) {
  const std::string header = "code,title,points,source,status\n", small = "small,Small,0.1,x,memory\n",
                    clear = "clear,Clear,,x,memory\n";
  EXPECT_EQ(changes(test::with(base_set(), "sync.csv", header + small + clear),
                    test::with(base_set(), "sync.csv", header + clear + "\n" + small)),
            "");
}

TEST(CompareSets, TakesNoNoticeOfHowANumberIsWritten) {
  EXPECT_EQ(changes(base_set(), edited(base_set(), "parts.csv", "turn,0.9,", "turn,\"0,90\",")), "");
  EXPECT_EQ(changes(test::with(base_set(), "sync.csv",
                               "code,title,points,source,status\nsmall,Small,0.1,x,memory\n"),
                    test::with(base_set(), "sync.csv",
                               "Title;Code;Points;Source;Status\r\nSmall; small;0,1;x;memory\r\n")),
            "");
}

TEST(CompareSets, TellsKeysWithEmptyCellsApart) {
  const std::string header = "event,kind,family,least,most,source,status\n";
  EXPECT_EQ(changes(test::with(base_set(), "quotas.csv", header + "solo,spins,,1,,x,memory\n"),
                    test::with(base_set(), "quotas.csv", header + "solo,,spins,1,,x,memory\n")),
            "quotas solo spins gone\nquotas solo spins added\n");
}

TEST(CompareSets, ShowsColumnsThatOnlyOneEditionHas) {
  EXPECT_EQ(
      changes(test::with(base_set(), "sync.csv", "code,points,source,status\nsmall,0.1,x,memory\n"),
              test::with(base_set(), "sync.csv", "code,points,page,source,status\nsmall,0.1,9,x,memory\n")),
      "sync small changed page  -> 9\n");
}

TEST(CompareSets, ComparesTheOneRowOfTheSetItself) {
  EXPECT_EQ(changes(base_set(), edited(base_set(), "set.csv", "2026", "2027")),
            "set  changed edition 2026 -> 2027\n");
}

}  // namespace
}  // namespace landdrill
