#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <map>
#include <sstream>

#include "tables/folder.h"
#include "tables/store/book.h"
#include "tables/store/database.h"
#include "tables/store/refusal.h"

namespace landdrill::store {
namespace {

// So many entries in a row that are not there are taken for the end of the book, where its index cannot say.
constexpr std::int64_t longest_gap = 10'000;

std::string name_of(std::string_view what, std::string_view date, std::string_view title,
                    std::string_view routine) {
  if (what == "routine") return fmt::format("the routine {}", routine);
  return fmt::format("the {} {}{} of {}", what, date,
                     title.empty() ? std::string() : fmt::format(" \"{}\"", title), routine);
}

// Of a run what it is called beside another version of its routine is another story.
bool same_entry(const BookEntry& a, const BookEntry& b) {
  return a.routine == b.routine && a.place() == b.place() && (a.what == "panel" || a.home == b.home);
}

}  // namespace

// Versions of a routine are told one after the other, so words that gave way to words beside an earlier
// version would come after those and win; and the same words told twice would stay where they were first.
void leave_out_what_need_not_be_told(std::vector<BookEntry>& entries) {
  const BookEntry* next = nullptr;  // that is told
  for (auto one = entries.rbegin(); one != entries.rend(); ++one) {
    if (next != nullptr && same_entry(*one, *next) && (one->home > next->home || one->text == next->text))
      one->home = 0;
    else
      next = &*one;
  }
}

std::vector<std::string> sheets_of(const std::string& routine, const std::vector<BookEntry>& swum) {
  std::vector<std::string> sheets{routine};
  std::size_t turn = 0;
  for (std::size_t i = 0; i < swum.size(); ++i) {
    turn = i > 0 && swum[i - 1].place() == swum[i].place() ? turn + 1 : 0;
    if (turn == sheets.size()) sheets.push_back(routine);
    sheets[turn] += "\n" + swum[i].text;
  }
  return sheets;
}

namespace {

// Reads entry by entry, so that one damaged page costs what stands on it and no more.
class Rescue {
 public:
  explicit Rescue(Database& db) : db_(db) {}

  Rescued save() {
    read_titles();
    const bool whole = read_names();
    if (whole) {
      for (const auto& [id, name] : names_) read(id);
    } else {
      read_until_nothing_is_there();
    }
    put_together();
    return std::move(saved_);
  }

 private:
  // Each row, until one cannot be read; whether all could.
  template <class Take>
  bool each_row(std::string_view sql, Take take) {
    try {
      Statement rows(db_, sql);
      while (rows.next()) take(rows);
      return true;
    } catch (const Refused&) {
      return false;
    }
  }

  void read_titles() {
    each_row("SELECT id, title FROM routine", [&](Statement& row) { titles_[row.number(0)] = row.text(1); });
  }

  // From the index, which may be sound where the entries are not.
  bool read_names() {
    return each_row(
        "SELECT id, routine_id, what, date, title, version FROM block INDEXED BY sqlite_autoindex_block_1",
        [&](Statement& row) {
          names_[row.number(0)] = name_of(row.text(2), row.text(3), row.text(4), title_of(row.number(1)));
        });
  }

  std::string title_of(std::int64_t routine) const {
    const auto known = titles_.find(routine);
    return known == titles_.end() ? fmt::format("routine {}", routine) : known->second;
  }

  void read_until_nothing_is_there() {
    const std::int64_t last_named = names_.empty() ? 0 : names_.rbegin()->first;
    std::int64_t last_read = 0;
    for (std::int64_t id = 1; id <= std::max(last_read, last_named) + longest_gap; ++id)
      if (read(id)) last_read = id;
    // Of ids that nobody has ever seen it is not known that there was anything.
    std::erase_if(lost_,
                  [&](const auto& one) { return one.first > last_read && !names_.contains(one.first); });
    lost_[std::numeric_limits<std::int64_t>::max()] = fmt::format("perhaps more after entry {}", last_read);
  }

  bool read(std::int64_t id) {
    try {
      Statement row(db_,
                    "SELECT what, date, title, routine_id, version, coalesce(of_routine, 0), text, "
                    "checksum IS NULL OR checksum = checksum_of(text) FROM block WHERE id = ?",
                    id);
      if (!row.next()) return false;
      if (row.number(7) != 0) {
        entries_.push_back({row.text(0), row.text(1), row.text(2), id, row.number(3), row.number(4),
                            row.number(5), row.text(6)});
        return true;
      }
    } catch (const Refused&) {
    }
    const auto name = names_.find(id);
    lost_[id] = name == names_.end() ? fmt::format("entry {}", id) : name->second;
    return false;
  }

  void put_together() {
    std::sort(entries_.begin(), entries_.end(), [](const BookEntry& a, const BookEntry& b) {
      const auto rank = [](const BookEntry& one) {
        return std::make_tuple(one.routine, one.what == "panel", one.place(),
                               one.what == "run" ? one.home : 0, one.version);
      };
      return rank(a) < rank(b);
    });
    leave_out_what_need_not_be_told(entries_);
    std::map<std::int64_t, std::vector<BookEntry>> of_version;
    for (const BookEntry& one : entries_)
      if (one.home != 0) of_version[one.home].push_back(one);
    for (const BookEntry& one : entries_) {
      if (one.what != "routine") continue;
      for (std::string& sheet : sheets_of(one.text, of_version[one.id]))
        saved_.sheets.push_back(std::move(sheet));
      of_version.erase(one.id);
    }
    for (const auto& [version, without_routine] : of_version) add_as_comments(without_routine);
    for (auto& [id, name] : lost_) saved_.lost.push_back(std::move(name));
  }

  // Without its routine a panel would be taken for one of the routine above it.
  void add_as_comments(const std::vector<BookEntry>& swum) {
    std::string text = fmt::format("# These belong to a version of {} that cannot be read.\n",
                                   title_of(swum.front().routine));
    for (const BookEntry& one : swum) {
      std::istringstream lines(one.text);
      for (std::string line; std::getline(lines, line);) text += "# " + line + "\n";
    }
    saved_.sheets.push_back(std::move(text));
  }

  Database& db_;
  Rescued saved_;
  std::map<std::int64_t, std::string> titles_, names_, lost_;
  std::vector<BookEntry> entries_;
};

}  // namespace

std::string name_of_entry(Database& db, std::int64_t id) {
  Statement row(db,
                "SELECT b.what, b.date, b.title, r.title FROM block b JOIN routine r ON r.id = b.routine_id "
                "WHERE b.id = ?",
                id);
  return row.next() ? name_of(row.text(0), row.text(1), row.text(2), row.text(3))
                    : fmt::format("entry {}", id);
}

std::vector<std::string> damaged_texts(Database& db) {
  std::vector<std::string> damaged;
  Statement blocks(
      db,
      "SELECT b.what, b.date, b.title, r.title FROM block b JOIN routine r ON r.id = b.routine_id "
      "WHERE b.checksum <> checksum_of(b.text) ORDER BY b.id");
  while (blocks.next())
    damaged.push_back(name_of(blocks.text(0), blocks.text(1), blocks.text(2), blocks.text(3)));
  Statement files(
      db,
      "SELECT f.file, e.name, e.kept_at FROM edition_file f JOIN edition e ON e.id = f.edition_id "
      "WHERE f.checksum <> checksum_of(f.text) ORDER BY e.id, f.position");
  while (files.next())
    damaged.push_back(
        fmt::format("{} of the edition of {} kept {}", files.text(0), files.text(1), files.text(2)));
  return damaged;
}

}  // namespace landdrill::store

namespace landdrill {

Result<Rescued> Book::rescue() const {
  return store::attempt([&] { return store::Rescue(*season_.db_).save(); });
}

}  // namespace landdrill
