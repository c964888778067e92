#include "engine/choosing/search/choose_layers.h"

#include <algorithm>

#include "engine/choosing/search/choosing.h"

namespace landdrill {
namespace {

// One way to choose so far; `before` is its way up to the list before.
struct Track {
  std::int64_t worth = 0, bound = 0;
  std::int64_t off = 0;    // what it costs to end off the limits, see Prices
  std::uint64_t room = 0;  // of its state and what it uses: equal for equal ones
  std::uint32_t before = 0, choice = 0, state = 0;
};

struct Layer {
  std::vector<Track> ways;         // in the order of their choices
  std::vector<std::int64_t> used;  // [way * limits + limit]
};

class Pass {
 public:
  Pass(const Choosing& choosing, const Prices& prices, const LayersWish& wish)
      : choosing_(choosing), prices_(prices), wish_(wish), limits_(choosing.limits.size()) {}

  std::optional<LayersResult> run(const std::function<bool(std::uint64_t)>& go_on) {
    Layer layer;
    const std::vector<std::int64_t> nothing(limits_);
    add(layer, 0, {0, 0, 0, 0, 0, 0, choosing_.chain ? choosing_.chain->start : 0}, nothing);
    for (std::size_t i = 0; i < choosing_.lists.size(); ++i) {
      Layer next;
      for (std::uint32_t w = 0; w < layer.ways.size(); ++w) {
        lengthen(layer, w, next, i);
        if (w % 1024 == 1023 && !go_on(1024 * choosing_.lists[i].size())) return std::nullopt;
      }
      if (!go_on(layer.ways.size() % 1024 * choosing_.lists[i].size())) return std::nullopt;
      narrow(next);
      layer = std::move(next);
      std::vector<Link>& links = behind_.emplace_back();
      for (const Track& way : layer.ways) links.push_back({way.before, way.choice});
    }
    gather(layer.ways);
    return std::move(result_);
  }

 private:
  // How a way came about is all that is needed of the lists behind.
  struct Link {
    std::uint32_t before, choice;
  };

  void lengthen(const Layer& layer, std::uint32_t w, Layer& next, std::size_t list) const {
    const Track& way = layer.ways[w];
    std::vector<std::int64_t> used(limits_);
    for (std::uint32_t c = 0; c < choosing_.lists[list].size(); ++c) {
      const Choice& choice = choosing_.lists[list][c];
      const std::uint32_t state = choosing_.chain ? choosing_.chain->next[list][c][way.state] : 0;
      if (state == broken) continue;
      for (std::size_t j = 0; j < limits_; ++j) used[j] = layer.used[w * limits_ + j] + choice.uses[j];
      add(next, list + 1, {way.worth + choice.worth, 0, 0, 0, w, c, state}, used);
    }
  }

  void add(Layer& layer, std::size_t list, Track way, std::vector<std::int64_t> used) const {
    if (!fit(used, list)) return;
    way.bound = prices_.bound(list, way.state, way.worth, used);
    if (way.bound == no_way || (wish_.known && way.bound < *wish_.known * prices_.scale)) return;
    way.off = prices_.off(list, used);
    way.room = way.state;
    for (const std::int64_t one : used) {
      way.room = (way.room ^ static_cast<std::uint64_t>(one)) * 0x9E3779B97F4A7C15;
      way.room ^= way.room >> 29;
    }
    layer.ways.push_back(way);
    layer.used.insert(layer.used.end(), used.begin(), used.end());
  }

  // Whether what is used can still meet every limit. Where it meets one whatever follows, how much is used
  // no longer matters, and is made the same for all.
  bool fit(std::vector<std::int64_t>& used, std::size_t list) const {
    for (std::size_t j = 0; j < limits_; ++j) {
      const auto [least, most] = prices_.rest[list][j];
      const ChoiceLimit& limit = choosing_.limits[j];
      if (limit.most && used[j] + least > *limit.most) return false;
      if (limit.least && used[j] + most < *limit.least) return false;
      if (limit.most && used[j] + most > *limit.most) continue;
      if (limit.least && used[j] + least < *limit.least) continue;
      used[j] = limit.most ? *limit.most - most : limit.least ? *limit.least - least : 0;
    }
    return true;
  }

  // Leaves the best of each room, and of these the `width` with the highest bounds.
  void narrow(Layer& layer) {
    std::vector<std::uint32_t> order(layer.ways.size());
    for (std::uint32_t w = 0; w < order.size(); ++w) order[w] = w;
    keep_best_of_rooms(layer, order);
    if (order.size() > wish_.width) drop(layer, order);
    std::sort(order.begin(), order.end());
    Layer left;
    for (const std::uint32_t w : order) {
      const std::int64_t* used = layer.used.data() + w * limits_;
      left.ways.push_back(layer.ways[w]);
      left.used.insert(left.used.end(), used, used + limits_);
    }
    layer = std::move(left);
  }

  // To end off the limits costs what the lists can make up for; half of those that stay are the nearest.
  void drop(const Layer& layer, std::vector<std::uint32_t>& order) {
    const auto middle = order.begin() + static_cast<std::ptrdiff_t>(wish_.width / 2);
    const auto last = order.begin() + static_cast<std::ptrdiff_t>(wish_.width);
    const auto promise = [&](std::uint32_t w) {
      return std::pair(layer.ways[w].off - layer.ways[w].bound, w);
    };
    std::ranges::nth_element(order.begin(), middle, order.end(), {}, promise);
    std::ranges::nth_element(middle, last, order.end(), {},
                             [&](std::uint32_t w) { return std::pair(layer.ways[w].off, promise(w)); });
    for (auto at = last; at != order.end(); ++at) {
      result_.dropped = std::max(result_.dropped, layer.ways[*at].bound);
    }
    order.erase(last, order.end());
  }

  // The rest can be chosen alike for all that leave the same room.
  void keep_best_of_rooms(const Layer& layer, std::vector<std::uint32_t>& order) const {
    const auto room = [&](std::uint32_t w) { return std::span(layer.used).subspan(w * limits_, limits_); };
    const auto same = [&](std::uint32_t a, std::uint32_t b) {
      const Track &one = layer.ways[a], &other = layer.ways[b];
      return one.room == other.room && one.state == other.state && std::ranges::equal(room(a), room(b));
    };
    std::sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
      const Track &one = layer.ways[a], &other = layer.ways[b];
      if (one.room != other.room) return one.room < other.room;
      if (!same(a, b)) {
        return one.state != other.state ? one.state < other.state
                                        : std::ranges::lexicographical_compare(room(a), room(b));
      }
      return one.worth != other.worth ? one.worth > other.worth : a < b;
    });
    std::size_t left = 0;
    for (const std::uint32_t w : order) {
      if (left < wish_.how_many || !same(order[left - wish_.how_many], w)) order[left++] = w;
    }
    order.resize(left);
  }

  void gather(std::vector<Track>& ends) {
    std::vector<std::uint32_t> order(ends.size());
    for (std::uint32_t w = 0; w < order.size(); ++w) order[w] = w;
    std::ranges::stable_sort(order, std::greater(), [&](std::uint32_t w) { return ends[w].worth; });
    if (order.size() > wish_.how_many) order.resize(wish_.how_many);
    for (const std::uint32_t end : order) {
      Chosen& chosen = result_.best.emplace_back();
      chosen = {std::vector<std::size_t>(choosing_.lists.size()), ends[end].worth};
      std::uint32_t w = end;
      for (std::size_t i = behind_.size(); i-- > 0; w = behind_[i][w].before) {
        chosen.choices[i] = behind_[i][w].choice;
      }
    }
  }

  const Choosing& choosing_;
  const Prices& prices_;
  const LayersWish& wish_;
  const std::size_t limits_;
  std::vector<std::vector<Link>> behind_;
  LayersResult result_;
};

}  // namespace

std::optional<LayersResult> layers(const Choosing& choosing, const Prices& prices, const LayersWish& wish,
                                   const std::function<bool(std::uint64_t more)>& go_on) {
  return Pass(choosing, prices, wish).run(go_on);
}

}  // namespace landdrill
