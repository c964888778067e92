#include "tables/csv.h"

#include <gtest/gtest.h>

#include "engine/report/pages/score.h"
#include "engine/report/render.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string csv_header() {
  return csv_header(score_page({}));
}
std::string csv_rows(const Account& account, std::string_view file = {}) {
  return csv_rows(score_page(account, {}, file));
}

CsvTable read(const std::string& text) {
  CsvRead read = read_csv({"report.csv", text});
  EXPECT_TRUE(read.diagnostics.ok()) << to_string(read.diagnostics);
  return std::move(read.table);
}

// The cell of the row whose `line` and `number` are these, by the name of its column.
std::string cell(const CsvTable& table, std::string_view line, std::string_view number,
                 std::string_view column) {
  const auto place = [&](std::string_view name) {
    for (std::size_t i = 0; i < table.header.cells.size(); ++i) {
      if (table.header.cells[i].text == name) return i;
    }
    ADD_FAILURE() << "no column " << name;
    return std::size_t{0};
  };
  for (const CsvRow& row : table.rows) {
    if (row.cells[place("line")].text == line && row.cells[place("number")].text == number)
      return row.cells[place(column)].text;
  }
  return "no such row";
}

TEST(CsvReport, ReadsBackWithTheSameAmounts) {
  const CsvTable table = read(csv_header() + csv_rows(with_panel(), "harbour.sheet"));
  EXPECT_EQ(cell(table, "element", "2", "points"), "38.0000");
  EXPECT_EQ(cell(table, "element", "2", "recorded_credited"), "0.50");
  EXPECT_EQ(cell(table, "element", "2", "recorded_base_mark"), "yes");
  EXPECT_EQ(cell(table, "element", "2", "base_mark"), "");
  EXPECT_EQ(cell(table, "element", "10", "option"), "dimmed");
  EXPECT_EQ(cell(table, "element", "10", "difference"), "+2.3250");
  EXPECT_EQ(cell(table, "impression", "", "weight"), "4");
  EXPECT_EQ(cell(table, "sync", "", "recorded_points"), "-0.9000");
  EXPECT_EQ(cell(table, "penalties", "", "points"), "");
  EXPECT_EQ(cell(table, "total", "", "points"), "107.5250");
  EXPECT_EQ(cell(table, "total", "", "recorded_points"), "73.6834");
  EXPECT_EQ(cell(table, "total", "", "difference"), "-33.8416");
  EXPECT_EQ(cell(table, "announced", "", "recorded_points"), "73.6834");
}

TEST(CsvReport, HasAsManyCellsInEveryRow) {
  const CsvTable table = read(csv_header() + csv_rows(with_panel(), "a") + csv_rows(unfinished(), "b"));
  ASSERT_EQ(table.rows.size(), 8u + 6u);
  for (const CsvRow& row : table.rows) EXPECT_EQ(row.cells.size(), table.header.cells.size());
}

TEST(CsvReport, CallsAnUnfinishedSumByItsName) {
  const CsvTable table = read(csv_header() + csv_rows(unfinished()));
  EXPECT_EQ(cell(table, "so far", "", "points"), "69.5250");
  EXPECT_EQ(cell(table, "total", "", "points"), "no such row");
}

TEST(CsvReport, LeavesNoFormulaToASpreadsheet) {
  EXPECT_EQ(csv_row({"=1+2", "@SUM(A1)", "+cmd", "-1.5", "+2.3250", "-x"}),
            "'=1+2,'@SUM(A1),'+cmd,-1.5,+2.3250,'-x\n");
}

TEST(CsvReport, QuotesWhatNeedsIt) {
  EXPECT_EQ(csv_row({"a,b", "say \"go\"", "two\nlines", "bell\a"}),
            "\"a,b\",\"say \"\"go\"\"\",two lines,bell\\x07\n");
}

TEST(CsvReport, ReadsBackAwkwardTitles) {
  Account account = with_panel();
  account.elements[0].title = "Élan, \"the\" 水; first";
  EXPECT_EQ(cell(read(csv_header() + csv_rows(account)), "element", "1", "title"), "Élan, \"the\" 水; first");
}

}  // namespace
}  // namespace landdrill::report
