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

// A routine with one panel at a time, as it was known on that panel's day: without later runs.
class OnTheDay {
 public:
  explicit OnTheDay(const Routine& whole) : whole_(whole), alone_(whole) {}

  const Routine& with(const RecordedPanel& panel) {
    alone_.panels.assign(1, panel);
    alone_.runs = whole_.runs;
    std::erase_if(alone_.runs, [&](const Run& run) { return run.date > panel.date; });
    return alone_;
  }

 private:
  const Routine& whole_;
  Routine alone_;
};

report::BookScore score_of(const KeptBlock& routine, const RecordedPanel& recorded, OnTheDay& on_the_day) {
  const Totals all = totals(on_the_day.with(recorded), {}, 0);
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
    const auto texts = kept_texts(book, wish);
    if (!texts) return refuse(call, texts.error());
    if (texts->empty()) return nothing_found(call, wish);
    for (std::size_t i = 0; i < texts->size(); ++i)
      call.streams.out.write((i == 0 ? "" : "\n") + (*texts)[i].text);
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
      OnTheDay on_the_day(routine);
      for (const RecordedPanel& panel : routine.panels)
        scores.push_back(score_of(one->routine, panel, on_the_day));
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
