// Numbers by chance, the same on every machine: SplitMix64 (Steele, Lea & Flood 2014).
//
//   Dice dice(42);
//   dice.roll()           // 0 <= ... < 1
//   dice.up_to(6)         // 0 <= ... < 6
#pragma once

#include <cstddef>
#include <cstdint>

namespace landdrill {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  double roll() {
    std::uint64_t mixed = state_ += 0x9E3779B97F4A7C15u;
    mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9u;
    mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBu;
    return static_cast<double>((mixed ^ (mixed >> 31)) >> 11) * 0x1.0p-53;
  }
  std::size_t up_to(std::size_t end) { return static_cast<std::size_t>(roll() * static_cast<double>(end)); }

 private:
  std::uint64_t state_;
};

}  // namespace landdrill
