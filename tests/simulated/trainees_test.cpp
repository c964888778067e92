// Officials in training of whom the truth is known: what the report of a practice tells them, and how often it is wrong.
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "engine/judging/practice_compare.h"
#include "engine/judging/practice_report.h"
#include "engine/score/panel.h"
#include "how_many.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill::simulated {
namespace {

PanelRule execution() {
  PanelRule rule;
  rule.judges = 5;
  rule.drop_high = rule.drop_low = 1;
  rule.step = *Decimal::parse("0.25");
  rule.most = Mark(*Decimal::parse("10"));
  return rule;
}
const PanelRule rule = execution();

// How a trainee marks beside judges of ordinary scatter.
struct Trainee {
  double bias = 0, on_lifts = 0, scatter = 0.35;
};
struct Session {
  std::size_t tasks = 12, kinds = 3, meets = 2;
  int judges = 5;     // 1: an expert in the place of a panel
  double strict = 0;  // how far the panels of the meets differ (standard deviation)
};

class Practice {
 public:
  Practice(const Session& of, unsigned seed) : of_(of), dice_(seed) {
    for (std::size_t i = 0; i < of.meets; ++i) strict_.push_back(of.strict == 0 ? 0 : around(0, of.strict));
    for (std::size_t i = 0; i < of.tasks; ++i) swim(i);
  }
  TraineeMarks marked_by(const Trainee& trainee, std::string name) {
    TraineeMarks marks{std::move(name), tasks_, {}};
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
      const double off = trainee.bias + (tasks_[i].kind == "lift" ? trainee.on_lifts : 0);
      marks.done.push_back({on_step(around(shown_[i] + off, trainee.scatter)), false});
    }
    return marks;
  }

 private:
  static Mark on_step(double number) {
    return Mark(Decimal::from_units(std::llround(std::clamp(number, 0.0, 10.0) * 4) * (Decimal::one / 4)));
  }
  double around(double mean, double spread) {
    return boost::random::normal_distribution<double>(mean, spread)(dice_);
  }
  static double kept_mean(const JudgeMarks& judges) {
    if (judges.size() == 1) return binary(*judges[0]);
    const KeptMarks kept = keep(rule, judges);
    return binary_mean(kept.sum, kept.count);
  }

  void swim(std::size_t i) {
    static const char* const kinds[] = {"lift", "hybrid", "figure", "throw", "choreography"};
    const std::size_t meet = i * of_.meets / of_.tasks;
    PracticeTask task;
    task.kind = kinds[i % of_.kinds];
    task.block = static_cast<std::int64_t>(meet);
    task.panel = "meet " + std::to_string(meet);
    task.line = std::to_string(i + 1);
    task.rule = &rule;
    shown_.push_back(around(7.2, 0.6));
    for (int judge = 0; judge < of_.judges; ++judge)
      task.judges.push_back(on_step(around(shown_.back() + strict_[meet], Trainee().scatter)));
    task.kept = kept_mean(task.judges);
    tasks_.push_back(std::move(task));
  }

  Session of_;
  boost::random::mt19937 dice_;
  std::vector<double> strict_, shown_;
  std::vector<PracticeTask> tasks_;
};

bool has(const std::string& sentence, const char* piece) {
  return sentence.find(piece) != sentence.npos;
}

// What a trainee takes for a fault of hers.
bool blames(const std::string& sentence) {
  return !has(sentence, "as the panel does") && !has(sentence, "may be chance");
}
bool blames_a_place(const std::string& sentence) {
  return has(sentence, "elsewhere");
}

std::vector<PracticeReport> reports_of(const Session& session, const Trainee& trainee, int of) {
  std::vector<PracticeReport> reports;
  for (int i = 0; i < of; ++i) {
    const TraineeMarks one = Practice(session, static_cast<unsigned>(i) + 1).marked_by(trainee, "");
    reports.push_back(practice_report(one.tasks, one.done));
  }
  return reports;
}

// In per cent.
double share_of(const std::vector<PracticeReport>& reports,
                const std::function<bool(const PracticeReport&)>& such) {
  return 100.0 * static_cast<double>(std::count_if(reports.begin(), reports.end(), such)) /
         static_cast<double>(reports.size());
}
double told_to(const std::vector<PracticeReport>& reports,
               const std::function<bool(const std::string&)>& told) {
  return share_of(reports, [&](const PracticeReport& one) {
    return std::any_of(one.sentences.begin(), one.sentences.end(), told);
  });
}

// How far a share of so many may lie from `wanted` by chance: three standard errors.
double by_chance(double wanted, int of) {
  return 3 * std::sqrt(wanted * (100 - wanted) / of);
}

constexpr Session sessions[] = {{6, 1, 1},  {8, 2, 1},  {12, 3, 1},    {12, 3, 3},
                                {24, 5, 4}, {48, 5, 6}, {12, 3, 2, 1}, {24, 3, 4, 1}};

std::string called(const Session& session) {
  return std::to_string(session.tasks) + " lines, kinds " + std::to_string(session.kinds) + ", meets " +
         std::to_string(session.meets) + (session.judges == 1 ? ", one expert" : "");
}

TEST(Trainees, WhoMarkAsTheJudgesDoAreSeldomToldAFault) {
  const int of = how_many(200);
  for (const Session& session : sessions) {
    const double told = told_to(reports_of(session, {}, of), blames);
    tell(called(session) + ": unbiased and told a fault, %", told);
    EXPECT_LE(told, 5 + by_chance(5, of)) << called(session);
  }
}

// A panel that is strict on its day makes her look high there, and on the kinds that it saw more of.
TEST(Trainees, AreSeldomToldAPlaceWhereThePanelsOfTheMeetsDiffer) {
  const int of = how_many(200);
  for (const Session& session : {Session{24, 2, 4, 5, 0.3}, Session{48, 5, 6, 5, 0.3}}) {
    const double told = told_to(reports_of(session, {}, of), blames_a_place);
    tell(called(session) + ": panels differ, told a place, %", told);
    EXPECT_LE(told, 5 + by_chance(5, of)) << called(session);
    // Of these panels it is true; the sentence says how many meets it rests on.
    tell(called(session) + ": panels differ, told high or low, %",
         told_to(reports_of(session, {}, of), blames));
  }
}

TEST(Trainees, FindTheirBiasInNineteenOfTwentyIntervals) {
  const int of = how_many(200);
  for (const Session& session : sessions) {
    const double covered = share_of(reports_of(session, {0.25}, of), [](const PracticeReport& one) {
      return one.bias.low && *one.bias.low <= 0.25 && 0.25 <= *one.bias.high;
    });
    tell(called(session) + ": interval holds the bias, %", covered);
    EXPECT_NEAR(covered, 95, 2 + by_chance(95, of)) << called(session);
  }
}

TEST(Trainees, WhoAreAStepHighAreSeldomToldThatTheyMarkAsThePanelDoes) {
  const int of = how_many(200);
  for (const Session& session : sessions) {
    const double told = told_to(reports_of(session, {0.25}, of),
                                [](const std::string& one) { return has(one, "as the panel does"); });
    tell(called(session) + ": a step high and told to be even, %", told);
    EXPECT_LE(told, 5 + by_chance(5, of)) << called(session);
  }
}

TEST(Trainees, WhoAreHalfAMarkHighAreToldSoOnceThereAreMarksEnough) {
  const int of = how_many(100);
  for (const Session& session : sessions) {
    const double told = told_to(reports_of(session, {0.5}, of),
                                [](const std::string& one) { return has(one, "On average") && blames(one); });
    tell(called(session) + ": half a mark high and told so, %", told);
    if (session.tasks >= 24) {
      EXPECT_GE(told, 90) << called(session);
    }
  }
}

TEST(Trainees, WhoAreAMarkHighOnLiftsAreToldSo) {
  const int of = how_many(100);
  for (const Session& session : {Session{24, 3, 2}, Session{48, 5, 6}}) {
    const double told = told_to(reports_of(session, {0, 1}, of),
                                [](const std::string& one) { return has(one, "on lift than elsewhere"); });
    tell(called(session) + ": a mark high on lifts and told so, %", told);
    EXPECT_GE(told, 80) << called(session);
  }
}

// Four of them who mark as the judges do, on the same lines.
TEST(Trainees, WhoMarkAlikeAreSeldomNamedBesideEachOther) {
  const int of = how_many(200);
  for (const Session& session : {Session{12, 3, 2}, Session{36, 3, 4}, Session{24, 3, 4, 1}}) {
    int named = 0;
    for (int i = 0; i < of; ++i) {
      Practice practice(session, static_cast<unsigned>(i) + 1);
      std::vector<TraineeMarks> trainees;
      for (const char* name : {"Robin", "Sam", "Kim", "Lou"})
        trainees.push_back(practice.marked_by({}, name));
      const std::vector<std::string> said = compare_trainees(trainees, "the panel").sentences;
      named += has(said.front(), "No difference") ? 0 : 1;
    }
    tell(called(session) + ": four alike and one named, %", 100.0 * named / of);
    EXPECT_LE(100.0 * named / of, 5 + by_chance(5, of)) << called(session);
  }
}

}  // namespace
}  // namespace landdrill::simulated
