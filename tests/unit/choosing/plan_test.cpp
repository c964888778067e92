#include "engine/choosing/plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "engine/report/sentences.h"
#include "tests/unit/kit/planning_kit.h"

namespace landdrill {
namespace {

using kit::Dice;
using kit::MadeSheet;
using kit::pond;
using kit::ReadSheet;
using kit::replaced;

PlanWish without_event_limits() {
  PlanWish how;
  how.event_limits = false;
  return how;
}
const PlanWish own_limits = without_event_limits();

Plan planned(const std::string& text, const PlanWish& how = {}) {
  const ReadSheet sheet(text, pond());
  return plan(sheet.routine(), {}, how);
}

std::string joined(const std::vector<std::string>& lines) {
  std::string result;
  for (const std::string& line : lines) result += line + "\n";
  return result;
}

std::string options_of(const PlanChoice& choice) {
  std::string result;
  for (const std::size_t option : choice.options) {
    result += (result.empty() ? "" : " ") + (option == leave_out ? "out" : std::to_string(option));
  }
  return result;
}

const PlanLimit* limit_called(const Plan& plan, std::string_view words) {
  for (const PlanLimit& limit : plan.limits) {
    if (limit.words == words) return &limit;
  }
  return nullptr;
}

// 120 counts, 60 s. Ripple: 1.8 x 7.5 = 13.5; the easy way 0.5 + 0.8 = 1.3 x 9 = 11.7, with 24 counts more.
const std::string mill =
    "routine \"Mill\"\nevent open\nvalues pond\ntempo 120\n"
    "element 1 hybrid \"Ripple\"\nparts spin-a, hold\ncounts 32 under, 16 surface\nexpect 7.5\n"
    "option \"easy\"\nparts hold x2\ncounts 32 under, 40 surface\nexpect 9\n"
    "element 2 hybrid\nparts spin-b, hold x2\ncounts 48 under\nexpect 7\n"
    "element 3 throw \"Gull\"\ndifficulty 2\ncounts 24 surface\nexpect 8\nslip 10%\noptional\n"
    "impression choreography 7.50, performance 8.00\n";

TEST(Plan, TakesTheOptionsOfTheHighestExpectedTotal) {
  const Plan best = planned(mill);
  ASSERT_FALSE(best.choices.empty());
  EXPECT_TRUE(best.obstacles.empty());
  EXPECT_EQ(options_of(best.choices[0]), "0 0 0");
  // 13.5 + 18.9 + 0.9 x 16 + 0.1 x 6.4 + 54
  EXPECT_EQ(best.choices[0].total.text(), "101.44");
  EXPECT_EQ(best.choices[0].seconds->text(), "60");
  EXPECT_TRUE(best.proved);
  EXPECT_TRUE(best.as_written_allowed);
  EXPECT_EQ(best.as_written->total.text(), "101.44");
}

TEST(Plan, TellsEveryLimitWithWhereItIsFrom) {
  const Plan best =
      planned(replaced(mill, "tempo 120\n", "tempo 120\nlimit throw most 1\nlimit breath least 1 most 40\n"));
  std::string told;
  for (const PlanLimit& limit : best.limits)
    told += limit.words + " | " + limit.from + " | " + limit.used.text() + "\n";
  EXPECT_EQ(told,
            "open: 1 to 3 hybrid elements | quotas.csv line 2 | 2\n"
            "open: at least 1 element with a part of spins | quotas.csv line 3 | 2\n"
            "at most 3 parts of spins in the routine | families.csv line 2 | 2\n"
            "open: 55 to 65 s | events.csv line 2 | 60\n"
            "at most 1 throw element | the sheet | 1\n"
            "1 to 40 s under water in one go | the sheet | 24\n");
}

TEST(Plan, PutsALimitThatIsToldInThePlaceOfTheSheets) {
  const ReadSheet sheet(replaced(mill, "tempo 120\n", "tempo 120\nlimit throw most 1\nlimit spins most 2\n"),
                        pond());
  PlanWish how = own_limits;
  how.limits = {{OwnLimit::Of::kind, "throw", {}, Decimal()}};
  const Plan best = plan(sheet.routine(), {}, how);
  ASSERT_EQ(best.limits.size(), 2u);
  EXPECT_EQ(best.limits[0].from, "the sheet");
  EXPECT_EQ(best.limits[1].words, "at most 0 throw elements");
  EXPECT_EQ(best.limits[1].from, "the command line");
  EXPECT_EQ(options_of(best.choices[0]), "0 0 out");
}

TEST(Plan, SaysHowFarEachChoiceIsBehind) {
  const Plan best = planned(mill);
  ASSERT_GT(best.choices.size(), 1u);
  EXPECT_FALSE(best.choices[0].behind);
  for (std::size_t i = 1; i < best.choices.size(); ++i)
    EXPECT_EQ(best.choices[i].behind, (best.choices[0].total - best.choices[i].total).value());
  EXPECT_EQ(best.as_written->behind, Decimal());
}

TEST(Plan, SaysWhatOneSecondMoreIsWorth) {
  // Without the throw 48 s are used, and 60 s with it; up to 59 s it does not fit, and with 60 it does.
  const std::string shorter = replaced(replaced(mill, "tempo 120\n", "tempo 120\nlimit seconds most 59\n"),
                                       "event open", "event open");
  const Plan best = planned(shorter, own_limits);
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(options_of(best.choices[0]), "0 0 out");
  const PlanLimit* seconds = limit_called(best, "at most 59 s");
  ASSERT_NE(seconds, nullptr);
  ASSERT_TRUE(seconds->one_more);
  EXPECT_EQ(seconds->one_more->text(), "15.04");
  EXPECT_FALSE(seconds->one_less);
  EXPECT_FALSE(best.as_written_allowed);
}

TEST(Plan, SaysWhatOneElementFewerIsWorth) {
  // Only the easy way of Ripple has two holds; with three in all Ripple may be swum as written.
  const Plan best =
      planned(replaced(replaced(mill, "optional\n", ""), "tempo 120\n", "tempo 120\nlimit hold least 4\n"),
              own_limits);
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(options_of(best.choices[0]), "1 0 0");
  EXPECT_EQ(limit_called(best, "at least 4 uses of hold")->one_less->text(), "1.8");
}

TEST(Plan, NamesTheLimitsThatConflictAndNoOthers) {
  const Plan none =
      planned(replaced(mill, "tempo 120\n",
                       "tempo 120\nlimit spin-a most 0\nlimit throw most 3\nlimit spins least 2\n"),
              own_limits);
  EXPECT_TRUE(none.choices.empty());
  EXPECT_EQ(joined(none.conflict),
            "at most 0 uses of spin-a (the sheet)\nat least 2 elements with a part of spins (the sheet)\n");
}

TEST(Plan, KeepsWhatStays) {
  const Plan best =
      planned(replaced(replaced(mill, "expect 7.5\noption", "expect 5\nstays\noption"), "optional\n", ""));
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(options_of(best.choices[0]), "0 0 0");
  EXPECT_EQ(best.choices.size(), 1u);
}

TEST(Plan, LeavesOutAnOptionWithoutAMarkAndSaysSo) {
  const Plan best = planned(replaced(mill, "expect 9\n", ""));
  EXPECT_EQ(
      joined(best.notes),
      "\"easy\" of element 1 \"Ripple\" is left out of the plan: it has no expected mark; add `expect`\n");
  for (const PlanChoice& choice : best.choices) EXPECT_EQ(choice.options[0], 0u);
}

// Worth more than anything else, with three spins in one element.
const std::string spun = replaced(mill, "parts hold x2", "parts spin-b x2, spin-a");

TEST(Plan, LeavesOutAnOptionThatBreaksALimitWithinTheElementAndSaysSo) {
  const Plan best = planned(spun);
  ASSERT_FALSE(best.choices.empty());
  for (const PlanChoice& choice : best.choices) EXPECT_EQ(choice.options[0], 0u);
  EXPECT_EQ(
      joined(best.notes),
      "\"easy\" of element 1 \"Ripple\" is left out of the plan: 3 parts of spins in one element, but at "
      "most 2 (families.csv line 2)\n");
  EXPECT_TRUE(best.as_written_allowed);
}

TEST(Plan, TakesAnOptionThatBreaksALimitWhenItIsNotToHeedThem) {
  const Plan best = planned(spun, own_limits);
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(options_of(best.choices[0]), "1 0 0");
  EXPECT_EQ(joined(best.notes), "");
}

TEST(Plan, SaysThatWhatIsWrittenBreaksALimitWithinAnElement) {
  const Plan best = planned(replaced(mill, "parts spin-a, hold", "parts spin-a, hold x3"));
  EXPECT_FALSE(best.as_written_allowed);
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(best.choices[0].options[0], 1u);
  EXPECT_EQ(
      joined(best.notes),
      "element 1 \"Ripple\" as written is left out of the plan: hold 3 times in one element, but at most 2 "
      "(kinds.csv line 2)\n");
}

TEST(Plan, ConflictsWithTheLimitsWithinAnElementWhenTheyLeaveNoOption) {
  const std::string no_way = replaced(spun, "parts spin-a, hold", "parts spin-a");
  EXPECT_EQ(joined(planned(no_way).conflict),
            "element 1 \"Ripple\": as written has 1 part in a hybrid, but from 2 to 4 (kinds.csv line 2); "
            "\"easy\" has 3 parts of spins in one element, but at most 2 (families.csv line 2)\n");
  const Plan kept = planned(replaced(no_way, "expect 7.5\n", "expect 7.5\nstays\n"));
  EXPECT_EQ(joined(kept.conflict),
            "element 1 \"Ripple\": 1 part in a hybrid, but from 2 to 4 (kinds.csv line 2)\n");
  EXPECT_TRUE(kept.choices.empty());
}

TEST(Plan, CannotBeMadeWhenAnElementHasNoMarkAtAll) {
  const Plan none = planned(replaced(mill, "expect 7\n", ""));
  EXPECT_EQ(joined(report::words_of(none.obstacles)),
            "element 2 has no expected mark: add `expect`, or a run\n");
  EXPECT_TRUE(none.choices.empty());
}

TEST(Plan, CannotBeMadeWithoutTheMarksOfTheWholeRoutine) {
  const Plan none = planned(replaced(mill, "choreography 7.50, ", ""));
  EXPECT_EQ(joined(report::words_of(none.obstacles)),
            "no mark is expected for choreography: add `impression`, or a run that has one\n");
}

TEST(Plan, LooksAtNoTimeWithoutATempoAndSaysSo) {
  const Plan best = planned(replaced(mill, "tempo 120\n", "limit breath most 3\n"));
  EXPECT_EQ(
      joined(best.notes),
      "the sheet has no tempo: the plan does not look at the time of open\n"
      "the sheet has no tempo: the plan does not look at the limit of at most 3 s under water in one go\n");
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(options_of(best.choices[0]), "0 0 0");
}

TEST(Plan, CountsABreathThatGoesOnIntoTheNextElement) {
  // Ripple ends at the surface; turned round its 16 s under water go on into the 24 s of the next.
  const std::string round = replaced(mill, "counts 32 under, 16 surface", "counts 16 surface, 32 under");
  const std::string held = replaced(round, "tempo 120\n", "tempo 120\nlimit breath most 30\n");
  const Plan best = planned(held, own_limits);
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(options_of(best.choices[0]), "1 0 0");
  EXPECT_FALSE(best.as_written_allowed);
  EXPECT_EQ(limit_called(best, "at most 30 s under water in one go")->used.text(), "24");
}

TEST(Plan, LeavingOutAnElementJoinsTheBreathsOnEitherSide) {
  const std::string lines =
      "routine \"Mill\"\nevent open\nvalues pond\ntempo 120\nlimit breath most 20\n"
      "element 1 throw\ndifficulty 2\ncounts 32 under\nexpect 8\n"
      "element 2 throw\ndifficulty 1\ncounts 8 surface\nexpect 8\nslip 100%\noptional\n"
      "element 3 throw\ndifficulty 2\ncounts 32 under\nexpect 8\n"
      "impression choreography 7.50, performance 8.00\n";
  const Plan best = planned(lines, own_limits);
  ASSERT_EQ(best.choices.size(), 1u);
  EXPECT_EQ(options_of(best.choices[0]), "0 0 0");
}

int widened = 0, feasible = 0;

// The same with one of her own limits a unit wider, by reading that sheet.
void expect_what_one_more_is_worth(MadeSheet made, const Plan& found) {
  for (std::string& line : made.limits) {
    const std::size_t at = line.find(" most ");
    if (at == std::string::npos || line.find(" least ") != std::string::npos) continue;
    const std::string before = line;
    const Decimal most = kit::number(line.substr(at + 6));
    line = line.substr(0, at + 6) + (most + Decimal::whole(1)).text();
    const std::vector<kit::Tried> wider = kit::all_programmes(made, pond());
    line = before;
    const auto is_it = [&](const PlanLimit& limit) {
      const std::string name = before.substr(6, at - 6);
      const std::string unit = name == "seconds"  ? " s"
                               : name == "breath" ? " s under water in one go"
                                                  : name;
      return limit.from == "the sheet" && limit.most == most && !limit.least && limit.words.ends_with(unit);
    };
    const auto limit = std::find_if(found.limits.begin(), found.limits.end(), is_it);
    if (limit == found.limits.end()) continue;
    ASSERT_TRUE(limit->one_more);
    EXPECT_EQ(limit->one_more->value(),
              round(wider.front().total, 6, Rounding::half_up) - found.choices[0].total.value())
        << before;
    ++widened;
  }
}

// Against every programme read and scored as a sheet of its own.
void expect_as_by_trying_all(const MadeSheet& made) {
  SCOPED_TRACE(made.text());
  const Plan found = planned(made.text());
  const std::vector<kit::Tried> all = kit::all_programmes(made, pond());
  EXPECT_TRUE(found.obstacles.empty());
  EXPECT_TRUE(found.proved);
  EXPECT_EQ(found.conflict.empty(), !all.empty());
  ASSERT_EQ(found.choices.size(), std::min<std::size_t>(all.size(), 6));
  for (std::size_t i = 0; i < found.choices.size(); ++i) {
    EXPECT_EQ(found.choices[i].options, all[i].options) << i;
    EXPECT_EQ(found.choices[i].total.value(), round(all[i].total, 6, Rounding::half_up)) << i;
  }
  feasible += all.empty() ? 0 : 1;
  if (!all.empty()) expect_what_one_more_is_worth(made, found);
  const std::vector<std::size_t> written(made.elements.size());
  EXPECT_EQ(found.as_written_allowed, kit::keeps_limits(ReadSheet(made.text(written), pond()),
                                                        ReadSheet(made.text(), pond()).routine()));
}

TEST(Plan, IsAsGoodAsTryingEveryProgramme) {
  feasible = widened = 0;
  for (std::uint64_t seed = 0; seed < 400; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Dice dice(seed);
    expect_as_by_trying_all(kit::made_up_sheet(dice));
  }
  // Enough of each to mean something.
  EXPECT_GT(feasible, 40);
  EXPECT_LT(feasible, 360);
  EXPECT_GT(widened, 10);
}

}  // namespace
}  // namespace landdrill
