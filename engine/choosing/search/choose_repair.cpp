#include "engine/choosing/search/choose_repair.h"

#include <algorithm>

#include "engine/choosing/search/choose_best.h"

namespace landdrill {
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
