#include "engine/reading.h"

#include <algorithm>

namespace landdrill {
namespace {

// The multiples of `step` on both sides of `mark`: "7.25 or 7.50".
std::string neighbours(const PanelRule& rule, Decimal mark) {
  const Decimal below = round_to_step(Exact(mark), rule.step, Rounding::down);
  const int places = rule.step.places_used();
  return below.text(places) + " or " + (below + rule.step).text(places);
}

std::string scale_of(const PanelRule& rule) {
  return "a mark from " + rule.least.text() + " to " + rule.most.text();
}

// "there are a, b, c", as far as a coach would read on.
std::string all_of(const std::vector<std::string_view>& known) {
  if (known.empty()) return "there are none";
  if (known.size() > 12) return "";
  std::string list = "there are ";
  for (const std::string_view& word : known) {
    if (&word != &known.front()) list += ", ";
    list += word;
  }
  return list;
}

}  // namespace

std::string quoted(std::string_view what, std::string_view text) {
  return std::string(what) + " \"" + std::string(text) + "\"";
}

std::string with_article(std::string_view word) {
  const bool vowel =
      !word.empty() && std::string_view("aeiouAEIOU").find(word.front()) != std::string_view::npos;
  return (vowel ? "an " : "a ") + std::string(word);
}

void Reading::complain(const Source& source, std::string_view piece, Complaint complaint) {
  if (!out_.diagnostics.wants_more()) return out_.diagnostics.count_only(severity_of(complaint.problem));
  out_.diagnostics.add(diagnostic_at(source, piece, std::move(complaint)));
}

void Reading::gap(const Source& source, std::string_view piece, Gap gap) {
  const auto same = [&](const Gap& known) {
    return known.table == gap.table && known.key == gap.key && known.column == gap.column;
  };
  if (std::find_if(out_.gaps.begin(), out_.gaps.end(), same) == out_.gaps.end()) out_.gaps.push_back(gap);
  const std::string file = std::string(gap.table) + ".csv";
  complain(source, piece,
           {Problem::value_missing,
            std::string(gap.key) + " with no " + std::string(gap.column) + " in " + file + " of " + set.name,
            "a " + std::string(gap.column) + " there",
            "put in what your catalogue says; `values missing` lists every gap of a sheet"});
}

std::optional<Decimal> Reading::number(const Source& source, const ast::Number& typed,
                                       std::string_view what) {
  const std::optional<Decimal> value = Decimal::parse(typed.text);
  if (!value) {
    complain(source, typed.text,
             {Problem::bad_number, quoted(what, typed.text),
              "a number with at most six decimal places and not above 9000000000000"});
  }
  return value;
}

std::optional<int> Reading::whole(const Source& source, const ast::Number& typed, std::string_view what,
                                  int least, int most) {
  const std::optional<Decimal> value = Decimal::parse(typed.text);
  if (value && value->places_used() == 0 && *value >= Decimal::whole(least) &&
      *value <= Decimal::whole(most)) {
    return static_cast<int>(value->units() / Decimal::one);
  }
  complain(source, typed.text,
           {Problem::bad_number, quoted(what, typed.text),
            "a whole number from " + std::to_string(least) + " to " + std::to_string(most)});
  return std::nullopt;
}

std::optional<Mark> Reading::mark(const Source& source, const ast::Number& typed, const PanelRule& rule,
                                  bool on_step) {
  const std::optional<Decimal> value = number(source, typed, "the mark");
  if (!value) return std::nullopt;
  const Mark mark(*value);
  if (mark < rule.least || mark > rule.most) {
    complain(source, typed.text,
             {Problem::out_of_range, "the mark " + mark.text(), scale_of(rule) + " for " + rule.aspect});
    return std::nullopt;
  }
  if (on_step && !value->is_multiple_of(rule.step)) {
    complain(source, typed.text,
             {Problem::off_step, "the mark " + mark.text(),
              "a mark in steps of " + rule.step.text() + " for " + rule.aspect,
              "it lies between two steps: write " + neighbours(rule, *value)});
    return std::nullopt;
  }
  return mark;
}

std::optional<int> Reading::times(const Source& source, const std::optional<ast::Number>& typed) {
  if (!typed) return 1;
  return whole(source, *typed, "how many times", 1, 1000);
}

void Reading::unknown(const Source& source, std::string_view piece,
                      const std::vector<std::string_view>& known, Problem problem, std::string_view what,
                      std::string of) {
  if (of.empty()) of = set.name;
  if (!out_.diagnostics.wants_more()) return out_.diagnostics.count_only(severity_of(problem));
  const std::string nearest = words::nearest_hint(piece, known);
  complain(source, piece,
           {problem, quoted("the " + std::string(what), piece), with_article(what) + " of " + of,
            nearest.empty() ? all_of(known) : nearest});
}

}  // namespace landdrill
