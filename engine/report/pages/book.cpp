#include "engine/report/pages/book.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "engine/report/figures.h"

namespace landdrill::report {
namespace {

// Where there are several versions of a routine, it is said to which of them a run or a panel belongs, and the value
// set only if there are several.
PageTable no_entries(std::span<const BookLine> lines) {
  const bool versions = std::any_of(lines.begin(), lines.end(),
                                    [](const BookLine& line) { return line.routine_versions != 1; });
  const bool sets = !versions || std::any_of(lines.begin(), lines.end(), [&](const BookLine& line) {
    return line.set != lines.front().set;
  });
  const auto seen_if = [](bool so) { return so ? Seen::always : Seen::by_programs; };
  return {"entries",
          {for_programs("routine"),
           for_programs("event"),
           {"", ""},  // moves the others to the right
           {"what", ""},
           {"date", ""},
           {"title", "", Align::words, Wraps::yes},
           {"version", "version"},
           {"of_version", "of routine", Align::words, Wraps::no, seen_if(versions)},
           for_programs("routine_versions"),
           {"set", "value set", Align::words, Wraps::no, seen_if(sets)},
           for_programs("kept_at"),
           {"did", ""}}};
}

std::vector<Entry> entry_row(const BookLine& line) {
  const Entry of_version =
      line.of_version == 0
          ? Entry()
          : Entry(fmt::format("{} of {}", line.of_version, line.routine_versions), line.of_version);
  return {line.routine, line.event,   "",
          line.what,    line.date,    line.title,
          line.version, of_version,   line.routine_versions,
          line.set,     line.kept_at, line.did};
}

void put_routine(std::span<const BookLine> lines, PageParts& page) {
  PageTable table = no_entries(lines);
  table.in_csv = true;
  for (const BookLine& line : lines) table.add(entry_row(line));
  if (!lines.empty()) page.heading(lines.front().routine + ", " + lines.front().event);
  page.add(std::move(table));
}

// Below the table, where a sentence has room.
std::vector<std::string> notes_of(const std::vector<BookScore>& scores) {
  constexpr std::size_t most = 10;
  std::vector<std::string> notes;
  std::size_t more = 0;
  for (const BookScore& one : scores) {
    if (one.note.empty()) continue;
    if (notes.size() == most)
      ++more;
    else
      notes.push_back(fmt::format("{}, {}{}{}, {}", one.routine, one.date, one.title.empty() ? "" : " ",
                                  one.title, one.note));
  }
  if (more > 0) notes.push_back(fmt::format("and {} more, which CSV and JSON have", more));
  return notes;
}

}  // namespace

Page book_list_page(std::string question, const std::vector<BookLine>& lines) {
  Page page(std::move(question));
  std::span<const BookLine> rest = lines;
  do {
    const auto other = std::find_if(rest.begin(), rest.end(), [&](const BookLine& line) {
      return line.routine != rest.front().routine || line.event != rest.front().event;
    });
    const auto same = static_cast<std::size_t>(other - rest.begin());
    put_routine(rest.first(same), page);
    rest = rest.subspan(same);
  } while (!rest.empty());
  return page;
}

Page book_added_page(std::string question, const BookAdded& added) {
  Page page = book_list_page(std::move(question), added.lines);
  page.fact("added", added.added);
  page.fact("new_versions", added.new_versions);
  page.fact("already_there", added.already_there);
  page.list("notes", added.notes, Seen::by_programs);
  return page;
}

std::string in_words(const BookAdded& added) {
  return fmt::format("{} added, {} new version{}, {} already there", added.added, added.new_versions,
                     added.new_versions == 1 ? "" : "s", added.already_there);
}

Page book_backup_page(std::string_view book, std::string_view backup) {
  return brief_page("book backup", fmt::format("backed up to {}\n", backup),
                    {{"book", book}, {"backup", backup}});
}

Page book_restore_page(std::string_view book, std::string_view backup, bool is_new) {
  const std::string what =
      is_new ? "was not there: it is a new file now, as it was in" : "is again what it was in";
  return brief_page("book restore", fmt::format("{} {} {}\n", book, what, backup),
                    {{"book", book}, {"backup", backup}, {"is_new", is_new}});
}

Page book_check_page(std::string_view book, std::string_view damage) {
  return brief_page("book check", damage.empty() ? fmt::format("{}: ok\n", book) : "",
                    {{"book", book}, {"sound", damage.empty()}, {"damage", damage}});
}

Page book_scores_page(const std::vector<BookScore>& scores) {
  Page page("book score");
  PageTable table("scores", {{"routine", "routine", Align::words, Wraps::yes},
                             for_programs("event"),
                             for_programs("what"),
                             {"date", "date"},
                             {"title", "panel", Align::words, Wraps::yes},
                             for_programs("set"),
                             {"estimate", "estimate", Align::amount},
                             {"recorded", "recorded", Align::amount},
                             {"difference", "difference", Align::amount},
                             {"announced", "announced", Align::amount},
                             for_programs("note")});
  table.in_csv = true;
  table.hides_empty_columns = true;
  for (const BookScore& one : scores) {
    const Totals& of = one.totals;
    table.add({one.routine, one.event, "panel", one.date, one.title, one.set, text_of(of.estimate, of.places),
               text_of(of.recorded, of.places), signed_text(of.difference, of.places),
               text_of(of.announced, of.places), one.note});
  }
  page.add(std::move(table));
  page.apart();
  page.list("", notes_of(scores));
  return page;
}

Page book_editions_page(const std::vector<BookEdition>& editions) {
  Page page("book editions");
  PageTable table("editions", {{"number", "no.", Align::amount},
                               {"set", "value set"},
                               for_programs("title"),
                               {"edition", "edition"},
                               {"kept_at", "kept"},
                               for_programs("first_for"),
                               {"routines", "routines", Align::amount},
                               {"versions", "versions", Align::amount},
                               {"runs", "runs", Align::amount},
                               {"panels", "panels", Align::amount}});
  table.in_csv = true;
  table.hides_empty_columns = true;
  for (const BookEdition& one : editions)
    table.add({one.number, one.set, one.title, one.edition, Entry(one.kept_at.substr(0, 10), one.kept_at),
               one.first_for, one.routines, one.versions, one.runs, one.panels});
  page.add(std::move(table));
  return page;
}

}  // namespace landdrill::report
