#include <algorithm>
#include <cassert>
#include <functional>
#include <span>
#include <vector>

#include "tables/decimal.h"
#include "tables/formula.h"

namespace landdrill {
namespace {

struct DividesByZero {};

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

void carry_out(const FormulaStep& step, const FormulaInput& input, Stack& stack) {
  switch (step.does) {
    case Operation::negate:
      return stack.put(Exact() - stack.take());
    case Operation::min:
      return stack.put(stack.take_best(step.takes, false));
    case Operation::max:
      return stack.put(stack.take_best(step.takes, true));
    case Operation::round:
      return stack.put(Exact(round(stack.take(), step.takes, step.rounding)));
    case Operation::add:
      return stack.put(stack.take() + stack.take());
    case Operation::multiply:
      return stack.put(stack.take() * stack.take());
    case Operation::subtract: {
      const Exact right = stack.take();
      return stack.put(stack.take() - right);
    }
    case Operation::divide: {
      const Exact right = stack.take();
      if (right.is_zero()) throw DividesByZero{};
      return stack.put(stack.take() / right);
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

namespace {

// How strongly a piece of text holds together: what binds less needs brackets inside what binds more.
enum class Binds { sum, product, sign, value };

struct Piece {
  std::string text;
  Binds binds;
};

using TextOf = std::function<std::string(const FormulaStep&)>;

std::string within(const Piece& piece, bool brackets) {
  return brackets ? "(" + piece.text + ")" : piece.text;
}

std::string word_for(const FormulaStep& step) {
  switch (step.does) {
    case Operation::number:
      return step.number.text();
    case Operation::base:
      return "base";
    case Operation::families:
      return "families";
    case Operation::sum_parts:
      return "sum(parts)";
    case Operation::count_parts:
      return "count(parts)";
    case Operation::sum_family:
      return "sum(" + step.family + ")";
    case Operation::count_family:
      return "count(" + step.family + ")";
    default:
      assert(!"the step is a number");
      return "";
  }
}

class Printer {
 public:
  explicit Printer(TextOf text_of) : text_of_(std::move(text_of)) {}

  void print(const FormulaStep& step) {
    switch (step.does) {
      case Operation::add:
        return print_pair(" + ", Binds::sum);
      case Operation::subtract:
        return print_pair(" - ", Binds::sum);
      case Operation::multiply:
        return print_pair(" * ", Binds::product);
      case Operation::divide:
        return print_pair(" / ", Binds::product);
      case Operation::negate:
        return print_negated();
      case Operation::min:
        return print_list("min(", step.takes);
      case Operation::max:
        return print_list("max(", step.takes);
      case Operation::round:
        return print_rounded(step);
      default:
        return print_number(text_of_(step));
    }
  }
  std::string last() const { return pieces_.back().text; }

 private:
  void put(std::string text, Binds binds) { pieces_.push_back({std::move(text), binds}); }
  Piece take() {
    Piece piece = std::move(pieces_.back());
    pieces_.pop_back();
    return piece;
  }

  void print_number(std::string text) {
    const Binds binds = text.starts_with('-') ? Binds::sign : Binds::value;
    put(std::move(text), binds);
  }
  // `a - (b - c)` keeps its brackets, `(a - b) - c` needs none.
  void print_pair(std::string_view sign, Binds binds) {
    const Piece right = take();
    const Piece left = take();
    put(within(left, left.binds < binds) + std::string(sign) + within(right, right.binds <= binds), binds);
  }
  void print_negated() {
    const Piece piece = take();
    put("-" + within(piece, piece.binds < Binds::sign), Binds::sign);
  }
  void print_rounded(const FormulaStep& step) {
    std::string text = "round(" + take().text + ", " + std::to_string(step.takes);
    if (step.rounding != Rounding::half_up) text += ", " + std::string(word_of(step.rounding));
    put(text + ")", Binds::value);
  }
  void print_list(std::string text, int takes) {
    const auto first = pieces_.end() - takes;
    for (auto piece = first; piece != pieces_.end(); ++piece)
      text += (piece == first ? "" : ", ") + piece->text;
    pieces_.erase(first, pieces_.end());
    put(text + ")", Binds::value);
  }

  TextOf text_of_;
  std::vector<Piece> pieces_;
};

std::string print_steps(std::span<const FormulaStep> steps, TextOf text_of) {
  if (steps.empty()) return "";
  Printer printer(std::move(text_of));
  for (const FormulaStep& step : steps) printer.print(step);
  return printer.last();
}

}  // namespace

std::string print(const Formula& formula) {
  return print_steps(formula.steps, word_for);
}

FormulaResult evaluate(const Formula& formula, const FormulaInput& input) {
  Stack stack;
  for (std::size_t i = 0; i < formula.steps.size(); ++i) {
    try {
      carry_out(formula.steps[i], input, stack);
    } catch (const Overflow& overflow) {
      return {std::nullopt, overflow.what()};
    } catch (const DividesByZero&) {
      return {std::nullopt,
              "divides by " + print_steps(std::span(formula.steps).first(i), word_for) + ", which is 0"};
    }
  }
  return {stack.take(), ""};
}

std::string with_numbers(const Formula& formula, const FormulaInput& input) {
  return print_steps(formula.steps, [&](const FormulaStep& step) { return number_of(step, input).text(); });
}

}  // namespace landdrill
