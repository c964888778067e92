#include "engine/choosing/search/choose_prices.h"

#include <algorithm>
#include <cstdlib>

#include "engine/choosing/search/choosing.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

constexpr std::int64_t top_sum = std::int64_t{1} << 55;
constexpr std::int64_t top_bound = std::int64_t{1} << 58;

std::int64_t size_of(std::int64_t number) {
  if (number >= top_sum || number <= -top_sum) throw Overflow();
  return number < 0 ? -number : number;
}

// The largest sum of worths, whatever is chosen.
std::int64_t largest_worth(const Choosing& choosing) {
  std::int64_t sum = 1;
  for (const auto& list : choosing.lists) {
    std::int64_t largest = 0;
    for (const Choice& choice : list) largest = std::max(largest, size_of(choice.worth));
    sum = size_of(sum + largest);
  }
  return sum;
}

UseRange range_in(const std::vector<Choice>& list, std::size_t limit) {
  const auto [least, most] =
      std::minmax_element(list.begin(), list.end(),
                          [&](const Choice& a, const Choice& b) { return a.uses[limit] < b.uses[limit]; });
  return {least->uses[limit], most->uses[limit]};
}

}  // namespace

Prices::Prices(const Choosing& choosing)
    : choosing_(choosing), states_(choosing.chain ? choosing.chain->states : 1) {
  const std::int64_t worth = largest_worth(choosing);
  while (scale < (std::int64_t{1} << 24) && worth * scale < top_bound / 4) scale *= 2;
  for (const auto& list : choosing.lists) {
    const auto [least, most] = std::ranges::minmax(list, {}, &Choice::worth);
    step_worth_ = std::max(step_worth_, (most.worth - least.worth) * scale / 256);
  }
  measure();
  find();
}

void Prices::measure() {
  const std::size_t limits = choosing_.limits.size();
  rest.assign(choosing_.lists.size() + 1, std::vector<UseRange>(limits));
  widest_.assign(limits, 1);
  for (std::size_t j = 0; j < limits; ++j) {
    std::int64_t largest = 1;
    for (std::size_t i = choosing_.lists.size(); i-- > 0;) {
      const UseRange range = range_in(choosing_.lists[i], j);
      rest[i][j] = {rest[i + 1][j].least + range.least, rest[i + 1][j].most + range.most};
      widest_[j] = std::max(widest_[j], range.most - range.least);
      largest = size_of(largest + std::max(size_of(range.least), size_of(range.most)));
    }
    top_.push_back(top_bound / (2 * static_cast<std::int64_t>(limits + 1)) / largest);
  }
}

// The side of the limit that its price is for; one that cannot be met need not be further away than that.
std::int64_t Prices::side(std::size_t limit) const {
  const auto [least, most] = rest[0][limit];
  if (of_[limit] > 0) return std::clamp(*choosing_.limits[limit].most, least - 1, most);
  return std::clamp(*choosing_.limits[limit].least, least, most + 1);
}

std::int64_t Prices::bound(std::size_t list, std::uint32_t state, std::int64_t worth,
                           std::span<const std::int64_t> used) const {
  const std::int64_t best = behind_[list * states_ + state];
  if (best == no_way) return no_way;
  std::int64_t sum = worth * scale + best;
  for (std::size_t j = 0; j < of_.size(); ++j) {
    if (of_[j] != 0) sum += of_[j] * (side(j) - used[j]);
  }
  return sum;
}

std::int64_t Prices::off(std::size_t list, std::span<const std::int64_t> used) const {
  std::int64_t sum = 0;
  for (std::size_t j = 0; j < used.size(); ++j) {
    const std::int64_t all = used[j] + usual_[list][j], widest = widest_[j];
    const auto& [words, least, most] = choosing_.limits[j];
    const std::int64_t away = most && all > *most ? all - *most : least && all < *least ? *least - all : 0;
    sum += away / widest * 64 + away % widest * 64 / widest;
  }
  return std::min<std::int64_t>(sum, 4'096) * step_worth_;
}

// Works out what the lists are worth at these prices, and what the choices that reach it use, if there are any.
void Prices::put_on() {
  const std::size_t lists = choosing_.lists.size();
  const ChoiceChain* chain = choosing_.chain ? &*choosing_.chain : nullptr;
  behind_.assign((lists + 1) * states_, no_way);
  std::vector<std::size_t> by(lists * states_);
  for (std::size_t s = 0; s < states_; ++s) {
    if (chain == nullptr || chain->may_end[s]) behind_[lists * states_ + s] = 0;
  }
  for (std::size_t i = lists; i-- > 0;) {
    for (std::size_t c = 0; c < choosing_.lists[i].size(); ++c) {
      const Choice& choice = choosing_.lists[i][c];
      std::int64_t worth = choice.worth * scale;
      for (std::size_t j = 0; j < of_.size(); ++j) worth -= of_[j] * choice.uses[j];
      for (std::size_t s = 0; s < states_; ++s) {
        const std::uint32_t next = chain == nullptr ? 0 : chain->next[i][c][s];
        const std::int64_t after = next == broken ? no_way : behind_[(i + 1) * states_ + next];
        if (after == no_way || after + worth <= behind_[i * states_ + s]) continue;
        behind_[i * states_ + s] = after + worth;
        by[i * states_ + s] = c;
      }
    }
  }
  std::size_t state = chain == nullptr ? 0 : chain->start;
  if (behind_[state] == no_way) return;
  std::vector<const Choice*> chosen;
  for (std::size_t i = 0; i < lists; ++i) {
    const std::size_t c = by[i * states_ + state];
    chosen.push_back(&choosing_.lists[i][c]);
    if (chain != nullptr) state = chain->next[i][c][state];
  }
  for (std::size_t i = lists; i-- > 0;) {
    for (std::size_t j = 0; j < of_.size(); ++j) usual_[i][j] = usual_[i + 1][j] + chosen[i]->uses[j];
  }
}

// How far what is used lies off the side that its price is for; nothing when it is where it may be.
std::int64_t Prices::off_side(std::size_t limit) const {
  const std::int64_t used = usual_.front()[limit], price = of_[limit];
  const auto& [words, least, most] = choosing_.limits[limit];
  if (most && (price > 0 || (price == 0 && used > *most))) {
    return used - std::max(*most, rest[0][limit].least - 1);
  }
  if (least && (price < 0 || used < *least)) return used - std::min(*least, rest[0][limit].most + 1);
  return 0;
}

// One step against what is off; false when nothing is.
bool Prices::step(std::int64_t above, int halved) {
  constexpr std::int64_t fine = 1024;
  std::vector<Int128> off(of_.size());
  Int128 squares = 0;
  for (std::size_t j = 0; j < off.size(); ++j) {
    off[j] = std::clamp<Int128>(Int128{off_side(j)} * fine / widest_[j], -(1 << 28), 1 << 28);
    squares += off[j] * off[j];
  }
  if (squares == 0) return false;
  for (std::size_t j = 0; j < off.size(); ++j) {
    const Int128 by = (Int128{above} * off[j] / squares * fine / widest_[j]) >> halved;
    // A price comes to rest at nothing before it is one for the other side.
    const std::int64_t least = of_[j] > 0 ? 0 : -top_[j], most = of_[j] < 0 ? 0 : top_[j];
    of_[j] = static_cast<std::int64_t>(std::clamp<Int128>(of_[j] + by, least, most));
  }
  return true;
}

// Follows what is used too much or too little, by shorter and shorter steps.
void Prices::find() {
  constexpr int most_rounds = 400, patience = 4, most_halvings = 8;
  const std::uint32_t start = choosing_.chain ? choosing_.chain->start : 0;
  const std::vector<std::int64_t> nothing(choosing_.limits.size());
  const auto reached = [&] {
    put_on();
    return bound(0, start, 0, nothing);
  };
  of_ = nothing;
  usual_.assign(choosing_.lists.size() + 1, nothing);
  std::vector<std::int64_t> best = of_;
  std::int64_t now = reached(), lowest = now;
  int waited = 0, halved = 0;
  for (int round = 0; round < most_rounds && halved < most_halvings && now != no_way; ++round) {
    // A sixteenth below the lowest is aimed at, again and again.
    const std::int64_t aim = lowest - (std::abs(lowest) >> 4) - scale;
    if (!step(std::max<std::int64_t>(now - aim, 1), halved)) break;
    now = reached();
    if (now < lowest) {
      lowest = now;
      best = of_;
      waited = 0;
    } else if (++waited == patience) {
      ++halved;
      waited = 0;
      of_ = best;
      now = reached();
    }
  }
  of_ = best;
  put_on();
}

}  // namespace landdrill
