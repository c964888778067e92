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

#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/report/page.h"
#include "engine/score/execution.h"
#include "tables/decimal.h"

namespace landdrill::report {

// An exact number as its text; empty when it is not there.
//
//   text_of(std::optional(Mark(*Decimal::parse("7.5"))), 2)          // "7.50"
//   signed_text(std::optional(Points(*Decimal::parse("1.25"))), 4)   // "+1.2500"

// With as many places as it has, and `places` at least.
template <class Number>
std::string text_of(const std::optional<Number>& number, int places = 0) {
  return number ? number->text(places) : std::string();
}

// The same of a difference.
template <class Number>
std::string signed_text(const std::optional<Number>& number, int places = 0) {
  return (number && *number > Number() ? "+" : "") + text_of(number, places);
}

std::string figure(std::optional<double> value);         // empty for none
std::string signed_figure(std::optional<double> value);  // "+0.25", "-0.25", "0.00"
std::string interval(std::optional<double> low, std::optional<double> high);
std::string signed_interval(std::optional<double> low, std::optional<double> high);

// A chance or statistic as programs get it: the shortest text of at most 12 significant digits, as the last ones differ
// between machines.
std::string as_number(double amount);
// To six places, as text, as all amounts are; nothing for none.
Datum figure_datum(std::optional<double> value);
Datum statistic_datum(const Statistic& statistic);
// For people and for programs.
Entry figure_entry(std::optional<double> value);
Entry signed_entry(std::optional<double> value);

// "1 judge", "2 judges".
std::string counted(std::size_t count, std::string_view one);

// Chances, means and the like as a coach reads them; and exact amounts shortened for the eye.
//
//   per_cent(0.1834)               // "18.3 %"
//   times_in_words(0.1834)         // "about 2 times in 10"
//   to_places(231.4567, 2)         // "231.46"

// To a tenth; what is less than that from never or always says so instead of pretending to be one of them.
std::string per_cent(Chance chance);
// "about 2 times in 10", "about 1 time in 40", "all but about 1 time in 40"; 0 and 1: "never", "always".
std::string times_in_words(Chance chance);
std::string to_places(double amount, int places);
// Ties away from zero; never "-0.00".
std::string to_places(Decimal amount, int places);
// "12 %", "33.33 %": a chance that was given, in per cent.
std::string given_per_cent(Decimal percent);
// "from `slip` in the sheet", "from the run-throughs"; `nothing` when nothing says how likely the base mark
// is.
std::string source_of(const BaseChance& chance, std::string_view nothing);
// "a `slip` counts as 6 runs"; empty where no run was seen
std::string weight_words(const BaseChance& chance);
// "1 of 2 runs"
std::string lost_words(const RunsShown& runs);

}  // namespace landdrill::report
