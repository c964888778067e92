#include "engine/chances/spreads.h"

#include <cmath>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/option_limits.h"
#include "engine/score/panel.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr int least_freedom = 10;
constexpr std::size_t least_panels = 3;

Decimal to_a_thousandth(double value) {
  constexpr std::int64_t thousandth = Decimal::one / 1000;
  return Decimal::from_units(std::llround(value * 1000) * thousandth);
}

// The scatter of the judges around the mean of each line that they marked together.
class Pooled {
 public:
  template <class Marks>
  void add(const Marks& marks) {
    double sum = 0, squares = 0;
    int count = 0;
    for (const std::optional<Mark>& mark : marks) {
      if (!mark) continue;
      sum += binary(*mark);
      ++count;
    }
    if (count == 0) return;
    for (const std::optional<Mark>& mark : marks) {
      const double off = mark ? binary(*mark) - sum / count : 0;
      squares += off * off;
    }
    squares_ += squares;
    marks_ += static_cast<std::size_t>(count);
    freedom_ += count - 1;
  }

  std::optional<Spread> spread(std::size_t panels) const {
    if (freedom_ < least_freedom) return std::nullopt;
    return Spread{SpreadFrom::panels, to_a_thousandth(std::sqrt(squares_ / freedom_)),
                  plural(static_cast<std::int64_t>(panels), "recorded panel") + ", " +
                      plural(static_cast<std::int64_t>(marks_), "mark"),
                  nullptr};
  }

 private:
  double squares_ = 0;
  std::size_t marks_ = 0;
  int freedom_ = 0;
};

// What the recorded panels say of the spread of `lines`: the elements or the aspects of a panel.
template <class Line>
std::optional<Spread> pooled(const Routine& routine, std::vector<Line> RecordedPanel::*lines) {
  Pooled all;
  std::size_t panels = 0;
  for (const RecordedPanel& panel : routine.panels) {
    for (const Line& line : panel.*lines) all.add(line.marks);
    if (!(panel.*lines).empty()) ++panels;
  }
  return all.spread(panels);
}

// By how much the kept means of one panel lie off the expected marks, on average over its lines.
std::optional<double> off_expected(const Showing& expected, const Showing& seen) {
  double sum = 0;
  int lines = 0;
  const auto add = [&](const std::optional<KeptMarks>& wanted, const std::optional<KeptMarks>& got) {
    if (!wanted || !got) return;
    sum += binary_mean(got->sum, got->count) - binary_mean(wanted->sum, wanted->count);
    ++lines;
  };
  for (std::size_t i = 0; i < seen.elements.size(); ++i) {
    add(expected.elements[i].marks, seen.elements[i].marks);
  }
  for (std::size_t i = 0; i < seen.aspects.size(); ++i) {
    add(expected.aspects[i].marks, seen.aspects[i].marks);
  }
  if (lines == 0) return std::nullopt;
  return sum / lines;
}

std::optional<Spread> day_of_panels(const Routine& routine, const Wish& wish) {
  const Showing planned = expected(routine, wish);
  std::vector<double> offs;
  double sum = 0;
  for (const RecordedPanel& panel : routine.panels) {
    const std::optional<double> off = off_expected(planned, recorded(routine, panel, wish));
    if (!off) continue;
    offs.push_back(*off);
    sum += *off;
  }
  if (offs.size() < least_panels) return std::nullopt;
  const auto count = static_cast<double>(offs.size());
  double squares = 0;
  for (double off : offs) squares += (off - sum / count) * (off - sum / count);
  return Spread{SpreadFrom::panels, to_a_thousandth(std::sqrt(squares / (count - 1))),
                plural(static_cast<std::int64_t>(offs.size()), "recorded panel"), nullptr};
}

std::optional<Spread> told(const std::optional<Decimal>& marks) {
  if (!marks) return std::nullopt;
  return Spread{SpreadFrom::told, *marks, "told: " + marks->text(), nullptr};
}

std::optional<Spread> of_sheet(const char* word, const std::optional<Decimal>& marks) {
  if (!marks) return std::nullopt;
  return Spread{SpreadFrom::sheet, *marks, std::string(word) + " " + marks->text() + " in the sheet",
                nullptr};
}

std::optional<Spread> of_set(const SpreadRule* rule) {
  if (rule == nullptr) return std::nullopt;
  return Spread{SpreadFrom::set, rule->spread, "spreads.csv line " + std::to_string(rule->from.line),
                &rule->from};
}

// The first of all who say something and may be asked.
class Asked {
 public:
  explicit Asked(const SpreadWish& wish) : only_(wish.only) {}

  Spread first_of(std::initializer_list<std::optional<Spread>> answers) const {
    for (const std::optional<Spread>& answer : answers) {
      if (answer && (!only_ || answer->from == *only_)) return *answer;
    }
    return {};
  }

 private:
  std::optional<SpreadFrom> only_;
};

}  // namespace

std::string_view word_of(SpreadFrom from) {
  switch (from) {
    case SpreadFrom::nothing:
      return "";
    case SpreadFrom::told:
      return "told";
    case SpreadFrom::sheet:
      return "sheet";
    case SpreadFrom::panels:
      return "panels";
    case SpreadFrom::set:
      return "set";
  }
  return "";
}

Spreads spreads(const Routine& routine, const Wish& wish, const SpreadWish& spread) {
  const Asked asked(spread);
  const ValueSet& set = *routine.set;
  const std::optional<Spread> by_hand = told(spread.judges);
  const std::optional<Spread> of_routine = of_sheet("spread", routine.spread);
  const std::optional<Spread> of_elements = pooled(routine, &RecordedPanel::elements);
  const std::optional<Spread> of_aspects = pooled(routine, &RecordedPanel::aspects);
  Spreads result;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    if (element.panel == nullptr) {
      result.elements.emplace_back();
      continue;
    }
    const SpreadRule* row = set.judges_spread(element.panel->aspect, element.kind->code);
    result.elements.push_back(asked.first_of({by_hand, of_sheet("spread", chosen(routine, i, wish).spread),
                                              of_routine, of_elements, of_set(row)}));
  }
  for (const PanelRule* rule : set.routine_panels(routine.event->code)) {
    result.aspects.push_back(
        asked.first_of({by_hand, of_routine, of_aspects, of_set(set.judges_spread(rule->aspect, ""))}));
  }
  result.day = asked.first_of({told(spread.day), of_sheet("day", routine.day), day_of_panels(routine, wish),
                               of_set(set.day_spread())});
  return result;
}

}  // namespace landdrill
