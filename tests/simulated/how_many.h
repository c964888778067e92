// How many made-up cases a simulation looks at: few in the tests, as many as are asked for by tests/simulated/run.
//
//   const int seasons = how_many(400);      // LANDDRILL_SIMULATED=20: 8000
//   tell("false claims in %", 100.0 * claims / seasons);
#pragma once

#include <string>

namespace landdrill::simulated {

// `few` times what the environment asks for, 1 otherwise.
int how_many(int few);
// A line of what came out, printed by tests/simulated/run.
void tell(const std::string& what, double number);

}  // namespace landdrill::simulated
