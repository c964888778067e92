#include <algorithm>

#include "engine/report/amount_text.h"
#include "engine/report/page.h"
#include "engine/report/pages/score_parts.h"
#include "engine/report/pages/score_words.h"
#include "engine/score/account.h"
#include "engine/score/execution.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

std::string base_sentence(const ElementLine& line, const ElementResult& seen, const std::string& who) {
  return "Base mark: " + named(line) + " was declared at " + line.declared.text(2) + " and " + who + " " +
         seen.credited.text(2) + ".";
}

void put_base_notes(PageParts& page, const Account& account) {
  for (const ElementLine& line : account.elements) {
    if (line.expected.base)
      page.say("* ", base_sentence(line, line.expected, "is expected to be credited with"));
    if (line.recorded && line.recorded->base)
      page.say("* ", base_sentence(line, *line.recorded, "the panel credited"));
  }
}

// The worst line is the one the bridge loses most on; without a bridge, the one furthest from a full mark.
std::string worst_words(const Account& account, const ElementLine& line) {
  if (!account.bridge) return ", " + text_of(line.left, account.places) + " points short of a full mark.";
  if (!line.difference) return ", as the way from estimate to result shows below.";
  return ", " + signed_text(line.difference, account.places) + " points against the estimate.";
}

void put_worst_note(PageParts& page, const Account& account) {
  for (const ElementLine& line : account.elements)
    if (line.worst) page.say("> ", "Worst line: " + named(line) + worst_words(account, line));
}

std::string check_words(const Account& account) {
  if (!account.announced_difference) return "; not enough marks are there to check it.";
  if (*account.announced_difference == Points()) return ", the same as these marks give.";
  return ". These marks give " + text_of(account.total.recorded, account.places) + ", off by " +
         signed_text(account.announced_difference, account.places) +
         ": check the marks and penalties that were typed in.";
}

void put_announced_note(PageParts& page, const Account& account) {
  if (account.announced)
    page.say("Announced: " + text_of(account.announced, account.places) + check_words(account));
}

// Where marks come from, each source once, with its lines.
struct MarkSource {
  std::string words;
  bool worth_telling = false;  // all but the line `expect` of the sheet itself
  std::string lines;
};

void note_source(std::vector<MarkSource>& sources, const RestsOn& from, const std::string& line) {
  const std::string words = words_of(from);
  const auto at =
      std::find_if(sources.begin(), sources.end(), [&](const MarkSource& one) { return one.words == words; });
  if (at != sources.end()) {
    at->lines += ", " + line;
    return;
  }
  const bool of_runs = from.from == ExpectedMark::From::run || from.from == ExpectedMark::From::runs;
  sources.push_back({words, of_runs, line});
}

// "Estimate from the run of 2026-04-14: 1, 2, 4, Performance."
void put_mark_sources(PageParts& page, const Account& account) {
  std::vector<MarkSource> sources;
  bool all_marked = true;
  for (const ElementLine& line : account.elements) {
    all_marked = all_marked && line.rests_on;
    if (line.rests_on) note_source(sources, *line.rests_on, std::to_string(line.number));
  }
  for (const AspectLine& line : account.aspects) note_source(sources, line.rests_on, line.title);
  for (const MarkSource& one : sources) {
    if (!one.worth_telling) continue;
    const std::string which = sources.size() == 1 && all_marked ? "every mark" : one.lines;
    page.say("Estimate from the " + one.words + ": " + which + ".");
  }
}

}  // namespace

void put_score_notes(PageParts& page, const Account& account) {
  PageParts notes;
  put_worst_note(notes, account);
  put_base_notes(notes, account);
  put_announced_note(notes, account);
  put_mark_sources(notes, account);
  if (shows_left_points(account))
    notes.say("left: the points that a full mark for what was declared would add.");
  page.apart();
  page.section("", std::move(notes), Seen::by_people);
}

}  // namespace landdrill::report
