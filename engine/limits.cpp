// What the rules of the event would object to. Warnings: the routine can be priced all the same.
#include <algorithm>

#include "engine/option_limits.h"
#include "engine/reading.h"
#include "engine/timing.h"

namespace landdrill {
namespace {

bool holds_family(const Option& option, std::size_t family_row) {
  return std::any_of(option.parts.begin(), option.parts.end(),
                     [&](const PartUse& use) { return use.part->family_row == family_row; });
}

int sum_of(const CountUses& counts) {
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
      : reading_(reading),
        sheet_(sheet),
        routine_(routine),
        of_options_(reading.set),
        of_family_(reading.set.families.size()) {}

  void check() {
    check_elements();
    check_families_in_routine();
    const std::size_t event = reading_.set.events.place(*routine_.event);
    for (const Quota& quota : reading_.set.quotas) {
      if (quota.event_row == event) check_quota(quota);
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
    for (BrokenLimit& broken : of_options_.broken_by(option, *element.kind))
      complain(piece, {broken.problem, std::move(broken.found), std::move(broken.expected)});
  }

  void count_families(const Option& option) {
    for (const PartUse& use : option.parts) {
      if (use.part->family_row != no_row) of_family_[use.part->family_row] += use.times;
    }
  }

  void check_families_in_routine() {
    const std::vector<Family>& families = reading_.set.families.all();
    std::fill(of_family_.begin(), of_family_.end(), 0);
    for (const Element& element : routine_.elements) count_families(element.options.front());
    for (std::size_t row = 0; row < families.size(); ++row) {
      if (!is_outside(of_family_[row], {}, families[row].most_in_routine)) continue;
      complain(sheet_.routine.head.title.text,
               {Problem::over_family_limit,
                plural(of_family_[row], "part") + " of " + families[row].code + " in the routine",
                range_of({}, families[row].most_in_routine)});
    }
  }

  void check_quota(const Quota& quota) {
    int count = 0;
    for (const Element& element : routine_.elements) {
      const bool kind = quota.kind.empty() || reading_.set.kinds.place(*element.kind) == quota.kind_row;
      const bool family = quota.family.empty() || holds_family(element.options.front(), quota.family_row);
      if (kind && family) ++count;
    }
    if (!is_outside(count, quota.least, quota.most)) return;
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
    if (!routine_.swimmers || !is_outside(*routine_.swimmers, event.least_swimmers, event.most_swimmers))
      return;
    complain(sheet_.routine.swimmers->swimmers.text,
             {Problem::swimmers, plural(*routine_.swimmers, "swimmer"),
              range_of(event.least_swimmers, event.most_swimmers) + " in " + event.code});
  }

  Reading& reading_;
  const ast::Sheet& sheet_;
  const Routine& routine_;
  OptionLimits of_options_;
  std::vector<std::int64_t> of_family_;  // parts of each family of the set in the routine
};

}  // namespace

void check_limits(Reading& reading, const ast::Sheet& sheet, const Routine& routine) {
  Limits(reading, sheet, routine).check();
}

}  // namespace landdrill
