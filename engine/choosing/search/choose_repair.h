// A first answer: what the prices choose, made to meet the limits by exchanging one or two choices at a time.
//
//   repaired(priced, prices, 6)
//   // up to six choices that meet every limit; none when it did not work out
//
// Promises nothing; what it finds spares the search most of its work. Only choose_*.cpp include this.
#pragma once

#include "engine/choosing/search/choose_best.h"
#include "engine/choosing/search/choose_prices.h"

namespace landdrill {

std::vector<Chosen> repaired(const Priced& priced, Prices prices, std::size_t how_many);

}  // namespace landdrill
