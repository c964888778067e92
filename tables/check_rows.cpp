#include <algorithm>
#include <array>

#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/complaints.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

struct Limit {
  std::string_view column;
  std::optional<Decimal> value;
};

Limit limit(std::string_view column, std::optional<int> value) {
  return {column, value ? std::optional(Decimal::whole(*value)) : std::nullopt};
}
template <class Quantity>
Limit limit(std::string_view column, const std::optional<Quantity>& value) {
  return {column, value ? std::optional(value->value()) : std::nullopt};
}

// The complaint is made at the second of the two.
void check_order(const Provenance& from, const Limit& lower, const Limit& upper, Complaints& complaints) {
  if (!lower.value || !upper.value || *lower.value <= *upper.value) return;
  const std::string column(upper.column);
  complaints.at(
      from, upper.column,
      {Problem::contradiction, column + " " + upper.value->text(),
       "at least " + lower.value->text() + ", which stands in the column " + in_quotes(lower.column)});
}

// ---- words that would be taken for something else ----

void check_word(const Provenance& from, std::string_view column, std::string_view code,
                std::span<const std::string_view> taken, std::string_view means, Complaints& complaints) {
  if (std::find(taken.begin(), taken.end(), code) == taken.end()) return;
  complaints.at(from, column,
                {Problem::bad_code, in_quotes(code) + " as a code",
                 "another word, since " + std::string(code) + " " + std::string(means)});
}

constexpr std::array<std::string_view, 1> parts_word = {"parts"};
constexpr std::array<std::string_view, 2> fault_words = {"lost", "clean"};
constexpr std::array<std::string_view, 1> none_word = {"none"};

void check_spelling(const Provenance& from, std::string_view code, std::string_view bad,
                    std::string_view expected, Complaints& complaints) {
  if (code.find_first_of(bad) == std::string_view::npos) return;
  complaints.at(from, "code", {Problem::bad_code, in_quotes(code), std::string(expected)});
}

// ---- the tables ----

void check_family(const Family& family, Complaints& complaints) {
  check_order(family.from, limit("most_in_element", family.most_in_element),
              limit("most_in_routine", family.most_in_routine), complaints);
  check_word(family.from, "code", family.code, parts_word, "means every part of an element in a formula",
             complaints);
  check_spelling(family.from, family.code, "(), ",
                 "a code that a formula can name: without blanks, commas and brackets", complaints);
}

void check_kind(const Kind& kind, Complaints& complaints) {
  check_order(kind.from, limit("least_parts", kind.least_parts), limit("most_parts", kind.most_parts),
              complaints);
  check_order(kind.from, limit("most_same", kind.most_same), limit("most_parts", kind.most_parts),
              complaints);
  check_spelling(kind.from, kind.code, " ",
                 "a code without blanks, since lists of kinds have blanks between them", complaints);
}

void check_event(const Event& event, Complaints& complaints) {
  check_order(event.from, limit("least_swimmers", event.least_swimmers),
              limit("most_swimmers", event.most_swimmers), complaints);
  const auto& [seconds, tolerance] = std::pair(event.seconds, event.tolerance);
  if (seconds && tolerance && *tolerance >= *seconds) {
    complaints.at(event.from, "tolerance",
                  {Problem::contradiction, "tolerance " + tolerance->text(),
                   "less than the " + seconds->text() + " seconds of the event"});
  }
  if (seconds && !tolerance) {
    complaints.at(
        event.from, "tolerance",
        {Problem::no_tolerance, "a time without a tolerance",
         "the seconds by which a routine may be longer or shorter", "write 0 if the rules allow none"});
  }
}

void check_fault(const FaultRule& fault, Complaints& complaints) {
  const std::array<Limit, 3> sizes = {limit("small", fault.small), limit("medium", fault.medium),
                                      limit("large", fault.large)};
  check_order(fault.from, sizes[0], sizes[1], complaints);
  check_order(fault.from, sizes[fault.medium ? 1 : 0], sizes[2], complaints);
  const auto least =
      std::find_if(sizes.begin(), sizes.end(), [](const Limit& size) { return size.value.has_value(); });
  if (least != sizes.end()) return check_order(fault.from, *least, limit("cap", fault.cap), complaints);
  complaints.at(fault.from, "code",
                {Problem::contradiction, "the fault " + in_quotes(fault.code) + " without any size",
                 "a number under small, medium or large"});
}

}  // namespace

void check_rows(const ValueSet& set, Complaints& complaints) {
  for (const Family& family : set.families) check_family(family, complaints);
  for (const Kind& kind : set.kinds) check_kind(kind, complaints);
  for (const Event& event : set.events) check_event(event, complaints);
  for (const FaultRule& fault : set.faults) {
    check_fault(fault, complaints);
    check_word(fault.from, "code", fault.code, fault_words, "has its own meaning in a run", complaints);
  }
  for (const SyncClass& row : set.sync) {
    check_word(row.from, "code", row.code, none_word, "means that there was no sync error", complaints);
  }
  for (const Penalty& row : set.penalties) {
    check_word(row.from, "code", row.code, none_word, "means that there was no penalty", complaints);
  }
}

}  // namespace landdrill
