// The difficulty formula: text -> normal form, text -> value, and what is wrong with it.
#include "tables/formula.h"

#include <gtest/gtest.h>

#include "kit.h"

namespace landdrill {
namespace {

using test::d;

FormulaRead read(std::string_view text) {
  return read_formula({"kinds.csv", text}, text);
}

std::string normal(std::string_view text) {
  const FormulaRead formula = read(text);
  return formula.diagnostics.ok() ? print(formula.formula) : to_string(formula.diagnostics);
}

// Three spins worth 2.4 and two thrusts worth 1.1; base 0.5.
FormulaInput element() {
  FormulaInput input;
  input.base = d("0.5");
  input.sum = d("3.5");
  input.count = 5;
  input.families = {{"spins", d("2.4"), 3}, {"thrusts", d("1.1"), 2}};
  return input;
}

std::string value(std::string_view text) {
  const FormulaRead formula = read(text);
  if (!formula.diagnostics.ok()) return to_string(formula.diagnostics);
  const FormulaResult result = evaluate(formula.formula, element());
  return result.value ? result.value->decimal().value().text() : result.why_not;
}

// The first line of the message after the file name, and the hint.
std::string mistake(std::string_view text) {
  const Diagnostics diagnostics = read(text).diagnostics;
  if (diagnostics.list().size() != 1) return to_string(diagnostics);
  const Diagnostic& only = diagnostics.list().front();
  return std::to_string(only.at.column) + ": " + only.found + "; " + only.expected +
         (only.hint.empty() ? "" : "; " + only.hint);
}

TEST(Formula, HasOneNormalForm) {
  const std::pair<const char*, const char*> table[] = {
      {"base+sum( parts )", "base + sum(parts)"},
      {"BASE + Sum(parts)", "base + sum(parts)"},
      {"1.50", "1.5"},
      {"((1))", "1"},
      {"(1 + 2) + 3", "1 + 2 + 3"},
      {"1 + (2 + 3)", "1 + (2 + 3)"},
      {"1 - (2 - 3)", "1 - (2 - 3)"},
      {"(1 * 2) + 3", "1 * 2 + 3"},
      {"1 * (2 + 3)", "1 * (2 + 3)"},
      {"1 / (2 * 3)", "1 / (2 * 3)"},
      {"-(1 * 2)", "-(1 * 2)"},
      {"(-1) * 2", "-1 * 2"},
      {"1 - -2", "1 - -2"},
      {"--1", "--1"},
      {"max( 0 , families-2 )", "max(0, families - 2)"},
      {"min((1+2),3*4,base)", "min(1 + 2, 3 * 4, base)"},
      {"round(sum(parts) / count(parts), 2)", "round(sum(parts) / count(parts), 2)"},
      {"round(base,1, Half-Even)", "round(base, 1, half-even)"},
      {"round(base, 1, half-up)", "round(base, 1)"},
      {"sum(airborne-weight) + count(spins)", "sum(airborne-weight) + count(spins)"},
      {"sum(Schr\xC3\xA4g) * 2", "sum(Schr\xC3\xA4g) * 2"},
      {" base\n + 1 ", "base + 1"}};
  for (const auto& [text, expected] : table) EXPECT_EQ(normal(text), expected) << text;
}

TEST(Formula, WorksOutTheDifficultyExactly) {
  const std::pair<const char*, const char*> table[] = {
      {"base + sum(parts) + 0.1 * max(0, families - 1)", "4.1"},
      {"sum(spins) / count(spins)", "0.8"},
      {"1 / 3 * 3", "1"},
      {"round(2 / 3, 2)", "0.67"},
      {"round(0.125, 2)", "0.13"},
      {"round(-0.125, 2)", "-0.13"},
      {"round(0.125, 2, half-up)", "0.13"},
      {"round(0.125, 2, half-even)", "0.12"},
      {"round(0.135, 2, half-even)", "0.14"},
      {"round(0.129, 2, down) + round(0.121, 2, up)", "0.25"},
      {"2 + 3 * 4", "14"},
      {"(2 + 3) * 4", "20"},
      {"10 - 3 - 2", "5"},
      {"24 / 4 / 2", "3"},
      {"-2 * -3", "6"},
      {"min(3, 1, 2) + max(3, 1, 2)", "4"},
      {"max(1, min(2, 3)) - min(9, max(4, 5))", "-3"},
      {"count(parts) * 10 + count(thrusts)", "52"},
      {"sum(flexibility) + count(flexibility)", "0"},
      {"families", "2"}};
  for (const auto& [text, expected] : table) EXPECT_EQ(value(text), expected) << text;
  EXPECT_EQ(evaluate(read("2 / 3").formula, {}).value, test::exact("2/3"));
}

TEST(Formula, SaysWhyThereIsNoValue) {
  EXPECT_EQ(value("1 / count(flexibility)"), "divides by count(flexibility), which is 0");
  EXPECT_EQ(value("2 * (base / (count(spins) - 3))"), "divides by count(spins) - 3, which is 0");
  EXPECT_EQ(value("sum(parts) / min(0, 1)"), "divides by min(0, 1), which is 0");
  EXPECT_EQ(value("9000000000000 * 9000000000000 * 9000000000000 * 9000000000000"), "a number is too large");
  EXPECT_EQ(value("round(9000000000000 * 10, 2)"), "a number is too large");
}

TEST(Formula, CountsOnlyFamiliesThatOccur) {
  FormulaInput input = element();
  input.families.push_back({"connections", Decimal(), 0});
  EXPECT_EQ(evaluate(read("families").formula, input).value, test::exact("2"));
}

TEST(Formula, ShowsTheNumbersOfTheElement) {
  const auto shown = [](std::string_view text) { return with_numbers(read(text).formula, element()); };
  EXPECT_EQ(shown("base + sum(parts) + 0.1 * max(0, families - 1)"), "0.5 + 3.5 + 0.1 * max(0, 2 - 1)");
  EXPECT_EQ(shown("sum(spins) * count(thrusts)"), "2.4 * 2");
  FormulaInput negative;
  negative.sum = d("-1");
  EXPECT_EQ(with_numbers(read("2 - sum(parts)").formula, negative), "2 - -1");
  EXPECT_EQ(with_numbers(read("-sum(parts)").formula, negative), "--1");
}

TEST(Formula, NamesEachFamilyOnce) {
  EXPECT_EQ(read("sum(spins) + count(thrusts) * sum(spins) + sum(parts)").formula.families_named(),
            (std::vector<std::string>{"spins", "thrusts"}));
}

constexpr const char* a_value = "a number, a bracket, or one of base, families, sum, count, min, max, round";

TEST(Formula, PointsAtTheMistake) {
  const std::string value_wanted = a_value;
  const std::pair<const char*, std::string> table[] = {
      {"", "1: the end of the formula; " + value_wanted},
      {"base +", "7: the end of the formula; " + value_wanted},
      {"base + * 2", "8: \"*\" in the formula; " + value_wanted},
      {"bass + 1", "1: \"bass\" in the formula; " + value_wanted + "; the nearest is base"},
      {"2 3",
       "3: \"3\" in the formula; one of + - * / or the end of the formula; write a sign between the two, "
       "such as *"},
      {"1)", "2: \")\" in the formula; one of + - * / or the end of the formula"},
      {"(1", "3: the end of the formula; one of + - * / or \")\""},
      {"sum", "4: the end of the formula; \"(\""},
      {"sum()", "5: \")\" in the formula; parts or the code of a family"},
      {"sum(spins + 1)", "11: \"+\" in the formula; \")\""},
      {"min(1)", "6: \")\" in the formula; one of + - * / or \",\""},
      {"max(1, 2", "9: the end of the formula; one of + - * /, or \",\" or \")\""},
      {"round(1, 7)", "10: \"7\" in the formula; a number of decimal places from 0 to 6"},
      {"round(1, 2.5)", "10: \"2\" in the formula; a number of decimal places from 0 to 6"},
      {"round(1, 2 half-up)", "12: \"half\" in the formula; \",\" or \")\""},
      {"round(1, 2, )", "13: \")\" in the formula; half-up, half-even, down or up"},
      {"round(1, 2, half-evn)",
       "13: \"half-evn\" in the formula; half-up, half-even, down or up; the nearest is half-even"},
      {"round(1, 2, up, 3)", "15: \",\" in the formula; \")\""},
      {"round(1)", "8: \")\" in the formula; one of + - * / or \",\""},
      {"0,5 * base",
       "2: \",\" in the formula; one of + - * / or the end of the formula; write decimals with a point: 0.5"},
      {"2 \xC3\x97 base",
       "3: \"\xC3\x97\" in the formula; one of + - * / or the end of the formula; write * for times"},
      {"=base", "1: \"=\" in the formula; " + value_wanted + "; write the formula without ="},
      {"30% * base",
       "3: \"%\" in the formula; one of + - * / or the end of the formula; write a share as a number: 0.3 "
       "for "
       "30 %"},
      {"1.2345678",
       "1: \"1.2345678\" in the formula; a number with at most six decimal places, below 9,000,000,000,000"},
      {"99999999999999 + 1",
       "1: \"99999999999999\" in the formula; a number with at most six decimal places, below "
       "9,000,000,000,000"},
      {".5", "1: \".\" in the formula; " + value_wanted},
      {"basement", "1: \"basement\" in the formula; " + value_wanted}};
  for (const auto& [text, expected] : table) EXPECT_EQ(mistake(text), expected) << text;
}

TEST(Formula, PointsIntoTheCell) {
  const std::string file = "code,formula\nhybrid,\"bass + 1\"\n";
  const Source source{"kinds.csv", file};
  EXPECT_EQ(to_string(read_formula(source, source.text.substr(21, 8)).diagnostics),
            std::string("kinds.csv:2:9: error: found \"bass\" in the formula; expected ") + a_value +
                " [formula]\n  hybrid,\"bass + 1\"\n          ^~~~\n  hint: the nearest is base\n");
}

TEST(Formula, IsNestedAtMost64Deep) {
  const auto nested = [](int depth, const std::string& open) {
    std::string text;
    for (int i = 0; i < depth; ++i) text += open;
    text += "1";
    for (int i = 0; i < depth; ++i) {
      if (open.find('(') != std::string::npos) text += ")";
    }
    return text;
  };
  for (const char* open : {"(", "-", "1 - (", "(  "}) {
    EXPECT_EQ(read(nested(64, open)).diagnostics.errors(), 0u) << open;
    EXPECT_EQ(read(nested(65, open)).diagnostics.errors(), 1u) << open;
  }
  EXPECT_EQ(read(nested(32, "-(")).diagnostics.errors(), 0u);
  EXPECT_EQ(read(nested(33, "-(")).diagnostics.errors(), 1u);
  std::string side_by_side = "1";
  for (int i = 0; i < 200; ++i) side_by_side += " - -(1) - (-1)";
  EXPECT_EQ(read(side_by_side).diagnostics.errors(), 0u);
  EXPECT_EQ(read(nested(1'500, "(")).diagnostics.errors(), 1u);
}

TEST(Formula, IsAtMost4000SignsLong) {
  std::string text = "1";
  while (text.size() < 3'999) text += "+1";
  EXPECT_EQ(read(text).diagnostics.errors(), 0u);
  EXPECT_EQ(read(text + "+1").diagnostics.errors(), 1u);
  EXPECT_EQ(read(text + std::string(5'000, ' ')).diagnostics.errors(), 0u);
}

}  // namespace
}  // namespace landdrill
