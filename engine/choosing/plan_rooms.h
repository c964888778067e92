// A routine as lists to choose from and limits to keep: what plan.cpp hands to choose_best.h.
//
//   Programmes programmes(routine, wish, how);
//   programmes.options[2]        // {0, 1, leave_out}: what element 3 can be
//   programmes.choosing          // the same with what each uses of every limit; worths are 0
//
// Counts of music stand for seconds: a limit in seconds is turned into counts once, exactly. Only plan*.cpp
// include this.
#pragma once

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/option_limits.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// One limit. Those on sums come first, in the order of Choosing::limits; the breath, a chain, is last.
struct Room {
  enum class Of { elements, seconds, breath } of = Of::elements;
  PlanLimit told;
  std::string event, what;            // for words: "duet-free", "hybrid elements"
  std::string what_if_one;            // "hybrid element"
  std::int64_t fixed = 0;             // counts that the passages use
  std::string side(bool most) const;  // "duet-free: at least 5 hybrid elements"
};

class Programmes {
 public:
  Programmes(const Routine& routine, const Wish& wish, const PlanWish& how);

  // The choosing with one limit moved.
  Choosing with(std::size_t room, std::optional<Decimal> least, std::optional<Decimal> most) const;
  // With every limit wider by one at both ends.
  Choosing loosened() const;
  // What an option (or leave_out) uses, one for each limit of the choosing.
  std::vector<std::int64_t> uses(std::size_t element, std::size_t option) const;
  // Whether one option for each element keeps every limit; not only those to choose from.
  bool allowed(const std::vector<std::size_t>& chosen) const;
  // What a programme uses of a room, in its unit.
  Decimal used(const Room& room, std::size_t index, const std::vector<std::size_t>& chosen) const;
  std::vector<std::size_t> options_of(const std::vector<std::size_t>& choices) const;
  // Where each option stands among those to choose from; at their end, those that do not.
  std::vector<std::size_t> places_of(const std::vector<std::size_t>& options) const;
  bool has_choices(const std::vector<std::size_t>& options) const;

  Obstacles obstacles;
  std::vector<std::string> notes;
  std::vector<std::string> conflict;  // an element that its own limits leave no option, in words
  std::vector<std::vector<std::size_t>>
      options;  // [element][choice]: option, or leave_out; first as it is written; empty: obstacles, or a conflict
  std::vector<Room> rooms;
  Choosing choosing;

 private:
  using Counter = std::function<std::int64_t(const Element&, const Option&)>;
  struct Span {
    std::optional<Decimal> least, most;
  };
  void look_into_elements(bool heed_limits);
  void list_options(const Wish& wish);
  std::string why_not(std::size_t element, std::size_t option, const Wish& wish) const;
  void tell_empty(std::size_t element, const std::vector<std::size_t>& asked);
  void add(Room room, Span span, Counter counter);
  void add_quota(const Quota& quota);
  void add_families();
  void add_time();
  void add_own(const OwnLimit& own, const std::string& from);
  void add_seconds(const OwnLimit& own, Room room);
  void move(Choosing& of, std::size_t room, Span span) const;
  ChoiceLimit limit_of(const Room& room, Span span) const;
  std::optional<ChoiceChain> chain_of(Span span) const;
  int longest_under(const std::vector<std::size_t>& chosen) const;

  const Routine& routine_;
  std::vector<Counter> counters_;
  // [element][option]: what it breaks of the limits within one element, in words; empty: nothing.
  std::vector<std::vector<std::string>> broken_;
};

// The routine with these options and no others, as if the sheet had only them: what is left out is gone from
// the runs and panels too.
struct Programme {
  Routine routine;
  Wish wish;
};
Programme programme_of(const Routine& routine, const Wish& wish, const std::vector<std::size_t>& options);

}  // namespace landdrill
