#include <fmt/format.h>

#include <filesystem>
#include <fstream>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/season/swum_versions.h"
#include "grammar/words.h"

namespace landdrill::cli {

// The season book as a file: backed up, restored, looked through for damage.

namespace {

// Whether it was a season file, whatever has become of it.
bool starts_as_database(const std::string& file) {
  constexpr std::string_view mark = "SQLite format 3";
  std::string start(mark.size(), ' ');
  return std::ifstream(file, std::ios::binary)
             .read(start.data(), static_cast<std::streamsize>(start.size())) &&
         start == mark;
}

}  // namespace

Exit book_backup(Call& call) {
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const std::string& to = call.given.operands[1];
  std::error_code ignored;
  if (std::filesystem::is_directory(to, ignored))
    return refuse(
        call, {to, "it is a folder",
               "name the new file in it, such as " + (std::filesystem::path(to) / "club.season").string()});
  if (const auto done = Book(*season).back_up(to); !done) return refuse(call, done.error());
  print_page(call, report::book_backup_page(call.given.operands[0], to));
  return Exit::ok;
}

Exit book_restore(Call& call) {
  const std::string& file = call.given.operands[0];
  const std::string& backup = call.given.operands[1];
  std::error_code ignored;
  const bool is_new = !std::filesystem::exists(file, ignored);
  // No new file is left by a backup that cannot be read.
  if (is_new) {
    if (const auto readable = Season::open(backup, Season::Mode::read); !readable)
      return refuse(call, readable.error());
  }
  auto season = open_book(call, Season::Mode::create);
  if (!season) return refuse(call, season.error());
  if (const auto done = Book(*season).restore(backup); !done) return refuse(call, done.error());
  print_page(call, report::book_restore_page({file, backup, is_new}));
  return Exit::ok;
}

Exit book_check(Call& call) {
  const std::string& file = call.given.operands[0];
  auto season = open_book(call, Season::Mode::read);
  if (!season) {
    refuse(call, season.error());
    if (starts_as_database(file))
      call.streams.say(fmt::format(
          "  or go back to your latest backup: mv {0} {0}.damaged && landdrill book restore {0} BACKUP\n",
          shell_quoted(file)));
    return Exit::environment;
  }
  if (const auto sound = season->check(); !sound) {
    refuse(call, sound.error());
    call.streams.say(
        fmt::format("  or go back to your latest backup: landdrill book restore {0} BACKUP\n"
                    "  what can still be read: landdrill book export {0} --all > saved.sheet\n",
                    shell_quoted(file)));
    print_page(call, report::book_check_page(file, sound.error().why));
    return Exit::environment;
  }
  print_page(call, report::book_check_page(file, {}));
  return Exit::ok;
}

// Editions of value sets in the season book, and what was swum under each.

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
