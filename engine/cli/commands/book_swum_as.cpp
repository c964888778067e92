// Puts panels that are in the season book to another version of their routine.
#include <fmt/format.h>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/season/kept_sheets.h"
#include "tables/folder.h"

namespace landdrill::cli {
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
  const WishRead read = book_wish(call, 2);
  if (!read.mistake.empty()) return misused(call, read.mistake);
  if (read.wish.words.empty() && read.wish.from.empty() && read.wish.until.empty())
    return misused(call, "which panels? Expected words of their titles, or --from and --until");
  auto season = open_book(call, Season::Mode::write);
  if (!season) return refuse(call, season.error());
  Book book(*season);
  return Moving(call, book, version).move(read.wish);
}

}  // namespace landdrill::cli
