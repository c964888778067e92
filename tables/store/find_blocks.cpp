#include "tables/store/find_blocks.h"

#include <algorithm>
#include <tuple>

#include "grammar/words.h"

namespace landdrill::store {
namespace {

Block::What what_from(std::string_view word) {
  for (const Block::What what : {Block::What::routine, Block::What::run}) {
    if (word == word_of(what)) return what;
  }
  return Block::What::panel;
}

const std::string select_blocks =
    "SELECT b.id, b.what, r.title, r.event, b.date, b.title, b.kept_at, b.version, "
    "(SELECT max(v.version) FROM block v WHERE v.routine_id = b.routine_id AND v.what = b.what AND v.date = "
    "b.date "
    "AND v.title = b.title) AS versions, coalesce(b.of_routine, 0), e.id, e.name, "
    "coalesce((SELECT h.version FROM block h WHERE h.id = b.of_routine), 0) "
    "FROM block b JOIN routine r ON r.id = b.routine_id JOIN edition e ON e.id = b.edition_id ";

KeptBlock block_from(const Statement& row) {
  KeptBlock block;
  block.id = row.number(0);
  block.what = what_from(row.text(1));
  block.routine = row.text(2);
  block.event = row.text(3);
  block.date = row.text(4);
  block.title = row.text(5);
  block.kept_at = row.text(6);
  block.version = static_cast<int>(row.number(7));
  block.versions = static_cast<int>(row.number(8));
  block.of_routine = row.number(9);
  block.edition = row.number(10);
  block.set = row.text(11);
  block.of_version = static_cast<int>(row.number(12));
  return block;
}

// Of a wish, but for its words and its order.
const std::string fits_the_wish =
    "(? OR b.version = versions) AND (?2 = '' OR b.what = ?2) AND (?3 = '' OR r.event = ?3) AND "
    "(?4 = '' OR b.date >= ?4) AND (?5 = '' OR (b.date <> '' AND b.date <= ?5)) ";

bool in_order(const KeptBlock& a, const KeptBlock& b) {
  const auto rank = [](const KeptBlock& block) {
    return std::make_tuple(std::string_view(block.routine), std::string_view(block.event),
                           block.what != Block::What::routine, std::string_view(block.date),
                           std::string_view(block.title), word_of(block.what), block.version);
  };
  return rank(a) < rank(b);
}

std::string in_small_letters(std::string text) {
  for (char& letter : text) letter = words::lower(letter);
  return text;
}

std::vector<std::string> words_of(std::string_view wish) {
  std::vector<std::string> list;
  std::size_t at = 0;
  while ((at = wish.find_first_not_of(" \t", at)) != std::string_view::npos) {
    const std::size_t end = std::min(wish.find_first_of(" \t", at), wish.size());
    list.push_back(in_small_letters(std::string(wish.substr(at, end - at))));
    at = end;
  }
  return list;
}

std::vector<std::string> words_not_in(std::string title, std::vector<std::string> words) {
  title = in_small_letters(std::move(title));
  std::erase_if(words, [&](const std::string& word) { return title.find(word) != std::string::npos; });
  return words;
}

// Finds blocks without looking at each: a routine's title, and each title of its runs and panels, is looked
// at once.
class Finding {
 public:
  Finding(Database& db, const BookWish& wish)
      : wish_(wish),
        what_(wish.what ? word_of(*wish.what) : std::string_view()),
        all_(db, select_blocks + "WHERE " + fits_the_wish),
        of_routine_(db, select_blocks + "WHERE " + fits_the_wish + "AND b.routine_id = ?6"),
        of_title_(db, select_blocks + "WHERE " + fits_the_wish + "AND b.routine_id = ?6 AND b.title = ?7"),
        next_title_(db, "SELECT min(title) FROM block WHERE routine_id = ? AND title > ?"),
        routines_(db, "SELECT id, title FROM routine") {}

  std::vector<KeptBlock> find() {
    const std::vector<std::string> words = words_of(wish_.words);
    const bool routines_alone = wish_.what == Block::What::routine;
    if (words.empty() && !routines_alone) {
      take(all_);
    } else {
      while (routines_.next())
        find_in(routines_.number(0), words_not_in(routines_.text(1), words), routines_alone);
    }
    std::sort(found_.begin(), found_.end(), in_order);
    return std::move(found_);
  }

 private:
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
    rows.start(wish_.all_versions ? 1 : 0, what_, wish_.event, wish_.from, wish_.until, values...);
    while (rows.next()) found_.push_back(block_from(rows));
  }

  const BookWish& wish_;
  const std::string what_;
  Statement all_, of_routine_, of_title_, next_title_, routines_;
  std::vector<KeptBlock> found_;
};

}  // namespace

std::vector<KeptBlock> find_blocks(Database& db, const BookWish& wish) {
  return Finding(db, wish).find();
}

}  // namespace landdrill::store
