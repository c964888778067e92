#include "engine/routine/wish.h"

#include <cassert>

namespace landdrill {

const Option& chosen(const Routine& routine, std::size_t element, const Wish& wish) {
  const std::vector<Option>& options = routine.elements[element].options;
  const std::size_t option = element < wish.options.size() ? wish.options[element] : 0;
  assert(option < options.size());
  return options[option];
}

}  // namespace landdrill
