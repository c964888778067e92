// What a run or a panel was called one time after the other, and what of that a book needs to be told to end
// up with the same.
//
//   wordings_to_tell({{1, "a"}, {2, "b"}, {1, "c"}})      // {true, false, true}
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace landdrill::store {

struct Wording {
  std::int64_t home =
      0;  // the version of the routine it belongs to, by its id: later versions have greater ones
  std::string_view text;
};

// Oldest first. Versions of a routine are told one after the other, so words that gave way to words beside an
// earlier version would come after those and win; and the same words told twice would stay where they were
// first.
inline std::vector<bool> wordings_to_tell(const std::vector<Wording>& all) {
  std::vector<bool> told(all.size(), false);
  const Wording* next = nullptr;
  for (std::size_t i = all.size(); i-- > 0;) {
    if (next != nullptr && (all[i].home > next->home || all[i].text == next->text)) continue;
    told[i] = true;
    next = &all[i];
  }
  return told;
}

}  // namespace landdrill::store
