// One line a sheet, for many sheets: as aligned text or as CSV. Written one by one, so a stream of any length
// fits.
//
//   file               event      difficulty  estimate  recorded  difference
//   harbour.sheet      duet-free       24.95  213.6125  209.7167     -3.8958
#pragma once

#include <string>
#include <string_view>

#include "engine/report/render.h"
#include "engine/score/totals.h"

namespace landdrill::report {

struct SheetRow {
  std::string_view file, routine, event;
  Totals totals;
};

std::string batch_header(const TextWish& wish = {});
std::string batch_line(const SheetRow& row, const TextWish& wish = {});
// For a sheet that is not scored: "bad.sheet   not scored: 3 errors".
std::string batch_refusal(std::string_view file, std::size_t errors, const TextWish& wish = {});

std::string batch_csv_header();
std::string batch_csv_line(const SheetRow& row);

}  // namespace landdrill::report
