#include "engine/chances/what_if.h"

#include <gtest/gtest.h>

#include "engine/chances/forecast.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;
using kit::replaced;

const std::string mill =
    "routine \"Mill\"\nevent open\nvalues pond\nspread 0.4\nday 0.2\n"
    "element 1 throw\ndifficulty 3\nexpect 8\nslip 20%\nelement 2 throw\ndifficulty 2\nexpect 7\nslip 90%\n"
    "impression choreography 7.50, performance 8.00\n";

Chance chance_of(const std::string& text, const char* target, const Change& change = {}) {
  const ReadSheet sheet(text, kit::pond());
  ForecastWish how;
  how.change = change;
  return reaches(*forecast(sheet.routine(), {}, how).total, kit::number(target)).chance;
}

// Each is what the sheet would say with other numbers.
TEST(WhatIf, IsTheForecastOfASheetWithOtherNumbers) {
  const auto with = [](const char* from, const char* to) { return replaced(mill, from, to); };
  EXPECT_NEAR(chance_of(mill, "80", change_to(WhatIf::base_rarer)),
              chance_of(replaced(with("slip 20%", "slip 15%"), "slip 90%", "slip 67.5%"), "80"), 1e-9);
  EXPECT_NEAR(chance_of(mill, "80", change_to(WhatIf::base_likelier)),
              chance_of(replaced(with("slip 20%", "slip 25%"), "slip 90%", "slip 100%"), "80"), 1e-9)
      << "and no more than always";
  EXPECT_NEAR(chance_of(mill, "80", change_to(WhatIf::wider)),
              chance_of(with("spread 0.4", "spread 0.5"), "80"), 1e-9);
  EXPECT_NEAR(chance_of(mill, "80", change_to(WhatIf::no_day)), chance_of(with("day 0.2\n", ""), "80"), 1e-9);
  EXPECT_GT(std::abs(chance_of(mill, "80", change_to(WhatIf::base_rarer)) - chance_of(mill, "80")), 0.01);
}

TEST(WhatIf, WithoutAChangeIsWhatTheSheetSays) {
  const ReadSheet sheet(mill, kit::pond());
  const Inputs inputs = inputs_of(sheet.routine(), {}, {}, {});
  EXPECT_EQ(inputs.at_risk.chances[0].percent, Decimal::whole(20));
  EXPECT_EQ(inputs.spread.day.marks, kit::number("0.2"));
}

}  // namespace
}  // namespace landdrill
