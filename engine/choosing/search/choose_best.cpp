#include "engine/choosing/search/choose_best.h"

#include <algorithm>

#include "engine/choosing/search/choose_layers.h"
#include "engine/choosing/search/choose_prices.h"

namespace landdrill {
namespace {

// Few places first, for a good answer soon; what it is worth then cuts down what more of them have to look
// at.
constexpr std::size_t widths[] = {128, 2'048, 32'768, 131'072};

void put_in(std::vector<Chosen>& best, const std::vector<Chosen>& found, std::size_t how_many) {
  best.insert(best.end(), found.begin(), found.end());
  std::sort(best.begin(), best.end(), [](const Chosen& a, const Chosen& b) {
    return a.worth != b.worth ? a.worth > b.worth : a.choices < b.choices;
  });
  best.erase(std::unique(best.begin(), best.end()), best.end());
  if (best.size() > how_many) best.resize(how_many);
}

std::int64_t whole_worths(std::int64_t bound, std::int64_t scale) {
  return bound >= 0 ? bound / scale : -((-bound + scale - 1) / scale);
}

class Search {
 public:
  Search(const Choosing& choosing, const ChooseWish& wish, Budget& budget)
      : how_many_(wish.how_many), priced_(choosing), budget_(budget) {}

  BestChoices run() {
    drop_dominated(priced_, how_many_);
    prices_.push_back(cheapest(priced_, {}));
    if (root() == no_way) return nothing();
    put_in(result_.best, repaired(priced_, prices_.front(), how_many_), how_many_);
    for (const std::size_t width : widths) {
      const LayersResult found = layers(priced_, prices_, {how_many_, known(), width}, budget_);
      put_in(result_.best, found.best, how_many_);
      if (done(found.dropped)) return std::move(result_);
      if (budget_.over) break;
      tighten();
    }
    return std::move(result_);
  }

 private:
  std::int64_t root() const {
    const std::vector<std::int64_t> nothing_used(priced_.rooms.size());
    return prices_.front().bound(priced_, {0, priced_.start, 0}, nothing_used);
  }
  // What is worth less cannot be among the best.
  std::optional<std::int64_t> known() const {
    if (result_.best.size() < how_many_) return std::nullopt;
    return result_.best.back().worth;
  }

  BestChoices nothing() {
    result_.infeasible = true;
    return std::move(result_);
  }

  // Whether nothing that was dropped could be better than what was found.
  bool done(std::int64_t dropped) {
    const std::int64_t at_most =
        dropped == no_way ? 0 : whole_worths(std::min(dropped, root()), priced_.scale);
    result_.proved = dropped == no_way || (known() && at_most <= *known());
    result_.at_most.reset();
    result_.infeasible = result_.proved && result_.best.empty();
    if (result_.proved) return true;
    result_.at_most = at_most;
    if (!result_.best.empty()) result_.at_most = std::max(at_most, result_.best.front().worth);
    return false;
  }

  void tighten() {
    if (!known()) return;
    drop_hopeless(priced_, prices_.front(), *known());
    priced_.measure();
    prices_.front() = cheapest(priced_, known(), prices_.front());
  }

  std::size_t how_many_;
  Priced priced_;
  Budget& budget_;
  std::vector<Prices> prices_;
  BestChoices result_;
};

BestChoices search(const Choosing& choosing, const ChooseWish& wish) {
  Budget budget{0, wish.most_nodes, &wish.go_on, false};
  BestChoices result = Search(choosing, wish, budget).run();
  result.nodes = budget.nodes;
  return result;
}

std::vector<LimitSide> sides_of(const Choosing& choosing) {
  std::vector<LimitSide> sides;
  for (std::size_t j = 0; j < choosing.limits.size(); ++j) {
    if (choosing.limits[j].least) sides.push_back({j, LimitSide::Side::least});
    if (choosing.limits[j].most) sides.push_back({j, LimitSide::Side::most});
  }
  if (choosing.chain) sides.push_back({choosing.limits.size(), LimitSide::Side::chain});
  return sides;
}

void take_out(Choosing& choosing, LimitSide side) {
  if (side.side == LimitSide::Side::chain) {
    choosing.chain.reset();
  } else {
    ChoiceLimit& limit = choosing.limits[side.limit];
    (side.side == LimitSide::Side::least ? limit.least : limit.most).reset();
  }
}

// Takes one side after another away for good when the others cannot be met all the same.
void find_conflict(Choosing choosing, const ChooseWish& wish, BestChoices& result) {
  for (auto& list : choosing.lists) {
    for (Choice& choice : list) choice.worth = 0;
  }
  for (const LimitSide side : sides_of(choosing)) {
    Choosing without = choosing;
    take_out(without, side);
    const BestChoices found = search(without, {1, wish.go_on, wish.most_nodes / 10});
    result.nodes += found.nodes;
    if (found.infeasible) {
      choosing = std::move(without);
    } else {
      result.conflict.push_back(side);
    }
  }
}

}  // namespace

BestChoices choose_best(const Choosing& choosing, const ChooseWish& wish) {
  BestChoices result;
  for (std::size_t i = 0; i < choosing.lists.size(); ++i) {
    if (choosing.lists[i].empty()) result.empty_lists.push_back(i);
  }
  result.infeasible = !result.empty_lists.empty();
  if (result.infeasible || wish.how_many == 0) return result;
  result = search(choosing, wish);
  if (result.infeasible) find_conflict(choosing, wish, result);
  return result;
}

}  // namespace landdrill
