#include "engine/choosing/search/choose_prices.h"

#include <algorithm>

#include "engine/choosing/search/choose_best.h"
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
std::int64_t largest_worth(const Priced& priced) {
  std::int64_t sum = 1;
  for (const auto& list : priced.lists) {
    std::int64_t largest = 0;
    for (const Priced::Item& item : list) largest = std::max(largest, size_of(item.worth));
    sum = size_of(sum + largest);
  }
  return sum;
}

Priced::Range range_in(const std::vector<Priced::Item>& list, std::size_t limit) {
  if (list.empty()) return {};
  Priced::Range range{list.front().uses[limit], list.front().uses[limit]};
  for (const Priced::Item& item : list) {
    range.least = std::min(range.least, item.uses[limit]);
    range.most = std::max(range.most, item.uses[limit]);
  }
  size_of(range.least);
  size_of(range.most);
  return range;
}

// The side of the room that the price is for.
std::int64_t side_of(const Priced::Room& room, std::int64_t price) {
  if (price == 0) return 0;
  return price > 0 ? *room.most : *room.least;
}

// How far what is used lies off the side that its price is for, by limit; nothing when it is where it may be.
std::vector<std::int64_t> off_sides(const Priced& priced, const Prices& prices,
                                    const std::vector<std::size_t>& choices) {
  std::vector<std::int64_t> off(priced.rooms.size());
  for (std::size_t j = 0; j < off.size(); ++j) {
    const Priced::Room& room = priced.rooms[j];
    std::int64_t used = 0;
    for (std::size_t i = 0; i < choices.size(); ++i) used += priced.lists[i][choices[i]].uses[j];
    if (prices.of[j] != 0) {
      off[j] = used - side_of(room, prices.of[j]);
    } else if (room.most && used > *room.most) {
      off[j] = used - *room.most;
    } else if (room.least && used < *room.least) {
      off[j] = used - *room.least;
    }
  }
  return off;
}

// One step against what is off, as long as the bound is above what is aimed at; shorter by 2^halved.
struct Stride {
  std::int64_t above = 1;
  int halved = 0;
};
void step(const Priced& priced, Prices& prices, const std::vector<std::int64_t>& off, Stride stride) {
  constexpr std::int64_t fine = 1024;
  Int128 squares = 0;
  std::vector<Int128> wide(off.size());
  for (std::size_t j = 0; j < off.size(); ++j) {
    wide[j] = Int128{off[j]} * fine / priced.rooms[j].widest;
    wide[j] = std::clamp<Int128>(wide[j], -(1 << 28), 1 << 28);
    squares += wide[j] * wide[j];
  }
  if (squares == 0) return;
  for (std::size_t j = 0; j < off.size(); ++j) {
    const Int128 by =
        ((Int128{stride.above} * wide[j] / squares) * fine / priced.rooms[j].widest) >> stride.halved;
    const std::int64_t top = priced.rooms[j].top_price;
    const std::int64_t before = prices.of[j];
    auto after = static_cast<std::int64_t>(std::clamp<Int128>(before + by, -top, top));
    if ((before > 0 && after < 0) || (before < 0 && after > 0)) after = 0;
    prices.of[j] = after;
  }
}

bool stands_in(const Priced& priced, const Priced::Item& one, const Priced::Item& for_other) {
  if (one.worth < for_other.worth) return false;
  if (one.worth == for_other.worth && one.choice > for_other.choice) return false;
  for (std::size_t j = 0; j < priced.rooms.size(); ++j) {
    if (priced.rooms[j].most && one.uses[j] > for_other.uses[j]) return false;
    if (priced.rooms[j].least && one.uses[j] < for_other.uses[j]) return false;
  }
  return one.next == nullptr || std::equal(one.next, one.next + priced.states, for_other.next);
}

}  // namespace

Priced::Priced(const Choosing& choosing) : lists(choosing.lists.size()) {
  may_end.assign(1, true);
  const ChoiceChain* chain = choosing.chain ? &*choosing.chain : nullptr;
  if (chain != nullptr) {
    states = chain->states;
    start = chain->start;
    may_end = chain->may_end;
  }
  for (std::size_t i = 0; i < lists.size(); ++i) {
    for (std::size_t c = 0; c < choosing.lists[i].size(); ++c) {
      const Choice& choice = choosing.lists[i][c];
      lists[i].push_back(
          {choice.worth, c, choice.uses, chain != nullptr ? chain->next[i][c].data() : nullptr});
    }
  }
  for (const ChoiceLimit& limit : choosing.limits) rooms.push_back({limit.least, limit.most});
  measure();
  const std::int64_t worth = largest_worth(*this);
  while (scale < (std::int64_t{1} << 24) && worth * scale < top_bound / 4) scale *= 2;
}

void Priced::measure() {
  rest.assign(lists.size() + 1, std::vector<Range>(rooms.size()));
  for (Room& room : rooms) room.widest = 1;
  for (std::size_t i = lists.size(); i-- > 0;) {
    for (std::size_t j = 0; j < rooms.size(); ++j) {
      const Range range = range_in(lists[i], j);
      rest[i][j] = {rest[i + 1][j].least + range.least, rest[i + 1][j].most + range.most};
      rooms[j].widest = std::max(rooms[j].widest, range.most - range.least);
    }
  }
  const auto limits = static_cast<std::int64_t>(rooms.size());
  for (std::size_t j = 0; j < rooms.size(); ++j) {
    Room& room = rooms[j];
    const std::int64_t least = rest[0][j].least, most = rest[0][j].most;
    // A side that cannot bind is none, and one that cannot be met need not be further away than that.
    if (room.least) *room.least = std::min(*room.least, most + 1);
    if (room.most) *room.most = std::max(*room.most, least - 1);
    if (room.least && *room.least <= least) room.least.reset();
    if (room.most && *room.most >= most) room.most.reset();
    std::int64_t largest = 1;
    for (const auto& list : lists) {
      const Range range = range_in(list, j);
      largest += std::max(size_of(range.least), size_of(range.most));
    }
    room.top_price = top_bound / (2 * (limits + 1)) / size_of(largest);
  }
}

std::int64_t Prices::worth_of(const Priced& priced, const Priced::Item& item) const {
  std::int64_t worth = item.worth * priced.scale;
  for (std::size_t j = 0; j < of.size(); ++j) worth -= of[j] * item.uses[j];
  return worth;
}

std::int64_t Prices::bound(const Priced& priced, Begun begun, std::span<const std::int64_t> used) const {
  const auto [list, state, worth] = begun;
  const std::int64_t best = rest[list * priced.states + state];
  if (best == no_way) return no_way;
  std::int64_t sum = worth * priced.scale + best;
  for (std::size_t j = 0; j < of.size(); ++j) {
    if (of[j] != 0) sum += of[j] * (side_of(priced.rooms[j], of[j]) - used[j]);
  }
  return sum;
}

std::vector<std::size_t> put_on(const Priced& priced, Prices& prices) {
  const std::size_t lists = priced.lists.size(), states = priced.states;
  prices.rest.assign((lists + 1) * states, no_way);
  std::vector<std::uint32_t> by(lists * states);
  for (std::size_t s = 0; s < states; ++s) {
    if (priced.may_end[s]) prices.rest[lists * states + s] = 0;
  }
  for (std::size_t i = lists; i-- > 0;) {
    for (std::size_t c = 0; c < priced.lists[i].size(); ++c) {
      const Priced::Item& item = priced.lists[i][c];
      const std::int64_t worth = prices.worth_of(priced, item);
      for (std::size_t s = 0; s < states; ++s) {
        const std::uint32_t next = item.next == nullptr ? 0 : item.next[s];
        if (next == broken) continue;
        const std::int64_t after = prices.rest[(i + 1) * states + next];
        if (after == no_way || after + worth <= prices.rest[i * states + s]) continue;
        prices.rest[i * states + s] = after + worth;
        by[i * states + s] = static_cast<std::uint32_t>(c);
      }
    }
  }
  std::vector<std::size_t> choices;
  if (prices.rest[priced.start] == no_way) return choices;
  for (std::size_t i = 0, s = priced.start; i < lists; ++i) {
    choices.push_back(by[i * states + s]);
    const Priced::Item& item = priced.lists[i][choices.back()];
    s = item.next == nullptr ? 0 : item.next[s];
  }
  return choices;
}

Prices cheapest(const Priced& priced, std::optional<std::int64_t> known, Prices from) {
  constexpr int most_rounds = 400, patience = 4, most_halvings = 8;
  const std::vector<std::int64_t> nothing(priced.rooms.size());
  from.of.resize(priced.rooms.size());
  for (std::size_t j = 0; j < nothing.size(); ++j) {
    const Priced::Room& room = priced.rooms[j];
    if (from.of[j] > 0 ? !room.most : !room.least) from.of[j] = 0;
    from.of[j] = std::clamp(from.of[j], -room.top_price, room.top_price);
  }
  std::vector<std::size_t> choices = put_on(priced, from);
  if (choices.empty()) return from;
  const auto bound_of = [&](const Prices& prices) {
    return prices.bound(priced, {0, priced.start, 0}, nothing);
  };
  Prices best = from, now = from;
  std::int64_t lowest = bound_of(best);
  int waited = 0, halved = 0;
  for (int round = 0; round < most_rounds && halved < most_halvings; ++round) {
    const std::vector<std::int64_t> off = off_sides(priced, now, choices);
    if (std::all_of(off.begin(), off.end(), [](std::int64_t one) { return one == 0; })) break;
    const std::int64_t bound = bound_of(now);
    // Without a worth that is known, a sixteenth below is aimed at, again and again.
    const std::int64_t aim = known ? *known * priced.scale : lowest - (std::abs(lowest) >> 4) - priced.scale;
    step(priced, now, off, {std::max<std::int64_t>(bound - aim, 1), halved});
    choices = put_on(priced, now);
    const std::int64_t reached = bound_of(now);
    if (reached < lowest) {
      lowest = reached;
      best = now;
      waited = 0;
    } else if (++waited == patience) {
      ++halved;
      waited = 0;
      now = best;
      choices = put_on(priced, now);
    }
  }
  return best;
}

void drop_dominated(Priced& priced, std::size_t how_many) {
  for (auto& list : priced.lists) {
    const std::vector<Priced::Item> all = list;
    std::erase_if(list, [&](const Priced::Item& item) {
      const auto better = std::count_if(all.begin(), all.end(), [&](const Priced::Item& one) {
        return one.choice != item.choice && stands_in(priced, one, item);
      });
      return static_cast<std::size_t>(better) >= how_many;
    });
  }
  priced.measure();
}

void drop_hopeless(Priced& priced, const Prices& prices, std::int64_t known) {
  const std::vector<std::int64_t> nothing(priced.rooms.size());
  const std::int64_t bound = prices.bound(priced, {0, priced.start, 0}, nothing);
  if (bound == no_way) return;
  for (auto& list : priced.lists) {
    std::int64_t highest = no_way;
    for (const Priced::Item& item : list) highest = std::max(highest, prices.worth_of(priced, item));
    // With a chain the choice need not be the list's highest: then this says nothing of the bound.
    if (priced.states > 1) continue;
    std::erase_if(list, [&](const Priced::Item& item) {
      return bound - (highest - prices.worth_of(priced, item)) < known * priced.scale;
    });
  }
}

namespace {

// How far off the limits something is, and what it is worth: less of the one before more of the other.
struct Standing {
  std::int64_t off = 0, worth = 0;
  bool better_than(const Standing& other) const {
    return off != other.off ? off < other.off : worth > other.worth;
  }
};

class Repair {
 public:
  Repair(const Priced& priced, std::vector<std::size_t> places)
      : priced_(priced), places_(std::move(places)) {
    used_.resize(priced_.rooms.size());
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const Priced::Item& item = priced_.lists[i][places_[i]];
      worth_ += item.worth;
      for (std::size_t j = 0; j < used_.size(); ++j) used_[j] += item.uses[j];
    }
  }

  std::vector<Chosen> run(std::size_t how_many) {
    constexpr int most_exchanges = 200;
    for (int round = 0; round < most_exchanges; ++round) {
      if (!exchange_one() && (standing().off == 0 || !exchange_two())) break;
    }
    std::vector<Chosen> found;
    if (standing().off != 0) return found;
    found.push_back(chosen());
    if (how_many > 1) add_neighbours(found);
    return found;
  }

 private:
  Standing standing() const { return {off(used_), worth_}; }

  std::int64_t off(const std::vector<std::int64_t>& used) const {
    std::int64_t sum = 0;
    for (std::size_t j = 0; j < used.size(); ++j) {
      const Priced::Room& room = priced_.rooms[j];
      std::int64_t over = 0;
      if (room.most && used[j] > *room.most) over = used[j] - *room.most;
      if (room.least && used[j] < *room.least) over = *room.least - used[j];
      if (over > 0) sum += 1 + over / room.widest * 64 + over % room.widest * 64 / room.widest;
    }
    return chain_holds() ? sum : sum + 1'000;
  }

  bool chain_holds() const {
    if (priced_.states == 1) return true;
    std::size_t state = priced_.start;
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const std::uint32_t next = priced_.lists[i][places_[i]].next[state];
      if (next == broken) return false;
      state = next;
    }
    return priced_.may_end[state];
  }

  void put(std::size_t list, std::size_t place) {
    const Priced::Item& before = priced_.lists[list][places_[list]];
    const Priced::Item& after = priced_.lists[list][place];
    worth_ += after.worth - before.worth;
    for (std::size_t j = 0; j < used_.size(); ++j) used_[j] += after.uses[j] - before.uses[j];
    places_[list] = place;
  }

  // The best exchange of one choice, if it makes anything better.
  bool exchange_one() {
    const Standing now = standing();
    Standing best = now;
    std::size_t list = 0, place = 0;
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const std::size_t before = places_[i];
      for (std::size_t c = 0; c < priced_.lists[i].size(); ++c) {
        put(i, c);
        const Standing then = standing();
        if (!then.better_than(best)) continue;
        best = then;
        list = i;
        place = c;
      }
      put(i, before);
    }
    if (!best.better_than(now)) return false;
    put(list, place);
    return true;
  }

  // The first exchange of two that brings it nearer to the limits.
  bool exchange_two() {
    const Standing now = standing();
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const std::size_t before = places_[i];
      for (std::size_t c = 0; c < priced_.lists[i].size(); ++c) {
        put(i, c);
        for (std::size_t other = i + 1; other < places_.size(); ++other) {
          const std::size_t other_before = places_[other];
          for (std::size_t d = 0; d < priced_.lists[other].size(); ++d) {
            put(other, d);
            if (standing().off < now.off) return true;
          }
          put(other, other_before);
        }
      }
      put(i, before);
    }
    return false;
  }

  Chosen chosen() const {
    Chosen result{{}, worth_};
    for (std::size_t i = 0; i < places_.size(); ++i) {
      result.choices.push_back(priced_.lists[i][places_[i]].choice);
    }
    return result;
  }

  void add_neighbours(std::vector<Chosen>& found) {
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const std::size_t before = places_[i];
      for (std::size_t c = 0; c < priced_.lists[i].size(); ++c) {
        if (c == before) continue;
        put(i, c);
        if (standing().off == 0) found.push_back(chosen());
      }
      put(i, before);
    }
  }

  const Priced& priced_;
  std::vector<std::size_t> places_;
  std::vector<std::int64_t> used_;
  std::int64_t worth_ = 0;
};

}  // namespace

std::vector<Chosen> repaired(const Priced& priced, Prices prices, std::size_t how_many) {
  std::vector<std::size_t> places = put_on(priced, prices);
  if (places.size() != priced.lists.size()) return {};
  return Repair(priced, std::move(places)).run(how_many);
}

}  // namespace landdrill
