#include "engine/judging/statistics/shuffled.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "engine/judging/statistics/dice.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

constexpr int deals = 1999;

using RowNumbers = std::vector<std::size_t>;

std::vector<RowNumbers> rows_by_stratum(std::span<const std::size_t> strata) {
  std::vector<RowNumbers> rows;
  for (std::size_t row = 0; row < strata.size(); ++row) {
    if (strata[row] >= rows.size()) rows.resize(strata[row] + 1);
    rows[strata[row]].push_back(row);
  }
  return rows;
}

// Less the mean of their stratum, with a standard deviation of 1; all 0 where they do not scatter.
std::vector<double> standardised(std::vector<double> numbers, const std::vector<RowNumbers>& strata) {
  const double size = sum_of_squares(numbers);
  for (const RowNumbers& rows : strata) {
    double sum = 0;
    for (std::size_t row : rows) sum += numbers[row];
    for (std::size_t row : rows) numbers[row] -= sum / static_cast<double>(rows.size());
  }
  const double squares = without_rounding(sum_of_squares(numbers), size);
  const double scale = squares == 0 ? 0 : 1 / std::sqrt(squares / static_cast<double>(numbers.size()));
  for (double& number : numbers) number *= scale;
  return numbers;
}

// How far the mean of the group lies from that of the rest, in standard errors; all numbers together are 0.
double striking(const Look& look, const RowNumbers& dealt) {
  const auto inside = static_cast<double>(look.rows.size());
  const double outside = static_cast<double>(look.numbers.size()) - inside;
  if (inside == 0 || outside == 0) return 0;
  double sum = 0;
  for (std::size_t row : look.rows) sum += look.numbers[dealt[row]];
  const double errors = sum * std::sqrt(1 / inside + 1 / outside);
  return look.what == Look::For::either ? std::abs(errors) : errors;
}

double most_striking(const std::vector<Look>& looks, const RowNumbers& dealt) {
  double most = 0;
  for (const Look& look : looks) most = std::max(most, striking(look, dealt));
  return most;
}

void deal_again(const std::vector<RowNumbers>& strata, Dice& dice, RowNumbers& dealt) {
  for (const RowNumbers& rows : strata)
    for (std::size_t i = rows.size(); i > 1; --i) std::swap(dealt[rows[i - 1]], dealt[rows[dice.up_to(i)]]);
}

}  // namespace

std::vector<double> chances_by_shuffling(std::span<const Look> looks, std::span<const std::size_t> strata) {
  constexpr double hair = 1e-9;  // equal sums are added up in another order
  const std::vector<RowNumbers> by_stratum = rows_by_stratum(strata);
  std::vector<Look> all(looks.begin(), looks.end());
  for (Look& look : all) look.numbers = standardised(std::move(look.numbers), by_stratum);
  RowNumbers dealt(strata.size());
  std::iota(dealt.begin(), dealt.end(), std::size_t{0});
  std::vector<double> found;
  for (const Look& look : all) found.push_back(striking(look, dealt));
  std::vector<int> as_striking(all.size(), 1);
  Dice dice(1);
  for (int deal = 0; deal < deals; ++deal) {
    deal_again(by_stratum, dice, dealt);
    const double most = most_striking(all, dealt);
    for (std::size_t i = 0; i < all.size(); ++i) as_striking[i] += most >= found[i] - hair ? 1 : 0;
  }
  std::vector<double> chances;
  for (int times : as_striking) chances.push_back(static_cast<double>(times) / (deals + 1));
  return chances;
}

}  // namespace landdrill
