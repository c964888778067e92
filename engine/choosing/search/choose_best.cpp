#include "engine/choosing/search/choose_best.h"

#include <algorithm>

#include "engine/choosing/search/choose_layers.h"
#include "engine/choosing/search/choose_prices.h"
#include "engine/choosing/search/choosing.h"

namespace landdrill {
namespace {

// Few ways first, for a good answer soon; what it is worth then cuts down what more of them have to look at.
constexpr std::size_t widths[] = {512, 8'192, 131'072, 524'288};

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
  Search(const Choosing& choosing, const ChooseWish& wish)
      : choosing_(choosing), wish_(wish), prices_(choosing) {}

  BestChoices run() {
    const std::vector<std::int64_t> nothing(choosing_.limits.size());
    dropped_ = prices_.bound(0, choosing_.chain ? choosing_.chain->start : 0, 0, nothing);
    for (const std::size_t width : widths) {
      // The first answers whatever it is told: it is soon done.
      const auto go_on = [&](std::uint64_t more) { return count(more) || width == widths[0]; };
      const auto found = layers(choosing_, prices_, {wish_.how_many, known(), width}, go_on);
      if (!found) break;
      put_in(result_.best, found->best, wish_.how_many);
      dropped_ = std::min(dropped_, found->dropped);
      if (proved() || over_) break;
    }
    result_.proved = proved();
    result_.infeasible = result_.proved && result_.best.empty();
    if (!result_.proved) {
      result_.at_most = whole_worths(dropped_, prices_.scale);
      if (!result_.best.empty()) result_.at_most = std::max(*result_.at_most, result_.best.front().worth);
    }
    return std::move(result_);
  }

 private:
  bool count(std::uint64_t more) {
    result_.nodes += more;
    if (result_.nodes > wish_.most_nodes || (wish_.go_on && !wish_.go_on(result_.nodes))) over_ = true;
    return !over_;
  }
  // What is worth less cannot be among the best.
  std::optional<std::int64_t> known() const {
    if (result_.best.size() < wish_.how_many) return std::nullopt;
    return result_.best.back().worth;
  }
  // Whether nothing that was dropped could be better than what was found.
  bool proved() const {
    return dropped_ == no_way || (known() && whole_worths(dropped_, prices_.scale) <= *known());
  }

  const Choosing& choosing_;
  const ChooseWish& wish_;
  const Prices prices_;
  std::int64_t dropped_ = no_way;
  bool over_ = false;
  BestChoices result_;
};

BestChoices search(const Choosing& choosing, const ChooseWish& wish) {
  return Search(choosing, wish).run();
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
