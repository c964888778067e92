// Made-up choosings and a slow search through all of them, for the tests of the choice and of the plan.
//
//   Dice dice(7);
//   Choosing small = made_up(dice, {4, 3, 2, 50, 5});
//   all_best(small, 6)        // the six best by trying everything
#pragma once

#include "engine/choosing/search/choose_best.h"

namespace landdrill::kit {

// The same numbers on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15 + 1) {}
  std::int64_t from_to(std::int64_t least, std::int64_t most);

 private:
  std::uint64_t state_;
};

struct Shape {
  std::int64_t lists = 4, choices = 3, limits = 2, worth = 50, uses = 5;
  bool exact_size = false;  // else lists have up to so many choices
  bool chain = false;
};
Choosing made_up(Dice& dice, const Shape& shape);

// Every choice that meets the limits, highest worth first, equal worth in the order of the choices.
std::vector<Chosen> all_best(const Choosing& choosing, std::size_t how_many);

}  // namespace landdrill::kit
