// The statistics of agreement against worked examples in print; each check names its source.
#include "engine/judging/statistics/agreement.h"

#include <gtest/gtest.h>

namespace landdrill {
namespace {

// Six rows, four judges.
const MarkTable six{4, {9, 2, 5, 8, 6, 1, 3, 2, 8, 4, 6, 8, 7, 1, 2, 6, 10, 5, 6, 9, 6, 2, 4, 7}};

// Shrout & Fleiss (1979), table 4: two decimals.
TEST(PublishedAgreement, GivesTheSixIntraclassCorrelationsOfShroutAndFleiss) {
  const double printed[] = {.17, .29, .71, .44, .62, .91};
  const Intraclass found = intraclass(six);
  for (std::size_t i = 0; i < 6; ++i) {
    ASSERT_TRUE(found.forms[i].value) << intraclass_forms[i];
    EXPECT_NEAR(*found.forms[i].value, printed[i], 0.005) << intraclass_forms[i];
    EXPECT_EQ(found.forms[i].rows, 6u);
  }
}

// Krippendorff (2011), Computing Krippendorff's alpha-reliability: four observers, twelve units, marks
// missing.
const MarkTable twelve = [] {
  const std::optional<double> none;
  const std::optional<double> observers[4][12] = {{1, 2, 3, 3, 2, 1, 4, 1, 2, none, none, none},
                                                  {1, 2, 3, 3, 2, 2, 4, 1, 2, 5, none, 3},
                                                  {none, 3, 3, 3, 2, 3, 4, 2, 2, 5, 1, none},
                                                  {1, 2, 3, 3, 2, 4, 4, 1, 2, 5, 1, none}};
  MarkTable table{4, {}};
  for (std::size_t unit = 0; unit < 12; ++unit) {
    for (const auto& observer : observers) table.marks.push_back(observer[unit]);
  }
  return table;
}();

TEST(PublishedAgreement, GivesTheNominalAndOrdinalAlphaOfKrippendorff) {
  const Statistic nominal = krippendorff_alpha(twelve, AlphaLevel::nominal);
  EXPECT_NEAR(nominal.value.value(), .743, 0.0005);
  EXPECT_EQ(nominal.rows, 11u);  // the unit with one observer counts for nothing
  EXPECT_NEAR(krippendorff_alpha(twelve, AlphaLevel::ordinal).value.value(), .815, 0.0005);
}

// The documentation of the R function DescTools::KendallW, examples with their output: 20 subjects, three
// raters, many ties; W 0.5396569, chi-squared 30.76 with 19 degrees of freedom, p-value 0.04288.
TEST(PublishedAgreement, GivesKendallsWWithTies) {
  const double raters[3][20] = {{3, 3, 3, 4, 5, 5, 2, 3, 5, 2, 2, 6, 1, 5, 2, 2, 1, 2, 4, 3},
                                {3, 6, 4, 6, 2, 4, 2, 4, 3, 3, 2, 3, 3, 3, 2, 2, 1, 3, 3, 4},
                                {2, 1, 4, 4, 3, 2, 1, 6, 1, 1, 1, 2, 3, 3, 1, 1, 3, 3, 2, 2}};
  MarkTable table{3, {}};
  for (std::size_t subject = 0; subject < 20; ++subject) {
    for (const auto& rater : raters) table.marks.push_back(rater[subject]);
  }
  const Concordance found = kendall_w(table);
  EXPECT_NEAR(found.w.value.value(), 0.5396569, 5e-8);
  EXPECT_NEAR(3 * 19 * found.w.value.value(), 30.76, 0.005);
  EXPECT_NEAR(found.by_chance.value(), 0.04288, 5e-6);
}

// The same page, after Siegel & Castellan (1988): eight objects, three judges, no ties; W 0.6560847, p-value
// 0.05528.
TEST(PublishedAgreement, GivesKendallsWOfSiegelAndCastellan) {
  const MarkTable table{3, {5, 1, 4, 6, 7, 5, 7, 6, 1, 1, 2, 3, 2, 3, 2, 4, 5, 7, 3, 4, 6, 8, 8, 8}};
  const Concordance found = kendall_w(table);
  EXPECT_NEAR(found.w.value.value(), 0.6560847, 5e-8);
  EXPECT_NEAR(found.by_chance.value(), 0.05528, 5e-6);
}

// The documentation of the R package vcd, function Kappa, data SexualFun: a four by four table of 91 couples;
// weighted by equal steps 0.2374, interval of 95 % (0.083883432, 0.3908778).
TEST(PublishedAgreement, GivesTheIntervalOfWeightedKappa) {
  const double counts[4][4] = {{7, 7, 2, 3}, {2, 8, 3, 7}, {1, 5, 4, 9}, {2, 8, 9, 14}};
  Pairs pairs;
  for (int i = 0; i < 4; ++i) {
    for (int j = 0; j < 4; ++j) pairs.insert(pairs.end(), static_cast<std::size_t>(counts[i][j]), {i, j});
  }
  ASSERT_EQ(pairs.size(), 91u);
  const Statistic linear = weighted_kappa(pairs);
  EXPECT_NEAR(linear.value.value(), 0.2374, 0.00005);
  EXPECT_NEAR(linear.low.value(), 0.083883432, 5e-9);
  EXPECT_NEAR(linear.high.value(), 0.3908778, 5e-8);
}

// The reference of scipy.stats, spearmanr and kendalltau, examples with their output.
TEST(PublishedAgreement, GivesRankCorrelationsWithTies) {
  EXPECT_NEAR(spearman({{1, 5}, {2, 6}, {3, 7}, {4, 8}, {5, 7}}).value.value(), 0.8207826816681233, 1e-14);
  EXPECT_NEAR(kendall_tau({{12, 1}, {2, 4}, {1, 7}, {12, 1}, {2, 0}}).value.value(), -0.47140452079103173,
              1e-14);
}

// Bland & Altman (1986), Lancet i, 307-310: peak flow of 17 people by two meters, first readings. Printed:
// mean difference -2.1, s 38.8, interval of the mean -22.0 to 17.8, standard error of a limit 16.3, with
// t 2.12. The paper takes 2 s for 1.96 s, so the limits themselves are checked by their distance.
TEST(PublishedAgreement, GivesTheLimitsOfBlandAndAltman) {
  const Pairs pairs{{494, 512}, {395, 430}, {516, 520}, {434, 428}, {476, 500}, {557, 600},
                    {413, 364}, {442, 380}, {650, 658}, {433, 445}, {417, 432}, {656, 626},
                    {267, 260}, {478, 477}, {178, 259}, {423, 350}, {427, 451}};
  const AgreementLimits found = bland_altman(pairs);
  EXPECT_NEAR(found.bias.value.value(), -2.1, 0.05);
  EXPECT_NEAR(found.bias.low.value(), -22.0, 0.05);
  EXPECT_NEAR(found.bias.high.value(), 17.8, 0.05);
  EXPECT_NEAR((*found.upper.value - *found.bias.value) / 1.96, 38.8, 0.05);
  EXPECT_NEAR((*found.bias.value - *found.lower.value) / 1.96, 38.8, 0.05);
  EXPECT_NEAR((*found.upper.high - *found.upper.value) / 2.12, 16.3, 0.05);
  EXPECT_NEAR((*found.lower.value - *found.lower.low) / 2.12, 16.3, 0.05);
}

}  // namespace
}  // namespace landdrill
