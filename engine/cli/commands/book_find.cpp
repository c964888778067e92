#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>
#include <tuple>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/judging/lessons.h"
#include "engine/report/pages/book.h"
#include "engine/report/render.h"
#include "engine/report/sentences.h"
#include "engine/routine/routine.h"
#include "engine/score/account.h"
#include "engine/season/kept_sheets.h"
#include "engine/season/swum_versions.h"
#include "tables/folder.h"

namespace landdrill::cli {

// What is in the season book: listed, printed as sheets, scored again.

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

// Why there is no total of the panel, or no estimate beside it.
std::string note_of(const PanelScore& score) {
  std::string note;
  const auto say = [&](std::string_view what, const Unmarked& missing) {
    const std::string words = report::in_words(missing);
    if (!words.empty()) note += fmt::format("{}{}: {}", note.empty() ? "" : "; ", what, words);
  };
  say("no total", score.without_total);
  say("no estimate", score.without_estimate);
  return note;
}

report::BookScore score_line(const KeptBlock& version, PanelScore score) {
  std::string note = note_of(score);
  return {version.routine, version.event, std::move(score.date), std::move(score.title),
          version.set,     score.totals,  std::move(note)};
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
    const auto sheets = sheets_in(book, wish);
    const bool whole_book = wish.all_versions && call.given.operands.size() == 1;
    if (!sheets) return whole_book ? save(call, book, sheets.error()) : refuse(call, sheets.error());
    if (sheets->empty()) return nothing_found(call, book, wish);
    print_sheets(call, *sheets);
    return Exit::ok;
  });
}

Exit book_score(Call& call) {
  std::vector<report::BookScore> scores;
  const auto take = [&](const KeptBlock& version, std::vector<PanelScore> panels) {
    for (PanelScore& one : panels) scores.push_back(score_line(version, std::move(one)));
  };
  return with_swum(call, panel_scores, take, [&](const Book&, const BookWish&, Exit worst) {
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

// What the season teaches about the coach's expected marks.

namespace {

std::vector<Lesson> lessons_of(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  std::vector<Lesson> all;
  for (const RecordedPanel& panel : routine.panels)
    for (Lesson& lesson : lessons(routine, panel)) all.push_back(std::move(lesson));
  return all;
}

}  // namespace

Exit book_lessons(Call& call) {
  std::vector<Lesson> all;
  const auto take = [&](const KeptBlock&, std::vector<Lesson> lessons) {
    std::move(lessons.begin(), lessons.end(), std::back_inserter(all));
  };
  return with_swum(call, lessons_of, take, [&](const Book&, const BookWish&, Exit worst) {
    std::optional<OneRoutine> sheet;
    if (call.given.has("--sheet")) sheet.emplace(call, std::string(call.given.value("--sheet")));
    if (sheet && !*sheet) return sheet->exit();
    print_page(call, report::lessons_page(learn(all), back_test(all), sheet ? &sheet->routine() : nullptr));
    return worst;
  });
}

// How the routines of the season book went over time.

Exit book_progress(Call& call) {
  SwumVersions seasons;
  const auto take = [&](const KeptBlock& version, SwumVersion swum) {
    seasons.add(version, std::move(swum));
  };
  return with_swum(call, version_swum, take, [&](const Book& book, const BookWish& wish, Exit worst) {
    // What came after the days that are asked for is not.
    if (wish.until.empty()) {
      if (const auto added = seasons.add_latest(book); !added) return refuse(call, added.error());
    }
    print_page(call, report::progress_page(seasons.all()));
    return worst;
  });
}

}  // namespace landdrill::cli
