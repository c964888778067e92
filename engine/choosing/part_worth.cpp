#include "engine/choosing/part_worth.h"

#include <algorithm>
#include <iterator>

#include "engine/routine/difficulty.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// Parts of one family by value; of equal ones the first in the file stands for all.
class Exchanges {
 public:
  Exchanges(const ValueSet& set, const Option& option, const Kind& kind, const Part& part)
      : set_(set), option_(option), kind_(kind), part_(part) {}

  const Part* easier() const {
    return nearest([](const Part& a, const Part& b) { return *a.value < *b.value; });
  }
  const Part* harder() const {
    return nearest([](const Part& a, const Part& b) { return *a.value > *b.value; });
  }

 private:
  bool may_stand(const Part& other) const {
    return other.family == part_.family && other.value &&
           (!kind_.most_same || times_of(option_, other) < *kind_.most_same);
  }
  // The part next to this one in the direction of `beyond`.
  template <class Beyond>
  const Part* nearest(Beyond beyond) const {
    const Part* found = nullptr;
    for (const Part& other : set_.parts) {
      if (!may_stand(other) || !beyond(other, part_)) continue;
      if (found == nullptr || beyond(*found, other)) found = &other;
    }
    return found;
  }

  const ValueSet& set_;
  const Option& option_;
  const Kind& kind_;
  const Part& part_;
};

// One part after another against the option as it is.
class PartByPart {
 public:
  PartByPart(const Routine& routine, const Option& option, const Worth& worth, const Way& way)
      : routine_(routine), option_(option), worth_(worth), way_(way), total_(worth.points(way)) {}

  PartWorth tell(const Part& part) const {
    PartWorth result{part.code, times_of(option_, part), {}, {}, {}, {}};
    const Option without = with_more(option_, part, -1);
    if (const auto left = workable(without, worth_.kind())) {
      result.adds = way_.declared - *left;
      result.dropping = change(*left);
    }
    if (!part.value) return result;
    const Exchanges others(*routine_.set, option_, worth_.kind(), part);
    result.easier = exchange(without, others.easier());
    result.harder = exchange(without, others.harder());
    return result;
  }

 private:
  std::optional<Points> change(Difficulty declared) const {
    Way then = way_;
    then.declared = declared;
    const std::optional<Points> total = worth_.points(then);
    if (!total || !total_) return std::nullopt;
    return *total - *total_;
  }
  std::optional<PartWorth::Exchange> exchange(const Option& without, const Part* by) const {
    if (by == nullptr) return std::nullopt;
    const auto declared = workable(with_more(without, *by, 1), worth_.kind());
    if (!declared) return std::nullopt;
    const std::optional<Points> points = change(*declared);
    if (!points) return std::nullopt;
    return PartWorth::Exchange{by->code, *declared, *points};
  }

  const Routine& routine_;
  const Option& option_;
  const Worth& worth_;
  const Way& way_;
  std::optional<Points> total_;
};

}  // namespace

int times_of(const Option& option, const Part& part) {
  int times = 0;
  for (const PartUse& use : option.parts) times += use.part == &part ? use.times : 0;
  return times;
}

Option with_more(Option option, const Part& part, int more) {
  if (more > 0) {
    option.parts.push_back({&part, more});
    return option;
  }
  Option left = option;
  left.parts = {};
  for (PartUse use : option.parts) {
    const int taken = use.part == &part ? std::min(use.times, -more) : 0;
    use.times -= taken;
    more += taken;
    if (use.times > 0) left.parts.push_back(use);
  }
  return left;
}

std::optional<Difficulty> workable(const Option& option, const Kind& kind) {
  try {
    const Declared result = declared(option, kind);
    if (!result.difficulty || *result.difficulty < Difficulty()) return std::nullopt;
    return result.difficulty;
  } catch (const Overflow&) {
    return std::nullopt;
  }
}

std::vector<PartWorth> part_worths(const Routine& routine, const Option& option, const Worth& worth,
                                   const Way& way) {
  std::vector<PartWorth> result;
  if (option.stated) return result;
  const PartByPart parts(routine, option, worth, way);
  for (const PartUse& use : option.parts) {
    const auto known = [&](const PartWorth& one) { return one.code == use.part->code; };
    if (std::none_of(result.begin(), result.end(), known)) result.push_back(parts.tell(*use.part));
  }
  return result;
}

}  // namespace landdrill
