#include "engine/report/listing.h"

#include <algorithm>
#include <numeric>

#include "engine/report/csv.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

constexpr int readable_cell = 12;  // columns that a wrapped cell needs

Grid listing_grid(const Listing& listing, const std::vector<std::size_t>& shown) {
  std::vector<GridColumn> columns;
  for (const std::size_t i : shown) {
    columns.push_back(listing.columns[i]);
    std::string& words = columns.back().heading;
    std::replace(words.begin(), words.end(), '_', ' ');
  }
  Grid grid(std::move(columns));
  for (const std::vector<std::string>& row : listing.rows) {
    std::vector<std::string> cells;
    for (const std::size_t i : shown) cells.push_back(row[i]);
    grid.add(std::move(cells));
  }
  return grid;
}

// The key columns, and after them as many from `next` on as fit, one at least.
std::vector<std::size_t> shown_that_fit(const Listing& listing, std::size_t& next, int width) {
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < std::min(listing.keys, listing.columns.size()); ++i) shown.push_back(i);
  const std::size_t first = next;
  while (next < listing.columns.size()) {
    shown.push_back(next);
    if (next > first && !listing_grid(listing, shown).fits(width, readable_cell)) {
      shown.pop_back();
      break;
    }
    ++next;
  }
  return shown;
}

// So that short cells stand together in the first table, and only titles and notes move to the next.
Listing long_texts_last(const Listing& listing) {
  std::vector<std::size_t> order(listing.columns.size());
  std::iota(order.begin(), order.end(), 0);
  std::stable_sort(
      order.begin() + static_cast<std::ptrdiff_t>(std::min(listing.keys, order.size())), order.end(),
      [&](std::size_t a, std::size_t b) { return !listing.columns[a].wraps && listing.columns[b].wraps; });
  Listing result{listing.name, {}, {}, listing.keys};
  for (const std::size_t i : order) result.columns.push_back(listing.columns[i]);
  for (const std::vector<std::string>& row : listing.rows) {
    result.rows.emplace_back();
    for (const std::size_t i : order) result.rows.back().push_back(row[i]);
  }
  return result;
}

}  // namespace

std::string as_text(const Listing& asked, const TextWish& wish) {
  const int width = std::max(60, wish.width);
  Listing listing = asked;
  std::vector<std::size_t> all(asked.columns.size());
  std::iota(all.begin(), all.end(), 0);
  if (!listing_grid(asked, all).fits(width, readable_cell)) listing = long_texts_last(asked);
  std::string result;
  std::size_t next = std::min(listing.keys, listing.columns.size());
  do {
    const std::vector<std::size_t> shown = shown_that_fit(listing, next, width);
    result += (result.empty() ? "" : "\n") + listing_grid(listing, shown).text(width, wish.colour);
  } while (next < listing.columns.size());
  return result;
}

std::string as_csv(const Listing& listing) {
  std::vector<std::string_view> names;
  for (const GridColumn& column : listing.columns) names.push_back(column.heading);
  std::string result = csv_row(names);
  for (const std::vector<std::string>& row : listing.rows) result += csv_row({row.begin(), row.end()});
  return result;
}

}  // namespace landdrill::report
