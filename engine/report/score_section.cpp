#include <algorithm>

#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::string base_sentence(const ElementLine& line, const std::string& credited, std::string_view who) {
  return "Base mark: " + name_of(line) + " was declared at " + line.declared + " and " + std::string(who) +
         " " + credited + ".";
}

std::string base_notes(const Account& account, const TextWish& wish) {
  std::string result;
  for (const ElementLine& line : account.elements) {
    if (line.base)
      result +=
          paragraph("* ", base_sentence(line, line.credited, "is expected to be credited with"), wish.width);
    if (line.recorded_base) {
      result +=
          paragraph("* ", base_sentence(line, line.recorded_credited, "the panel credited"), wish.width);
    }
  }
  return result;
}

// The worst line is the one the bridge loses most on; without a bridge, the one furthest from a full mark.
std::string worst_words(const Account& account, const ElementLine& line) {
  if (!account.bridge) return ", " + line.left + " points short of a full mark.";
  if (line.difference.empty()) return ", as the way from estimate to result shows below.";
  return ", " + with_sign(line.difference) + " points against the estimate.";
}

std::string worst_note(const Account& account, const TextWish& wish) {
  for (const ElementLine& line : account.elements) {
    if (!line.worst) continue;
    return paragraph("> ", "Worst line: " + name_of(line) + worst_words(account, line), wish.width);
  }
  return "";
}

std::string announced_note(const Account& account, const TextWish& wish) {
  if (account.announced.empty()) return "";
  const std::optional<Decimal> off = Decimal::parse(account.announced_difference);
  std::string words = "Announced: " + account.announced;
  if (off && *off == Decimal()) {
    words += ", the same as these marks give.";
  } else if (!account.announced_difference.empty()) {
    words += ". These marks give " + account.recorded_total + ", off by " +
             with_sign(account.announced_difference) + ": check the marks and penalties that were typed in.";
  } else {
    words += "; not enough marks are there to check it.";
  }
  return paragraph("", words, wish.width);
}

// Where marks come from, each source once, with its lines; all but the line `expect` of the sheet itself.
struct MarkSources {
  std::vector<std::pair<std::string_view, std::string>> lines;

  void note(std::string_view from, const std::string& line) {
    const auto at =
        std::find_if(lines.begin(), lines.end(), [&](const auto& one) { return one.first == from; });
    if (at == lines.end()) {
      lines.emplace_back(from, line);
    } else {
      at->second += ", " + line;
    }
  }
};

// "Estimate from the run of 2026-04-14: 1, 2, 4, Performance."
std::string mark_sources(const Account& account, const TextWish& wish) {
  MarkSources sources;
  for (const ElementLine& line : account.elements) sources.note(line.rests_on, std::to_string(line.number));
  for (const AspectLine& line : account.aspects) sources.note(line.rests_on, line.title);
  std::string result;
  for (const auto& [from, lines] : sources.lines) {
    if (from.empty() || from == "expected" || from == "no mark yet") continue;
    const std::string which = sources.lines.size() == 1 ? "every mark" : plain(lines);
    result += paragraph("", "Estimate from the " + plain(from) + ": " + which + ".", wish.width);
  }
  return result;
}

std::string left_note(const Account& account, const TextWish& wish) {
  return shows_left(account)
             ? paragraph("", "left: the points that a full mark for what was declared would add.", wish.width)
             : "";
}

}  // namespace

std::string score_section(const Account& account, const TextWish& wish) {
  const std::string notes = worst_note(account, wish) + base_notes(account, wish) +
                            announced_note(account, wish) + mark_sources(account, wish) +
                            left_note(account, wish);
  return score_tables(account, wish) + (notes.empty() ? "" : "\n" + notes);
}

}  // namespace landdrill::report
