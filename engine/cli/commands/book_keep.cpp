#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/season/kept_sheets.h"
#include "engine/season/swum_versions.h"
#include "grammar/words.h"
#include "tables/folder.h"

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
  print_page(call, report::book_restore_page(file, backup, is_new));
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
  const std::vector<std::string> all = pieces(wanted, " ");
  return std::all_of(all.begin(), all.end(),
                     [&](const std::string& word) { return names.find(words::lower(word)) != names.npos; });
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

// Puts panels that are in the season book to another version of their routine.

namespace {

class Moving {
 public:
  Moving(Call& call, Book& book, int version) : call_(call), book_(book), kept_(book), version_(version) {}

  Exit move(BookWish wish) {
    wish.what = Block::What::panel;
    auto hold = book_.hold();
    if (!hold) return refuse(call_, hold.error());
    const auto panels = book_.find(wish);
    if (!panels) return refuse(call_, panels.error());
    if (panels->empty()) {
      nothing_found(call_, book_, wish);
      return Exit::errors;
    }
    std::vector<Block> blocks;
    bool all_fit = true;
    for (const KeptBlock& panel : *panels) {
      auto block = moved(panel);
      if (!block) return refuse(call_, block.error());
      all_fit = all_fit && block->of != 0;
      blocks.push_back(std::move(*block));
    }
    if (!all_fit) {
      call_.streams.say("landdrill: nothing was changed\n");
      return Exit::errors;
    }
    const auto added = book_.add(blocks, {});
    if (!added) return refuse(call_, added.error());
    if (const auto kept = hold->commit(); !kept) return refuse(call_, kept.error());
    tell_added(call_, what_was_added(call_, blocks, *added));
    return Exit::ok;
  }

 private:
  // Without a version when it cannot belong to the wished one, which is said.
  Result<Block> moved(const KeptBlock& panel) {
    const auto text = book_.text(panel.id);
    if (!text) return tl::unexpected(text.error());
    Block block{Block::What::panel, panel.routine, panel.event, panel.date, panel.title, *text, 0};
    const auto routine = version_of(panel);
    if (!routine) return tl::unexpected(routine.error());
    if (!*routine) {
      call_.streams.say(fmt::format(
          "landdrill: found no version {} of {}, {}; expected {}\n", version_, panel.routine, panel.event,
          panel.routine_versions == 1 ? std::string("1, for there is one version of it")
                                      : fmt::format("a number from 1 to {}", panel.routine_versions)));
      return block;
    }
    const auto sheet = kept_.read_alone(panel, **routine);
    if (!sheet) return tl::unexpected(sheet.error());
    if ((*sheet)->sheet.ok()) {
      block.of = (*routine)->id;
    } else {
      call_.streams.say(fmt::format("landdrill: the panel of {} \"{}\" does not fit version {} of {}:\n{}",
                                    panel.date, panel.title, version_, panel.routine,
                                    to_string((*sheet)->sheet.messages())));
    }
    return block;
  }

  Result<std::optional<KeptBlock>> version_of(const KeptBlock& panel) const {
    BookWish routines{panel.routine, Block::What::routine, panel.event, "", "", true};
    const auto found = book_.find(routines);
    if (!found) return tl::unexpected(found.error());
    for (const KeptBlock& one : *found)
      if (one.routine == panel.routine && one.version == version_) return one;
    return std::nullopt;
  }

  Call& call_;
  Book& book_;
  KeptSheets kept_;
  const int version_;
};

}  // namespace

Exit book_swum_as(Call& call) {
  const std::string& number = call.given.operands[1];
  const int version = version_number(number);
  if (version == 0)
    return misused(
        call, fmt::format("found {}; expected the number of a version of the routine, such as 1", number));
  const auto wish = book_wish(call, 2);
  if (!wish) return misused(call, wish.error());
  if (wish->words.empty() && wish->from.empty() && wish->until.empty())
    return misused(call, "which panels? Expected words of their titles, or --from and --until");
  auto season = open_book(call, Season::Mode::write);
  if (!season) return refuse(call, season.error());
  Book book(*season);
  return Moving(call, book, version).move(*wish);
}

}  // namespace landdrill::cli
