#include "tables/ties.h"

#include <array>
#include <cstdlib>

namespace landdrill {
namespace {

struct RoundingWord {
  std::string_view word;
  Rounding rounding;
};
constexpr std::array<RoundingWord, 4> rounding_words = {{{"half-up", Rounding::half_up},
                                                         {"half-even", Rounding::half_even},
                                                         {"down", Rounding::down},
                                                         {"up", Rounding::up}}};

}  // namespace

std::optional<Rounding> rounding_from(std::string_view word) {
  for (const RoundingWord& known : rounding_words) {
    if (known.word == word) return known.rounding;
  }
  return std::nullopt;
}

std::string_view word_of(Rounding rounding) {
  for (const RoundingWord& known : rounding_words) {
    if (known.rounding == rounding) return known.word;
  }
  std::abort();
}

}  // namespace landdrill
