// What is in the season book: listed, printed as sheets, scored again.
#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "engine/cli/book_file.h"
#include "engine/cli/kept_sheets.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/cli/totals.h"
#include "engine/report/book.h"

namespace landdrill::cli {
namespace {

report::BookLine line_of(const KeptBlock& block) {
  return {block.routine,
          block.event,
          std::string(word_of(block.what)),
          block.date,
          block.title,
          block.versions == 1 ? "1" : fmt::format("{} of {}", block.version, block.versions),
          block.set,
          block.kept_at,
          {}};
}

// The routine as it was known on that day: without later runs.
Routine known_on(Routine routine, std::string_view day) {
  std::erase_if(routine.runs, [day](const Run& run) { return run.date > day; });
  return routine;
}

report::BookScore score_of(const KeptBlock& routine, const Routine& resolved, std::size_t panel) {
  const RecordedPanel& recorded = resolved.panels[panel];
  const Totals all = totals(known_on(resolved, recorded.date), {}, panel);
  return {routine.routine,
          routine.event,
          "panel",
          std::string(recorded.date),
          std::string(recorded.title),
          routine.set,
          all.estimate,
          all.recorded,
          all.difference,
          all.announced,
          {}};
}

}  // namespace

Exit book_list(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    const auto found = book.find(wish);
    if (!found) return refuse(call, found.error());
    if (found->empty()) return nothing_found(call, wish);
    std::vector<report::BookLine> lines;
    for (const KeptBlock& block : *found) lines.push_back(line_of(block));
    call.streams.out.write(report::book_list(lines, format_of(call), page_wish(call)));
    return Exit::ok;
  });
}

Exit book_export(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    KeptSheets kept(book);
    const auto sheets = kept.read(wish);
    if (!sheets) return refuse(call, sheets.error());
    if (sheets->empty()) return nothing_found(call, wish);
    for (std::size_t i = 0; i < sheets->size(); ++i)
      call.streams.out.write((i == 0 ? "" : "\n") + (*sheets)[i]->text);
    return Exit::ok;
  });
}

Exit book_score(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    KeptSheets kept(book);
    const auto sheets = kept.read(wish);
    if (!sheets) return refuse(call, sheets.error());
    if (sheets->empty()) return nothing_found(call, wish);
    Messages messages(call.streams);
    Exit worst = Exit::ok;
    std::vector<report::BookScore> scores;
    for (const KeptSheet* one : *sheets) {
      if (!one->sheet.routine()) {
        messages.add(one->sheet.diagnostics);
        worst = Exit::errors;
        continue;
      }
      const Routine& routine = *one->sheet.routine();
      for (std::size_t panel = 0; panel < routine.panels.size(); ++panel)
        scores.push_back(score_of(one->routine, routine, panel));
    }
    messages.finish();
    // Panels of different versions of one routine come by their day as well.
    std::stable_sort(scores.begin(), scores.end(),
                     [](const report::BookScore& a, const report::BookScore& b) {
                       return std::tie(a.routine, a.event, a.date) < std::tie(b.routine, b.event, b.date);
                     });
    call.streams.out.write(report::book_scores(scores, format_of(call), page_wish(call)));
    return worst;
  });
}

}  // namespace landdrill::cli
