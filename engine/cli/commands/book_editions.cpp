// Editions of value sets in the season book, and what was swum under each.
#include <fmt/format.h>

#include <map>
#include <set>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/page.h"
#include "engine/report/pages/book.h"
#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {
namespace {

// What was swum under one edition.
struct SwumUnder {
  std::set<std::pair<std::string, std::string>> routines;  // title and event
  std::set<std::int64_t> versions;
  std::size_t runs = 0, panels = 0;

  void count(const KeptBlock& block) {
    routines.emplace(block.routine, block.event);
    versions.insert(block.what == Block::What::routine ? block.id : block.of_routine);
  }
};

Result<std::map<std::int64_t, SwumUnder>> swum_by_edition(const Book& book, BookWish wish) {
  std::map<std::int64_t, SwumUnder> all;
  wish.all_versions = true;
  const auto found = book.find(wish);
  if (!found) return tl::unexpected(found.error());
  for (const KeptBlock& block : *found) all[block.edition].count(block);
  // What counts is the latest words of a panel, and a run with the first version that had it.
  wish.all_versions = false;
  const auto counting = book.find(wish);
  if (!counting) return tl::unexpected(counting.error());
  for (const KeptBlock& block : *counting) {
    if (block.what == Block::What::run) ++all[block.edition].runs;
    if (block.what == Block::What::panel) ++all[block.edition].panels;
  }
  return all;
}

// Whether the words are those of the edition itself.
bool is_called(const KeptEdition& edition, const std::string& wanted) {
  const std::string names = words::lower(edition.name + " " + edition.title + " " + edition.edition);
  for (std::size_t at = 0; (at = wanted.find_first_not_of(' ', at)) != wanted.npos;) {
    const std::size_t end = std::min(wanted.find(' ', at), wanted.size());
    if (names.find(words::lower(wanted.substr(at, end - at))) == names.npos) return false;
    at = end;
  }
  return true;
}

report::BookEdition edition_line(std::size_t number, const KeptEdition& edition, const SwumUnder& swum) {
  return {number,          edition.name,      edition.title,        edition.edition,
          edition.kept_at, edition.first_for, swum.routines.size(), swum.versions.size(),
          swum.runs,       swum.panels};
}

}  // namespace

Exit book_editions(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    const auto editions = book.editions();
    if (!editions) return refuse(call, editions.error());
    const auto found = swum_by_edition(book, wish);
    if (!found) return refuse(call, found.error());
    BookWish any_words = wish;
    any_words.words.clear();
    const auto of_any_words = swum_by_edition(book, any_words);
    if (!of_any_words) return refuse(call, of_any_words.error());
    std::vector<report::BookEdition> lines;
    for (std::size_t i = 0; i < editions->size(); ++i) {
      const KeptEdition& edition = (*editions)[i];
      const auto& counts = is_called(edition, wish.words) ? *of_any_words : *found;
      const auto its = counts.find(edition.id);
      if (its != counts.end()) lines.push_back(edition_line(i + 1, edition, its->second));
    }
    if (lines.empty()) return nothing_found(call, book, wish);
    print_page(call, report::book_editions_page(lines));
    return Exit::ok;
  });
}

}  // namespace landdrill::cli
