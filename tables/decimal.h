// Exact decimals and exact fractions: every number of the program, from text to text, never binary floating
// point.
//
//   *Decimal::parse("7,25") + *Decimal::parse("0.5")                 // 7.75
//   round(Exact(Decimal::whole(2)) / Exact(Decimal::whole(3)), 4, Rounding::half_up)   // 0.6667
//
// A Decimal has six decimal places and holds up to +-9,000,000,000,000. What does not fit throws Overflow:
// no result is ever wrong, and a sheet or table that provokes it is reported as a number too large.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

#include "tables/ties.h"  // IWYU pragma: export

namespace landdrill {

__extension__ typedef __int128 Int128;

// A number of a sheet or a formula that is too large to stay exact.
struct Overflow : std::overflow_error {
  Overflow() : std::overflow_error("a number is too large") {}
};

class Decimal {
 public:
  static constexpr int places = 6;
  static constexpr std::int64_t one = 1'000'000;
  static constexpr std::int64_t most_units = 9'000'000'000'000 * one;

  constexpr Decimal() = default;
  static constexpr Decimal from_units(std::int64_t millionths) { return Decimal(millionths); }
  // Overflow when out of range, as all that follows.
  static Decimal in_range(Int128 units) {
    if (units > most_units || units < -most_units) throw Overflow();
    return Decimal(static_cast<std::int64_t>(units));
  }
  static Decimal whole(std::int64_t number) { return in_range(Int128{number} * one); }

  // "7.25", "-3", "7,25", "+0.1"; nothing else: no blanks, no exponent, no thousands separator. Empty when it
  // is none, has more than six places that are not zero, or is out of range.
  static std::optional<Decimal> parse(std::string_view text);

  constexpr std::int64_t units() const { return units_; }
  // The shortest exact text: "7.25", "3", "-0.1". With `at_least` places: "7.50".
  std::string text(int at_least = 0) const;
  // Places needed to write it exactly, 0 to 6.
  int places_used() const;
  bool is_multiple_of(Decimal step) const { return units_ % step.units_ == 0; }  // step > 0

  friend constexpr auto operator<=>(Decimal, Decimal) = default;
  friend Decimal operator+(Decimal a, Decimal b) { return in_range(Int128{a.units_} + b.units_); }
  friend Decimal operator-(Decimal a, Decimal b) { return in_range(Int128{a.units_} - b.units_); }
  friend Decimal operator-(Decimal a) { return Decimal() - a; }
  friend Decimal operator*(Decimal a, std::int64_t times) { return in_range(Int128{a.units_} * times); }
  Decimal& operator+=(Decimal other) { return *this = *this + other; }
  Decimal& operator-=(Decimal other) { return *this = *this - other; }

 private:
  explicit constexpr Decimal(std::int64_t units) : units_(units) {}
  std::int64_t units_ = 0;
};

// A fraction of 128-bit integers, kept in lowest terms when it has to be. Throws Overflow rather than be
// wrong.
class Exact {
 public:
  Exact() = default;
  // Over 100 where that is exact, as marks and difficulties are: what follows is reckoned in short numbers.
  explicit Exact(Decimal value) : numerator_(value.units()), denominator_(Decimal::one) {
    constexpr std::int64_t hundredth = Decimal::one / 100;
    if (value.units() % hundredth != 0) return;
    numerator_ = value.units() / hundredth;
    denominator_ = 100;
  }

  friend Exact operator+(Exact a, Exact b);
  friend Exact operator-(Exact a, Exact b);
  friend Exact operator*(Exact a, Exact b);
  friend Exact operator/(Exact a, Exact b);  // division by zero: asserts; ask is_zero first
  friend bool operator==(Exact a, Exact b) { return (a <=> b) == 0; }
  friend std::strong_ordering operator<=>(Exact a, Exact b);
  bool is_zero() const { return numerator_ == 0; }

  // The value as a Decimal when six places hold it exactly.
  std::optional<Decimal> decimal() const;

  friend Decimal round(Exact value, int places, Rounding rounding);
  friend Decimal round_to_step(Exact value, Decimal step, Rounding rounding);

 private:
  Exact(Int128 numerator, Int128 denominator) : numerator_(numerator), denominator_(denominator) {}
  Exact in_lowest_terms() const;
  static std::optional<Exact> sum_of_short(Exact a, Exact b);
  Int128 numerator_ = 0;
  Int128 denominator_ = 1;  // always positive
};

// `value` to `places` (0 to 6) decimal places: the only place where a score is rounded.
Decimal round(Exact value, int places, Rounding rounding);
// `value` to a whole multiple of `step` (> 0).
Decimal round_to_step(Exact value, Decimal step, Rounding rounding);

}  // namespace landdrill
