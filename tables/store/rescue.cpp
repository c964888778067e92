#include "tables/store/rescue.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "tables/store/keep_blocks.h"
#include "tables/store/refusal.h"

namespace landdrill::store {
namespace {

// So many entries in a row that are not there are taken for the end of the book, where its index cannot say.
constexpr std::int64_t longest_gap = 10'000;

struct BookEntry {
  std::string what, date, title;
  std::int64_t id = 0, routine = 0, version = 0, home = 0;
  std::string text;
  auto place() const { return std::tie(what, date, title); }
};

std::string name_of(std::string_view what, std::string_view date, std::string_view title,
                    std::string_view routine) {
  if (what == "routine") return fmt::format("the routine {}", routine);
  return fmt::format("the {} {}{} of {}", what, date,
                     title.empty() ? std::string() : fmt::format(" \"{}\"", title), routine);
}

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
    while (!saved_.lost.empty() && unnamed_after(last_read)) saved_.lost.pop_back();
    saved_.lost.push_back(fmt::format("perhaps more after entry {}", last_read));
  }

  // Of ids that nobody has ever seen it is not known that there was anything.
  bool unnamed_after(std::int64_t id) {
    if (lost_ids_.empty() || lost_ids_.back() <= id || names_.count(lost_ids_.back()) > 0) return false;
    lost_ids_.pop_back();
    return true;
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
    saved_.lost.push_back(name == names_.end() ? fmt::format("entry {}", id) : name->second);
    lost_ids_.push_back(id);
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
    leave_out_what_need_not_be_told();
    std::map<std::int64_t, std::vector<const BookEntry*>> of_version;
    for (const BookEntry& one : entries_)
      if (one.home != 0) of_version[one.home].push_back(&one);
    for (const BookEntry& one : entries_) {
      if (one.what != "routine") continue;
      add_sheets(one, of_version[one.id]);
      of_version.erase(one.id);
    }
    for (const auto& [version, without_routine] : of_version) add_as_comments(without_routine);
  }

  // The entries are sorted: those of one name follow each other, oldest first.
  void leave_out_what_need_not_be_told() {
    for (std::size_t first = 0, end = 0; first < entries_.size(); first = end) {
      std::vector<Wording> wordings;
      const auto belongs = [&](const BookEntry& one) {
        return one.routine == entries_[first].routine && one.place() == entries_[first].place() &&
               (one.what == "panel" || one.home == entries_[first].home);
      };
      for (end = first; end < entries_.size() && belongs(entries_[end]); ++end)
        wordings.push_back({entries_[end].home, entries_[end].text});
      const std::vector<bool> told = wordings_to_tell(wordings);
      for (std::size_t i = first; i < end; ++i)
        if (!told[i - first] && entries_[i].what != "routine") entries_[i].home = 0;
    }
  }

  void add_sheets(const BookEntry& routine, const std::vector<const BookEntry*>& swum) {
    const std::size_t first = saved_.sheets.size();
    saved_.sheets.push_back(routine.text);
    std::size_t turn = 0;
    for (std::size_t i = 0; i < swum.size(); ++i) {
      turn = i > 0 && swum[i - 1]->place() == swum[i]->place() ? turn + 1 : 0;
      if (first + turn == saved_.sheets.size()) saved_.sheets.push_back(routine.text);
      saved_.sheets[first + turn] += "\n" + swum[i]->text;
    }
  }

  // Without its routine a panel would be taken for one of the routine above it.
  void add_as_comments(const std::vector<const BookEntry*>& swum) {
    std::string text = fmt::format("# These belong to a version of {} that cannot be read.\n",
                                   title_of(swum.front()->routine));
    for (const BookEntry* one : swum) {
      for (std::size_t at = 0; at < one->text.size();) {
        const std::size_t end = std::min(one->text.find('\n', at), one->text.size());
        text += "# " + one->text.substr(at, end - at) + "\n";
        at = end + 1;
      }
    }
    saved_.sheets.push_back(std::move(text));
  }

  Database& db_;
  Rescued saved_;
  std::map<std::int64_t, std::string> titles_, names_;
  std::vector<std::int64_t> lost_ids_;
  std::vector<BookEntry> entries_;
};

}  // namespace

Rescued rescue(Database& db) {
  return Rescue(db).save();
}

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
