// Where training buys most, ranked, as text, JSON or CSV.
//
//   1  4 Skylark    chance of the base mark  20 %  10 %  +1.9250
//
// Computes nothing. `face`: the account of the routine as it is, for title, values and cautions.
#pragma once

#include <string>

#include "engine/choosing/next_point.h"
#include "engine/report/face.h"
#include "engine/report/values.h"

namespace landdrill::report {

struct TrainWish {
  Format format = Format::text;
  std::size_t top = 0;  // so many lines; 0: all
};

std::string training_report(const NextPoints& next, const Face& face, const TrainWish& train,
                            const TextWish& wish);

}  // namespace landdrill::report
