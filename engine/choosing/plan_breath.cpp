// The longest stretch under water in one go, as a chain from element to element.
#include <algorithm>
#include <numeric>

#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/routine/routine.h"

namespace landdrill {
namespace {

// How long the heads are down now, and whether they were down as long as they should be, as one number.
class BreathHold {
 public:
  BreathHold(std::optional<std::int64_t> least, std::optional<std::int64_t> most, std::int64_t unit)
      : least_(least), most_(most), unit_(unit) {}

  std::uint32_t longest() const { return static_cast<std::uint32_t>(most_ ? *most_ : *least_); }
  std::uint32_t states() const { return (longest() + 1) * (least_ ? 2 : 1); }
  bool may_end(std::uint32_t state) const { return !least_ || reached(state); }
  std::uint32_t begin() const { return least_ && *least_ <= 0 ? longest() + 1 : 0; }

  std::uint32_t after(std::uint32_t state, const CountUses& counts) const {
    for (const CountUse& use : counts) {
      if (state == broken) break;
      state = after(state, use);
    }
    return state;
  }

 private:
  bool reached(std::uint32_t state) const { return state > longest(); }

  std::uint32_t after(std::uint32_t state, const CountUse& use) const {
    bool was_reached = reached(state);
    std::int64_t down = state % (longest() + 1);
    down = use.under ? down + use.counts / unit_ : 0;
    if (most_ && down > *most_) return broken;
    was_reached |= least_ && down >= *least_;
    down = std::min<std::int64_t>(down, longest());
    return static_cast<std::uint32_t>(down) + (was_reached ? longest() + 1 : 0);
  }

  std::optional<std::int64_t> least_, most_;  // in units
  std::int64_t unit_;                         // counts that all stretches are made of
};

}  // namespace

std::optional<ChoiceChain> Programmes::chain_of(Span span) const {
  Room room;
  room.of = Room::Of::breath;
  const ChoiceLimit limit = limit_of(room, span);
  std::int64_t unit = 0, whole = 0;
  const auto look_at = [&](const CountUses& counts) {
    for (const CountUse& use : counts) {
      if (!use.under) continue;
      unit = std::gcd(unit, use.counts);
      whole += use.counts;
    }
  };
  for (const Element& element : routine_.elements) {
    for (const Option& option : element.options) look_at(option.counts);
  }
  for (const Passage& passage : routine_.passages) look_at(passage.counts);
  if (unit == 0) unit = 1;
  std::optional<std::int64_t> least = limit.least, most = limit.most;
  // No stretch is longer than all of them together.
  if (least) least = (std::clamp<std::int64_t>(*least, 0, whole + unit) + unit - 1) / unit;
  if (most) most = std::min(std::max<std::int64_t>(*most, 0), whole) / unit;
  if (!least && !most) return std::nullopt;
  const BreathHold stretch(least, most, unit);

  ChoiceChain chain;
  chain.states = stretch.states();
  chain.start = stretch.begin();
  for (std::uint32_t state = 0; state < chain.states; ++state)
    chain.may_end.push_back(stretch.may_end(state));
  std::vector<std::uint32_t> before(chain.states);
  std::iota(before.begin(), before.end(), 0u);
  // Passages count with the element that follows them; those at the end with the last one.
  for (const Item& item : routine_.order) {
    if (!item.is_element) {
      for (std::uint32_t& state : before) state = stretch.after(state, routine_.passages[item.index].counts);
      continue;
    }
    auto& moves = chain.next.emplace_back();
    for (const std::size_t option : options[item.index]) {
      auto& next = moves.emplace_back(before);
      if (option == leave_out) continue;
      for (std::uint32_t& state : next) {
        state = stretch.after(state, routine_.elements[item.index].options[option].counts);
      }
    }
    std::iota(before.begin(), before.end(), 0u);
  }
  if (chain.next.empty()) {
    const std::uint32_t end = before[chain.start];
    chain.may_end.assign(chain.states, end != broken && stretch.may_end(end));
    return chain;
  }
  for (auto& next : chain.next.back()) {
    for (std::uint32_t& state : next) state = state == broken ? broken : before[state];
  }
  return chain;
}

}  // namespace landdrill
