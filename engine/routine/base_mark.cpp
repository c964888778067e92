#include "engine/routine/base_mark.h"

#include <cassert>
#include <cstdint>

#include "tables/decimal.h"
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

bool base_is_expected(std::size_t runs_with_base, std::size_t runs, Decimal share) {
  const auto whole = [](std::size_t count) { return Exact(Decimal::whole(static_cast<std::int64_t>(count))); };
  return whole(runs_with_base) > Exact(share) * whole(runs);
}

}  // namespace landdrill
