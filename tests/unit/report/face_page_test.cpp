#include <gtest/gtest.h>

#include <boost/json.hpp>

#include "engine/report/pages/face.h"
#include "engine/report/render.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using report_test::holds;

Page page_of(const ValuesPlace& place) {
  Page page("train");
  page.say("What would it be more.");
  put_values_place(page, place);
  return page;
}

TEST(ValuesPlace, SaysInOneSentenceWhereTheValuesAreFrom) {
  EXPECT_EQ(render_text(page_of({"club-2026", "/home/sets/club-2026", ""}), {}),
            "What would it be more.\n\nValues from /home/sets/club-2026\n");
  EXPECT_EQ(render_text(page_of({"club-2026", "", "club.season"}), {}),
            "What would it be more.\n\nValues from club-2026 in the season file club.season\n");
}

TEST(ValuesPlace, WarnsOfAnotherSetOfThatName) {
  const std::string text = render_text(page_of({"club-2026", "/home/club-2026", "", {"/usr/club-2026"}}), {});
  EXPECT_TRUE(holds(text,
                    "\nValues from /home/club-2026\n"
                    "There is another club-2026, which does not count; --values FOLDER chooses it:\n"
                    "  - /usr/club-2026\n"))
      << text;
  EXPECT_TRUE(holds(render_text(page_of({"club-2026", "/a", "", {"/b", "/c"}}), {}),
                    "There are others called club-2026"));
}

TEST(ValuesPlace, TellsProgramsWhereTheValuesAreFrom) {
  const auto json = boost::json::parse(render_json(page_of({"club-2026", "/a", "", {"/b", "/c"}})));
  EXPECT_EQ(json.at_pointer("/values_place/name"), "club-2026");
  EXPECT_EQ(json.at_pointer("/values_place/folder"), "/a");
  EXPECT_TRUE(json.at_pointer("/values_place/season").is_null());
  EXPECT_EQ(json.at_pointer("/values_place/hidden/1"), "/c");
}

}  // namespace
}  // namespace landdrill::report
