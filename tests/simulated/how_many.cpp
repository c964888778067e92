#include "tests/simulated/how_many.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace landdrill::simulated {

int how_many(int few) {
  const char* times = std::getenv("LANDDRILL_SIMULATED");
  return few * (times == nullptr ? 1 : std::max(1, std::atoi(times)));
}

void tell(const std::string& what, double number) {
  fmt::print("    {:<70} {:8.2f}\n", what, number);
}

}  // namespace landdrill::simulated
