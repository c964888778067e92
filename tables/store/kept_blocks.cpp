#include "tables/store/kept_blocks.h"

#include <algorithm>
#include <map>
#include <span>
#include <tuple>
#include <unordered_map>

#include "grammar/words.h"
#include "tables/store/database.h"

namespace landdrill {

std::string_view word_of(Block::What what) {
  constexpr std::string_view words[] = {"routine", "run", "panel"};
  return words[static_cast<std::size_t>(what)];
}

bool StoredText::sound() const {
  return !checksum || *checksum == store::checksum_of(text);
}

}  // namespace landdrill

namespace landdrill::store {
namespace {

Block::What what_from(std::string_view word) {
  for (const Block::What what : {Block::What::routine, Block::What::run}) {
    if (word == word_of(what)) return what;
  }
  return Block::What::panel;
}

// Of a wish, but for its words, its event and its versions.
const std::string select_blocks =
    "SELECT id, routine_id, what, date, title, kept_at, version, coalesce(of_routine, 0), edition_id FROM "
    "block WHERE (?1 = '' OR what = ?1) AND (?2 = '' OR date >= ?2) AND (?3 = '' OR (date <> '' AND date <= "
    "?3)) ";

// Of one routine: all versions of a name follow each other.
bool in_order(const KeptBlock& a, const KeptBlock& b) {
  const auto rank = [](const KeptBlock& block) {
    return std::make_tuple(block.what != Block::What::routine, std::string_view(block.date),
                           std::string_view(block.title), word_of(block.what), block.version);
  };
  return rank(a) < rank(b);
}

bool same_name(const KeptBlock& a, const KeptBlock& b) {
  return a.what == b.what && a.date == b.date && a.title == b.title;
}

// A wish finds all versions of a name or none, so the last one that was found is the latest.
void count_versions(std::span<KeptBlock> in_order) {
  for (std::size_t i = in_order.size(); i-- > 0;) {
    const bool latest = i + 1 == in_order.size() || !same_name(in_order[i], in_order[i + 1]);
    in_order[i].versions = latest ? in_order[i].version : in_order[i + 1].versions;
  }
}

// A run counts with the first version that had it, whatever it is called beside later ones.
void count_with_first(std::span<KeptBlock> in_order) {
  for (std::size_t i = 1; i < in_order.size(); ++i) {
    KeptBlock& block = in_order[i];
    const KeptBlock& before = in_order[i - 1];
    if (block.what != Block::What::run || !same_name(before, block) || block.of_version < before.of_version)
      continue;
    block.of_routine = before.of_routine;
    block.of_version = before.of_version;
    block.edition = before.edition;
    block.set = before.set;
  }
}

// Finds blocks without looking at each: a routine's title, and each title of its runs and panels, is looked
// at once.
class Finding {
 public:
  Finding(Database& db, const BookWish& wish)
      : wish_(wish),
        what_(wish.what ? word_of(*wish.what) : std::string_view()),
        all_(db, select_blocks),
        of_routine_(db, select_blocks + "AND routine_id = ?4"),
        of_title_(db, select_blocks + "AND routine_id = ?4 AND title = ?5"),
        next_title_(db, "SELECT min(title) FROM block WHERE routine_id = ? AND title > ?"),
        routines_(db, "SELECT id, title, event FROM routine ORDER BY title, event"),
        edition_(db, "SELECT name FROM edition WHERE id = ?"),
        version_(db, "SELECT version FROM block WHERE id = ?"),
        versions_(db,
                  "SELECT max(version) FROM block WHERE routine_id = ? AND title = '' AND what = 'routine' "
                  "AND date = ''") {}

  std::vector<KeptBlock> find() {
    while (routines_.next()) {
      if (!wish_.event.empty() && routines_.text(2) != wish_.event) continue;
      homes_.push_back({routines_.number(0), routines_.text(1), routines_.text(2), {}});
    }
    for (Home& home : homes_) by_id_[home.id] = &home;
    const std::vector<std::string> words = words_of(wish_.words);
    const bool routines_alone = wish_.what == Block::What::routine;
    if (words.empty() && !routines_alone) {
      take(all_);
    } else {
      for (const Home& home : homes_) find_in(home.id, words_not_in(home.title, words), routines_alone);
    }
    return in_the_order_of_the_book();
  }

 private:
  // A routine with what was found of it.
  struct Home {
    std::int64_t id = 0;
    std::string title, event;
    std::vector<KeptBlock> found;
  };

  void find_in(std::int64_t routine, const std::vector<std::string>& words, bool routines_alone) {
    if (routines_alone) {  // which have no title of their own
      if (words.empty()) take(of_title_, routine, "");
    } else if (words.empty()) {
      take(of_routine_, routine);
    } else {
      find_titles(routine, words);
    }
  }

  void find_titles(std::int64_t routine, const std::vector<std::string>& words) {
    std::string title;
    while (true) {
      next_title_.start(routine, title);
      if (!next_title_.next() || next_title_.is_null(0)) break;
      title = next_title_.text(0);
      if (words_not_in(title, words).empty()) take(of_title_, routine, title);
    }
  }

  template <class... Values>
  void take(Statement& rows, const Values&... values) {
    rows.start(what_, wish_.from, wish_.until, values...);
    while (rows.next()) {
      const auto home = by_id_.find(rows.number(1));
      if (home != by_id_.end()) put_in(home->second->found.emplace_back(), rows, *home->second);
    }
  }

  void put_in(KeptBlock& block, const Statement& row, const Home& home) {
    block.id = row.number(0);
    block.what = what_from(row.view(2));
    block.routine = home.title;
    block.event = home.event;
    block.date = row.text(3);
    block.title = row.text(4);
    block.kept_at = row.text(5);
    block.version = static_cast<int>(row.number(6));
    block.of_routine = row.number(7);
    block.edition = row.number(8);
    block.set = set_of(block.edition);
    block.of_version = version_of(block.of_routine);
  }

  const std::string& set_of(std::int64_t edition) {
    const auto [known, is_new] = sets_.try_emplace(edition);
    if (is_new) {
      edition_.start(edition);
      if (edition_.next()) known->second = edition_.text(0);
    }
    return known->second;
  }

  int version_of(std::int64_t routine) {
    const auto [known, is_new] = numbers_.try_emplace(routine);
    if (is_new) {
      version_.start(routine);
      if (version_.next()) known->second = static_cast<int>(version_.number(0));
    }
    return known->second;
  }

  int versions_of(std::int64_t routine) {
    versions_.start(routine);
    return versions_.next() ? static_cast<int>(versions_.number(0)) : 0;
  }

  std::vector<KeptBlock> in_the_order_of_the_book() {
    std::vector<KeptBlock> all;
    std::size_t found = 0;
    for (const Home& home : homes_) found += home.found.size();
    all.reserve(found);
    for (Home& home : homes_) {
      // As a rule they came in this order.
      if (!std::is_sorted(home.found.begin(), home.found.end(), in_order))
        std::sort(home.found.begin(), home.found.end(), in_order);
      count_versions(home.found);
      if (!wish_.all_versions) count_with_first(home.found);
      const int versions = home.found.empty() ? 0 : versions_of(home.id);
      for (KeptBlock& block : home.found) block.routine_versions = versions;
      for (KeptBlock& block : home.found)
        if (wish_.all_versions || block.version == block.versions) all.push_back(std::move(block));
      home.found.clear();
    }
    return all;
  }

  const BookWish& wish_;
  const std::string what_;
  Statement all_, of_routine_, of_title_, next_title_, routines_, edition_, version_, versions_;
  std::vector<Home> homes_;                        // in the order of the book
  std::unordered_map<std::int64_t, Home*> by_id_;  // of routines
  std::map<std::int64_t, std::string> sets_;       // names, by edition
  std::map<std::int64_t, int> numbers_;            // of versions of routines
};

}  // namespace

std::vector<std::string> words_of(std::string_view wish) {
  std::vector<std::string> list;
  std::size_t at = 0;
  while ((at = wish.find_first_not_of(" \t", at)) != std::string_view::npos) {
    const std::size_t end = std::min(wish.find_first_of(" \t", at), wish.size());
    list.push_back(words::lower(wish.substr(at, end - at)));
    at = end;
  }
  return list;
}

std::vector<std::string> words_not_in(std::string title, std::vector<std::string> words) {
  title = words::lower(title);
  std::erase_if(words, [&](const std::string& word) { return title.find(word) != std::string::npos; });
  return words;
}

std::vector<KeptBlock> find_blocks(Database& db, const BookWish& wish) {
  return Finding(db, wish).find();
}

}  // namespace landdrill::store
