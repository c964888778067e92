// A small account put together by hand, so that the tests of the reports need no sheet, no set and no engine
// run.
//
// Three elements against a panel: one lift, one hybrid that fell to its base mark, one hybrid in its option
// "dimmed".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/score/account.h"

namespace landdrill::report_test {

Decimal d(std::string_view text);
Points points(std::string_view text);

Account with_panel();
// The same before the meet: no panel beside it, and points left on each line.
Account estimate_only();
// A mark is missing, so there is no total.
Account unfinished();

RestsOn of_the_run();  // of 2026-05-07
Step part_step();      // a part with the row it rests on
Diagnostics one_objection();

std::vector<std::string> lines_of(std::string_view text);
bool holds(std::string_view text, std::string_view piece);
// Each number as written, with its sign: "-34.5833", "2026", "7".
std::vector<std::string> numbers_in(std::string_view text);
// What is wrong with the layout of a text report, in words; empty when nothing is.
std::string layout_fault(std::string_view text, int width);

}  // namespace landdrill::report_test
