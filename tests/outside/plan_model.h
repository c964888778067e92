// A large made-up sheet to plan, and the same as a model for a solver of linear programmes in whole numbers.
//
//   PlanModel model(7, {12, 8});
//   model.sheet     // text: kingfisher-2026, four limits of the coach's own
//   model.lp        // the model in the CPLEX LP format, worths in thousandths of a point
//
// The numbers of the model are those that the sheet was written from; no part of the program makes them.
#pragma once

#include <cstdint>
#include <string>

namespace landdrill {

struct PlanShape {
  int elements = 12, options = 8, limits = 4;  // limits: up to 6
  bool tight = false;                          // so narrow that some cannot be met
  bool odds = false;                           // with spreads, slips and sync errors (in the sheet alone)
};
struct PlanModel {
  PlanModel(std::uint64_t seed, const PlanShape& shape);
  std::string sheet, lp;
};

}  // namespace landdrill
