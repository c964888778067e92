#include "engine/report/text.h"

#include <algorithm>

#include "engine/report/sections.h"

namespace landdrill::report {

std::string text(const Account& account, const TextWish& asked, const Diagnostics& objections) {
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  std::string result = title_section(account, wish);
  result += score_section(account, wish);
  result += missing_section(account, wish);
  result += bridge_section(account, wish);
  result += objection_section(objections, wish);
  result += time_section(account, wish);
  result += caution_section(account, wish);
  result += values_section(account, wish);
  result += build_up_section(account, wish);
  return result;
}

}  // namespace landdrill::report
