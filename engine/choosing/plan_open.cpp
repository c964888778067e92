#include "engine/choosing/plan_open.h"

#include <algorithm>

namespace landdrill {

OpenLists Openings::all() const {
  OpenLists open;
  for (const auto& list : choosing_.lists) {
    auto& here = open.emplace_back();
    for (std::size_t c = 0; c < list.size(); ++c) here.push_back(c);
  }
  return open;
}

bool Openings::narrow(OpenLists& open) const {
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t j = 0; j < choosing_.limits.size(); ++j) {
      if (!narrow_by_limit(open, j, changed)) return false;
    }
    if (!narrow_by_chain(open, changed)) return false;
  }
  return true;
}

bool Openings::narrow_by_limit(OpenLists& open, std::size_t limit, bool& changed) const {
  const ChoiceLimit& sides = choosing_.limits[limit];
  const auto uses = [&](std::size_t i, std::size_t c) { return choosing_.lists[i][c].uses[limit]; };
  std::vector<std::pair<std::int64_t, std::int64_t>> range;
  std::int64_t least = 0, most = 0;
  for (std::size_t i = 0; i < open.size(); ++i) {
    if (open[i].empty()) return false;
    range.emplace_back(uses(i, open[i].front()), uses(i, open[i].front()));
    for (const std::size_t c : open[i]) {
      range[i].first = std::min(range[i].first, uses(i, c));
      range[i].second = std::max(range[i].second, uses(i, c));
    }
    least += range[i].first;
    most += range[i].second;
  }
  for (std::size_t i = 0; i < open.size(); ++i) {
    const std::size_t before = open[i].size();
    std::erase_if(open[i], [&](std::size_t c) {
      return (sides.most && least - range[i].first + uses(i, c) > *sides.most) ||
             (sides.least && most - range[i].second + uses(i, c) < *sides.least);
    });
    changed |= open[i].size() != before;
    if (open[i].empty()) return false;
  }
  return true;
}

// A choice stays when some state that the lists before it can lead to goes on through it to an allowed end.
bool Openings::narrow_by_chain(OpenLists& open, bool& changed) const {
  if (!choosing_.chain) return true;
  const ChoiceChain& chain = *choosing_.chain;
  std::vector<std::vector<bool>> reached(open.size() + 1, std::vector<bool>(chain.states));
  reached[0][chain.start] = true;
  for (std::size_t i = 0; i < open.size(); ++i) {
    for (const std::size_t c : open[i]) {
      for (std::uint32_t state = 0; state < chain.states; ++state) {
        const std::uint32_t next = chain.next[i][c][state];
        if (reached[i][state] && next != broken) reached[i + 1][next] = true;
      }
    }
  }
  std::vector<bool> ends = chain.may_end;
  for (std::size_t i = open.size(); i-- > 0;) {
    std::vector<bool> before(chain.states);
    const std::size_t count = open[i].size();
    std::erase_if(open[i], [&](std::size_t c) {
      bool leads = false;
      for (std::uint32_t state = 0; state < chain.states; ++state) {
        const std::uint32_t next = chain.next[i][c][state];
        if (!reached[i][state] || next == broken || !ends[next]) continue;
        leads = before[state] = true;
      }
      return !leads;
    });
    changed |= open[i].size() != count;
    if (open[i].empty()) return false;
    ends = std::move(before);
  }
  return true;
}

}  // namespace landdrill
