// An exact number as its text; empty when it is not there.
//
//   text_of(std::optional(Mark(*Decimal::parse("7.5"))), 2)    // "7.50"
#pragma once

#include <optional>
#include <string>

namespace landdrill::report {

// With as many places as it has, and `places` at least.
template <class Number>
std::string text_of(const std::optional<Number>& number, int places = 0) {
  return number ? number->text(places) : std::string();
}

}  // namespace landdrill::report
