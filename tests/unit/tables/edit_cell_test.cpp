// One changed cell, with the honesty that belongs to it.
#include "tables/edit_cell.h"

#include <gtest/gtest.h>

namespace landdrill {
namespace {

TableFiles files(const std::string& parts) {
  return {"ours", "", {{"parts.csv", parts}}};
}

const std::string header = "code,family,title,value,source,status\n";
const std::string row = "spin-720,spins,\"Spin, fast\",1.4,page 88,published\n";

// "source=typed in, ...; value=1.5": the edits in order.
std::string edits(const Edit& wish, const Origin& origin, const std::string& parts = header + row) {
  const auto edited = edit_cell(files(parts), wish, origin);
  if (!edited) return edited.error().why;
  std::string all;
  for (const Edit& edit : edited->edits) all += (all.empty() ? "" : "; ") + edit.column + "=" + edit.value;
  return all;
}

Edit wish(std::string column, std::string value, std::string why = "") {
  return {"ours", "parts", "spin-720", std::move(column), std::move(value), std::move(why)};
}

TEST(EditCell, TakesAPublishedRowsWordForItOnlyUntilItsNumberIsTypedOver) {
  EXPECT_EQ(edits(wish("value", "1.5"), {}),
            "source=typed in, value was 1.4 before; status=memory; value=1.5");
  EXPECT_EQ(edits(wish("value", "1.5", "new page"), {}),
            "source=typed in, value was 1.4 before: new page; status=memory; value=1.5");
}

TEST(EditCell, WritesWhatTheCoachSaysOfTheSource) {
  EXPECT_EQ(edits(wish("value", "1.5"), {"page 90", "published"}),
            "source=page 90; status=published; value=1.5");
}

TEST(EditCell, LeavesTheSourceAloneWhenNoFactChanges) {
  EXPECT_EQ(edits(wish("title", "Spin"), {}), "title=Spin");
  EXPECT_EQ(edits(wish("source", "page 90"), {}), "source=page 90");
  EXPECT_EQ(edits(wish("status", "practice"), {}), "status=practice");
}

TEST(EditCell, WritesADecimalCommaAsAPoint) {
  EXPECT_EQ(edits(wish("value", "1,5"), {"x", "memory"}), "source=x; status=memory; value=1.5");
}

TEST(EditCell, IsNothingWhenTheCellSaysSoAlready) {
  EXPECT_EQ(edits(wish("value", "1.4"), {}), "");
}

TEST(EditCell, SaysThatNothingWasThereBefore) {
  EXPECT_EQ(edits(wish("value", "1.5"), {}, header + "spin-720,spins,Spin,,page 88,published\n"),
            "source=typed in, value was nothing before; status=memory; value=1.5");
}

TEST(EditCell, RefusesACellThatIsNotThere) {
  EXPECT_EQ(edits(wish("worth", "1"), {}), "it has no column \"worth\"");
}

TEST(EditCell, LeavesEveryOtherByteAlone) {
  const auto edited = edit_cell(files("\xEF\xBB\xBF"
                                      "code;family;title;value;source;status\r\nspin-720;spins;\"Spin; "
                                      "\"\"fast\"\"\";1,4;p;published\r\n\r\n"),
                                wish("value", "1.5"), {"p", "published"});
  EXPECT_EQ(edited->change.cells.front().before, "1,4");
  EXPECT_EQ(edited->files.files[0].text,
            "\xEF\xBB\xBF"
            "code;family;title;value;source;status\r\nspin-720;spins;\"Spin; "
            "\"\"fast\"\"\";1.5;p;published\r\n\r\n");
}

TEST(EditCell, QuotesWhatHasToBeQuoted) {
  const auto edited = edit_cell(files(header + row), wish("source", "page 8, \"new\""), {});
  EXPECT_EQ(edited->files.files[0].text,
            header + "spin-720,spins,\"Spin, fast\",1.4,\"page 8, \"\"new\"\"\",published\n");
}

}  // namespace
}  // namespace landdrill
