// Statistics as they are printed: two decimals, intervals in words, reasons where there is no number.
//
//   figure(0.754)                        // "0.75"
//   interval(Statistic{0.5, 0.1, 0.8})   // "0.10 to 0.80"
//
// Only the *.cpp files of this folder include this.
#pragma once

#include <boost/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "engine/judging/statistics/agreement.h"

namespace landdrill::report {

std::string figure(std::optional<double> value);         // empty for none
std::string signed_figure(std::optional<double> value);  // "+0.25", "-0.25", "0.00"
std::string interval(std::optional<double> low, std::optional<double> high);
std::string signed_interval(std::optional<double> low, std::optional<double> high);
// "0.123457": for other programs, to six places; empty for none.
std::string exact_figure(std::optional<double> value);

// As text, as all amounts are.
boost::json::value figure_or_null(std::optional<double> value);
boost::json::object statistic_object(const Statistic& statistic);
boost::json::array list_of(const std::vector<std::string>& texts);

}  // namespace landdrill::report
