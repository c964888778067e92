// What the rules of the event would object to. Warnings: the routine can be priced all the same.
#include <algorithm>

#include "engine/reading.h"
#include "engine/timing.h"

namespace landdrill {
namespace {

std::string plural(std::int64_t number, std::string_view word) {
  return std::to_string(number) + " " + std::string(word) + (number == 1 ? "" : "s");
}

// "at most 5", "at least 2", "from 2 to 5"
std::string range_of(std::optional<int> least, std::optional<int> most) {
  if (least && most)
    return *least == *most ? "exactly " + std::to_string(*least)
                           : "from " + std::to_string(*least) + " to " + std::to_string(*most);
  return least ? "at least " + std::to_string(*least) : "at most " + std::to_string(*most);
}

bool outside(std::int64_t number, std::optional<int> least, std::optional<int> most) {
  return (least && number < *least) || (most && number > *most);
}

std::int64_t parts_of_family(const Option& option, std::string_view family) {
  std::int64_t count = 0;
  for (const PartUse& use : option.parts) {
    if (use.part->family == family) count += use.times;
  }
  return count;
}

int sum_of(const std::vector<CountUse>& counts) {
  int sum = 0;
  for (const CountUse& use : counts) sum += use.counts;
  return sum;
}

// Of the routine as written.
int counts_of(const Routine& routine) {
  int sum = 0;
  for (const Element& element : routine.elements) sum += sum_of(element.options.front().counts);
  for (const Passage& passage : routine.passages) sum += sum_of(passage.counts);
  return sum;
}

// Complains at the places of the sheet that belong to the resolved routine.
class Limits {
 public:
  Limits(Reading& reading, const ast::Sheet& sheet, const Routine& routine)
      : reading_(reading), sheet_(sheet), routine_(routine) {}

  void check() {
    check_elements();
    check_families_in_routine();
    for (const Quota& quota : reading_.set.quotas) {
      if (quota.event == routine_.event->code) check_quota(quota);
    }
    check_time();
    check_swimmers();
  }

 private:
  void complain(std::string_view piece, Complaint complaint) {
    reading_.complain(*sheet_.source, piece, std::move(complaint));
  }

  void check_elements() {
    std::size_t index = 0;
    for (const ast::Item& item : sheet_.routine.items) {
      const auto* typed = std::get_if<ast::Element>(&item);
      if (typed == nullptr) continue;
      const Element& element = routine_.elements[index++];
      for (std::size_t i = 0; i < element.options.size(); ++i) {
        const ast::Variant& variant = typed->variants[i];
        check_option(element.options[i], element,
                     variant.title ? variant.title->text : typed->head.number.text);
      }
    }
  }

  void check_option(const Option& option, const Element& element, std::string_view piece) {
    if (option.parts.empty()) return;
    const Kind& kind = *element.kind;
    int parts = 0;
    for (const PartUse& use : option.parts) parts += use.times;
    if (outside(parts, kind.least_parts, kind.most_parts)) {
      complain(piece, {Problem::part_count, plural(parts, "part") + " in " + with_article(kind.code),
                       range_of(kind.least_parts, kind.most_parts)});
    }
    for (const Family& family : reading_.set.families) {
      // With no more parts than the limit allows there is nothing to count.
      if (!outside(parts, {}, family.most_in_element)) continue;
      const std::int64_t count = parts_of_family(option, family.code);
      if (!outside(count, {}, family.most_in_element)) continue;
      complain(piece,
               {Problem::over_family_limit, plural(count, "part") + " of " + family.code + " in one element",
                range_of({}, family.most_in_element)});
    }
    check_codes(option, kind, piece);
  }

  void check_codes(const Option& option, const Kind& kind, std::string_view piece) {
    if (!kind.most_same) return;
    std::vector<const Part*> seen;
    seen.reserve(option.parts.size());
    for (const PartUse& use : option.parts) {
      if (std::find(seen.begin(), seen.end(), use.part) != seen.end()) continue;
      seen.push_back(use.part);
      int count = 0;
      for (const PartUse& other : option.parts) count += other.part == use.part ? other.times : 0;
      if (count <= *kind.most_same) continue;
      complain(piece,
               {Problem::over_code_limit, use.part->code + " " + plural(count, "time") + " in one element",
                range_of({}, kind.most_same)});
    }
  }

  void check_families_in_routine() {
    for (const Family& family : reading_.set.families) {
      if (!family.most_in_routine) continue;
      std::int64_t count = 0;
      for (const Element& element : routine_.elements)
        count += parts_of_family(element.options.front(), family.code);
      if (!outside(count, {}, family.most_in_routine)) continue;
      complain(sheet_.routine.head.title.text,
               {Problem::over_family_limit, plural(count, "part") + " of " + family.code + " in the routine",
                range_of({}, family.most_in_routine)});
    }
  }

  void check_quota(const Quota& quota) {
    int count = 0;
    for (const Element& element : routine_.elements) {
      const bool kind = quota.kind.empty() || element.kind->code == quota.kind;
      const bool family = quota.family.empty() || parts_of_family(element.options.front(), quota.family) > 0;
      if (kind && family) ++count;
    }
    if (!outside(count, quota.least, quota.most)) return;
    std::string what = quota.kind.empty() ? "element" : quota.kind + " element";
    std::string found = plural(count, what);
    if (!quota.family.empty()) found += " with a part of " + quota.family;
    complain(sheet_.routine.event->event.text,
             {Problem::quota, found, range_of(quota.least, quota.most) + " in " + routine_.event->code});
  }

  void check_time() {
    const Event& event = *routine_.event;
    const int counts = counts_of(routine_);
    if (!routine_.tempo || !event.seconds || counts == 0) return;
    const Exact seconds = seconds_of(counts, *routine_.tempo);
    const Decimal tolerance = event.tolerance.value_or(Decimal());
    const bool over = seconds > Exact(*event.seconds + tolerance);
    if (!over && seconds >= Exact(*event.seconds - tolerance)) return;
    const std::string wanted = event.seconds->text() + " s, with a tolerance of " + tolerance.text() + " s";
    // To a thousandth, so that a routine over by less than a tenth is not told that it is on time.
    const std::string found = round(seconds, 3, Rounding::half_up).text(1) + " s of counts at " +
                              routine_.tempo->text() + " beats a minute";
    const std::string_view piece = sheet_.routine.tempo->beats_a_minute.text;
    complain(piece, {over ? Problem::over_time : Problem::under_time, found, wanted});
  }

  void check_swimmers() {
    const Event& event = *routine_.event;
    if (!routine_.swimmers || !outside(*routine_.swimmers, event.least_swimmers, event.most_swimmers)) return;
    complain(sheet_.routine.swimmers->swimmers.text,
             {Problem::swimmers, plural(*routine_.swimmers, "swimmer"),
              range_of(event.least_swimmers, event.most_swimmers) + " in " + event.code});
  }

  Reading& reading_;
  const ast::Sheet& sheet_;
  const Routine& routine_;
};

}  // namespace

void check_limits(Reading& reading, const ast::Sheet& sheet, const Routine& routine) {
  Limits(reading, sheet, routine).check();
}

}  // namespace landdrill
