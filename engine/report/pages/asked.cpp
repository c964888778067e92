#include "engine/report/pages/asked.h"

namespace landdrill::report {

void Asked::add(std::string_view option, std::vector<std::string> values) {
  options_.emplace_back(option, std::move(values));
}

const std::vector<std::string>& Asked::values(std::string_view option) const {
  static const std::vector<std::string> none;
  for (const auto& [name, values] : options_)
    if (name == option) return values;
  return none;
}

std::string_view Asked::value(std::string_view option, std::string_view otherwise) const {
  const auto& all = values(option);
  return all.empty() ? otherwise : std::string_view(all.back());
}

std::string with_hint(std::string mistake, std::string_view hint) {
  if (!hint.empty()) mistake.append("\n  hint: ").append(hint);
  return mistake;
}

}  // namespace landdrill::report
