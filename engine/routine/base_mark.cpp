#include "engine/routine/base_mark.h"

#include <cassert>

#include "tables/value_set.h"

namespace landdrill {

ShownDifficulty credited_as_declared(const Option& option) {
  assert(option.declared);  // resolve.h refuses an element without a difficulty
  return {*option.declared, *option.declared, false};
}

void credit_base(ShownDifficulty& shown, const Kind& kind) {
  shown.base = true;
  shown.credited = *kind.base;
}

bool base_is_expected(std::size_t runs_with_base, std::size_t runs) {
  return 2 * runs_with_base > runs;
}

}  // namespace landdrill
