#include "engine/cli/book_file.h"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <set>

#include "engine/report/render.h"
#include "grammar/calendar.h"

namespace landdrill::cli {
namespace {

// The events of the routines in the book, "duet-free, solo-free"; empty when the wanted one is among them.
std::string other_events(const Book& book, const std::string& wanted) {
  BookWish every;
  every.what = Block::What::routine;
  std::set<std::string> events;
  const auto routines = book.find(every);
  if (!routines) return {};
  for (const KeptBlock& one : *routines) events.insert(one.event);
  return events.count(wanted) == 0 ? fmt::format("{}", fmt::join(events, ", ")) : std::string();
}

}  // namespace

Result<Season> open_book(const Call& call, Season::Mode mode) {
  return Season::open(call.given.operands.front(), mode);
}

report::Typed<BookWish> book_wish(const Call& call, std::size_t words) {
  BookWish wish;
  for (std::size_t i = words; i < call.given.operands.size(); ++i)
    wish.words += (i == words ? "" : " ") + call.given.operands[i];
  wish.event = call.given.value("--event");
  wish.from = call.given.value("--from");
  wish.until = call.given.value("--until");
  wish.all_versions = call.given.has("--all");
  for (const std::string& date : {wish.until, wish.from}) {
    if (!date.empty() && !is_written_day(date))
      return tl::unexpected(fmt::format(
          "found the date \"{}\"; expected a day written year-month-day, such as 2026-05-09", date));
  }
  if (!wish.until.empty() && wish.from > wish.until)
    return tl::unexpected(
        fmt::format("found --from {} and --until {}; expected --until to be the same day or later", wish.from,
                    wish.until));
  return wish;
}

Exit with_book(Call& call, const std::function<Exit(const Book&, const BookWish&)>& work) {
  const auto wish = book_wish(call);
  if (!wish) return misused(call, wish.error());
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const Book book(*season);
  return work(book, *wish);
}

Exit nothing_found(Call& call, const Book& book, const BookWish& wish) {
  const std::string events = wish.event.empty() ? std::string() : other_events(book, wish.event);
  if (!events.empty()) {
    call.streams.say(
        fmt::format("landdrill: the book has no routine in the event {}; it has {}\n", wish.event, events));
    return Exit::ok;
  }
  call.streams.say(
      wish.words.empty()
          ? "landdrill: the book has nothing of that\n"
          : fmt::format("landdrill: the book has nothing with \"{}\" in its title\n", wish.words));
  return Exit::ok;
}

namespace {

constexpr std::size_t most_lines = 200;
constexpr std::string_view did_words[] = {"added", "new version", "already there"};

report::BookLine added_line(const Block& block, const AddedBlock& one) {
  return {.routine = block.routine,
          .event = block.event,
          .what = std::string(word_of(block.what)),
          .date = block.date,
          .title = block.title,
          .version = std::to_string(one.version),
          .of_version = one.of_version,
          .routine_versions = one.routine_versions,
          .set = one.set,
          .kept_at = {},
          .did = std::string(did_words[static_cast<std::size_t>(one.did)])};
}

}  // namespace

report::BookAdded what_was_added(const Call& call, const std::vector<Block>& blocks,
                                 const std::vector<AddedBlock>& added) {
  std::array<std::size_t, 3> counts{};
  for (const AddedBlock& one : added) ++counts[static_cast<std::size_t>(one.did)];
  report::BookAdded all{{}, counts[0], counts[1], counts[2]};
  if (blocks.size() <= most_lines || format_of(call) != report::Format::text)
    for (std::size_t i = 0; i < blocks.size(); ++i) all.lines.push_back(added_line(blocks[i], added[i]));
  return all;
}

void tell_added(Call& call, const report::BookAdded& added) {
  constexpr std::size_t most_notes = 10;
  print_page(call, report::book_added_page(std::string(call.command.words), added));
  call.streams.say(fmt::format("landdrill: {}\n", in_words(added)));
  say_notes(call, added.notes, most_notes);
}

int version_number(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() && number > 0 ? number : 0;
}

std::string shell_quoted(std::string_view text) {
  constexpr std::string_view plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./";
  if (!text.empty() && text.find_first_not_of(plain) == text.npos) return std::string(text);
  std::string quoted = "'";
  for (const char c : text) quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return quoted + "'";
}

}  // namespace landdrill::cli
