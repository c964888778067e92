#include "engine/choosing/plan_weighted_search.h"

#include <algorithm>

#include "engine/choosing/plan_aims.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {

AimedBest WeightedSearch::best(const Choosing& choosing, std::size_t how_many) {
  how_many_ = how_many;
  tried_ = 0;
  best_.clear();
  const std::size_t most = programmes_to_try(choosing, inputs_);
  std::vector<std::size_t> near(choosing.lists.size());
  AimedBest result;
  for (bool better = true; better;) {
    Choosing here = choosing;
    const auto worths = weighing_.worths_near(near);
    for (std::size_t i = 0; i < worths.size(); ++i) {
      for (std::size_t c = 0; c < worths[i].size(); ++c) here.lists[i][c].worth = worths[i][c];
    }
    const BestChoices found = chosen(here, std::max(most, how_many));
    result.infeasible = found.infeasible;
    result.conflict = found.conflict;
    result.proved = found.proved && found.best.size() < most;
    better = work_out(found.best) && !result.proved && !inputs_.patience.over();
    if (better) near = best_.front().choices;
  }
  result.proved = result.proved && !inputs_.patience.over();
  for (const Worked& one : best_)
    result.best.push_back({inputs_.programmes.options_of(one.choices), one.value});
  if (!result.proved) {
    result.at_most = weighing_.highest();
    result.tried = inputs_.patience.over() ? 0 : tried_;
  }
  return result;
}

BestChoices WeightedSearch::chosen(const Choosing& choosing, std::size_t how_many) const {
  std::uint64_t before = 0;
  return choose_best(choosing, {how_many, [&](std::uint64_t nodes) {
                                  const std::uint64_t more = nodes - std::min(nodes, before);
                                  before = nodes;
                                  return inputs_.patience.more(more);
                                }});
}

// Whether one of them is better than any before.
bool WeightedSearch::work_out(const std::vector<Chosen>& found) {
  bool better = false;
  for (const Chosen& one : found) {
    // Whoever has to stop tells the first all the same.
    if (!inputs_.patience.more(1) && !best_.empty()) break;
    const auto [known, is_new] = known_.try_emplace(one.choices);
    if (is_new) known->second = weighing_.value(one.choices);
    ++tried_;
    if (known->second) better |= keep(one.choices, *known->second);
  }
  return better;
}

bool WeightedSearch::keep(const std::vector<std::size_t>& choices, Exact value) {
  const auto is_before = [](const Worked& a, const Worked& b) {
    return a.value != b.value ? a.value > b.value : a.choices < b.choices;
  };
  Worked worked{choices, value};
  const auto place = std::upper_bound(best_.begin(), best_.end(), worked, is_before);
  if (place != best_.begin() && (place - 1)->choices == choices) return false;
  const bool is_best = place == best_.begin();
  best_.insert(place, std::move(worked));
  if (best_.size() > how_many_) best_.pop_back();
  return is_best;
}

}  // namespace landdrill
