#include <gtest/gtest.h>

#include "engine/report/pages/sheet.h"
#include "engine/report/render.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string explain(const Step& step, std::string set, const TextWish& wish) {
  return render_text(explain_page(step, std::move(set)), wish);
}

TEST(Explain, TellsALineDownToTheRowsOfTheTables) {
  const Account account = with_panel();
  EXPECT_EQ(explain(*account.estimate->at("element 2"), "kingfisher-2026", {}),
            "element 2 Undertow: 38.0000\n"
            "  = 9.5 x 4.00 x 1\n"
            "  from panels.csv duet-free execution, line 11 [1]\n"
            "  declared difficulty: 4.00\n"
            "    = base + sum(parts) = 0.5 + 3.5\n"
            "    from kinds.csv hybrid, line 2 [2]\n"
            "    part spin-720: 1.40 (Spin down through 720 degrees)\n"
            "      from parts.csv line 12 [2]\n"
            "  mark: 9.50 (from the run of 2026-05-07)\n"
            "\n"
            "Where the values of kingfisher-2026 are from\n"
            "  [1] published: Rule book, p. 88\n"
            "  [2] invented: invented for the test\n");
}

TEST(Explain, LeavesOutTheSourcesWhenNoRowIsBehindIt) {
  const Account account = with_panel();
  EXPECT_EQ(explain(*account.estimate->at("element 2 mark"), "kingfisher-2026", {}),
            "mark: 9.50 (from the run of 2026-05-07)\n");
}

TEST(Explain, HangsALongRuleBehindItsSign) {
  Step step{Role::total, "total", "Total", "", "3", "", {}, {}};
  for (int i = 0; i < 30; ++i) step.rule += (i == 0 ? "" : " + ") + std::string("0.1000");
  const std::vector<std::string> lines = lines_of(explain(step, "", {false, 60, false}));
  ASSERT_GT(lines.size(), 2u);
  EXPECT_TRUE(lines[1].starts_with("  = 0.1000 +"));
  EXPECT_TRUE(lines[2].starts_with("    0.1000 +") || lines[2].starts_with("    + 0.1000"));
}

TEST(Explain, KeepsADeepTreeOnThePage) {
  Step step{Role::note,       "leaf", "leaf with a label that goes on", "1 + 2 + 3", "6", "remark",
            part_step().rows, {}};
  for (int depth = 0; depth < 200; ++depth) {
    Step above{Role::note, "above", "above", "", "6", "", {}, {step}};
    step = std::move(above);
  }
  EXPECT_EQ(layout_fault(explain(step, "a-set", {false, 60, false}), 60), "");
}

TEST(Explain, ListsWhatCanBeAskedFor) {
  const std::vector<std::string> lines = lines_of(render_text(lines_page(estimate_only()), {}));
  ASSERT_EQ(lines.size(), 8u);
  EXPECT_EQ(lines[1], "total                 Total                107.5250");
  EXPECT_EQ(lines[5], "element 2 spin-720    spin-720               1.40");
}

}  // namespace
}  // namespace landdrill::report
