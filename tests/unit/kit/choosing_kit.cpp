#include "tests/unit/kit/choosing_kit.h"

#include <algorithm>

namespace landdrill::kit {
namespace {

// A stretch that no choice may make longer than five: one that begins with 0 ends it.
ChoiceChain made_up_chain(Dice& dice, const Choosing& choosing) {
  ChoiceChain chain{"at most 5 in one go", 6, 0, {}, std::vector<bool>(6, true)};
  for (const auto& list : choosing.lists) {
    auto& moves = chain.next.emplace_back();
    for (std::size_t c = 0; c < list.size(); ++c) {
      const std::int64_t longer = dice.from_to(0, 4);
      auto& next = moves.emplace_back();
      for (std::int64_t state = 0; state < 6; ++state) {
        const std::int64_t after = longer == 0 ? 0 : state + longer;
        next.push_back(after > 5 ? broken : static_cast<std::uint32_t>(after));
      }
    }
  }
  return chain;
}

ChoiceLimit made_up_limit(Dice& dice, const Shape& shape) {
  const std::int64_t middle = dice.from_to(-shape.uses / 3, shape.uses) * shape.lists / 2;
  ChoiceLimit limit;
  const std::int64_t sides = dice.from_to(1, 3);
  if ((sides & 1) != 0) limit.most = middle + dice.from_to(0, shape.uses);
  if ((sides & 2) != 0) limit.least = middle - dice.from_to(0, shape.uses);
  return limit;
}

}  // namespace

std::int64_t Dice::from_to(std::int64_t least, std::int64_t most) {
  state_ += 0x9E3779B97F4A7C15;
  std::uint64_t mixed = state_;
  mixed = (mixed ^ mixed >> 30) * 0xBF58476D1CE4E5B9;
  mixed = (mixed ^ mixed >> 27) * 0x94D049BB133111EB;
  mixed ^= mixed >> 31;
  return least + static_cast<std::int64_t>(mixed % static_cast<std::uint64_t>(most - least + 1));
}

Choosing made_up(Dice& dice, const Shape& shape) {
  Choosing choosing;
  for (std::int64_t i = 0; i < shape.lists; ++i) {
    auto& list = choosing.lists.emplace_back();
    const std::int64_t size = shape.exact_size ? shape.choices : dice.from_to(1, shape.choices);
    for (std::int64_t c = 0; c < size; ++c) {
      Choice choice{dice.from_to(0, shape.worth), {}};
      for (std::int64_t j = 0; j < shape.limits; ++j) {
        choice.uses.push_back(dice.from_to(-shape.uses / 3, shape.uses));
      }
      list.push_back(std::move(choice));
    }
  }
  for (std::int64_t j = 0; j < shape.limits; ++j) choosing.limits.push_back(made_up_limit(dice, shape));
  if (shape.chain) choosing.chain = made_up_chain(dice, choosing);
  return choosing;
}

std::vector<Chosen> all_best(const Choosing& choosing, std::size_t how_many) {
  std::vector<Chosen> all;
  std::vector<std::size_t> choices(choosing.lists.size());
  for (bool more = true; more;) {
    if (meets(choosing, choices)) {
      std::int64_t worth = 0;
      for (std::size_t i = 0; i < choices.size(); ++i) worth += choosing.lists[i][choices[i]].worth;
      all.push_back({choices, worth});
    }
    more = false;
    for (std::size_t i = choices.size(); i-- > 0 && !more;) {
      more = ++choices[i] < choosing.lists[i].size();
      if (!more) choices[i] = 0;
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Chosen& a, const Chosen& b) { return a.worth > b.worth; });
  if (all.size() > how_many) all.resize(how_many);
  return all;
}

}  // namespace landdrill::kit
