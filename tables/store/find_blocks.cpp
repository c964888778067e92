#include <algorithm>
#include <iterator>
#include <sstream>

#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/store/book.h"
#include "tables/store/database.h"

namespace landdrill {

using namespace store;

constexpr std::string_view words_of_what[] = {"routine", "run", "panel"};

std::string_view word_of(Block::What what) {
  return words_of_what[static_cast<std::size_t>(what)];
}

namespace {

// Of a wish, but for its words and its versions. All versions of a name follow each other.
constexpr std::string_view select_blocks =
    "SELECT b.id, b.what, r.title, r.event, b.date, b.title, b.kept_at, b.version, "
    "coalesce(b.of_routine, 0), coalesce(v.version, 0), (SELECT max(version) FROM block WHERE "
    "routine_id = r.id AND title = '' AND what = 'routine' AND date = ''), b.edition_id, e.name "
    "FROM block b JOIN routine r ON r.id = b.routine_id JOIN edition e ON e.id = b.edition_id "
    "LEFT JOIN block v ON v.id = b.of_routine WHERE (?1 = '' OR b.what = ?1) AND (?2 = '' OR b.date >= ?2) "
    "AND (?3 = '' OR (b.date <> '' AND b.date <= ?3)) AND (?4 = '' OR r.event = ?4) "
    "ORDER BY r.title, r.event, b.what <> 'routine', b.date, b.title, b.what, b.version";

KeptBlock block_in(const Statement& row) {
  KeptBlock block;
  block.id = row.number(0);
  block.what = words::value_of<Block::What>(words_of_what, row.view(1)).value_or(Block::What::panel);
  block.routine = row.text(2);
  block.event = row.text(3);
  block.date = row.text(4);
  block.title = row.text(5);
  block.kept_at = row.text(6);
  block.version = static_cast<int>(row.number(7));
  block.of_routine = row.number(8);
  block.of_version = static_cast<int>(row.number(9));
  block.routine_versions = static_cast<int>(row.number(10));
  block.edition = row.number(11);
  block.set = row.text(12);
  return block;
}

bool same_name(const KeptBlock& a, const KeptBlock& b) {
  return a.routine == b.routine && a.event == b.event && a.what == b.what && a.date == b.date &&
         a.title == b.title;
}

// A wish finds all versions of a name or none, so the last one that was found is the latest.
void count_versions(std::vector<KeptBlock>& in_order) {
  for (std::size_t i = in_order.size(); i-- > 0;) {
    const bool latest = i + 1 == in_order.size() || !same_name(in_order[i], in_order[i + 1]);
    in_order[i].versions = latest ? in_order[i].version : in_order[i + 1].versions;
  }
}

// A run counts with the first version that had it, whatever it is called beside later ones.
void count_with_first(std::vector<KeptBlock>& in_order) {
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

// In small letters.
std::vector<std::string> words_of(std::string_view wish) {
  std::istringstream words{words::lower(wish)};
  return {std::istream_iterator<std::string>(words), {}};
}

bool has_all(const std::vector<std::string>& words, std::string_view routine, std::string_view title) {
  const std::string titles = words::lower(routine) + "\n" + words::lower(title);
  return std::all_of(words.begin(), words.end(),
                     [&](const std::string& word) { return titles.find(word) != std::string::npos; });
}

}  // namespace

Result<std::vector<KeptBlock>> Book::find(const BookWish& wish) const {
  Database& db = *season_.db_;
  return reading(db, [&] {
    const std::vector<std::string> words = words_of(wish.words);
    std::vector<KeptBlock> found;
    Statement rows(db, select_blocks, wish.what ? word_of(*wish.what) : std::string_view(), wish.from,
                   wish.until, wish.event);
    while (rows.next())
      if (has_all(words, rows.view(2), rows.view(5))) found.push_back(block_in(rows));
    count_versions(found);
    if (!wish.all_versions) {
      count_with_first(found);
      std::erase_if(found, [](const KeptBlock& one) { return one.version != one.versions; });
    }
    return found;
  });
}

}  // namespace landdrill
