// Panels of which the truth is known: whom their view names though the judges mark alike, and whom it finds.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <string>
#include <vector>

#include "engine/judging/panel_view.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"
#include "tests/simulated/how_many.h"

namespace landdrill::simulated {
namespace {

// What is swum differs from line to line by about `swum`; a judge sees it with an error of her own and marks in quarters.
struct Made {
  int judges = 5, lines = 10, kinds = 1;
  double scatter = 0.25, swum = 0.8;
  std::vector<double> above = {};           // by judge, of every line
  std::vector<double> above_on_lifts = {};  // of the first kind
  std::vector<double> errors = {};          // by judge, how many times the usual scatter
};

PanelRule rule_of(int judges) {
  PanelRule rule;
  rule.title = "Execution";
  rule.per_element = true;
  rule.judges = judges;
  rule.drop_high = rule.drop_low = judges >= 5 ? 1 : 0;
  rule.step = *Decimal::parse("0.25");
  rule.most = Mark(*Decimal::parse("10"));
  return rule;
}
const PanelRule& rule_for(int judges) {
  static const PanelRule three = rule_of(3), two = rule_of(2), five = rule_of(5), seven = rule_of(7);
  return judges == 2 ? two : judges == 3 ? three : judges == 5 ? five : seven;
}

double at(const std::vector<double>& list, std::size_t judge, double otherwise) {
  return judge < list.size() ? list[judge] : otherwise;
}
double in_quarters(double mark) {
  return std::min(10.0, std::max(0.0, std::round(mark * 4) / 4));
}

class Judging {
 public:
  explicit Judging(unsigned seed) : random_(seed) {}
  double normal() { return bell_(random_); }

  MarkSheet sheet(const Made& made) {
    MarkSheet sheet{"Execution", {}};
    for (int line = 0; line < made.lines; ++line) {
      const bool lift = line % made.kinds == 0;
      sheet.lines.push_back(
          {std::to_string(line + 1), lift ? "Lift" : "Hybrid", &rule_for(made.judges), marks(made, lift)});
    }
    return sheet;
  }

 private:
  JudgeMarks marks(const Made& made, bool lift) {
    const double swum = 7.2 + made.swum * normal();
    JudgeMarks marks;
    for (std::size_t judge = 0; judge < static_cast<std::size_t>(made.judges); ++judge) {
      const double above = at(made.above, judge, 0) + (lift ? at(made.above_on_lifts, judge, 0) : 0);
      const double seen = swum + above + made.scatter * at(made.errors, judge, 1) * normal();
      marks.push_back(Mark(Decimal::from_units(std::llround(in_quarters(seen) * Decimal::one))));
    }
    return marks;
  }

  boost::random::mt19937 random_;
  boost::random::normal_distribution<double> bell_;
};

// Which sentences name a judge or a pair as unlike the others, as a reader would count them.
struct Named {
  int level = 0, pair = 0, scatter = 0, dropped = 0;
  bool high_or_low() const { return level + pair > 0; }
  bool any() const { return level + pair + scatter + dropped > 0; }
};
bool has(const std::string& text, const char* piece) {
  return text.find(piece) != std::string::npos;
}
Named named_in(const std::vector<std::string>& sentences) {
  Named named;
  for (const std::string& one : sentences) {
    if (one.rfind("Judge", 0) != 0) continue;
    named.level += has(one, " higher than ") || has(one, " lower than ");
    named.pair += has(one, " apart");
    named.scatter += has(one, " scatters ");
    named.dropped += has(one, " dropped ");
  }
  return named;
}

struct Share {
  int of = 0, all = 0;
  void add(bool yes) {
    of += yes;
    ++all;
  }
  double value() const { return static_cast<double>(of) / all; }
};
// At most `wanted`, but for what chance leaves of so many panels.
void expect_at_most(const Share& share, double wanted, const std::string& what) {
  tell(what + " in %", 100 * share.value());
  EXPECT_LE(share.value(), wanted + 3 * std::sqrt(wanted * (1 - wanted) / share.all)) << what;
}
void expect_at_least(const Share& share, double wanted, const std::string& what) {
  tell(what + " in %", 100 * share.value());
  EXPECT_GE(share.value(), wanted - 3 * std::sqrt(wanted * (1 - wanted) / share.all)) << what;
}

void look_at(const PanelView& view, Share& level, Share& any) {
  const Named named = named_in(view.sentences);
  level.add(named.high_or_low());
  any.add(named.any());
}

TEST(SimulatedPanels, NameHardlyAnybodyWhereAllJudgesMarkAlike) {
  Judging judging(1);
  for (const int judges : {2, 3, 5, 7}) {
    for (const int kinds : {1, 2}) {
      Share level, any;
      for (const int lines : {6, 8, 10, 30})
        for (const double scatter : {0.1, 0.2, 0.4})
          for (int i = 0; i < how_many(30); ++i)
            look_at(panel_view(judging.sheet(
                        {.judges = judges, .lines = lines, .kinds = kinds, .scatter = scatter})),
                    level, any);
      const std::string who = fmt::format("{} judges who mark alike, {} kinds: ", judges, kinds);
      expect_at_most(level, 0.025, who + "somebody high, low or apart");
      expect_at_most(any, 0.025, who + "somebody named at all");
    }
  }
}

// Elements and the whole routine of a meet of three routines.
TEST(SimulatedPanels, NameHardlyAnybodyInAWholeMeet) {
  Judging judging(2);
  for (const int judges : {3, 5, 7}) {
    Share share;
    for (int i = 0; i < how_many(200); ++i) {
      const MarkSheet elements = judging.sheet({.judges = judges, .lines = 24, .kinds = 2});
      const MarkSheet aspects = judging.sheet({.judges = judges, .lines = 9, .scatter = 0.4});
      share.add(named_in(panel_view(elements).sentences).any() ||
                named_in(panel_view(aspects).sentences).any());
    }
    expect_at_most(share, 0.05, fmt::format("{} judges at a meet: somebody named", judges));
  }
}

bool names_judge(const std::vector<std::string>& sentences, int judge) {
  return std::any_of(sentences.begin(), sentences.end(), [&](const std::string& one) {
    return one.rfind(fmt::format("Judge {} marks", judge), 0) == 0;
  });
}

TEST(SimulatedPanels, FindWhoMarksHighAndLeaveTheOthersAlone) {
  Judging judging(3);
  for (const int judges : {3, 5, 7}) {
    Share found, others;
    for (int i = 0; i < how_many(300); ++i) {
      const std::vector<std::string> sentences =
          panel_view(judging.sheet({.judges = judges, .lines = 10, .above = {0.75}})).sentences;
      found.add(names_judge(sentences, 1));
      bool another = has(sentences.front(), "apart");
      for (int other = 2; other <= judges; ++other) another |= names_judge(sentences, other);
      others.add(another);
    }
    expect_at_least(found, 0.8,
                    fmt::format("{} judges, the first 0.75 too high on 10: she is named", judges));
    expect_at_most(others, 0.05, fmt::format("{} judges, the first 0.75 too high on 10: another is", judges));
  }
}

TEST(SimulatedPanels, FindWhoScattersAndWhoIsDropped) {
  Judging judging(4);
  Share scatters, level, dropped;
  for (int i = 0; i < how_many(200); ++i) {
    const Named wild =
        named_in(panel_view(judging.sheet({.judges = 5, .lines = 30, .errors = {4}})).sentences);
    scatters.add(wild.scatter > 0);
    level.add(wild.high_or_low());
    dropped.add(
        named_in(panel_view(judging.sheet({.judges = 7, .lines = 30, .above = {0.75}})).sentences).dropped >
        0);
  }
  expect_at_least(scatters, 0.8, "one of 5 scatters four times as much on 30: she is named");
  expect_at_most(level, 0.05, "one of 5 scatters four times as much on 30: somebody is high");
  expect_at_least(dropped, 0.8, "one of 7 is 0.75 too high on 30: dropped too often");
}

TEST(SimulatedPanels, SeeNoOrderWhereThereIsNone) {
  Judging judging(5);
  for (const int judges : {2, 3, 5, 7}) {
    Share share;
    for (const int lines : {6, 10, 30})
      for (int i = 0; i < how_many(100); ++i) {
        const PanelView view = panel_view(judging.sheet({.judges = judges, .lines = lines, .swum = 0}));
        share.add(view.rank_correlation.low.value_or(-1) > 0);
      }
    expect_at_most(share, 0.05, fmt::format("{} judges without a common order: said to rank alike", judges));
  }
}

// How often an interval holds the truth, of those that are there.
void expect_to_cover(const Statistic& statistic, double truth, Share& share) {
  if (statistic.low) share.add(*statistic.low <= truth && truth <= *statistic.high);
}

TEST(SimulatedPanels, GiveNoIntervalOfKappaThatDoesNotHold) {
  Judging judging(6);
  const double truth = *panel_view(judging.sheet({.judges = 2, .lines = 20000})).pairs.front().kappa.value;
  for (const int lines : {6, 10, 30, 60, 100}) {
    Share share;
    for (int i = 0; i < how_many(400); ++i)
      expect_to_cover(panel_view(judging.sheet({.judges = 2, .lines = lines})).pairs.front().kappa, truth,
                      share);
    if (share.all > 0) expect_at_least(share, 0.94, fmt::format("{} lines: kappa's interval covers", lines));
  }
}

TEST(SimulatedPanels, GiveTheBiasOfAJudgeAndTheLimitsOfAPairIntervalsThatHold) {
  Judging judging(8);
  const double above = 0.3, error = 0.3, rounding = 0.25 / std::sqrt(12);
  const double upper = above + 1.96 * std::sqrt(2 * (error * error + rounding * rounding));
  for (const int lines : {6, 10, 30}) {
    Share bias, limit;
    for (int i = 0; i < how_many(300); ++i) {
      const PanelView view =
          panel_view(judging.sheet({.judges = 3, .lines = lines, .scatter = error, .above = {above}}));
      expect_to_cover(view.judges.front().bias, above, bias);
      expect_to_cover(view.pairs.front().limits.upper, upper, limit);
    }
    expect_at_least(bias, 0.95, fmt::format("{} lines: the interval of a bias covers", lines));
    expect_at_least(limit, 0.9, fmt::format("{} lines: the interval of a limit of agreement covers", lines));
  }
}

TEST(SimulatedPanels, GradeTheGuideByAnIntervalThatHolds) {
  Judging judging(7);
  const double of_judges = 0.2, error = 0.4, rounding = 0.25 / std::sqrt(12), of_lines = 0.8;
  const double one = of_lines * of_lines, rest = of_judges * of_judges + error * error + rounding * rounding;
  for (const int lines : {6, 10, 30}) {
    Share single, mean;
    for (int i = 0; i < how_many(300); ++i) {
      std::vector<double> above;
      for (int judge = 0; judge < 5; ++judge) above.push_back(of_judges * judging.normal());
      const Intraclass six =
          panel_view(judging.sheet({.judges = 5, .lines = lines, .scatter = error, .above = above}))
              .intraclass;
      expect_to_cover(six.forms[1], one / (one + rest), single);
      expect_to_cover(six.forms[4], one / (one + rest / 5), mean);
    }
    expect_at_least(single, 0.94, fmt::format("{} lines: the interval of ICC(2,1) covers", lines));
    expect_at_least(mean, 0.94, fmt::format("{} lines: the interval of ICC(2,5) covers", lines));
  }
}

}  // namespace
}  // namespace landdrill::simulated
