#include "engine/score/execution.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::mark;
using kit::ReadSheet;
using kit::reeds;
using Which = RunWish::Which;

RunMark told_by(const Routine& routine, const landdrill::Run& run) {
  const Element& element = routine.elements.front();
  return run_mark(run, run.elements.front(), *element.panel, element.options.front().best);
}

// The mark of element 1 in a run in which these faults were seen.
std::string mark_after(const std::string& faults, const ValueSet& set = kit::pond()) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nelement 1: " + faults + "\n", set);
  const Routine& routine = sheet.routine();
  const landdrill::Run& run = routine.runs.front();
  const std::optional<Mark> told = told_by(routine, run).mark;
  return told ? told->text() : "nothing";
}

TEST(Execution, TakesEachFaultFromTenByItsSize) {
  EXPECT_EQ(mark_after("bent-knee small"), "9.75");
  EXPECT_EQ(mark_after("bent-knee medium"), "9.5");
  EXPECT_EQ(mark_after("bent-knee large"), "9");
}

std::string with_best(const std::string& lines, const std::string& faults) {
  const ReadSheet sheet(kit::replaced(reeds, "expect 7.5\n", "expect 7.5\n" + lines) +
                            "run 2026-04-14\nelement 1: " + faults + "\n",
                        kit::pond());
  const std::optional<Mark> told = told_by(sheet.routine(), sheet.routine().runs.front()).mark;
  return told ? told->text() : "nothing";
}

TEST(Execution, TakesFaultsFromWhatAFaultlessShowingByTheseSwimmersWouldGet) {
  EXPECT_EQ(with_best("best 8.5\n", "bent-knee medium"), "8");
  EXPECT_EQ(with_best("best 8.5\n", "clean"), "8.5");
  EXPECT_EQ(with_best("", "bent-knee medium"), "9.5");
}

TEST(Execution, SaysNothingOfTheMarkInACleanRunWhereNobodySaysTheBest) {
  EXPECT_EQ(mark_after("clean"), "nothing");
  ValueSet set = kit::Tables().load();
  for (PanelRule& rule : set.panels) rule.best = mark("8.75");
  EXPECT_EQ(mark_after("clean", set), "8.75");
}

TEST(Execution, SaysNothingOfTheMarkByALostPartWithoutFaults) {
  EXPECT_EQ(with_best("best 8.5\n", "lost spin-a"), "nothing");
  EXPECT_EQ(with_best("best 8.5\n", "lost spin-a, bent-knee medium"), "8");
}

TEST(Execution, TakesAMarkThatIsGivenOutrightAsItIs) {
  EXPECT_EQ(with_best("best 8.5\n", "7.25"), "7.25");
  EXPECT_EQ(mark_after("6.8"), "6.8");
}

TEST(Execution, TakesTheBestMarkOfTheOptionBeforeThatOfTheElementAndTheHeader) {
  const auto best = [](const std::string& header, const std::string& element, const std::string& option) {
    const ReadSheet sheet(
        kit::replaced(kit::replaced(reeds, "values pond\n", "values pond\n" + header), "expect 7.5\n",
                      "expect 7.5\n" + element + "option \"safer\"\nparts hold x2\nexpect 8\n" + option),
        kit::pond());
    std::string all;
    for (const Option& one : sheet.routine().elements[0].options)
      all += (one.best ? one.best->text() : "-") + " ";
    const std::optional<Mark>& other = sheet.routine().elements[1].options[0].best;
    return all + (other ? other->text() : "-");
  };
  EXPECT_EQ(best("", "", ""), "- - -");
  EXPECT_EQ(best("best 8\n", "", ""), "8 8 8");
  EXPECT_EQ(best("best 8\n", "best 8.5\n", ""), "8.5 8.5 8");
  EXPECT_EQ(best("best 8\n", "best 8.5\n", "best 9\n"), "8.5 9 8");
  EXPECT_EQ(best("", "", "best 9\n"), "- 9 -");
}

TEST(Execution, TakesAFaultAsOftenAsItWasSeen) {
  EXPECT_EQ(mark_after("bent-knee small x3"), "9.25");
}

TEST(Execution, TakesNoMoreThanTheCapOfTheFault) {
  EXPECT_EQ(mark_after("bent-knee large x2"), "8.5");
  EXPECT_EQ(mark_after("bent-knee medium x3"), "8.5");  // exactly the cap
}

TEST(Execution, SharesTheCapAmongTheSizesOfAFault) {
  const ReadSheet sheet(
      reeds + "run 2026-04-14\nelement 1: bent-knee large, bent-knee medium x2, bent-knee small\n",
      kit::pond());
  const Routine& routine = sheet.routine();
  const landdrill::Run& run = routine.runs.front();
  const RunMark seen = told_by(routine, run);
  ASSERT_EQ(seen.deductions.size(), 3u);
  EXPECT_EQ(seen.deductions[0].taken, mark("1"));
  EXPECT_FALSE(seen.deductions[0].capped);
  EXPECT_EQ(seen.deductions[1].taken, mark("0.5"));
  EXPECT_TRUE(seen.deductions[1].capped);
  EXPECT_EQ(seen.deductions[2].taken, mark("0"));
  EXPECT_TRUE(seen.deductions[2].capped);
  EXPECT_EQ(seen.mark, mark("8.5"));
}

TEST(Execution, CapsEachFaultByItself) {
  EXPECT_EQ(mark_after("bent-knee large x2, sinking large"), "2.5");
}

TEST(Execution, NeverGoesBelowTheFootOfTheScale) {
  EXPECT_EQ(mark_after("sinking large x2"), "0");
  const ValueSet set = kit::Tables()
                           .replace("panels.csv", "open,execution,,Execution,element,5,1,1,mean,0.25,0,10",
                                    "open,execution,,Execution,element,5,1,1,mean,0.25,2,10")
                           .load();
  EXPECT_EQ(mark_after("sinking large x2", set), "2");
}

TEST(Execution, RoundsToTheStepOfThePanel) {
  EXPECT_EQ(mark_after("splash small"), "10");       // 9.9
  EXPECT_EQ(mark_after("splash small x2"), "9.75");  // 9.8
  const ValueSet set = kit::Tables()
                           .replace("panels.csv", "times-difficulty,1,4,half-up,mean,0.25",
                                    "times-difficulty,1,4,down,mean,0.25")
                           .load();
  EXPECT_EQ(mark_after("splash small", set), "9.75");
}

TEST(Execution, RoundsOtherwiseThanPointsWhereTheRuleSaysSo) {
  ValueSet set = kit::Tables().load();
  for (PanelRule& rule : set.panels) rule.run_rounding = Rounding::down;
  EXPECT_EQ(mark_after("splash small", set), "9.75");  // 9.9
}

// Three run-throughs, not in the order of their days; the second element was seen once.
const std::string run_throughs =
    "run 2026-04-20\n"
    "element 1: bent-knee small\n"  // 9.75
    "run 2026-04-28\n"
    "element 1: bent-knee large, bent-knee medium\n"  // 8.5
    "run 2026-04-14\n"
    "element 1: bent-knee medium\n"               // 9.5
    "element 2: lost spin-b, splash small x5\n";  // 9.5

ExpectedMark expected_of(const ReadSheet& sheet, std::size_t element, RunWish wish, std::size_t option = 0) {
  const Routine& routine = sheet.routine();
  return expected_mark(routine, element, routine.elements[element].options[option], wish);
}

TEST(Execution, ExpectsTheMarkOfTheLatestDayThatSawTheElement) {
  const ReadSheet sheet(reeds + run_throughs, kit::pond());
  const ExpectedMark first = expected_of(sheet, 0, {});
  EXPECT_EQ(first.from, ExpectedMark::From::run);
  EXPECT_EQ(first.mark, mark("8.5"));
  EXPECT_EQ(first.runs.front().run->date, "2026-04-28");
  EXPECT_EQ(expected_of(sheet, 1, {}).runs.front().run->date, "2026-04-14");
}

TEST(Execution, TakesTheLaterOfTwoRunsOfOneDay) {
  const ReadSheet sheet(reeds +
                            "run 2026-04-14 \"morning\"\nelement 1: 9\nrun 2026-04-14 "
                            "\"evening\"\nelement 1: bent-knee small\n",
                        kit::pond());
  EXPECT_EQ(expected_of(sheet, 0, {}).mark, mark("9.75"));
}

TEST(Execution, AveragesAllRunsInTheStepOfThePanel) {
  const ReadSheet sheet(reeds + run_throughs, kit::pond());
  const ExpectedMark mean = expected_of(sheet, 0, {Which::mean, {}});
  EXPECT_EQ(mean.from, ExpectedMark::From::runs);
  EXPECT_EQ(mean.runs.size(), 3u);
  EXPECT_EQ(mean.mark, mark("9.25"));  // 27.75 / 3
}

TEST(Execution, TakesTheOnlyRunAsItIsWhenAveraging) {
  const ReadSheet sheet(reeds + run_throughs, kit::pond());
  EXPECT_EQ(expected_of(sheet, 1, {Which::mean, {}}).from, ExpectedMark::From::run);
}

TEST(Execution, TakesTheRunOfOneDay) {
  const ReadSheet sheet(reeds + run_throughs, kit::pond());
  EXPECT_EQ(expected_of(sheet, 0, {Which::dated, "2026-04-14"}).mark, mark("9.5"));
  EXPECT_EQ(expected_of(sheet, 1, {Which::dated, "2026-04-28"}).from, ExpectedMark::From::sheet);
}

TEST(Execution, TakesWhatTheCoachExpectsWhenNoRunIsWanted) {
  const ReadSheet sheet(reeds + run_throughs, kit::pond());
  const ExpectedMark expected = expected_of(sheet, 0, {Which::none, {}});
  EXPECT_EQ(expected.from, ExpectedMark::From::sheet);
  EXPECT_EQ(expected.mark, mark("7.5"));
  EXPECT_TRUE(expected.runs.empty());
}

TEST(Execution, HasNoMarkWhenThereIsNeitherARunNorAnExpectedOne) {
  const ReadSheet sheet(kit::replaced(reeds, "expect 7.5\n", ""), kit::pond());
  EXPECT_EQ(expected_of(sheet, 0, {}).from, ExpectedMark::From::nothing);
  EXPECT_FALSE(expected_of(sheet, 0, {}).mark.has_value());
}

TEST(Execution, CreditsTheBaseMarkWhenAPartWasLostOrTheRunSaysSo) {
  EXPECT_TRUE(expected_of(ReadSheet(reeds + run_throughs, kit::pond()), 1, {}).base);
  EXPECT_FALSE(expected_of(ReadSheet(reeds + run_throughs, kit::pond()), 0, {}).base);
  EXPECT_TRUE(
      expected_of(ReadSheet(reeds + "run 2026-04-14\nelement 1 base: clean\n", kit::pond()), 0, {}).base);
}

TEST(Execution, CreditsTheBaseMarkOfAveragedRunsOnlyWhenMoreThanHalfShowedIt) {
  const std::string base = "run 2026-04-14\nelement 1 base: clean\n",
                    good = "run 2026-04-15\nelement 1: clean\n";
  const RunWish mean{Which::mean, {}};
  EXPECT_FALSE(expected_of(ReadSheet(reeds + base + good, kit::pond()), 0, mean).base);
  EXPECT_TRUE(expected_of(ReadSheet(reeds + base + good + base, kit::pond()), 0, mean).base);
}

TEST(Execution, CreditsTheBaseMarkOfAveragedRunsAboveTheShareThatTheRuleSays) {
  const std::string base = "run 2026-04-14\nelement 1 base: clean\n",
                    good = "run 2026-04-15\nelement 1: clean\n";
  const auto with_share = [&](std::string_view share, const std::string& runs) {
    ValueSet set = kit::Tables().load();
    for (PanelRule& rule : set.panels) rule.run_base = kit::number(share);
    return expected_of(ReadSheet(reeds + runs, set), 0, {Which::mean, {}}).base;
  };
  EXPECT_TRUE(with_share("0.49", base + good));
  EXPECT_FALSE(with_share("0.75", base + base + base + good));
  EXPECT_TRUE(with_share("0.666666", base + base + good));
  EXPECT_TRUE(with_share("0", base + good + good + good));
  EXPECT_FALSE(with_share("0", good + good));
}

TEST(Execution, LeavesAnOptionWithoutTheMarksOfRunsOfTheElementAsWritten) {
  const std::string safer =
      kit::replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"safer\"\nparts hold x2\nexpect 8\n");
  const ReadSheet sheet(safer + "run 2026-04-14\nelement 1 base: bent-knee large\n", kit::pond());
  EXPECT_EQ(expected_of(sheet, 0, {}).mark, mark("9"));
  EXPECT_EQ(expected_of(sheet, 0, {}, 1).mark, mark("8"));
  EXPECT_EQ(expected_of(sheet, 0, {}, 1).from, ExpectedMark::From::sheet);
  EXPECT_FALSE(expected_of(sheet, 0, {}, 1).base);
}

TEST(Execution, TakesSyncErrorsAndPenaltiesFromTheLatestRunThatSaysSo) {
  const std::string runs =
      "run 2026-04-28\nelement 1: clean\nsync: none\n"
      "run 2026-04-14\nelement 1: clean\npenalty: none\n"
      "run 2026-05-02\nelement 1: clean\n";
  const ReadSheet sheet(reeds + runs, kit::pond());
  const Routine& routine = sheet.routine();
  EXPECT_EQ(run_with_sync(routine, {})->date, "2026-04-28");
  EXPECT_EQ(run_with_penalties(routine, {})->date, "2026-04-14");
  EXPECT_EQ(run_with_sync(routine, {Which::dated, "2026-05-02"}), nullptr);
  EXPECT_EQ(run_with_penalties(routine, {Which::none, {}}), nullptr);
}

TEST(Execution, TakesSyncErrorsFromTheLaterOfTwoRunsOfOneDay) {
  const ReadSheet sheet(
      reeds + "run 2026-04-14 \"morning\"\nsync: small\nrun 2026-04-14 \"evening\"\nsync: clear\n",
      kit::pond());
  EXPECT_EQ(run_with_sync(sheet.routine(), {})->title, "evening");
}

TEST(Execution, TakesAnAspectFromTheLatestRunThatMarkedIt) {
  const std::string runs = "run 2026-04-14\nchoreography: 7\nrun 2026-04-15\nelement 1: clean\n";
  const ReadSheet sheet(reeds + runs, kit::pond());
  const std::vector<const PanelRule*> rules = sheet.routine().set->routine_panels("open");
  EXPECT_EQ(run_with_aspect(sheet.routine(), *rules.at(0), {})->date, "2026-04-14");
  EXPECT_EQ(run_with_aspect(sheet.routine(), *rules.at(1), {}), nullptr);
}

}  // namespace
}  // namespace landdrill
