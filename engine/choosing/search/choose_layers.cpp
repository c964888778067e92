#include "engine/choosing/search/choose_layers.h"

#include <algorithm>

#include "engine/choosing/search/choose_best.h"

namespace landdrill {
namespace {

constexpr std::uint32_t no_index = static_cast<std::uint32_t>(-1);
constexpr std::size_t hurried_width = 64;
constexpr std::uint64_t asked_every = 1 << 14;

// One way to choose so far; `before` is its way up to the list before.
struct Track {
  std::int64_t worth = 0;
  std::uint32_t before = 0, choice = 0, place = no_index, next_best = no_index;
};
// All ways that leave the same room, best first: the rest of the routine can be chosen alike for them.
struct Place {
  std::uint32_t best = no_index, state = 0, ways = 0;
  std::int64_t bound = no_way;
};

class Layer {
 public:
  Layer(std::size_t limits, std::size_t how_many)
      : limits_(limits), how_many_(how_many), slots_(1024, no_index) {}

  std::span<const std::int64_t> used(std::size_t place) const {
    return {used_.data() + place * limits_, limits_};
  }
  // The place with this room, made when there is none.
  std::uint32_t place_of(std::uint32_t state, std::span<const std::int64_t> used_here, std::int64_t bound) {
    if (2 * places.size() >= slots_.size()) grow();
    std::size_t slot = hash(state, used_here) & (slots_.size() - 1);
    while (slots_[slot] != no_index && !is(slots_[slot], state, used_here))
      slot = (slot + 1) & (slots_.size() - 1);
    if (slots_[slot] == no_index) {
      slots_[slot] = static_cast<std::uint32_t>(places.size());
      places.push_back({no_index, state, 0, no_way});
      used_.insert(used_.end(), used_here.begin(), used_here.end());
    }
    Place& place = places[slots_[slot]];
    place.bound = std::max(place.bound, bound);
    return slots_[slot];
  }
  // Behind those that are worth as much: they came first, and so do their choices.
  void add(Track way) {
    Place& place = places[way.place];
    std::uint32_t* at = &place.best;
    std::size_t before = 0;
    while (*at != no_index && ways[*at].worth >= way.worth) {
      at = &ways[*at].next_best;
      if (++before == how_many_) return;
    }
    way.next_best = *at;
    *at = static_cast<std::uint32_t>(ways.size());
    ways.push_back(way);
    if (++place.ways > how_many_) drop_last(place);
  }
  // Leaves the `width` places with the highest bounds; the highest of the others.
  std::int64_t narrow(std::size_t width) {
    std::int64_t dropped = no_way;
    if (places.size() > width) {
      std::vector<std::uint32_t> order(places.size());
      for (std::uint32_t i = 0; i < order.size(); ++i) order[i] = i;
      std::nth_element(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(width), order.end(),
                       [&](std::uint32_t a, std::uint32_t b) {
                         return places[a].bound != places[b].bound ? places[a].bound > places[b].bound
                                                                   : a < b;
                       });
      for (std::size_t i = width; i < order.size(); ++i) {
        dropped = std::max(dropped, places[order[i]].bound);
        places[order[i]].ways = 0;
      }
    }
    std::erase_if(ways,
                  [&](const Track& way) { return way.place == no_index || places[way.place].ways == 0; });
    return dropped;
  }

  std::vector<Place> places;
  std::vector<Track> ways;  // in the order of their choices

 private:
  void drop_last(Place& place) {
    std::uint32_t* at = &place.best;
    while (ways[*at].next_best != no_index) at = &ways[*at].next_best;
    ways[*at].place = no_index;
    *at = no_index;
    --place.ways;
  }
  bool is(std::uint32_t place, std::uint32_t state, std::span<const std::int64_t> used_here) const {
    return places[place].state == state &&
           std::equal(used_here.begin(), used_here.end(), used(place).begin());
  }
  static std::uint64_t hash(std::uint32_t state, std::span<const std::int64_t> used_here) {
    std::uint64_t sum = state + 1;
    for (const std::int64_t one : used_here) {
      sum = (sum ^ static_cast<std::uint64_t>(one)) * 0x9E3779B97F4A7C15;
      sum ^= sum >> 29;
    }
    return sum;
  }
  void grow() {
    slots_.assign(2 * slots_.size(), no_index);
    for (std::uint32_t i = 0; i < places.size(); ++i) {
      std::size_t slot = hash(places[i].state, used(i)) & (slots_.size() - 1);
      while (slots_[slot] != no_index) slot = (slot + 1) & (slots_.size() - 1);
      slots_[slot] = i;
    }
  }

  std::size_t limits_, how_many_;
  std::vector<std::int64_t> used_;
  std::vector<std::uint32_t> slots_;
};

class Pass {
 public:
  Pass(const Priced& priced, const std::vector<Prices>& prices, const LayersWish& wish, Budget& budget)
      : priced_(priced), prices_(prices), wish_(wish), budget_(budget) {}

  LayersResult run() {
    Layer layer(priced_.rooms.size(), wish_.how_many);
    begin(layer);
    for (std::size_t i = 0; i < priced_.lists.size(); ++i) {
      Layer next(priced_.rooms.size(), wish_.how_many);
      swim(layer, next, i);
      const std::int64_t dropped =
          next.narrow(budget_.over ? std::min(wish_.width, hurried_width) : wish_.width);
      result_.dropped = std::max(result_.dropped, dropped);
      layer = std::move(next);
      remember(layer);
    }
    gather(layer.ways);
    return std::move(result_);
  }

 private:
  // How a way came about is all that is needed of the lists behind.
  struct Link {
    std::uint32_t before, choice;
  };
  void remember(const Layer& layer) {
    std::vector<Link>& links = behind_.emplace_back();
    links.reserve(layer.ways.size());
    for (const Track& way : layer.ways) links.push_back({way.before, way.choice});
  }

  void begin(Layer& layer) {
    std::vector<std::int64_t> used(priced_.rooms.size());
    const auto state = static_cast<std::uint32_t>(priced_.start);
    if (!fit(used, 0)) return;
    layer.add({0, 0, 0, layer.place_of(state, used, 0), no_index});
  }

  void swim(const Layer& layer, Layer& next, std::size_t list) {
    std::vector<std::int64_t> used(priced_.rooms.size());
    const std::vector<std::int64_t> worths = worths_in(list);
    std::uint64_t unasked = 0;
    for (std::uint32_t w = 0; w < layer.ways.size(); ++w) {
      const Track& way = layer.ways[w];
      const Place& place = layer.places[way.place];
      const std::int64_t so_far = bound_without_rest(list, place.state, way.worth, layer.used(way.place));
      for (std::size_t c = 0; c < worths.size(); ++c) {
        const Priced::Item& item = priced_.lists[list][c];
        ++unasked;
        const std::uint32_t state = item.next == nullptr ? 0 : item.next[place.state];
        if (state == broken || is_hopeless(so_far + worths[c], list + 1, state)) continue;
        const auto before = layer.used(way.place);
        for (std::size_t j = 0; j < used.size(); ++j) used[j] = before[j] + item.uses[j];
        if (!fit(used, list + 1)) continue;
        const std::int64_t worth = way.worth + item.worth;
        const std::int64_t bound = bound_of(list + 1, state, worth, used);
        if (bound == no_way || (wish_.known && bound < *wish_.known * priced_.scale)) continue;
        next.add(
            {worth, w, static_cast<std::uint32_t>(item.choice), next.place_of(state, used, bound), no_index});
      }
      if (unasked < asked_every) continue;
      budget_.count(unasked);
      unasked = 0;
      // Whoever has to stop goes on with few: those so far, and the best of what is left.
      if (budget_.over && next.places.size() > 4 * hurried_width) {
        leave(layer, w + 1, list);
        break;
      }
    }
    budget_.count(unasked);
  }

  // By the first prices: the bound of a way is what it is worth less its prices, and what the rest can add.
  std::vector<std::int64_t> worths_in(std::size_t list) const {
    std::vector<std::int64_t> worths;
    for (const Priced::Item& item : priced_.lists[list])
      worths.push_back(prices_.front().worth_of(priced_, item));
    return worths;
  }
  std::int64_t bound_without_rest(std::size_t list, std::size_t state, std::int64_t worth,
                                  std::span<const std::int64_t> used) const {
    return prices_.front().bound(priced_, {list, state, worth}, used) -
           prices_.front().rest[list * priced_.states + state];
  }
  bool is_hopeless(std::int64_t so_far, std::size_t list, std::size_t state) const {
    if (!wish_.known) return false;
    const std::int64_t rest = prices_.front().rest[list * priced_.states + state];
    return rest == no_way || so_far + rest < *wish_.known * priced_.scale;
  }

  // The bounds of the ways of a layer that are not carried on.
  void leave(const Layer& layer, std::uint32_t from, std::size_t list) {
    for (std::uint32_t w = from; w < layer.ways.size(); ++w) {
      const Place& place = layer.places[layer.ways[w].place];
      const std::int64_t bound =
          bound_of(list, place.state, layer.ways[w].worth, layer.used(layer.ways[w].place));
      result_.dropped = std::max(result_.dropped, bound);
    }
  }

  // Whether what is used can still meet every limit. Where it meets one whatever follows, how much is used
  // no longer matters, and is made the same for all.
  bool fit(std::vector<std::int64_t>& used, std::size_t list) const {
    const std::vector<Priced::Range>& rest = priced_.rest[list];
    for (std::size_t j = 0; j < used.size(); ++j) {
      const Priced::Room& room = priced_.rooms[j];
      if (room.most && used[j] + rest[j].least > *room.most) return false;
      if (room.least && used[j] + rest[j].most < *room.least) return false;
      if (room.most && used[j] + rest[j].most > *room.most) continue;
      if (room.least && used[j] + rest[j].least < *room.least) continue;
      used[j] = room.most ? *room.most - rest[j].most : room.least ? *room.least - rest[j].least : 0;
    }
    return true;
  }

  std::int64_t bound_of(std::size_t list, std::size_t state, std::int64_t worth,
                        std::span<const std::int64_t> used) const {
    std::int64_t lowest = std::numeric_limits<std::int64_t>::max();
    for (const Prices& prices : prices_) {
      lowest = std::min(lowest, prices.bound(priced_, {list, state, worth}, used));
      if (wish_.known && lowest < *wish_.known * priced_.scale) break;
    }
    return lowest;
  }

  void gather(const std::vector<Track>& ends) {
    std::vector<std::uint32_t> order(ends.size());
    for (std::uint32_t w = 0; w < order.size(); ++w) order[w] = w;
    std::stable_sort(order.begin(), order.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return ends[a].worth > ends[b].worth; });
    if (order.size() > wish_.how_many) order.resize(wish_.how_many);
    for (std::uint32_t end : order) {
      Chosen chosen{std::vector<std::size_t>(priced_.lists.size()), ends[end].worth};
      std::uint32_t w = end;
      for (std::size_t i = priced_.lists.size(); i-- > 0; w = behind_[i][w].before) {
        chosen.choices[i] = behind_[i][w].choice;
      }
      result_.best.push_back(std::move(chosen));
    }
  }

  const Priced& priced_;
  const std::vector<Prices>& prices_;
  const LayersWish& wish_;
  Budget& budget_;
  std::vector<std::vector<Link>> behind_;
  LayersResult result_;
};

}  // namespace

void Budget::count(std::uint64_t more) {
  nodes += more;
  if (!over && (nodes > most || (go_on != nullptr && *go_on && !(*go_on)(nodes)))) over = true;
}

LayersResult layers(const Priced& priced, const std::vector<Prices>& prices, const LayersWish& wish,
                    Budget& budget) {
  return Pass(priced, prices, wish, budget).run();
}

}  // namespace landdrill
