// Statistics as they are told: with their sign, in intervals; and as programs get them, with the reason where there is
// no number.
//
//   signed_figure(0.254)                 // "+0.25"
//   interval(0.1, 0.8)                   // "0.10 to 0.80"
//   statistic_datum(view.interval)       // {"value": "0.754321", "low": null, ..., "rests_on": 7, "why_not": null}
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/judging/statistics/agreement.h"
#include "engine/report/page.h"

namespace landdrill::report {

std::string figure(std::optional<double> value);         // empty for none
std::string signed_figure(std::optional<double> value);  // "+0.25", "-0.25", "0.00"
std::string interval(std::optional<double> low, std::optional<double> high);
std::string signed_interval(std::optional<double> low, std::optional<double> high);

// To six places, as text, as all amounts are; nothing for none.
Datum figure_datum(std::optional<double> value);
Datum statistic_datum(const Statistic& statistic);
// For people and for programs.
Entry figure_entry(std::optional<double> value);
Entry signed_entry(std::optional<double> value);

// "1 judge", "2 judges".
std::string counted(std::size_t count, std::string_view one, std::string_view many);

}  // namespace landdrill::report
