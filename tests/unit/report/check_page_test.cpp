#include <gtest/gtest.h>

#include <boost/json.hpp>

#include "engine/report/pages/sheet.h"
#include "engine/report/render.h"
#include "grammar/print.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using namespace report_test;

TEST(CheckPage, SaysOkOrWhatThereIs) {
  const Diagnostics nothing, one = one_objection();
  EXPECT_EQ(render_text(check_page({"a.sheet", "Reeds", nothing}), {}), "a.sheet: Reeds: ok\n");
  EXPECT_EQ(render_text(check_page({"a.sheet", "", one}), {}), "a.sheet: 1 broken limit\n");
  EXPECT_EQ(render_text(check_page({"a.sheet", "", one, true}), {}),
            "a.sheet: no value set to check it by, 1 broken limit\n");
}

TEST(CheckPage, KeepsEverySheetInOneLine) {
  const Diagnostics nothing;
  const std::string file = std::string(200, 'a') + " " + std::string(200, 'b');
  EXPECT_EQ(render_text(check_page({file, "Reeds", nothing}), {}), file + ": Reeds: ok\n");
}

TEST(CheckPage, GivesProgramsEveryMessage) {
  const Diagnostics one = one_objection();
  const auto told = boost::json::parse(render_json(check_page({"a.sheet", "Reeds", one})));
  EXPECT_EQ(told.at("report"), "check");
  EXPECT_EQ(told.at("file"), "a.sheet");
  EXPECT_EQ(told.at("routine"), "Reeds");
  EXPECT_EQ(told.at("ok"), false);
  EXPECT_EQ(told.at("warnings"), 1);
  EXPECT_EQ(told.at_pointer("/messages/0/code"), "quota");
}

TEST(TidyPage, ShowsTheSheetOrNamesTheOneThatWasNotTidy) {
  using Tell = TidiedSheet::Tell;
  const Tidied now{"routine \"Reeds\"\n", {}};
  EXPECT_EQ(render_text(tidy_page({"a.sheet", "ROUTINE Reeds", now}), {}), now.text);
  EXPECT_EQ(render_text(tidy_page({"a.sheet", "ROUTINE Reeds", now, Tell::name}), {}), "a.sheet\n");
  EXPECT_EQ(render_text(tidy_page({"a.sheet", "ROUTINE Reeds", now, Tell::written}), {}),
            "a.sheet: tidied\n");
  EXPECT_EQ(render_text(tidy_page({"a.sheet", now.text, now, Tell::name}), {}), "");
}

TEST(TidyPage, GivesProgramsTheMessagesOfASheetThatIsLeftAsItIs) {
  const Tidied bad = tidy({"a.sheet", "routine\n"});
  const auto told = boost::json::parse(render_json(tidy_page({"a.sheet", "routine\n", bad})));
  EXPECT_EQ(told.at("tidy"), false);
  EXPECT_TRUE(told.at("text").is_null());
  EXPECT_EQ(told.at("errors"), 1);
}

}  // namespace
}  // namespace landdrill::report
