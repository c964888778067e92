#include "engine/report/page.h"

#include <gtest/gtest.h>

#include "engine/report/render.h"

namespace landdrill::report {
namespace {

PageColumn column(std::string key, std::string csv) {
  return {std::move(key), "points", Align::amount, Wraps::no, Seen::always, "", 2, 0, std::move(csv)};
}

Page page_with(PageTable table) {
  Page page("sample");
  table.in_csv = true;
  page.add(std::move(table));
  return page;
}

TEST(PageCsv, LeavesCellsThatARowDoesNotHaveEmpty) {
  Page page("sample");
  page.csv = {"what", "points", "chance"};
  PageTable target("", {{"what", ""}, {"chance", ""}}), total("", {{"points", ""}, {"what", ""}});
  target.in_csv = total.in_csv = true;
  target.add({"target", "0.4"});
  total.add({"=1+1", "total"});
  page.add(std::move(target));
  page.add(std::move(total));
  EXPECT_EQ(render_csv(page),
            "what,points,chance\n"
            "target,,0.4\n"
            "total,'=1+1,\n");
}

TEST(PageCsv, CallsAColumnByItsNameThere) {
  PageTable table("lines", {column("total_expected", "total")});
  table.add({"12.5"});
  const Page page = page_with(std::move(table));
  EXPECT_EQ(render_csv(page), "total\n12.5\n");
  EXPECT_NE(render_json(page).find("\"total_expected\": \"12.5\""), std::string::npos) << render_json(page);
}

TEST(PageCsv, AloneHasAColumnThatHasANameThereAndNoKey) {
  PageTable table("lines", {{"line", "line"}, column("", "mean")});
  table.add({"1 Lantern", "17.25"});
  const Page page = page_with(std::move(table));
  EXPECT_EQ(render_csv(page), "line,mean\n1 Lantern,17.25\n");
  EXPECT_EQ(render_json(page).find("17.25"), std::string::npos) << render_json(page);
}

TEST(PageRecords, AreTheRowsThatProgramsGet) {
  PageTable inside("", {{"part", "part"}, {"", "shown"}});
  inside.add({"spin-720", "yes"});
  inside.add({"together", ""}, Look::total, Seen::by_people);
  PageTable table("options", {{"option", ""}, {"parts", ""}});
  table.add({"safer", {"", records_of(inside)}});
  EXPECT_EQ(render_json(page_with(std::move(table)), JsonLayout::one_line),
            R"({"format":1,"report":"sample","options":[{"option":"safer","parts":[{"part":"spin-720"}]}]})"
            "\n");
}

TEST(PageText, SpellsOutWhatWouldSteerATerminalInAHeadingOfAColumn) {
  PageTable table("", {{"", "why \x1b[1m"}});
  table.add({"so"});
  EXPECT_EQ(render_text(page_with(std::move(table)), {}).find('\x1b'), std::string::npos);
}

}  // namespace
}  // namespace landdrill::report
