// Lessons of made-up seasons of which the truth is known: how often a difference is claimed that is not there, and how
// often an interval holds the true one. A day's mood moves all its marks together; meets have one to three routines.
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_int_distribution.hpp>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "engine/judging/lessons.h"
#include "engine/report/pages/book.h"
#include "engine/report/render.h"
#include "tests/simulated/how_many.h"

namespace landdrill::simulated {
namespace {

struct SeasonTruth {
  int meets = 4;
  double mood = 0;                      // standard deviation of what all marks of a day share
  std::vector<double> biases = {0, 0};  // of each kind
};

class Seasons {
 public:
  explicit Seasons(SeasonTruth truth, unsigned seed = 20261129) : random_(seed), truth_(std::move(truth)) {}
  std::vector<Lesson> next() {
    std::vector<Lesson> season;
    for (int meet = 0; meet < truth_.meets; ++meet) {
      const double mood = normal(truth_.mood);
      for (int elements = 6 * from_to(1, 3); elements > 0; --elements) season.push_back(lesson(meet, mood));
    }
    return season;
  }

 private:
  double normal(double deviation) {
    return deviation * boost::random::normal_distribution<double>()(random_);
  }
  int from_to(int least, int most) {
    return boost::random::uniform_int_distribution<int>(least, most)(random_);
  }
  static double stepped(double mark) { return std::clamp(std::round(mark * 4) / 4, 0.0, 10.0); }
  // The mean of the middle three of five marks.
  double kept_mean(double shown) {
    std::vector<double> marks;
    for (int judge = 0; judge < 5; ++judge) marks.push_back(stepped(shown + normal(0.25)));
    std::sort(marks.begin(), marks.end());
    return (marks[1] + marks[2] + marks[3]) / 3;
  }
  Lesson lesson(int meet, double mood) {
    const int kinds = static_cast<int>(truth_.biases.size());
    const int kind = from_to(0, 9) < 6 ? 0 : from_to(0, kinds - 1);
    Lesson one;
    one.date = "2026-" + std::to_string(10 + meet) + "-01";
    one.kind = std::string(1, static_cast<char>('a' + kind));
    one.expected = stepped(7 + normal(0.75));
    one.given = kept_mean(one.expected + truth_.biases[static_cast<std::size_t>(kind)] + mood + normal(0.25));
    return one;
  }

  boost::random::mt19937 random_;
  SeasonTruth truth_;
};

// Of so many cases a share between the two, and what chance does to it.
void expect_share(int count, int of, double least, double most) {
  const double share = static_cast<double>(count) / of;
  const auto chance = [&](double wanted) { return 3 * std::sqrt(wanted * (1 - wanted) / of); };
  EXPECT_GE(share, least - chance(least));
  EXPECT_LE(share, most + chance(most));
}

std::string in_words(const SeasonTruth& truth) {
  return std::to_string(truth.meets) + " meets, mood of a day " + std::to_string(truth.mood).substr(0, 4);
}

// A sentence that panels do give less or more; that they gave it, or that it may be chance, claims nothing.
bool claims_a_bias(const std::string& page) {
  const std::size_t at = page.find("panels give");
  return at != std::string::npos &&
         page.substr(at, page.find("\n  -", at) - at).find("chance.") == std::string::npos;
}
bool claims_help(const std::string& page) {
  return page.find("Calibrating would have helped") != std::string::npos;
}

const std::vector<SeasonTruth> moods = {{4, 0}, {4, 0.2}, {4, 0.35}, {10, 0}, {10, 0.2}, {10, 0.35}};

TEST(Seasons, WithoutABiasHaveNoneClaimed) {
  for (const SeasonTruth& truth : moods) {
    Seasons made(truth);
    const int seasons = how_many(400);
    int biases = 0, helped = 0, either = 0;
    for (int i = 0; i < seasons; ++i) {
      const std::vector<Lesson> season = made.next();
      const std::string page =
          report::render_text(report::lessons_page(learn(season), back_test(season), nullptr), {});
      const bool bias = claims_a_bias(page), help = claims_help(page);
      biases += bias;
      helped += help;
      either += bias || help;
    }
    tell(in_words(truth) + ": a bias is claimed, in %", 100.0 * biases / seasons);
    tell(in_words(truth) + ": calibrating would have helped, in %", 100.0 * helped / seasons);
    tell(in_words(truth) + ": either, in %", 100.0 * either / seasons);
    expect_share(either, seasons, 0, 0.06);
  }
}

TEST(Seasons, HaveIntervalsThatHoldTheTruthNineteenTimesInTwenty) {
  for (const SeasonTruth& truth : moods) {
    Seasons made(truth);
    const int seasons = how_many(400);
    int all = 0, kinds = 0, kinds_in = 0, drawn = 0, drawn_in = 0;
    for (int i = 0; i < seasons; ++i) {
      for (const LearnedBias& one : learn(made.next()).biases) {
        if (one.of == LearnedBias::Of::all) {
          all += one.low && *one.low <= 0 && *one.high >= 0;
          continue;
        }
        kinds += one.low.has_value();
        kinds_in += one.low && *one.low <= 0 && *one.high >= 0;
        drawn += one.shrunk_low.has_value();
        drawn_in += one.shrunk_low && *one.shrunk_low <= 0 && *one.shrunk_high >= 0;
      }
    }
    tell(in_words(truth) + ": interval of all holds it, in %", 100.0 * all / seasons);
    tell(in_words(truth) + ": of a kind, in %", 100.0 * kinds_in / kinds);
    tell(in_words(truth) + ": of what is to go by, in %", 100.0 * drawn_in / drawn);
    expect_share(all, seasons, 0.93, 0.97);
    expect_share(kinds_in, kinds, 0.93, 0.97);
    expect_share(drawn_in, drawn, 0.93, 0.97);
  }
}

// One kind gets 0.4 less, the other what is expected: of that one nothing may be claimed.
TEST(Seasons, HaveNothingClaimedOfAKindThatGetsWhatIsExpected) {
  for (SeasonTruth truth : moods) {
    truth.biases = {-0.4, 0};
    Seasons made(truth);
    const int seasons = how_many(400);
    int right = 0, wrong = 0;
    for (int i = 0; i < seasons; ++i) {
      for (const SeasonClaim& claim : learn(made.next()).claims) {
        right += claim.kind == "a";
        wrong += claim.kind == "b";
      }
    }
    tell(in_words(truth) + ": the kind that gets 0.4 less is named, in %", 100.0 * right / seasons);
    tell(in_words(truth) + ": the other kind is, in %", 100.0 * wrong / seasons);
    expect_share(wrong, seasons, 0, 0.06);
  }
}

// What lessons.h says of drawn means: kinds that differ by about as much as their means are sure are the hardest.
TEST(Seasons, HaveDrawnIntervalsThatHoldTheTruthNineTimesInTenAtWorst) {
  boost::random::mt19937 random(7);
  for (const SeasonTruth& mood : moods) {
    const int seasons = how_many(400);
    int kinds = 0, held = 0;
    for (int i = 0; i < seasons; ++i) {
      SeasonTruth truth = mood;
      truth.biases.clear();
      for (int kind = 0; kind < 4; ++kind)
        truth.biases.push_back(0.2 * boost::random::normal_distribution<double>()(random));
      for (const LearnedBias& one : learn(Seasons(truth, random()).next()).biases) {
        if (one.of != LearnedBias::Of::kind || !one.shrunk_low) continue;
        const double bias = truth.biases[static_cast<std::size_t>(one.code[0] - 'a')];
        ++kinds;
        held += *one.shrunk_low <= bias && *one.shrunk_high >= bias;
      }
    }
    tell(in_words(mood) + ": of four kinds, what is to go by holds it, in %", 100.0 * held / kinds);
    expect_share(held, kinds, 0.9, 0.98);
  }
}

}  // namespace
}  // namespace landdrill::simulated
