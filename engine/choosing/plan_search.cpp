#include "engine/choosing/plan_search.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/odds.h"
#include "engine/choosing/plan.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_open.h"
#include "engine/choosing/plan_pieces.h"
#include "engine/choosing/plan_reach.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

constexpr int points = 160;  // of the grid of the bounds
// Steps to lower the bound: at the root, after choices were taken out, at the first lists that are settled.
constexpr int root_steps = 60, later_steps = 20, early_steps = 4;
constexpr std::size_t early = 3;
// A proof within so many choices that are looked at, over all nodes, is not begun with an easier one.
constexpr std::uint64_t short_proof = 200'000;
constexpr double widest_gap = 1e6;  // points

}  // namespace

OddsSearch::OddsSearch(const AimInputs& inputs, const Pieces& pieces, const Choosing& choosing,
                       ProgrammeOdds& weighing)
    : inputs_(inputs),
      pieces_(pieces),
      choosing_(choosing),
      weighing_(weighing),
      quantile_(inputs.how.aim == PlanWish::For::quantile),
      openings_(choosing) {}

void OddsSearch::weigh(const std::vector<std::size_t>& choices) {
  const auto same = [&](const WeighedProgramme& one) { return one.choices == choices; };
  if (std::any_of(found_.begin(), found_.end(), same)) return;
  found_.push_back(weighing_.of(choices));
  std::sort(found_.begin(), found_.end(), [](const WeighedProgramme& a, const WeighedProgramme& b) {
    return a.value != b.value ? a.value > b.value : a.choices < b.choices;
  });
}

void OddsSearch::climb(std::size_t how_many) {
  constexpr int most_rounds = 12;
  constexpr double worth_of_one = 1e10;
  for (int round = 0; round < most_rounds && inputs_.patience.more(1); ++round) {
    const std::vector<std::size_t> from = found_.front().choices;
    const double total =
        quantile_ ? found_.front().value * Decimal::one : binary_millionths(inputs_.how.target);
    const ByDay worths = Reach(pieces_, from, points, total).worths(from);
    const std::vector<std::vector<Chance>> mean = over_days(worths, pieces_.days);
    Choosing priced = choosing_;
    for (std::size_t i = 0; i < mean.size(); ++i) {
      for (std::size_t c = 0; c < mean[i].size(); ++c)
        priced.lists[i][c].worth = std::llround(mean[i][c] * worth_of_one);
    }
    constexpr std::uint64_t few_nodes = 200'000;
    for (const Chosen& one : choose_best(priced, {how_many, {}, few_nodes}).best) weigh(one.choices);
    if (found_.front().choices == from) return;
  }
}

// The k-th best for certain so far; nothing while there are fewer.
std::optional<double> OddsSearch::to_beat() const {
  if (found_.size() < how_many_) return std::nullopt;
  std::vector<double> least;
  for (const WeighedProgramme& one : found_) least.push_back(one.least);
  std::nth_element(least.begin(), least.begin() + static_cast<std::ptrdiff_t>(how_many_ - 1), least.end(),
                   std::greater<>());
  return least[how_many_ - 1];
}

// What is as good as the k-th best reaches it with the chance that is needed.
double OddsSearch::total_to_reach() const {
  if (!quantile_) return binary_millionths(inputs_.how.target);
  return (to_beat().value_or(found_.back().least) + lead_) * Decimal::one;
}

Chance OddsSearch::needed() const {
  const std::optional<double> beaten = to_beat();
  if (!beaten) return -1;
  return (quantile_ ? 1 - inputs_.how.share : *beaten) - last_bits;
}

// Moves the bound along with what is to be beaten.
void OddsSearch::aim() {
  const double total = total_to_reach();
  if (total != aimed_at_) reach_->aim_at(total);
  aimed_at_ = total;
}

AimedBest OddsSearch::run(std::size_t how_many, bool narrow) {
  how_many_ = how_many;
  stopped_ = false;
  Queue queue;
  if (begin()) queue.push(root_node());
  std::uint64_t choices = 1;
  for (const auto& list : open_) choices += list.size();
  if (narrow && quantile_ && !search(queue, short_proof / choices)) prove_narrow();
  search(queue, inputs_.how.most_steps);
  AimedBest result = found(how_many);
  result.proved = queue.empty();
  if (!result.proved) result.at_most = at_most(queue);
  return result;
}

// The bound of everything, and what it rules out; false when nothing is left.
bool OddsSearch::begin() {
  aimed_at_ = total_to_reach();
  reach_.emplace(pieces_, found_.front().choices, points, aimed_at_);
  tightening_.emplace(*reach_, choosing_, pieces_.days, inputs_.patience);
  open_ = openings_.all();
  if (!openings_.narrow(open_)) return false;
  std::vector<std::size_t> order(open_.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  const auto prices = std::make_shared<TiePrices>(tightening_->beside(found_.front().choices));
  root_ = tightening_->run({open_, unsettled(open_, order), prices, needed(), root_steps});
  constexpr int most_rounds = 3;
  for (int round = 0; round < most_rounds && settle_for_good(root_); ++round) {
    if (!openings_.narrow(open_)) return false;
    root_ = tightening_->run({open_, unsettled(open_, root_.then), root_.prices, needed(), later_steps});
  }
  return true;
}

// Takes out what can be in nothing that is as good as what is known: each list once as the first.
bool OddsSearch::settle_for_good(const Tightened& root) {
  OpenLists left = open_;
  for (std::size_t k = 0; k < root.then.size(); ++k) {
    std::vector<std::size_t> order = root.then;
    const auto first = order.begin() + static_cast<std::ptrdiff_t>(k);
    std::rotate(order.begin(), first, first + 1);
    const std::size_t list = order.front();
    const Tightened now = tightening_->run({open_, order, root.prices, needed(), 0});
    left[list].clear();
    for (std::size_t c = 0; c < open_[list].size(); ++c) {
      if (now.first[c] >= needed()) left[list].push_back(open_[list][c]);
    }
  }
  const bool changed = left != open_;
  open_ = std::move(left);
  return changed;
}

OddsSearch::Node OddsSearch::root_node() const {
  return {root_.most, {}, root_.prices, std::make_shared<std::vector<std::size_t>>(root_.then)};
}

std::vector<std::size_t> OddsSearch::unsettled(const OpenLists& open,
                                               const std::vector<std::size_t>& order) const {
  std::vector<std::size_t> lists;
  for (const std::size_t list : order) {
    if (open[list].size() > 1) lists.push_back(list);
  }
  return lists;
}

// True when nothing in the queue can be as good as what is known.
bool OddsSearch::search(Queue& queue, std::uint64_t at_most) {
  for (std::uint64_t steps = 0; !queue.empty() && queue.top().most >= needed(); ++steps) {
    stopped_ = stopped_ || !inputs_.patience.more(1) || steps_ >= inputs_.how.most_steps;
    if (stopped_ || steps >= at_most) return false;
    ++steps_;
    const Node node = queue.top();
    queue.pop();
    look_into(node, queue);
  }
  queue = {};
  return true;
}

void OddsSearch::look_into(const Node& node, Queue& queue) {
  OpenLists open = open_;
  for (const auto& [list, choice] : node.settled) open[list] = {choice};
  if (!openings_.narrow(open)) return;
  aim();
  const Tightened now = tightening_->run({open, unsettled(open, *node.order), node.prices, needed(),
                                          node.settled.size() < early ? early_steps : 0});
  if (now.most < needed()) return;
  if (now.order.empty()) {
    std::vector<std::size_t> choices;
    for (const auto& list : open) choices.push_back(list.front());
    weigh(choices);
    return;
  }
  const auto then = std::make_shared<std::vector<std::size_t>>(now.then);
  const std::size_t list = now.order.front();
  for (std::size_t c = 0; c < open[list].size(); ++c) {
    if (now.first[c] < needed()) continue;
    Node child{std::min(now.first[c], node.most), node.settled, now.prices, then};
    child.settled.emplace_back(list, open[list][c]);
    queue.push(std::move(child));
  }
}

// That nothing is better by half of what the root leaves open, by a quarter, by an eighth.
void OddsSearch::prove_narrow() {
  none_reaches_ = not_reached();
  const double gap = *none_reaches_ - found_.front().least;
  for (const int part : {2, 4, 8}) {
    lead_ = gap / part;
    Queue queue;
    queue.push(root_node());
    // What is known stays behind by `lead_`: nothing that is searched for was found when the queue is empty.
    if (!search(queue, inputs_.how.most_steps)) break;
    none_reaches_ = std::max(found_.front().most, total_to_reach() / Decimal::one);
  }
  lead_ = 0;
}

bool OddsSearch::reached(double total) {
  reach_->aim_at(total * Decimal::one);
  aimed_at_ = total * Decimal::one;
  return tightening_->run({open_, root_.then, root_.prices, needed(), early_steps}).most >= needed();
}

// A total that none reaches often enough, by the bound of the root alone.
double OddsSearch::not_reached() {
  double low = found_.front().most, apart = 0.01;
  while (apart < widest_gap && reached(low + apart)) apart *= 2;
  double high = low + apart;
  low += apart / 2;
  constexpr int rounds = 5;
  for (int round = 0; round < rounds; ++round) {
    const double middle = (low + high) / 2;
    (reached(middle) ? low : high) = middle;
  }
  return high;
}

AimedBest OddsSearch::found(std::size_t how_many) {
  AimedBest result;
  for (std::size_t i = 0; i < found_.size(); ++i) {
    if (i > 0 && found_[i].most >= found_.front().least) ++result.not_told_apart;
    if (i < how_many)
      result.best.push_back({inputs_.programmes.options_of(found_[i].choices), found_[i].exact});
  }
  return result;
}

// Of what was left open: its chance, or the total that none of it reaches often enough.
Exact OddsSearch::at_most(const Queue& left) {
  const double best = found_.front().most;
  if (quantile_) {
    const double most = std::max(best, none_reaches_ ? *none_reaches_ : not_reached());
    return Exact(Decimal::from_units(static_cast<std::int64_t>(std::ceil(most * Decimal::one))));
  }
  const Chance most = std::min(1.0, std::max(left.top().most, best));
  return Exact(Decimal::from_units(static_cast<std::int64_t>(std::ceil(most * 100 * Decimal::one))));
}

}  // namespace landdrill
