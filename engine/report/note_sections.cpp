#include <algorithm>

#include "engine/report/explain.h"
#include "engine/report/grid.h"
#include "engine/report/render_text.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

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

std::string title_and_kind(const ElementLine& line) {
  return line.title.empty() ? line.kind : line.title + ", " + line.kind;
}

std::string name_of(const ElementLine& line) {
  return std::to_string(line.number) + " " + plain(line.title.empty() ? line.kind : line.title);
}

std::string objection_section(const Diagnostics& objections, const TextWish& wish) {
  std::string result;
  for (const Diagnostic& one : objections.list()) {
    const std::string place = one.at.line == 0 ? "" : "line " + std::to_string(one.at.line) + ": ";
    const std::string hint = one.hint.empty() ? "" : " (" + one.hint + ")";
    result += paragraph(bullet, plain(place + "found " + one.found + "; expected " + one.expected + hint),
                        wish.width);
  }
  const std::size_t all = objections.errors() + objections.warnings();
  if (all > objections.list().size()) {
    result +=
        paragraph(bullet, "and " + std::to_string(all - objections.list().size()) + " more", wish.width);
  }
  return result.empty() ? "" : heading("What the rules would object to", wish) + result;
}

std::string caution_section(const Account& account, const TextWish& wish) {
  if (account.cautions.empty()) return "";
  return heading("Take care", wish) + bullets(account.cautions, wish);
}

std::string build_up_section(const Account& account, const TextWish& wish) {
  std::string result;
  if (!wish.full) return result;
  if (account.estimate)
    result += heading("How the estimate comes about", wish) + explain(*account.estimate, account.set, wish);
  if (account.recorded)
    result +=
        heading("How the panel's result comes about", wish) + explain(*account.recorded, account.set, wish);
  return result;
}

}  // namespace landdrill::report
