#include <algorithm>
#include <cassert>
#include <span>
#include <vector>

#include "tables/decimal.h"
#include "tables/formula.h"

namespace landdrill {
namespace {

struct DividesByZero {
  std::size_t step;
};

const FormulaInput::FamilySum* find_family(const FormulaInput& input, std::string_view family) {
  const auto at = std::find_if(input.families.begin(), input.families.end(),
                               [&](const auto& candidate) { return candidate.family == family; });
  return at == input.families.end() ? nullptr : &*at;
}

// The numbers that wait to be used, last on top.
class Stack {
 public:
  void put(Exact number) { numbers_.push_back(number); }
  Exact take() {
    assert(!numbers_.empty());
    const Exact top = numbers_.back();
    numbers_.pop_back();
    return top;
  }
  Exact take_best(int count, bool greatest) {
    Exact best = take();
    for (int i = 1; i < count; ++i) {
      const Exact other = take();
      if (greatest ? other > best : other < best) best = other;
    }
    return best;
  }

 private:
  std::vector<Exact> numbers_;
};

Exact combined(Operation does, Exact left, Exact right) {
  switch (does) {
    case Operation::add:
      return left + right;
    case Operation::subtract:
      return left - right;
    case Operation::multiply:
      return left * right;
    default:
      return left / right;
  }
}

void carry_out(const FormulaStep& step, const FormulaInput& input, Stack& stack) {
  switch (step.does) {
    case Operation::negate:
      return stack.put(Exact() - stack.take());
    case Operation::min:
      return stack.put(stack.take_best(step.takes, false));
    case Operation::max:
      return stack.put(stack.take_best(step.takes, true));
    case Operation::round:
      return stack.put(Exact(round(stack.take(), step.takes, Rounding::half_up)));
    case Operation::add:
    case Operation::subtract:
    case Operation::multiply:
    case Operation::divide: {
      const Exact right = stack.take();
      if (step.does == Operation::divide && right.is_zero()) throw DividesByZero{};
      return stack.put(combined(step.does, stack.take(), right));
    }
    default:
      return stack.put(Exact(number_of(step, input)));
  }
}

}  // namespace

Decimal number_of(const FormulaStep& step, const FormulaInput& input) {
  const FormulaInput::FamilySum* family = step.family.empty() ? nullptr : find_family(input, step.family);
  switch (step.does) {
    case Operation::number:
      return step.number;
    case Operation::base:
      return input.base;
    case Operation::families:
      return Decimal::whole(std::count_if(input.families.begin(), input.families.end(),
                                          [](const auto& candidate) { return candidate.count > 0; }));
    case Operation::sum_parts:
      return input.sum;
    case Operation::count_parts:
      return Decimal::whole(input.count);
    case Operation::sum_family:
      return family ? family->sum : Decimal();
    case Operation::count_family:
      return Decimal::whole(family ? family->count : 0);
    default:
      assert(!"the step is a number");
      return {};
  }
}

FormulaResult evaluate(const Formula& formula, const FormulaInput& input) {
  Stack stack;
  for (std::size_t i = 0; i < formula.steps.size(); ++i) {
    try {
      carry_out(formula.steps[i], input, stack);
    } catch (const Overflow& overflow) {
      return {std::nullopt, overflow.what()};
    } catch (const DividesByZero&) {
      return {std::nullopt, "divides by " + print_last(std::span(formula.steps).first(i)) + ", which is 0"};
    }
  }
  return {stack.take(), ""};
}

}  // namespace landdrill
