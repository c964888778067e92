// Prices on limits: what every choice is worth less the price of what it uses bounds what any choice is
// worth.
//
//   Priced priced(choosing);                  // the choices still in the running, and how much they may use
//   Prices best = cheapest(priced, {});       // prices whose bound is as low as they find it
//   best.bound(priced, {0, start, 0}, {0})     // no choice is worth more, times priced.scale
//
// Any prices give a true bound, so whole numbers suffice and nothing is rounded the wrong way. Only
// choose_*.cpp include this.
#pragma once

#include <cstddef>
#include <limits>
#include <span>
#include <vector>

#include "engine/choosing/search/choose_best.h"

namespace landdrill {

constexpr std::int64_t no_way = std::numeric_limits<std::int64_t>::min() / 4;

// The part of a choosing that matters: limits that can bind, choices that are still in the running.
struct Priced {
  struct Item {
    std::int64_t worth = 0;
    std::size_t choice = 0;               // its place in the list of the choosing
    std::vector<std::int64_t> uses;       // of the limits kept
    const std::uint32_t* next = nullptr;  // by state; nullptr without a chain
  };
  struct Room {
    std::optional<std::int64_t> least, most;
    std::int64_t widest = 1;     // largest difference in one list
    std::int64_t top_price = 0;  // so that nothing overflows
  };
  // What the lists from one on may use in all.
  struct Range {
    std::int64_t least = 0, most = 0;
  };

  explicit Priced(const Choosing& choosing);
  // Ranges and sides that can bind again, after choices were taken out; prices from before do not hold then.
  void measure();

  std::size_t states = 1, start = 0;
  std::vector<bool> may_end;
  std::vector<std::vector<Item>> lists;
  std::vector<Room> rooms;
  std::vector<std::vector<Range>> rest;  // [list][limit]; one more than lists
  std::int64_t scale = 1;                // prices and bounds are in so manieth parts of a worth
};

// Lists up to here have a choice each.
struct Begun {
  std::size_t list = 0, state = 0;
  std::int64_t worth = 0;
};
struct Prices {
  // What an item is worth less the price of what it uses, times the scale.
  std::int64_t worth_of(const Priced& priced, const Priced::Item& item) const;
  std::vector<std::int64_t> of;    // one for each limit: above 0 for its most, below 0 for its least
  std::vector<std::int64_t> rest;  // [list * states + state]: the most that lists from there on are worth

  // What any completion is worth at most, times the scale; no_way when there is none.
  std::int64_t bound(const Priced& priced, Begun begun, std::span<const std::int64_t> used) const;
};
// Works out `rest` for the prices; the choices that reach it, if there are any.
std::vector<std::size_t> put_on(const Priced& priced, Prices& prices);
// Prices with a low bound, found by following what is used too much or too little. `known`: what some choice
// is worth.
Prices cheapest(const Priced& priced, std::optional<std::int64_t> known, Prices from = {});

// Takes out choices that at least `how_many` others of their list can stand in for.
void drop_dominated(Priced& priced, std::size_t how_many);
// Takes out choices with which nothing is worth `known` or more.
void drop_hopeless(Priced& priced, const Prices& prices, std::int64_t known);

// A first answer: what the prices choose, made to meet the limits by exchanging one or two choices at a time.
//
//   repaired(priced, prices, 6)
//   // up to six choices that meet every limit; none when it did not work out
//
// Promises nothing; what it finds spares the search most of its work. Only choose_*.cpp include this.

std::vector<Chosen> repaired(const Priced& priced, Prices prices, std::size_t how_many);

}  // namespace landdrill
