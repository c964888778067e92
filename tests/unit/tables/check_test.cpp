// What is near a limit and still right gets no complaint. (The mistakes themselves are in tests/bad/tables.)
#include "tables/read_table.h"

#include <gtest/gtest.h>

#include "kit.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

using test::base_set;
using test::edited;
using test::messages;

TEST(Check, LetsLimitsMeet) {
  EXPECT_EQ(messages(edited(base_set(), "kinds.csv", ",2,8,3,2,", ",8,8,8,2,")), "");
  EXPECT_EQ(messages(edited(base_set(), "families.csv", "hybrid,2,6", "hybrid,6,6")), "");
  EXPECT_EQ(messages(edited(base_set(), "faults.csv", "0.1,0.2,0.5,1,", "0.1,0.1,0.1,0.1,")), "");
  EXPECT_EQ(messages(edited(base_set(), "events.csv", "1,1,120,5", "1,1,120,0")), "");
  EXPECT_EQ(messages(edited(base_set(), "events.csv", "1,1,120,5", "1,1,,5")), "");
  EXPECT_EQ(messages(edited(base_set(), "panels.csv", "element,5,1,1,mean", "element,5,2,2,mean")), "");
}

TEST(Check, LetsAQuotaFillTheEventExactly) {
  EXPECT_EQ(messages(edited(base_set(), "quotas.csv", "solo,hybrid,,2,5", "solo,hybrid,,6,6")), "");
  TableFiles full = edited(
      base_set(), "quotas.csv", "solo,hybrid,,2,5,made up for the tests,invented",
      "solo,hybrid,,4,5,made up for the tests,invented\nsolo,figure,,2,2,made up for the tests,invented");
  EXPECT_EQ(messages(full), "");
  EXPECT_NE(messages(edited(full, "quotas.csv", "figure,,2,2", "figure,,3,3")).find("[impossible-quota]"),
            std::string::npos);
}

TEST(Check, LetsAQuotaForbidAFamilyThatHasNoParts) {
  TableFiles files = edited(base_set(), "families.csv", "stacks,Stacks",
                            "twists,Twists,,,,made up for the tests,invented\nstacks,Stacks");
  EXPECT_EQ(messages(edited(files, "quotas.csv", "duet,lift,,1,2", "duet,,twists,,0")), "");
}

TEST(Check, LetsTwoAspectsBeMarkedForDifferentKinds) {
  EXPECT_EQ(
      messages(edited(base_set(), "panels.csv", "execution,lift,Execution of lifts", "lifting,lift,Lifting")),
      "");
}

TEST(Check, LetsADivisorBeWhatTheElementMakesIt) {
  EXPECT_EQ(messages(edited(base_set(), "kinds.csv", "sum(spins)", "sum(spins) / (count(parts) - 1)")), "");
  EXPECT_EQ(messages(edited(base_set(), "kinds.csv", "sum(spins)", "sum(spins) / 2 / (3 - 2)")), "");
}

TEST(Check, FindsAZeroDivisorDeepInsideAFormula) {
  const auto with_formula = [](const char* formula) {
    return messages(edited(base_set(), "kinds.csv", "sum(spins)", formula));
  };
  for (const char* formula :
       {"sum(parts) + 1 / 0", "sum(parts) / (1 - 1) / 2", "\"max(sum(parts), 2 / (min(3, 4) - 3))\"",
        "-(sum(parts) / -(2 - 2))", "\"sum(parts) / round(0.4, 0)\""}) {
    EXPECT_NE(with_formula(formula).find("[zero-divisor]"), std::string::npos) << formula << "\n"
                                                                               << with_formula(formula);
  }
}

TEST(Check, ComplainsOfARowOnlyOnce) {
  // A cell that is no number is not a gap, so nothing that depends on it is reported as well.
  EXPECT_EQ(
      load(edited(base_set(), "faults.csv", "travel,Travel,0.1", "travel,Travel,x")).diagnostics.errors(),
      1u);
  EXPECT_EQ(load(edited(base_set(), "events.csv", "1,1,120,5", "1,1,120,x")).diagnostics.errors(), 1u);
  EXPECT_EQ(
      load(edited(base_set(), "panels.csv", "half-up,mean,0.25", "half-up,mean,x")).diagnostics.errors(), 1u);
  EXPECT_EQ(load(edited(base_set(), "quotas.csv", "duet,lift,,1,2", "duet,lift,,x,")).diagnostics.errors(),
            1u);
  EXPECT_EQ(load(edited(base_set(), "parts.csv", "spin-360,spins", "\"spin-360,spins")).diagnostics.errors(),
            1u);
}

TEST(Check, DoesNotBlameATableForAnotherThatCannotBeRead) {
  EXPECT_EQ(load(edited(base_set(), "families.csv", "code", "kode")).diagnostics.errors(), 1u);
  EXPECT_EQ(load(edited(base_set(), "kinds.csv", "source", "quelle")).diagnostics.errors(), 1u);
  EXPECT_EQ(load(edited(base_set(), "panels.csv", "judges", "referees")).diagnostics.errors(), 1u);
  EXPECT_EQ(load(edited(base_set(), "events.csv", "status", "state")).diagnostics.errors(), 1u);
  EXPECT_EQ(load(edited(base_set(), "parts.csv", "code", "sign")).diagnostics.errors(), 1u);
}

}  // namespace
}  // namespace landdrill
