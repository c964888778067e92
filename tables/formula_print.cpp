#include <cassert>
#include <functional>
#include <span>

#include "tables/formula.h"

namespace landdrill {
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
        return put("round(" + take().text + ", " + std::to_string(step.takes) + ")", Binds::value);
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

std::string print_last(std::span<const FormulaStep> steps) {
  return print_steps(steps, word_for);
}

std::string with_numbers(const Formula& formula, const FormulaInput& input) {
  return print_steps(formula.steps, [&](const FormulaStep& step) { return number_of(step, input).text(); });
}

}  // namespace landdrill
