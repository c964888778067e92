#include "tables/decimal.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

#include "grammar/characters.h"
#include "tables/ties.h"

namespace landdrill {
namespace {

using characters::is_digit;

constexpr std::int64_t tens[] = {1, 10, 100, 1'000, 10'000, 100'000, 1'000'000};

// The least of all has no magnitude, so it counts as too large as well.
__extension__ typedef unsigned __int128 UnsignedInt128;
constexpr Int128 least_of_all = static_cast<Int128>(UnsignedInt128{1} << 127);

bool is_short(Int128 a) {
  return a == static_cast<std::int64_t>(a);
}

bool multiply(Int128 a, Int128 b, Int128& result) {
  // Most numbers of a score are short, and the product of two short ones always fits.
  if (is_short(a) && is_short(b)) {
    result = a * b;
    return true;
  }
  return !__builtin_mul_overflow(a, b, &result) && result != least_of_all;
}

bool add(Int128 a, Int128 b, Int128& result) {
  return !__builtin_add_overflow(a, b, &result) && result != least_of_all;
}

Int128 checked_product(Int128 a, Int128 b) {
  Int128 result;
  if (!multiply(a, b, result)) throw Overflow();
  return result;
}

Int128 checked_sum(Int128 a, Int128 b) {
  Int128 result;
  if (!add(a, b, result)) throw Overflow();
  return result;
}

Int128 magnitude(Int128 a) {
  return a < 0 ? -a : a;
}

Int128 greatest_divisor(Int128 a, Int128 b) {
  a = magnitude(a);
  while (b != 0) {
    Int128 rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

Between::Side side_of(Int128 rest, Int128 denominator) {
  const Int128 other_side = denominator - rest;
  if (rest == 0) return Between::Side::at_it;
  if (rest == other_side) return Between::Side::middle;
  return rest < other_side ? Between::Side::nearer : Between::Side::farther;
}

// The whole number next to numerator/denominator that `rounding` asks for; denominator > 0.
Int128 rounded_quotient(Int128 numerator, Int128 denominator, Rounding rounding) {
  const bool negative = numerator < 0;
  const Int128 size = magnitude(numerator);
  // Two short numbers divide several times as fast.
  const bool both_short = is_short(size) && is_short(denominator);
  Int128 quotient = both_short ? static_cast<std::int64_t>(size) / static_cast<std::int64_t>(denominator)
                               : size / denominator;
  const Int128 rest = size - quotient * denominator;
  if (rounds_away(rounding, {quotient % 2 != 0, side_of(rest, denominator)})) quotient += 1;
  return negative ? -quotient : quotient;
}

}  // namespace

std::optional<Decimal> Decimal::parse(std::string_view text) {
  const bool negative = text.starts_with('-');
  if (negative || text.starts_with('+')) text.remove_prefix(1);
  if (text.empty() || !is_digit(text.front()) || !is_digit(text.back())) return std::nullopt;
  std::int64_t units = 0;
  int after = -1;  // places behind the point, once there is one
  for (char c : text) {
    if (after < 0 && (c == '.' || c == ',')) {
      after = 0;
      continue;
    }
    if (!is_digit(c) || (after == places && c != '0')) return std::nullopt;
    if (after == places) continue;
    if (units > most_units / 10) return std::nullopt;
    units = units * 10 + (c - '0');
    after += after >= 0;
  }
  const Int128 whole = Int128{units} * tens[places - std::max(after, 0)];
  if (whole > most_units) return std::nullopt;
  return Decimal(static_cast<std::int64_t>(negative ? -whole : whole));
}

int Decimal::places_used() const {
  int used = places;
  for (std::int64_t rest = units_; used > 0 && rest % 10 == 0; rest /= 10) --used;
  return used;
}

std::string Decimal::text(int at_least) const {
  const std::int64_t size = units_ < 0 ? -units_ : units_;
  const int shown = std::max(places_used(), std::min(at_least, places));
  std::array<char, 24> digits;
  char* at = digits.data();
  if (units_ < 0) *at++ = '-';
  at = std::to_chars(at, digits.data() + digits.size(), size / one).ptr;
  if (shown > 0) *at++ = '.';
  std::int64_t rest = size % one;
  for (int place = 0; place < shown; ++place) {
    rest *= 10;
    *at++ = static_cast<char>('0' + rest / one);
    rest %= one;
  }
  return std::string(digits.data(), at);
}

Exact Exact::in_lowest_terms() const {
  const Int128 divisor = greatest_divisor(numerator_, denominator_);
  return Exact(numerator_ / divisor, denominator_ / divisor);
}

// Where one denominator is a multiple of the other, as powers of ten are.
std::optional<Exact> Exact::sum_of_short(Exact a, Exact b) {
  if (a.denominator_ < b.denominator_) std::swap(a, b);
  if (!is_short(a.denominator_) || !is_short(b.numerator_)) return std::nullopt;
  const auto larger = static_cast<std::int64_t>(a.denominator_),
             smaller = static_cast<std::int64_t>(b.denominator_);
  if (larger % smaller != 0) return std::nullopt;
  Int128 numerator;
  if (!add(a.numerator_, b.numerator_ * (larger / smaller), numerator)) return std::nullopt;
  return Exact(numerator, larger);
}

Exact operator+(Exact a, Exact b) {
  if (a.numerator_ == 0) return b;
  if (b.numerator_ == 0) return a;
  Int128 numerator;
  if (a.denominator_ == b.denominator_ && add(a.numerator_, b.numerator_, numerator)) {
    return Exact(numerator, a.denominator_);
  }
  if (const std::optional<Exact> exact = Exact::sum_of_short(a, b)) return *exact;
  a = a.in_lowest_terms();
  b = b.in_lowest_terms();
  return Exact(checked_sum(checked_product(a.numerator_, b.denominator_),
                           checked_product(b.numerator_, a.denominator_)),
               checked_product(a.denominator_, b.denominator_));
}

Exact operator-(Exact a, Exact b) {
  return a + Exact(-b.numerator_, b.denominator_);
}

Exact operator*(Exact a, Exact b) {
  Int128 numerator, denominator;
  if (multiply(a.numerator_, b.numerator_, numerator) &&
      multiply(a.denominator_, b.denominator_, denominator)) {
    return Exact(numerator, denominator);
  }
  a = a.in_lowest_terms();
  b = b.in_lowest_terms();
  const Exact first = Exact(a.numerator_, b.denominator_).in_lowest_terms();
  const Exact second = Exact(b.numerator_, a.denominator_).in_lowest_terms();
  return Exact(checked_product(first.numerator_, second.numerator_),
               checked_product(first.denominator_, second.denominator_));
}

Exact operator/(Exact a, Exact b) {
  assert(b.numerator_ != 0);
  const bool negative = b.numerator_ < 0;
  return a * Exact(negative ? -b.denominator_ : b.denominator_, magnitude(b.numerator_));
}

std::strong_ordering operator<=>(Exact a, Exact b) {
  Int128 left, right;
  if (multiply(a.numerator_, b.denominator_, left) && multiply(b.numerator_, a.denominator_, right))
    return left <=> right;
  const Int128 difference = (a - b).numerator_;
  if (difference == 0) return std::strong_ordering::equal;
  return difference < 0 ? std::strong_ordering::less : std::strong_ordering::greater;
}

std::optional<Decimal> Exact::decimal() const {
  const Exact reduced = in_lowest_terms();
  if (Int128{Decimal::one} % reduced.denominator_ != 0) return std::nullopt;
  return Decimal::in_range(checked_product(reduced.numerator_, Decimal::one / reduced.denominator_));
}

Decimal round(Exact value, int places, Rounding rounding) {
  assert(places >= 0 && places <= Decimal::places);
  const std::int64_t step = tens[Decimal::places - places];
  Int128 numerator;
  if (!multiply(value.numerator_, Decimal::one / step, numerator))
    return round_to_step(value, Decimal::from_units(step), rounding);
  const Int128 whole = rounded_quotient(numerator, value.denominator_, rounding);
  return Decimal::in_range(checked_product(whole, step));
}

Decimal round_to_step(Exact value, Decimal step, Rounding rounding) {
  assert(step.units() > 0);
  const Exact steps = value / Exact(step);
  const Int128 whole = rounded_quotient(steps.numerator_, steps.denominator_, rounding);
  return Decimal::in_range(checked_product(whole, step.units()));
}

}  // namespace landdrill
