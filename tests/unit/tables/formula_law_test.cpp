// Random formulas: printing is the inverse of reading, and the value is that of an independent exact
// rational.
#include <gtest/gtest.h>

#include <boost/multiprecision/cpp_int.hpp>
#include <random>

#include "kit.h"
#include "tables/formula.h"

namespace landdrill {
namespace {

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;

cpp_rational rational(Decimal number) {
  return cpp_rational(cpp_int(number.units()), cpp_int(Decimal::one));
}

// A tree that writes itself with all brackets and works itself out without the code under test.
struct Tree {
  std::string text;
  cpp_rational value;
  bool fails = false;
};

class TreeMaker {
 public:
  explicit TreeMaker(std::uint64_t seed) : random_(seed) {
    input.base = Decimal::from_units(number(3'000'000));
    for (std::string_view family : {"spins", "thrusts"}) {
      input.families.push_back({family, Decimal::from_units(number(5'000'000)), number(4)});
      input.sum += input.families.back().sum;
      input.count += input.families.back().count;
    }
  }

  Tree tree(int depth) {
    if (depth == 0 || number(5) == 0) return leaf();
    switch (number(7)) {
      case 0:
        return pair('+', depth);
      case 1:
        return pair('-', depth);
      case 2:
        return pair('*', depth);
      case 3:
        return pair('/', depth);
      case 4: {
        const Tree inner = tree(depth - 1);
        return {"-(" + inner.text + ")", -inner.value, inner.fails};
      }
      case 5:
        return best("min", depth);
      case 6:
        return best("max", depth);
      default:
        return leaf();
    }
  }

  FormulaInput input;

 private:
  int number(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }

  Tree leaf() {
    const auto family = input.families[static_cast<std::size_t>(number(1))];
    const std::string name(family.family);
    switch (number(6)) {
      case 0:
        return {"base", rational(input.base)};
      case 1:
        return {"families", cpp_rational((input.families[0].count > 0) + (input.families[1].count > 0))};
      case 2:
        return {"sum(parts)", rational(input.sum)};
      case 3:
        return {"count(parts)", cpp_rational(input.count)};
      case 4:
        return {"sum(" + name + ")", rational(family.sum)};
      case 5:
        return {"count(" + name + ")", cpp_rational(family.count)};
      default: {
        const Decimal value = Decimal::from_units(number(40) * 250'000);
        return {value.text(number(3)), rational(value)};
      }
    }
  }

  Tree pair(char sign, int depth) {
    const Tree left = tree(depth - 1), right = tree(depth - 1);
    Tree whole{"(" + left.text + ")" + sign + "(" + right.text + ")", 0, left.fails || right.fails};
    switch (sign) {
      case '+':
        whole.value = left.value + right.value;
        break;
      case '-':
        whole.value = left.value - right.value;
        break;
      case '*':
        whole.value = left.value * right.value;
        break;
      default:
        if (right.value == 0)
          whole.fails = true;
        else
          whole.value = left.value / right.value;
    }
    return whole;
  }

  Tree best(const std::string& word, int depth) {
    Tree whole = tree(depth - 1);
    std::string text = word + "(" + whole.text;
    for (int i = number(2) + 1; i > 0; --i) {
      const Tree next = tree(depth - 1);
      text += ", " + next.text;
      whole.fails = whole.fails || next.fails;
      if (word == "min" ? next.value < whole.value : next.value > whole.value) whole.value = next.value;
    }
    whole.text = text + ")";
    return whole;
  }

  std::mt19937_64 random_;
};

std::string text_of(const cpp_rational& number) {
  return numerator(number).str() + (denominator(number) == 1 ? "" : "/" + denominator(number).str());
}

TEST(FormulaLaw, TheValueIsThatOfARational) {
  int worked_out = 0, divided_by_zero = 0;
  for (std::uint64_t seed = 0; seed < 5'000; ++seed) {
    TreeMaker maker(seed);
    const Tree tree = maker.tree(4);
    const FormulaRead read = read_formula({"kinds.csv", tree.text}, tree.text);
    ASSERT_TRUE(read.diagnostics.ok()) << tree.text << to_string(read.diagnostics);
    const FormulaResult result = evaluate(read.formula, maker.input);
    if (tree.fails) {
      ASSERT_FALSE(result.value) << tree.text;
      ++divided_by_zero;
    } else if (result.value) {
      // Of larger ones the difference is a number too large.
      if (abs(numerator(tree.value)) * denominator(tree.value) > cpp_int(1) << 126) continue;
      ASSERT_EQ(*result.value, test::exact(text_of(tree.value)))
          << tree.text << " is " << text_of(tree.value);
      ++worked_out;
    } else {
      ASSERT_EQ(result.why_not, "a number is too large") << tree.text;
    }
  }
  EXPECT_GT(worked_out, 3'500);
  EXPECT_GT(divided_by_zero, 100);
}

TEST(FormulaLaw, WhatIsPrintedReadsAsTheSameSteps) {
  for (std::uint64_t seed = 0; seed < 5'000; ++seed) {
    const Tree tree = TreeMaker(seed).tree(5);
    const Formula formula = read_formula({"kinds.csv", tree.text}, tree.text).formula;
    const std::string printed = print(formula);
    const FormulaRead again = read_formula({"kinds.csv", printed}, printed);
    ASSERT_TRUE(again.diagnostics.ok()) << printed << to_string(again.diagnostics);
    ASSERT_EQ(again.formula, formula) << tree.text << " printed as " << printed;
    ASSERT_EQ(print(again.formula), printed);
  }
}

// Leaving out any pair of brackets that is printed changes the formula.
TEST(FormulaLaw, NoPrintedBracketIsIdle) {
  int brackets = 0;
  for (std::uint64_t seed = 0; seed < 2'000; ++seed) {
    const Tree tree = TreeMaker(seed).tree(4);
    const Formula formula = read_formula({"kinds.csv", tree.text}, tree.text).formula;
    const std::string printed = print(formula);
    for (std::size_t open = 0; open < printed.size(); ++open) {
      if (printed[open] != '(' || (open > 0 && std::isalpha(static_cast<unsigned char>(printed[open - 1]))))
        continue;
      int depth = 0;
      std::size_t close = open;
      do {
        depth += printed[close] == '(' ? 1 : printed[close] == ')' ? -1 : 0;
        ++close;
      } while (depth > 0);
      std::string without = printed;
      without[open] = without[close - 1] = ' ';
      const FormulaRead other = read_formula({"kinds.csv", without}, without);
      ASSERT_FALSE(other.diagnostics.ok() && other.formula == formula) << printed;
      ++brackets;
    }
  }
  EXPECT_GT(brackets, 500);
}

// The numbers put in, worked out by themselves, give the same value.
TEST(FormulaLaw, TheFormulaWithNumbersHasTheSameValue) {
  for (std::uint64_t seed = 0; seed < 5'000; ++seed) {
    TreeMaker maker(seed);
    const Tree tree = maker.tree(3);
    const Formula formula = read_formula({"kinds.csv", tree.text}, tree.text).formula;
    const std::string shown = with_numbers(formula, maker.input);
    const FormulaRead again = read_formula({"kinds.csv", shown}, shown);
    ASSERT_TRUE(again.diagnostics.ok()) << shown;
    const FormulaResult first = evaluate(formula, maker.input), second = evaluate(again.formula, {});
    ASSERT_EQ(first.value.has_value(), second.value.has_value()) << shown;
    if (first.value) {
      ASSERT_EQ(*first.value, *second.value) << shown;
    }
  }
}

}  // namespace
}  // namespace landdrill
