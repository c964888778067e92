#include "engine/score/account.h"

#include <gtest/gtest.h>

#include "tables/load.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

const std::string panel =
    "panel 2026-05-09 \"Tarn Open\"\n"
    "element 1: 7.25 7.50 7.25 7.00 7.75\n"
    "element 2 base: 6.75 7.00 6.50 7.00 6.75\n"
    "choreography: 7 7 7 7 7\n"
    "performance: 8 8 8.25 8.25 8\n"
    "sync: small x4\n"
    "penalty: bottom\n"
    "result: 66.4\n";

// "7.00", "18.9000": as they are printed; "none" for what is not there.
std::string text(const std::optional<PanelMark>& mark) {
  return mark ? mark->value.text(mark->places) : "none";
}
std::string text(const std::optional<Points>& points) {
  return points ? points->text(4) : "none";
}
// "expected", "run of 2026-04-14", "2 runs", "nothing".
std::string text(const RestsOn& rests_on) {
  switch (rests_on.from) {
    case ExpectedMark::From::nothing:
      return "nothing";
    case ExpectedMark::From::sheet:
      return "expected";
    case ExpectedMark::From::run:
      return "run of " + rests_on.date;
    case ExpectedMark::From::runs:
      return std::to_string(rests_on.runs) + " runs";
  }
  return "";
}

Account estimate_of(const std::string& text, const ValueSet& set = pond()) {
  return account(ReadSheet(text, set).routine(), {}, std::nullopt);
}

TEST(Account, OpensWithWhatIsSwumAndByWhichValues) {
  const ReadSheet sheet(reeds + panel, pond());
  const Account told = account(sheet.routine(), {}, 0);
  EXPECT_EQ(told.title, "Reeds");
  EXPECT_EQ(told.event, "Open water");
  EXPECT_EQ(told.set, "The pond");
  EXPECT_EQ(told.edition, "2026");
  EXPECT_EQ(told.panel_date, "2026-05-09");
  EXPECT_EQ(told.panel, "Tarn Open");
  EXPECT_EQ(told.places, 4);
}

TEST(Account, TellsOneElementALine) {
  const ReadSheet sheet(reeds + panel, pond());
  const ElementLine line = account(sheet.routine(), {}, 0).elements.at(1);
  EXPECT_EQ(line.number, 2);
  EXPECT_EQ(line.title, "");
  EXPECT_EQ(line.kind, "Hybrid");
  EXPECT_EQ(line.option, "");
  EXPECT_EQ(line.declared, kit::difficulty("2.7"));
  EXPECT_EQ(line.expected.credited, kit::difficulty("2.7"));
  EXPECT_FALSE(line.expected.base);
  EXPECT_EQ(text(line.expected.mark), "7.00");
  EXPECT_EQ(text(line.expected.points), "18.9000");
  EXPECT_EQ(text(line.left), "8.1000");  // 27 with ten for everything
  EXPECT_EQ(text(*line.rests_on), "expected");
  ASSERT_TRUE(line.recorded);
  EXPECT_EQ(line.recorded->credited, kit::difficulty("0.5"));
  EXPECT_TRUE(line.recorded->base);
  EXPECT_EQ(text(line.recorded->mark), "6.8333");
  EXPECT_EQ(text(line.recorded->points), "3.4167");
  EXPECT_EQ(text(line.difference), "-15.4833");
}

TEST(Account, TellsEachAspectALine) {
  const ReadSheet sheet(reeds + panel, pond());
  const AspectLine line = account(sheet.routine(), {}, 0).aspects.at(1);
  EXPECT_EQ(line.title, "Performance");
  EXPECT_EQ(line.weight, kit::factor("3"));
  EXPECT_EQ(text(line.expected.mark), "8.00");
  EXPECT_EQ(text(line.expected.points), "24.0000");
  EXPECT_EQ(text(line.recorded.mark), "8.0833");
  EXPECT_EQ(text(line.recorded.points), "24.2500");
  EXPECT_EQ(text(line.difference), "0.2500");
  EXPECT_EQ(text(line.rests_on), "expected");
}

TEST(Account, TellsTheTotalsAndTheAnnouncedResult) {
  const ReadSheet sheet(reeds + panel, pond());
  const Account told = account(sheet.routine(), {}, 0);
  EXPECT_EQ(text(told.total.estimate), "86.4000");
  EXPECT_EQ(text(told.total.recorded), "66.4667");
  EXPECT_EQ(text(told.total.difference), "-19.9333");
  EXPECT_EQ(told.declared, kit::difficulty("4.5"));
  EXPECT_EQ(told.credited, kit::difficulty("4.5"));
  EXPECT_EQ(told.recorded_credited, kit::difficulty("2.3"));
  EXPECT_EQ(text(told.announced), "66.4000");
  EXPECT_EQ(text(told.announced_difference), "0.0667");
  ASSERT_TRUE(told.bridge.has_value());
  EXPECT_EQ(told.bridge->from, kit::points("86.4"));
  EXPECT_EQ(told.bridge->to, kit::points("66.4667"));
  EXPECT_EQ(told.estimate->value, text(told.total.estimate));
  EXPECT_EQ(told.recorded->value, text(told.total.recorded));
}

TEST(Account, TellsWhatSyncErrorsAndPenaltiesTook) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nsync: clear x3\n" + panel, pond());
  const Account told = account(sheet.routine(), {}, 0);
  EXPECT_EQ(text(told.sync.estimate), "-1.5000");
  EXPECT_EQ(text(told.sync.recorded), "-0.4000");
  EXPECT_EQ(text(told.sync.difference), "1.1000");
  EXPECT_EQ(text(told.penalties.estimate), "none");
  EXPECT_EQ(text(told.penalties.recorded), "-2.0000");
  EXPECT_EQ(text(told.penalties.difference), "-2.0000");
}

TEST(Account, SaysNothingOfAPanelWhereNoneIsAskedFor) {
  const ReadSheet sheet(reeds + panel, pond());
  const Account told = account(sheet.routine(), {}, std::nullopt);
  EXPECT_EQ(told.panel_date, "");
  EXPECT_EQ(told.panel, "");
  EXPECT_FALSE(told.total.recorded);
  EXPECT_FALSE(told.total.difference);
  EXPECT_FALSE(told.recorded_credited);
  EXPECT_FALSE(told.elements[1].recorded);
  EXPECT_FALSE(told.recorded.has_value());
  EXPECT_FALSE(told.bridge.has_value());
}

std::string worst(const Account& told) {
  std::string numbers;
  for (const ElementLine& line : told.elements) numbers += line.worst ? std::to_string(line.number) : "";
  return numbers;
}

TEST(Account, MarksTheLineWithMostPointsLeftAsTheWorst) {
  EXPECT_EQ(worst(estimate_of(reeds)), "2");                                      // 4.5 and 8.1 left
  EXPECT_EQ(worst(estimate_of(replaced(reeds, "expect 7.5", "expect 5"))), "1");  // 9 and 8.1
  EXPECT_EQ(
      worst(estimate_of(replaced(replaced(reeds, "expect 7.5", "expect 10"), "expect 7\n", "expect 10\n"))),
      "");
}

TEST(Account, MarksTheLineThatLostMostAgainstThePanelAsTheWorst) {
  const std::string marks = "choreography: 7 7 7 7 7\nperformance: 8 8 8 8 8\n";
  const ReadSheet first(reeds + "panel 2026-05-09\nelement 1: 6 6 6 6 6\nelement 2: 7 7 7 7 7\n" + marks,
                        pond());
  EXPECT_EQ(worst(account(first.routine(), {}, 0)), "1");
  const ReadSheet none(reeds + "panel 2026-05-09\nelement 1: 8 8 8 8 8\nelement 2: 7 7 7 7 7\n" + marks,
                       pond());
  EXPECT_EQ(worst(account(none.routine(), {}, 0)), "");
}

TEST(Account, CountsABaseMarkAmongWhatIsLeft) {
  const Account told = estimate_of(reeds + "run 2026-04-14\nelement 1: lost spin-a, bent-knee large\n");
  EXPECT_TRUE(told.elements[0].expected.base);
  EXPECT_EQ(text(told.elements[0].expected.points), "4.5000");
  EXPECT_EQ(text(told.elements[0].left), "13.5000");  // 10 x 1.8 less 9 x 0.5
  EXPECT_EQ(text(*told.elements[0].rests_on), "run of 2026-04-14");
}

// "estimate: 1 performance; panel: 2"
std::string missing(const Account& told) {
  std::string list;
  for (const MissingMarks& one : told.missing) {
    list += list.empty() ? "" : "; ";
    list += one.of == MissingMarks::Of::panel ? "panel:"
            : one.nothing_is_marked           ? "all of the estimate:"
                                              : "estimate:";
    for (const int number : one.elements) list += " " + std::to_string(number);
    for (const std::string& aspect : one.aspects) list += " " + aspect;
  }
  return list;
}

TEST(Account, NamesEveryMarkThatIsMissing) {
  const ReadSheet sheet(replaced(replaced(reeds, "expect 7.5\n", ""), ", performance 8.00", "") +
                            "panel 2026-05-09\nelement 1: 7 7 7 7 7\nchoreography: 7 7 7 7 7\n",
                        pond());
  const Account told = account(sheet.routine(), {}, 0);
  EXPECT_EQ(missing(told), "estimate: 1 performance; panel: 2 performance");
  EXPECT_FALSE(told.total.estimate);
  EXPECT_EQ(text(told.so_far), "48.9000");
  EXPECT_FALSE(told.total.recorded);
  EXPECT_EQ(text(told.recorded_so_far), "40.6000");
  EXPECT_FALSE(told.total.difference);
  EXPECT_FALSE(told.bridge.has_value());
}

TEST(Account, ListsAllElementsWithoutMarks) {
  EXPECT_EQ(missing(estimate_of(replaced(replaced(reeds, "expect 7.5\n", ""), "expect 7\n", ""))),
            "estimate: 1 2");
}

TEST(Account, AsksForNoExpectedMarksWhereThereIsOnlyAPanel) {
  const std::string bare = replaced(replaced(replaced(reeds, "expect 7.5\n", ""), "expect 7\n", ""),
                                    "impression choreography 7.50, performance 8.00\n", "");
  const ReadSheet alone(bare, pond());
  EXPECT_EQ(missing(account(alone.routine(), {}, std::nullopt)),
            "all of the estimate: 1 2 choreography performance");
  const ReadSheet marked(
      bare + "panel 2026-05-09\nelement 1: 7 7 7 7 7\nelement 2: 7 7 7 7 7\nchoreography: 7 7 7 7 7\n",
      pond());
  EXPECT_EQ(missing(account(marked.routine(), {}, 0)), "panel: performance");
}

TEST(Account, TakesSyncAndPenaltiesFromTheLatestRunThatSaysSo) {
  const std::string runs =
      "run 2026-04-14\nelement 1: clean\nsync: small x2\nrun 2026-04-15\nelement 1: clean\n";
  EXPECT_EQ(text(estimate_of(reeds + runs).sync.estimate), "-0.2000");
  EXPECT_EQ(text(estimate_of(reeds + runs + "sync: none\n").sync.estimate), "none");
}

TEST(Account, SaysWhatEachMarkRestsOn) {
  const std::string runs =
      "run 2026-04-14\nelement 1: 7\nrun 2026-04-15\nelement 1: 8\nchoreography: 7\n";
  const ReadSheet sheet(replaced(reeds, "expect 7\n", "") + runs, pond());
  const Account latest = account(sheet.routine(), {}, std::nullopt);
  EXPECT_EQ(text(*latest.elements[0].rests_on), "run of 2026-04-15");
  EXPECT_EQ(text(*latest.elements[1].rests_on), "nothing");
  EXPECT_EQ(text(latest.aspects[0].rests_on), "run of 2026-04-15");
  EXPECT_EQ(text(latest.aspects[1].rests_on), "expected");
  const Account mean = account(sheet.routine(), {{}, {RunWish::Which::mean, {}}}, std::nullopt);
  EXPECT_EQ(text(*mean.elements[0].rests_on), "2 runs");
}

TEST(Account, KeepsTheMarksOfEachJudgeAndWhatBecameOfThem) {
  const ReadSheet sheet(reeds + panel, pond());
  const std::vector<JudgeMark> judges = account(sheet.routine(), {}, 0).elements.at(0).recorded->judges;
  ASSERT_EQ(judges.size(), 5u);
  EXPECT_EQ(judges[3].mark, kit::mark("7"));
  EXPECT_EQ(judges[3].state, JudgeMark::State::dropped_low);
  EXPECT_EQ(judges[4].state, JudgeMark::State::dropped_high);
}

TEST(Account, NamesTheOptionThatIsPriced) {
  const ReadSheet sheet(
      replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"safer\"\nparts hold x2\nexpect 8\n"), pond());
  EXPECT_EQ(account(sheet.routine(), {{1}, {}}, std::nullopt).elements[0].option, "safer");
}

std::string codes_of(const Cautions& cautions) {
  std::string codes;
  for (const CautionRule& rule : cautions) codes += (codes.empty() ? "" : " ") + rule.code;
  return codes;
}
std::string cautions(const std::string& text) {
  return codes_of(estimate_of(text).cautions);
}

TEST(Account, CautionsWhereSomeoneIsLiftedThrownOrUnderWater) {
  const std::string dry = replaced(replaced(reeds, "32 under", "32 arms"), "24 under", "24 arms");
  EXPECT_EQ(cautions(dry), "");
  EXPECT_EQ(cautions(reeds), "breath-hold only-a-price");
  EXPECT_EQ(cautions(replaced(dry, "element 2 hybrid\nparts spin-b, hold x2", "element 2 lift\nparts hold")),
            "lifts blow-in-a-lift only-a-price");
  EXPECT_EQ(cautions(replaced(dry, "element 2 hybrid\nparts spin-b, hold x2", "element 2 throw\nparts hold")),
            "throws blow-in-a-throw only-a-price");
  const std::string both =
      replaced(replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2", "element 2 throw\nparts hold"),
               "element 1 hybrid \"Ripple\"\nparts spin-a, hold", "element 1 lift\nparts hold");
  EXPECT_EQ(cautions(both), "lifts blow-in-a-lift throws blow-in-a-throw breath-hold only-a-price");
}

TEST(Account, SaysTheCautionsOfASetBesideTheUsualOnes) {
  TableFiles files = kit::Tables().files();
  files.files.push_back({"cautions.csv",
                         "code,when,topic,text,source,status\n"
                         "buddy,under-water,buddies,watch each other.,made up,invented\n"
                         "blow,any,,Out after a blow.,made up,invented\n"});
  const ValueSet set = load(files).set.value();
  EXPECT_EQ(codes_of(account(ReadSheet(reeds, set).routine(), {}, std::nullopt).cautions),
            "breath-hold buddy only-a-price blow");
}

// "memory: parts hold; " for each status that occurs.
std::string statuses(const Account& told) {
  std::string list;
  for (const StatusCount& count : told.statuses) {
    list += std::string(word_of(count.status)) + ":";
    for (const std::string& row : count.rows) list += " " + row + ",";
    list += "; ";
  }
  return list;
}

TEST(Account, CountsTheRowsItRestsOnByTheirStatusEachOnce) {
  EXPECT_EQ(
      statuses(estimate_of(reeds)),
      "invented: panels open execution, kinds hybrid, parts spin-a, parts spin-b, panels open choreography, "
      "panels open performance,; memory: parts hold,; ");
}

TEST(Account, TellsPublishedAndPracticeRowsApart) {
  EXPECT_EQ(statuses(estimate_of(
                "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\nexpect 7\n"
                "element 2 figure\nparts otter\nexpect 8.5\n")),
            "invented: panels session figure-mark, kinds figure,; practice: parts otter,; published: parts "
            "heron,; ");
}

TEST(Account, TellsWhatIsWeighedTogether) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\nexpect 7\n"
      "element 2 figure\nparts otter\nexpect 8.5\n"
      "panel 2026-05-09\nelement 1: 7 7.1 7 7 9\nelement 2: 6 6.1 6.1 6.3 6\n",
      pond());
  const Account told = account(sheet.routine(), {}, 0);
  EXPECT_EQ(text(told.together.estimate), "76.0000");
  EXPECT_EQ(text(told.together.recorded), "66.4667");
  EXPECT_EQ(text(told.together.difference), "-9.5333");
  EXPECT_FALSE(told.elements[0].expected.points);
  EXPECT_FALSE(told.elements[0].difference);
  EXPECT_EQ(text(told.elements[0].left), "18.0000");  // (10 x 2.1 + 8.5 x 1.4) / 3.5 x 10 - 76
  EXPECT_EQ(worst(told), "2");
}

TEST(Account, ReadsAnAspectThatIsCalledTotalOrAsAnElementsPath) {
  const ValueSet set =
      kit::Tables().replace("panels.csv", "open,performance,,Performance", "open,total,,Overall").load();
  const Account told = estimate_of(replaced(reeds, "performance 8.00", "total 8.00"), set);
  EXPECT_EQ(told.aspects[1].title, "Overall");
  EXPECT_EQ(text(told.aspects[1].expected.points), "24.0000");
  EXPECT_EQ(text(told.total.estimate), "86.4000");
}

TEST(Account, CountsTheRunsThatSayNothingOfAMark) {
  const auto silent = [](const std::string& runs) {
    const ReadSheet sheet(reeds + runs, pond());
    return account(sheet.routine(), {}, std::nullopt).elements.at(0).rests_on->silent;
  };
  EXPECT_EQ(silent(""), 0u);
  EXPECT_EQ(silent("run 2026-04-14\nelement 1: clean\nrun 2026-04-15\nelement 1: lost spin-a\n"), 2u);
  EXPECT_EQ(silent("run 2026-04-14\nelement 1: clean\nrun 2026-04-15\nelement 1: splash small\n"), 0u)
      << "then a run says the mark";
  EXPECT_EQ(silent("run 2026-04-14\nelement 2: clean\n"), 0u);
}

}  // namespace
}  // namespace landdrill
