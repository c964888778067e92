#include <algorithm>

#include "engine/report/explain.h"
#include "engine/report/grid.h"
#include "engine/report/render_text.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

constexpr std::size_t most_missing = 8;

std::string seconds(const std::optional<Decimal>& value) {
  return value ? value->text(1) + " s" : "";
}

// "96 counts, 45.0 s", or the counts alone without a tempo.
std::string length_words(int counts, const std::optional<Decimal>& value) {
  const std::string words = std::to_string(counts) + (counts == 1 ? " count" : " counts");
  return value ? seconds(value) + " (" + words + ")" : words;
}

std::string where_longest_starts(const Account& account) {
  const std::vector<ItemTime>& items = account.timing.items;
  for (std::size_t i = account.timing.longest_starts; i < items.size(); ++i) {
    if (!items[i].item.is_element) continue;
    const std::string name = name_of(account.elements.at(items[i].item.index));
    return i == account.timing.longest_starts ? ", from " + name : ", from the passage before " + name;
  }
  return account.timing.longest_starts < items.size() ? ", from the last passage" : "";
}

std::string what_is_lacking(const Account& account) {
  if (!account.total.empty()) return "the panel has no total yet";
  return account.recorded_total.empty() ? "there is no total yet" : "there is no estimate yet";
}

}  // namespace

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

std::string title_and_kind(const ElementLine& line) {
  return line.title.empty() ? line.kind : line.title + ", " + line.kind;
}

std::string name_of(const ElementLine& line) {
  return std::to_string(line.number) + " " + plain(line.title.empty() ? line.kind : line.title);
}

std::string time_section(const Account& account, const TextWish& wish) {
  const Timing& timing = account.timing;
  if (timing.counts == 0) return "";
  std::string words = length_words(timing.counts, timing.seconds) + "; under water " +
                      length_words(timing.under, timing.under_seconds);
  if (timing.under_share) words += ", " + timing.under_share->text() + " %";
  if (timing.longest_under > 0) {
    words += "; longest in one go " + length_words(timing.longest_under, timing.longest_under_seconds) +
             where_longest_starts(account);
  }
  if (!timing.seconds) words += ". No seconds without a tempo";
  return "\n" + paragraph("Time: ", words + ".", wish.width);
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

std::string missing_section(const Account& account, const TextWish& wish) {
  if (account.missing.empty()) return "";
  std::vector<std::string> told = account.missing;
  if (!wish.full && told.size() > most_missing) {
    told.resize(most_missing);
    told.push_back("and " + std::to_string(account.missing.size() - most_missing) + " more");
  }
  return heading("Missing, so " + what_is_lacking(account), wish) + bullets(told, wish);
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
