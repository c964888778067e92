// The statistics of agreement against R with its packages psych and vcd: what agreement_reference.R wrote
// into agreement_reference.csv, marks and results. Needs no R.
#include "tests/outside/agreement_reference.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/judging/statistics/agreement.h"

namespace landdrill {
namespace {

using published::expect_number;
using published::Numbers;
using published::Reference;
using published::references;

// How many numbers were compared, so that none is left out unseen.
struct Tally {
  int values = 0, bounds = 0;
};

void expect_statistic(const Statistic& found, const Reference& reference, const std::string& what,
                      Tally& tally) {
  SCOPED_TRACE(what + " " + found.why_not);
  const Numbers& expected = reference.results.at(what);
  expect_number(found.value, expected[0], "value");
  EXPECT_NE(found.value.has_value(), !found.why_not.empty());
  tally.values += expected[0].has_value();
  if (expected.size() < 3) return;
  expect_number(found.low, expected[1], "low");
  expect_number(found.high, expected[2], "high");
  tally.bounds += expected[1].has_value() + expected[2].has_value();
}

template <typename Check>
Tally in_every_case(const Check& check) {
  Tally tally;
  EXPECT_EQ(references().size(), 76u);
  for (const auto& [name, reference] : references()) {
    SCOPED_TRACE(name);
    check(reference, tally);
  }
  return tally;
}

TEST(AgreementReference, GivesTheIntraclassCorrelationsOfPsych) {
  const Tally tally = in_every_case([](const Reference& one, Tally& counted) {
    const Intraclass found = intraclass(one.marks, one.confidence);
    for (std::size_t i = 0; i < 6; ++i) {
      expect_statistic(found.forms[i], one, "icc" + std::to_string(i + 1), counted);
    }
  });
  EXPECT_GT(tally.values, 440);
  EXPECT_GT(tally.bounds, 820);
}

TEST(AgreementReference, GivesTheAlphaOfTheCoincidenceMatrix) {
  const Tally tally = in_every_case([](const Reference& one, Tally& counted) {
    expect_statistic(krippendorff_alpha(one.marks, AlphaLevel::nominal), one, "nominal", counted);
    expect_statistic(krippendorff_alpha(one.marks, AlphaLevel::ordinal), one, "ordinal", counted);
    expect_statistic(krippendorff_alpha(one.marks, AlphaLevel::interval), one, "interval", counted);
  });
  EXPECT_EQ(tally.values, 3 * 76);
}

TEST(AgreementReference, GivesTheConcordanceOfTheFriedmanTest) {
  const Tally tally = in_every_case([](const Reference& one, Tally& counted) {
    const Concordance found = kendall_w(one.marks);
    expect_statistic(found.w, one, "w", counted);
    expect_number(found.by_chance, one.results.at("w")[1], "by chance");
  });
  EXPECT_EQ(tally.values, 76);
}

TEST(AgreementReference, GivesTheRankCorrelationsOfR) {
  const Tally tally = in_every_case([](const Reference& one, Tally& counted) {
    const Pairs pairs = pairs_of(one.marks, 0, 1);
    expect_statistic(spearman(pairs, one.confidence), one, "spearman", counted);
    expect_statistic(kendall_tau(pairs), one, "kendall", counted);
  });
  EXPECT_EQ(tally.values, 2 * 76);
  EXPECT_GT(tally.bounds, 130);
}

TEST(AgreementReference, GivesTheKappaOfPsychWithTheIntervalsOfVcd) {
  const Tally tally = in_every_case([](const Reference& one, Tally& counted) {
    expect_statistic(weighted_kappa(pairs_of(one.marks, 0, 1), one.confidence), one, "kappa", counted);
  });
  EXPECT_EQ(tally.values, 76);
  EXPECT_GT(tally.bounds, 126);
}

TEST(AgreementReference, GivesTheLimitsOfAgreement) {
  const Tally tally = in_every_case([](const Reference& one, Tally& counted) {
    const AgreementLimits found = bland_altman(pairs_of(one.marks, 0, 1), one.confidence);
    expect_statistic(found.bias, one, "bias", counted);
    expect_statistic(found.lower, one, "lower", counted);
    expect_statistic(found.upper, one, "upper", counted);
  });
  EXPECT_EQ(tally.values, 3 * 76);
  EXPECT_GT(tally.bounds, 440);
}

// Whatever one leaves out of a panel: no statistic is ever NaN or infinite, and none is without a reason.
void expect_sound(const Statistic& one) {
  EXPECT_NE(one.value.has_value(), !one.why_not.empty());
  EXPECT_EQ(one.low.has_value(), one.high.has_value());
  for (const std::optional<double>& number : {one.value, one.low, one.high}) {
    EXPECT_TRUE(!number || std::isfinite(*number));
  }
}

void expect_all_sound(const MarkTable& marks) {
  for (const Statistic& form : intraclass(marks).forms) expect_sound(form);
  for (AlphaLevel level : {AlphaLevel::nominal, AlphaLevel::ordinal, AlphaLevel::interval}) {
    expect_sound(krippendorff_alpha(marks, level));
  }
  expect_sound(kendall_w(marks).w);
  const Pairs pairs = pairs_of(marks, 0, 1);
  expect_sound(spearman(pairs));
  expect_sound(kendall_tau(pairs));
  expect_sound(weighted_kappa(pairs));
  const AgreementLimits limits = bland_altman(pairs);
  for (const Statistic& one : {limits.bias, limits.lower, limits.upper}) expect_sound(one);
}

TEST(AgreementReference, StaysSoundWhereverMarksAreMissing) {
  for (const auto& [name, reference] : references()) {
    SCOPED_TRACE(name);
    for (std::size_t every = 1; every <= 7; ++every) {
      MarkTable fewer = reference.marks;
      for (std::size_t i = 0; i < fewer.marks.size(); ++i) {
        if ((i * i + i / 3) % 7 < every) fewer.marks[i].reset();
      }
      expect_all_sound(fewer);
    }
    for (std::size_t rows = 0; rows <= 3; ++rows) {
      MarkTable few = reference.marks;
      few.marks.resize(rows * few.judges);
      expect_all_sound(few);
    }
  }
}

}  // namespace
}  // namespace landdrill
