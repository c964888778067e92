// Editions of value sets in the season book, and what was swum under each.
#include <fmt/format.h>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/page.h"
#include "engine/report/pages/book.h"
#include "engine/season/swum_under.h"
#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {
namespace {

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
