#include "engine/chances/forecast.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "engine/report/sentences.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

// A pond with small scales: four marks, two or three judges.
const ValueSet& puddle() {
  static const ValueSet set =
      kit::Tables()
          .add("events.csv", "tiny,Tiny,,,,,invented for tests,invented")
          .add("events.csv", "tiny-session,Tiny session,,,,,invented for tests,invented")
          .add("panels.csv",
               "tiny,execution,,Execution,element,3,1,0,mean,2.5,2.5,10,times-difficulty,1.1,4,half-up,"
               "refuse,,"
               "invented for tests,invented")
          .add("panels.csv",
               "tiny,choreography,,Choreography,routine,1,0,0,mean,2.5,2.5,10,plain,3,2,half-up,refuse,,"
               "invented "
               "for tests,invented")
          .add("panels.csv",
               "tiny-session,figure-mark,,Figure "
               "marks,element,2,0,1,mean,2.5,2.5,10,weighted,10,4,half-up,refuse,,"
               "invented for tests,invented")
          .load();
  return set;
}

// Every mark that a judge can give, with its chance from the error function.
std::vector<std::pair<Mark, double>> chances(const PanelRule& rule, double expected, double spread) {
  const auto below = [&](double mark) {
    return 0.5 * (1 + std::erf((mark - expected) / spread / std::sqrt(2)));
  };
  std::vector<std::pair<Mark, double>> result;
  for (Mark mark = rule.least; mark <= rule.most; mark += Mark(rule.step)) {
    const double at = static_cast<double>(mark.value().units()) / 1e6, half = 1.25;
    const double up_to = mark == rule.most ? 1 : below(at + half),
                 from = mark == rule.least ? 0 : below(at - half);
    result.emplace_back(mark, up_to - from);
  }
  return result;
}

// The total of every panel that can sit down and every base mark that can fall, by score(), one by one.
class EveryWay {
 public:
  EveryWay(const Routine& routine, double spread, double day_spread) : routine_(routine), spread_(spread) {
    showing_ = expected(routine, {});
    // Out to six spreads, far more finely than it needs to be.
    double sum = 0;
    const double step = day_spread / 10;
    const int steps = day_spread > 0 ? 60 : 0;
    std::vector<double> heights;
    for (int at = -steps; at <= steps; ++at) {
      heights.push_back(day_spread > 0 ? std::exp(-std::pow(at * step / day_spread, 2) / 2) : 1);
      sum += heights.back();
    }
    for (int at = -steps; at <= steps; ++at) {
      shift_ = at * step;
      each_element(0, heights[static_cast<std::size_t>(at + steps)] / sum);
    }
  }
  std::map<Decimal, double> totals;

 private:
  template <class Then>
  void each_panel(const PanelRule& rule, double expected, JudgeMarks marks, double chance, Then then) {
    if (static_cast<int>(marks.size()) == rule.judges) return then(keep(rule, marks), chance);
    for (const auto& [mark, of_mark] : chances(rule, expected + shift_, spread_)) {
      JudgeMarks more = marks;
      more.push_back(mark);
      each_panel(rule, expected, more, chance * of_mark, then);
    }
  }
  void each_element(std::size_t i, double chance) {
    if (i == routine_.elements.size()) return each_aspect(0, chance);
    const Element& element = routine_.elements[i];
    const Option& option = element.options.front();
    const double mark = static_cast<double>(option.expect->value().units()) / 1e6;
    const double slip = option.slip ? static_cast<double>(option.slip->units()) / 1e8 : 0;
    std::map<Mark, double> sums;  // as panels with one kept sum score alike
    int count = 0;
    each_panel(*element.panel, mark, {}, 1, [&](const KeptMarks& kept, double of_panel) {
      sums[kept.sum] += of_panel;
      count = kept.count;
    });
    for (const auto& [sum, of_sum] : sums) {
      showing_.elements[i].marks = KeptMarks{sum, count};
      showing_.elements[i].credited = showing_.elements[i].declared;
      each_element(i + 1, chance * of_sum * (1 - slip));
      if (slip == 0) continue;
      showing_.elements[i].credited = *element.kind->base;
      each_element(i + 1, chance * of_sum * slip);
    }
  }
  void each_aspect(std::size_t i, double chance) {
    if (i == showing_.aspects.size()) {
      totals[score(routine_, showing_).total->value()] += chance;
      return;
    }
    const double mark = static_cast<double>(routine_.impressions[i].mark.value().units()) / 1e6;
    each_panel(*showing_.aspects[i].rule, mark, {}, 1, [&](const KeptMarks& kept, double of_panel) {
      showing_.aspects[i].marks = kept;
      each_aspect(i + 1, chance * of_panel);
    });
  }

  const Routine& routine_;
  double spread_, shift_ = 0;
  Showing showing_;
};

void check_every_way(const std::string& text, double spread, double day) {
  const ReadSheet sheet(text, puddle());
  const Forecast told = forecast(sheet.routine(), {}, {});
  ASSERT_TRUE(told.total) << (told.obstacles.empty() ? "" : report::words_of(told.obstacles.front()));
  EXPECT_EQ(told.total->bound.text(), "0");
  const EveryWay slow(sheet.routine(), spread, day);
  std::map<Decimal, double> ours;
  for (const Odds::Case& one : told.total->odds.cases()) ours[one.value] = one.chance;
  std::size_t likely = 0;
  for (const auto& [total, chance] : slow.totals) {
    EXPECT_NEAR(ours[total], chance, day > 0 ? told.total->off : 1e-12) << total.text();
    if (chance > 1e-9) ++likely;
  }
  EXPECT_GT(likely, 30u);
  EXPECT_NEAR(told.total->odds.whole(), 1, 1e-12);
}

const std::string tiny =
    "routine \"Tiny\"\nevent tiny\nvalues pond\nspread 1.9\nday 1.5\n"
    "element 1 hybrid\nparts spin-a, hold\nexpect 7.5\nslip 20%\n"
    "element 2 hybrid\nparts spin-b, hold x2\nexpect 6\nslip 5%\nimpression choreography 7.5\n";

TEST(Forecast, IsThatOfEveryPanelAndEveryBaseMarkOnEveryDay) {
  check_every_way(tiny, 1.9, 1.5);
}
TEST(Forecast, IsThatOfEveryPanelWithoutADay) {
  check_every_way(replaced(tiny, "day 1.5\n", ""), 1.9, 0);
}
TEST(Forecast, IsThatOfEveryPanelWhereElementsAreWeightedByDifficulty) {
  check_every_way(
      "routine \"Tiny\"\nevent tiny-session\nvalues pond\nspread 2.2\nday 2.6\n"
      "element 1 hybrid\nparts spin-a, hold\nexpect 7.5\nslip 20%\n"
      "element 2 hybrid\nparts spin-b, hold x2\nexpect 5\nslip 10%\n"
      "element 3 hybrid\nparts spin-b, spin-a\nexpect 6\n",
      2.2, 2.6);
}

TEST(Forecast, WithoutAnyScatterIsTheEstimate) {
  const ReadSheet sheet(replaced(reeds, "tempo 120\n", "tempo 120\nspread 0\n"), pond());
  const Forecast told = forecast(sheet.routine(), {}, {});
  ASSERT_EQ(told.total->odds.cases().size(), 1u);
  EXPECT_EQ(told.total->odds.cases().front().value.text(), "86.4");
}
std::string rippled() {
  return replaced(reeds, "tempo 120\n", "tempo 120\nspread 0.4\nday 0.2\n");
}

TEST(Forecast, TellsEachLineWithItsMarkItsSpreadAndWhatTheyRestOn) {
  const ReadSheet sheet(replaced(rippled(), "expect 7\n", "expect 7\nslip 10%\n") +
                            "errors small 2, clear 0.5\nrisk bottom 25%\n",
                        pond());
  const Forecast told = forecast(sheet.routine(), {}, {});
  ASSERT_EQ(told.lines.size(), 6u);
  EXPECT_EQ(told.lines[0].label, "1 Ripple");
  EXPECT_EQ(told.lines[1].label, "2");
  EXPECT_EQ(told.lines[1].base.percent.text(), "10");
  EXPECT_EQ(told.lines[1].spread.marks.text(), "0.4");
  EXPECT_EQ(told.lines[2].label, "Choreography");
  EXPECT_EQ(told.lines[2].what, ForecastLine::What::aspect);
  EXPECT_EQ(told.lines[4].what, ForecastLine::What::sync);
  EXPECT_NEAR(told.lines[4].points.mean(), -(2 * 0.1 + 0.5 * 0.5), 1e-12);
  EXPECT_NEAR(told.lines[4].points.deviation(), std::sqrt(2 * 0.01 + 0.5 * 0.25), 1e-12);
  EXPECT_EQ(told.lines[5].what, ForecastLine::What::penalties);
  EXPECT_NEAR(1 - told.lines[5].points.at_least(number("0")), 0.25, 1e-15);
  EXPECT_EQ(told.errors_from, "the sheet");
  double mean = 0;
  for (const ForecastLine& line : told.lines) mean += line.points.mean();
  const double bound = static_cast<double>(told.total->bound.units()) / 1e6;
  EXPECT_NEAR(told.total->odds.mean(), mean, bound + 1e-9);
  EXPECT_LE(told.total->bound, number("0.005"));
  EXPECT_LT(told.total->lost, 1e-12);
  EXPECT_GT(told.total->lost, 0);
}
TEST(Forecast, TakesTheSyncErrorsOfTheRunsWhereTheSheetExpectsNone) {
  const ReadSheet sheet(rippled() + "run 2026-04-01\nsync: small x3\nrun 2026-04-02\nsync: none\n", pond());
  const Forecast mean = forecast(sheet.routine(), {{}, {RunWish::Which::mean, {}}}, {});
  EXPECT_EQ(mean.errors_from, "2 runs");
  ASSERT_EQ(mean.errors.size(), 1u);
  EXPECT_EQ(mean.errors[0].number.text(), "1.5");
  EXPECT_EQ(forecast(sheet.routine(), {}, {}).errors_from, "1 run");
  const ReadSheet without(rippled(), pond());
  EXPECT_EQ(forecast(without.routine(), {}, {}).errors_from, "nothing: none expected");
}
TEST(Forecast, LeavesOutElementsThatTheEventDoesNotMark) {
  const ReadSheet sheet(
      "routine \"Whole\"\nevent whole\nvalues pond\nspread 0.3\nelement 1 hybrid\nparts spin-a, hold\n"
      "impression choreography 7, performance 8\n",
      pond());
  const Forecast told = forecast(sheet.routine(), {}, {});
  ASSERT_EQ(told.lines.size(), 2u);
  EXPECT_EQ(told.lines[0].what, ForecastLine::What::aspect);
}
TEST(Forecast, ADayMakesTheTotalScatterMore) {
  const ReadSheet sheet(rippled(), pond());
  const Forecast with = forecast(sheet.routine(), {}, {});
  const Forecast without = forecast(sheet.routine(), {}, {{std::nullopt, number("0"), std::nullopt}, {}});
  EXPECT_GT(with.total->odds.deviation(), without.total->odds.deviation() + 1);
  EXPECT_EQ(without.days.shifts.cases().size(), 1u);
}
TEST(Forecast, CountsTheDaysThatAreDone) {
  const ReadSheet sheet(rippled(), pond());
  std::vector<std::size_t> done, of_how_many;
  const Forecast told = forecast(sheet.routine(), {}, {}, [&](std::size_t so_far, std::size_t of) {
    done.push_back(so_far);
    of_how_many.push_back(of);
  });
  const std::size_t days = told.days.shifts.cases().size();
  ASSERT_EQ(done.size(), days);
  EXPECT_EQ(done.back(), days);
  EXPECT_EQ(of_how_many, std::vector<std::size_t>(days, days));
}

std::string obstacle(const std::string& text, const ValueSet& set = pond()) {
  const ReadSheet sheet(text, set);
  const Forecast told = forecast(sheet.routine(), {}, {});
  EXPECT_FALSE(told.total);
  EXPECT_TRUE(told.lines.empty());
  std::string all;
  for (const std::string& one : report::words_of(told.obstacles)) all += one + "\n";
  return all;
}
TEST(Forecast, SaysWhatToDoWhenMarksAreMissing) {
  EXPECT_EQ(obstacle(replaced(rippled(), "expect 7\n", "")),
            "element 2 has no expected mark: add `expect`, or a run\n");
}
TEST(Forecast, SaysWhatToDoWhenNothingTellsTheSpread) {
  EXPECT_EQ(obstacle(reeds),
            "nothing says how far judges' marks scatter: write `spread 0.4` into the sheet, give --spread, "
            "or add a "
            "row to the set's table spreads\n");
  EXPECT_EQ(
      obstacle(replaced(reeds, "expect 7\n", "expect 7\nspread 0.4\n")),
      "nothing says how far judges' marks scatter for element 1, choreography and performance: write `spread "
      "0.4` into the sheet, give --spread, or add a row to the set's table spreads\n");
}
const ForecastWish told_by_hand(const char* judges, const char* day) {
  return {{number(judges), number(day), std::nullopt}, {}};
}
TEST(Forecast, RefusesASpreadThatSaysNothing) {
  const ReadSheet sheet(reeds, pond());
  const Forecast told = forecast(sheet.routine(), {}, told_by_hand("5000", "0"));
  ASSERT_EQ(told.obstacles.size(), 1u);
  EXPECT_EQ(report::words_of(told.obstacles[0]),
            "a spread of 5000 marks (told: 5000) is more than 100 whole scales: write it in marks, as 0.4");
}
TEST(Forecast, OfAnAbsurdSpreadAndDayIsStillMade) {
  const ReadSheet sheet(reeds, pond());
  for (const auto& [judges, day] :
       {std::pair{"50", "50"}, {"999", "999"}, {"0.000001", "0.000001"}, {"0", "999"}}) {
    const Forecast told = forecast(sheet.routine(), {}, told_by_hand(judges, day));
    ASSERT_TRUE(told.total) << judges;
    EXPECT_NEAR(told.total->odds.whole(), 1, 1e-12) << judges;
  }
}
TEST(Forecast, OfSixtyElementsIsMadeWithinTheWork) {
  std::string text = "routine \"Long\"\nevent open\nvalues pond\nspread 0.4\nday 0.3\n";
  for (int i = 1; i <= 60; ++i) {
    text += "element " + std::to_string(i) + " hybrid\ndifficulty " +
            Decimal::from_units(1'000'000 + 70'000 * i).text() + "\nexpect 7.25\nslip 10%\n";
  }
  text += "impression choreography 7.50, performance 8.00\n";
  ValueSet set = pond();
  for (PanelRule& rule : set.panels) {
    if (rule.event != "open") continue;
    rule.judges = 20;
    rule.step = number("0.1");
  }
  ReadSheet sheet(text, pond());
  Routine routine = sheet.routine();
  for (Element& element : routine.elements)
    element.panel = set.element_panel(*set.events.find("open"), *set.kinds.find("hybrid"));
  const Forecast told = forecast(routine, {}, {});
  ASSERT_TRUE(told.total) << (told.obstacles.empty() ? "" : report::words_of(told.obstacles.front()));
  EXPECT_NEAR(told.total->odds.whole(), 1, 1e-10);
  EXPECT_GT(told.total->bound.units(), 0);
}

TEST(Reaches, LiesBetweenItsBounds) {
  const ReadSheet sheet(rippled(), pond());
  const Forecast told = forecast(sheet.routine(), {}, {{}, {number("0.5"), 0}});
  const ChanceBounds reached = reaches(*told.total, number("86"));
  EXPECT_LT(reached.least, reached.chance);
  EXPECT_GT(reached.most, reached.chance);
  const Forecast fine = forecast(sheet.routine(), {}, {{}, {number("0.0001"), 0}});
  EXPECT_EQ(fine.total->bound.text(), "0");
  EXPECT_GE(fine.total->odds.at_least(number("86")), reached.least);
  EXPECT_LE(fine.total->odds.at_least(number("86")), reached.most);
}
TEST(Reaches, IsExactWithoutABound) {
  const Odds tap({{number("1"), 0.4}, {number("2"), 0.6}});
  const ChanceBounds reached = reaches({tap, number("1"), Decimal(), 0}, number("2"));
  EXPECT_EQ(reached.least, 0.6);
  EXPECT_EQ(reached.most, 0.6);
}
// Of totals in whole points none can be mistaken for its neighbour on a grid that moves them by 0.4.
TEST(Reaches, KnowsTotalsAgainThatLieFurtherApartThanTheGridMovesThem) {
  const Odds moved({{number("1.3"), 0.4}, {number("1.8"), 0.6}});
  const TotalOdds total{moved, number("0.5"), number("0.4"), 0, 0.01, number("1")};
  EXPECT_DOUBLE_EQ(reaches(total, number("2")).chance, 0.6);
  EXPECT_DOUBLE_EQ(reaches(total, number("1.2")).least, 0.59);
  EXPECT_DOUBLE_EQ(reaches(total, number("1")).most, 1);
  EXPECT_DOUBLE_EQ(reaches(total, number("-1.5")).chance, 1);
}
TEST(AgainstAnother, CountsTiesApartAndWidensByBothBounds) {
  const Odds ours({{number("1"), 0.5}, {number("3"), 0.5}}), theirs({{number("1"), 0.5}, {number("2"), 0.5}});
  const Against exact = against({ours, number("1"), Decimal(), 0}, {theirs, number("1"), Decimal(), 0});
  EXPECT_DOUBLE_EQ(exact.above.chance, 0.5);
  EXPECT_DOUBLE_EQ(exact.above.least, 0.5);
  EXPECT_DOUBLE_EQ(exact.above.most, 0.5);
  EXPECT_DOUBLE_EQ(exact.ties, 0.25);
  const Against wide =
      against({ours, number("1"), number("0.5"), 0}, {theirs, number("1"), number("0.6"), 0});
  EXPECT_DOUBLE_EQ(wide.above.least, 0.25);
  EXPECT_DOUBLE_EQ(wide.above.most, 1);
}

}  // namespace
}  // namespace landdrill
