#include "engine/choosing/plan_weighted_search.h"

#include <algorithm>

#include "engine/choosing/plan_aims.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// So many are worked out at first, and at most, of what reaches one line.
constexpr std::size_t few_programmes = 32, many_programmes = 2'048;
// Bands are halved no more often.
constexpr std::size_t most_nodes = 4'000;

bool has_variance(const Weighing& weighing) {
  for (const auto& list : weighing.ways()) {
    for (const WeighingWay& way : list) {
      if (!way.variance.is_zero()) return true;
    }
  }
  return false;
}

template <class Uses>
void add_limit(ChoiceLimit limit, Uses uses, Choosing& choosing) {
  choosing.limits.push_back(std::move(limit));
  for (std::size_t i = 0; i < choosing.lists.size(); ++i) {
    for (std::size_t c = 0; c < choosing.lists[i].size(); ++c)
      choosing.lists[i][c].uses.push_back(uses(i, c));
  }
}

}  // namespace

WeightedSearch::WeightedSearch(const Weighing& weighing, const AimInputs& inputs)
    : weighing_(weighing), inputs_(inputs), has_risk_(has_variance(weighing)) {}

AimedBest WeightedSearch::best(const Choosing& choosing, std::size_t how_many) {
  choosing_ = &choosing;
  how_many_ = how_many;
  begin();
  while (!open_.empty()) {
    const auto next = std::max_element(open_.begin(), open_.end(), [](const Node& a, const Node& b) {
      return b.at_most && (!a.at_most || *a.at_most < *b.at_most);
    });
    Node node = std::move(*next);
    open_.erase(next);
    const std::optional<Exact> beaten = level();
    if (!beaten || !node.at_most || *node.at_most >= *beaten) look_into(std::move(node));
  }
  return gathered();
}

// Where points are added to those of a rule, programmes with and without elements of the rule are two cases.
void WeightedSearch::begin() {
  best_.clear();
  left_.clear();
  looked_into_ = 0;
  for (const auto& [choices, value] : known_) {
    if (value && meets(*choosing_, choices)) keep(choices, *value);
  }
  open_.assign(1, {});
  for (std::size_t rule = 0; rule < weighing_.rules().size(); ++rule) {
    const bool both = weighing_.is_mixed() && may_be_absent(rule);
    std::vector<Node> absent = both ? open_ : std::vector<Node>();
    for (Node& node : open_) {
      node.bands.push_back(whole_band(rule));
      node.limited.push_back(both);
    }
    for (Node& node : absent) {
      node.bands.push_back({0, 0, true});
      node.limited.push_back(true);
      open_.push_back(std::move(node));
    }
  }
}

WeighingBand WeightedSearch::whole_band(std::size_t rule) const {
  WeighingBand band{0, 0, false};
  std::optional<std::int64_t> smallest;
  for (std::size_t i = 0; i < weighing_.ways().size(); ++i) {
    std::int64_t least = weighing_.credited(rule, i, 0), most = least;
    for (std::size_t c = 0; c < weighing_.ways()[i].size(); ++c) {
      const std::int64_t here = weighing_.credited(rule, i, c);
      least = std::min(least, here);
      most = std::max(most, here);
      if (here > 0) smallest = std::min(smallest.value_or(here), here);
    }
    band.least += least;
    band.most += most;
  }
  band.least = std::max(band.least, smallest.value_or(1));
  band.most = std::max(band.most, band.least);
  return band;
}

bool WeightedSearch::may_be_absent(std::size_t rule) const {
  return std::all_of(weighing_.ways().begin(), weighing_.ways().end(), [&](const auto& list) {
    return std::any_of(list.begin(), list.end(), [&](const WeighingWay& way) { return way.rule != rule; });
  });
}

void WeightedSearch::look_into(Node node) {
  ++looked_into_;
  Choosing here = within(node);
  std::size_t how_many = std::max(how_many_, few_programmes);
  while (true) {
    const std::optional<Exact> beaten = level();
    const WeighingLine line =
        line_above(weighing_, node.bands, {beaten, best_.empty() ? nullptr : &best_.back().choices});
    for (std::size_t i = 0; i < here.lists.size(); ++i) {
      for (std::size_t c = 0; c < here.lists[i].size(); ++c) here.lists[i][c].worth = line.worths[i][c];
    }
    const BestChoices found = chosen(here, how_many);
    const bool better = work_out(found.best);
    std::optional<std::int64_t> rest = found.at_most;
    if (found.proved) {
      if (found.best.size() < how_many) return;
      rest = found.best.back().worth;
    }
    if (rest && beaten && *rest < line.need) return;
    if (rest) node.at_most = line.at_most(*rest);
    if (inputs_.patience.over()) return left_.push_back(std::move(node));
    if (better) continue;
    const std::optional<std::size_t> rule = widest(node);
    if (rule && looked_into_ + open_.size() < most_nodes) return split(std::move(node), *rule);
    if (how_many >= many_programmes || !found.proved) return left_.push_back(std::move(node));
    how_many = std::min(8 * how_many, std::max(how_many_, many_programmes));
  }
}

// The rule whose band is worth halving, if there is one. Alone, a band matters only for what base marks do.
std::optional<std::size_t> WeightedSearch::widest(const Node& node) const {
  const auto is_wider = [](const WeighingBand& one, const WeighingBand& than) {
    return Int128{one.most} * than.least > Int128{than.most} * one.least;
  };
  const WeighingBand narrow = weighing_.is_mixed() ? WeighingBand{1, 1} : WeighingBand{4, 5};
  std::optional<std::size_t> found;
  for (std::size_t rule = 0; rule < node.bands.size(); ++rule) {
    if (node.bands[rule].absent || !is_wider(node.bands[rule], narrow)) continue;
    if (!found || is_wider(node.bands[rule], node.bands[*found])) found = rule;
  }
  if (!weighing_.is_mixed() && !has_risk_) return std::nullopt;
  return found;
}

void WeightedSearch::split(Node node, std::size_t rule) {
  node.limited[rule] = true;
  Node upper = node;
  const WeighingBand band = node.bands[rule];
  node.bands[rule].most = band.least + (band.most - band.least) / 2;
  upper.bands[rule].least = node.bands[rule].most + 1;
  open_.push_back(std::move(node));
  open_.push_back(std::move(upper));
}

// The choosing with the bands of the node as limits.
Choosing WeightedSearch::within(const Node& node) const {
  Choosing here = *choosing_;
  for (std::size_t rule = 0; rule < node.bands.size(); ++rule) {
    const WeighingBand& band = node.bands[rule];
    if (node.limited[rule]) {
      const auto credited = [&](std::size_t i, std::size_t c) -> std::int64_t {
        if (band.absent) return weighing_.ways()[i][c].rule == rule ? 1 : 0;
        return weighing_.credited(rule, i, c);
      };
      add_limit({"", band.least, band.most}, credited, here);
    }
    // With more uncertain base marks there is no expected total.
    add_limit(
        {"", std::nullopt, most_risky},
        [&](std::size_t i, std::size_t c) -> std::int64_t {
          const WeighingWay& way = weighing_.ways()[i][c];
          return way.rule == rule && way.together.risky() ? 1 : 0;
        },
        here);
  }
  return here;
}

BestChoices WeightedSearch::chosen(const Choosing& choosing, std::size_t how_many) const {
  std::uint64_t before = 0;
  return choose_best(choosing, {how_many, [&](std::uint64_t nodes) {
                                  const std::uint64_t more = nodes - std::min(nodes, before);
                                  before = nodes;
                                  return inputs_.patience.more(more);
                                }});
}

// Whether one of them is among the best.
bool WeightedSearch::work_out(const std::vector<Chosen>& found) {
  bool better = false;
  for (const Chosen& one : found) {
    const auto [known, is_new] = known_.try_emplace(one.choices);
    if (!is_new) continue;
    // Whoever has to stop tells the first all the same.
    if (!inputs_.patience.more(1) && !best_.empty()) {
      known_.erase(known);
      break;
    }
    known->second = weighing_.value(one.choices);
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
  if (place == best_.end() && best_.size() == how_many_) return false;
  best_.insert(place, std::move(worked));
  if (best_.size() > how_many_) best_.pop_back();
  return true;
}

// What the last of those asked for is worth.
std::optional<Exact> WeightedSearch::level() const {
  if (best_.size() < how_many_) return std::nullopt;
  return best_.back().value;
}

AimedBest WeightedSearch::gathered() const {
  AimedBest result;
  result.proved = left_.empty();
  for (const Worked& one : best_)
    result.best.push_back({inputs_.programmes.options_of(one.choices), one.value});
  for (const Node& node : left_) {
    if (node.at_most) result.at_most = std::max(result.at_most.value_or(*node.at_most), *node.at_most);
  }
  if (result.at_most && !best_.empty()) result.at_most = std::max(*result.at_most, best_.front().value);
  if (!best_.empty() || !result.proved) return result;
  const BestChoices none = chosen(*choosing_, 1);
  result.infeasible = none.infeasible;
  result.conflict = none.conflict;
  return result;
}

bool meets(const Choosing& choosing, const std::vector<std::size_t>& choices) {
  for (std::size_t j = 0; j < choosing.limits.size(); ++j) {
    std::int64_t used = 0;
    for (std::size_t i = 0; i < choices.size(); ++i) used += choosing.lists[i][choices[i]].uses[j];
    const ChoiceLimit& limit = choosing.limits[j];
    if ((limit.least && used < *limit.least) || (limit.most && used > *limit.most)) return false;
  }
  if (!choosing.chain) return true;
  std::uint32_t state = choosing.chain->start;
  for (std::size_t i = 0; i < choices.size() && state != broken; ++i) {
    state = choosing.chain->next[i][choices[i]][state];
  }
  return state != broken && choosing.chain->may_end[state];
}

}  // namespace landdrill
