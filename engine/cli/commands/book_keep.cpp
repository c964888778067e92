// The season book as a file: backed up, restored, looked through for damage.
#include <fmt/format.h>

#include "engine/cli/book_file.h"

namespace landdrill::cli {

Exit book_backup(Call& call) {
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const std::string& to = call.given.operands[1];
  if (const auto done = Book(*season).back_up(to); !done) return refuse(call, done.error());
  call.streams.out.write(fmt::format("backed up to {}\n", to));
  return Exit::ok;
}

Exit book_restore(Call& call) {
  const std::string& backup = call.given.operands[1];
  auto season = open_book(call, Season::Mode::create);
  if (!season) return refuse(call, season.error());
  if (const auto done = Book(*season).restore(backup); !done) return refuse(call, done.error());
  call.streams.out.write(fmt::format("{} is again what it was in {}\n", call.given.operands[0], backup));
  return Exit::ok;
}

Exit book_check(Call& call) {
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  if (const auto sound = season->check(); !sound) {
    refuse(call, sound.error());
    call.streams.say(
        fmt::format("  or go back to your latest backup: landdrill book restore {0} BACKUP\n"
                    "  what can still be read: landdrill book export {0} --all > saved.sheet\n",
                    call.given.operands[0]));
    return Exit::environment;
  }
  call.streams.out.write(fmt::format("{}: ok\n", call.given.operands[0]));
  return Exit::ok;
}

}  // namespace landdrill::cli
