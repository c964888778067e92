#include "engine/report/batch.h"

#include <gtest/gtest.h>

#include "sample.h"
#include "tables/csv.h"

namespace landdrill::report {
namespace {

using namespace report_test;

const SheetRow harbour{
    "harbour.sheet",
    "Harbour Lights",
    "Duet, free routine",
    {Difficulty(d("9.4")), points("107.525"), points("73.6834"), points("-33.8416"), points("73.6834"), 4}};

SheetRow harbour_as(std::string_view file, std::string_view routine) {
  SheetRow row = harbour;
  row.file = file;
  row.routine = routine;
  return row;
}

TEST(Batch, PutsOneSheetInOneAlignedLine) {
  SheetRow second = harbour_as("b.sheet", "Harbour Lights");
  second.totals.recorded = second.totals.difference = second.totals.announced = std::nullopt;
  EXPECT_EQ(batch_header() + batch_line(harbour) + batch_line(second),
            "file              routine         difficulty    estimate       panel      change\n"
            "harbour.sheet     Harbour Lights      9.40      107.5250     73.6834    -33.8416\n"
            "b.sheet           Harbour Lights      9.40      107.5250\n");
}

TEST(Batch, ShowsTheEndOfALongFileNameAndTheBeginningOfALongTitle) {
  const std::string line =
      batch_line(harbour_as("season/2026/spring/harbour.sheet", "Harbour Lights by night"));
  EXPECT_TRUE(line.starts_with("…g/harbour.sheet  Harbour Light…  ")) << line;
}

TEST(Batch, SaysWhichSheetIsNotScored) {
  EXPECT_EQ(batch_refusal("bad.sheet", 3), "bad.sheet         not scored: 3 errors\n");
  EXPECT_EQ(batch_refusal("bad.sheet", 1), "bad.sheet         not scored: 1 error\n");
}

TEST(Batch, KeepsEveryLineOnThePage) {
  const SheetRow row =
      harbour_as("Königssee/水の精水の精水の精.sheet", "水の精水の精水の精水の精水の精\x1b[2J");
  for (int width = 60; width < 140; ++width) {
    const TextWish wish{false, width, false};
    const std::string text = batch_header(wish) + batch_line(row, wish) +
                             batch_refusal("a/very/long/name/for/a/sheet/that/is/in/error.sheet", 12, wish);
    EXPECT_EQ(layout_fault(text, width), "");
  }
}

TEST(Batch, ReadsBackFromCsv) {
  const std::string text = batch_csv_header() + batch_csv_line(harbour_as("a,b.sheet", "Harbour Lights"));
  const CsvRead read = read_csv({"batch.csv", text});
  ASSERT_TRUE(read.diagnostics.ok());
  ASSERT_EQ(read.table.rows.size(), 1u);
  std::vector<std::string> cells;
  for (const CsvCell& cell : read.table.rows[0].cells) cells.push_back(cell.text);
  EXPECT_EQ(cells, (std::vector<std::string>{"a,b.sheet", "Harbour Lights", "Duet, free routine", "9.40",
                                             "107.5250", "73.6834", "-33.8416", "73.6834"}));
  EXPECT_EQ(read.table.header.cells.size(), cells.size());
}

}  // namespace
}  // namespace landdrill::report
