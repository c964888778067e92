#include "engine/judging/steps.h"

#include <cmath>

#include "tables/binary.h"

namespace landdrill {

std::string steps_in_words(double marks, Decimal step) {
  const double size = binary(step);
  const long long halves = std::llround(std::abs(marks) / size * 2);
  if (halves == 0) return "";
  if (halves == 1) return "half a step";
  if (halves == 2) return "a step";
  if (halves == 3) return "a step and a half";
  return std::to_string(halves / 2) + (halves % 2 == 1 ? " and a half steps" : " steps");
}

}  // namespace landdrill
