// What is in the season book: listed, printed as sheets, scored again.
#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>
#include <tuple>

#include "engine/cli/as_swum.h"
#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/kept_sheets.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/cli/totals.h"
#include "engine/report/obstacle_words.h"
#include "engine/report/pages/book.h"
#include "engine/report/render.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/account_notes.h"
#include "engine/score/score.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {
namespace {

report::BookLine kept_line(const KeptBlock& block) {
  return {block.routine,
          block.event,
          std::string(word_of(block.what)),
          block.date,
          block.title,
          block.versions == 1 ? "1" : fmt::format("{} of {}", block.version, block.versions),
          block.of_version,
          block.routine_versions,
          block.set,
          block.kept_at,
          {}};
}

// A routine as it was known on the day of a panel: without later runs.
class OnTheDay {
 public:
  explicit OnTheDay(const Routine& routine) : routine_(routine) {}

  Totals beside(const RecordedPanel& panel) {
    const auto known = std::count_if(routine_.runs.begin(), routine_.runs.end(),
                                     [&](const Run& run) { return run.date <= panel.date; });
    // Of two days, what was known on the earlier was known on the later too: so many runs are always the
    // same.
    if (!estimated_ || known != known_) {
      known_ = known;
      Wish wish;
      wish.runs.until = panel.date;
      estimated_.emplace(routine_, wish);
    }
    return estimated_->beside(panel);
  }

 private:
  const Routine& routine_;
  std::optional<Estimated> estimated_;
  std::ptrdiff_t known_ = 0;  // runs
};

// Why there is no total of the panel, or no estimate beside it.
std::string note_of(const Routine& routine, const RecordedPanel& panel, const Totals& totals) {
  std::string note;
  const auto say = [&](std::string_view what, const Showing& showing) {
    const std::string missing = report::in_words(unmarked(routine, showing));
    if (!missing.empty()) note += fmt::format("{}{}: {}", note.empty() ? "" : "; ", what, missing);
  };
  if (totals.recorded.empty()) say("no total", recorded(routine, panel, {}));
  if (totals.estimate.empty()) {
    Wish wish;
    wish.runs.until = panel.date;
    say("no estimate", expected(routine, wish));
  }
  return note;
}

report::BookScore score_of(const KeptBlock& kept, const Routine& routine, const RecordedPanel& panel,
                           OnTheDay& on_the_day) {
  Totals all = on_the_day.beside(panel);
  std::string note = note_of(routine, panel, all);
  return {kept.routine,
          kept.event,
          "panel",
          std::string(panel.date),
          std::string(panel.title),
          kept.set,
          std::move(all.estimate),
          std::move(all.recorded),
          std::move(all.difference),
          std::move(all.announced),
          std::move(note)};
}

std::vector<report::BookScore> scores_of(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  OnTheDay on_the_day(routine);
  std::vector<report::BookScore> scores;
  scores.reserve(routine.panels.size());
  for (const RecordedPanel& panel : routine.panels)
    scores.push_back(score_of(swum.kept.routine, routine, panel, on_the_day));
  return scores;
}

Result<std::vector<std::string>> sheets_of(const Book& book, const BookWish& wish) {
  const auto versions = versions_of(book, wish);
  if (!versions) return tl::unexpected(versions.error());
  auto texts = kept_texts(book, *versions);
  if (!texts) return tl::unexpected(texts.error());
  std::vector<std::string> sheets;
  for (KeptText& one : *texts) {
    if (!wish.all_versions) {
      sheets.push_back(std::move(one.text));
      continue;
    }
    auto all_words = book.sheets_of_all_words(one.routine.id);
    if (!all_words) return tl::unexpected(all_words.error());
    std::move(all_words->begin(), all_words->end(), std::back_inserter(sheets));
  }
  return sheets;
}

// One after the other, with an empty line between them.
void print_sheets(Call& call, const std::vector<std::string>& sheets) {
  for (std::size_t i = 0; i < sheets.size(); ++i) call.streams.out.write((i == 0 ? "" : "\n") + sheets[i]);
}

// Of a damaged book: what can be read, and what cannot.
Exit save(Call& call, const Book& book, const Trouble& trouble) {
  const auto saved = book.rescue();
  if (!saved) return refuse(call, saved.error());
  if (saved->sheets.empty()) return refuse(call, trouble);
  print_sheets(call, saved->sheets);
  refuse(call, trouble);
  call.streams.say(fmt::format("landdrill: what can be read was printed all the same; not there:\n"));
  for (const std::string& one : saved->lost) call.streams.say("  " + one + "\n");
  return Exit::environment;
}

}  // namespace

Exit book_list(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    const auto found = book.find(wish);
    if (!found) return refuse(call, found.error());
    if (found->empty()) return nothing_found(call, book, wish);
    std::vector<report::BookLine> lines;
    for (const KeptBlock& block : *found) lines.push_back(kept_line(block));
    print_page(call, report::book_list_page("book list", lines));
    return Exit::ok;
  });
}

Exit book_export(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    const auto sheets = sheets_of(book, wish);
    const bool whole_book = wish.all_versions && call.given.operands.size() == 1;
    if (!sheets) return whole_book ? save(call, book, sheets.error()) : refuse(call, sheets.error());
    if (sheets->empty()) return nothing_found(call, book, wish);
    print_sheets(call, *sheets);
    return Exit::ok;
  });
}

Exit book_score(Call& call) {
  std::vector<report::BookScore> scores;
  const auto take = [&](const KeptBlock&, std::vector<std::vector<report::BookScore>> parts) {
    for (std::vector<report::BookScore>& part : parts)
      std::move(part.begin(), part.end(), std::back_inserter(scores));
  };
  return with_swum(call, scores_of, take, [&](const Book&, const BookWish&, Exit worst) {
    // Panels of different versions of one routine come by their day as well.
    const auto earlier = [](const report::BookScore& a, const report::BookScore& b) {
      return std::tie(a.routine, a.event, a.date) < std::tie(b.routine, b.event, b.date);
    };
    if (!std::is_sorted(scores.begin(), scores.end(), earlier))
      std::stable_sort(scores.begin(), scores.end(), earlier);
    if (scores.empty() && worst == Exit::ok) {
      call.streams.say(
          "landdrill: no panel has seen it: there are run-throughs alone, which `landdrill book progress` "
          "shows\n");
      if (format_of(call) == report::Format::text) return worst;
    }
    print_page(call, report::book_scores_page(scores));
    return worst;
  });
}

}  // namespace landdrill::cli
