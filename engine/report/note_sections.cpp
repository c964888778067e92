#include "engine/report/grid.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"
#include "tables/decimal.h"

namespace landdrill::report {

std::string heading(std::string_view words, const TextWish& wish) {
  const std::string line = std::string(words) + "\n";
  return "\n" + (wish.colour ? coloured(line, Look::total) : line);
}

std::string bullets(const std::vector<std::string>& sentences, const TextWish& wish) {
  std::string result;
  for (const std::string& sentence : sentences) result += paragraph(bullet, plain(sentence), wish.width);
  return result;
}

std::string with_sign(std::string_view difference) {
  const std::optional<Decimal> value = Decimal::parse(difference);
  const bool bare = value && *value > Decimal() && !difference.starts_with('+');
  return (bare ? "+" : "") + std::string(difference);
}

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return std::to_string(count) + " " + std::string(count == 1 ? one : many);
}

}  // namespace landdrill::report
