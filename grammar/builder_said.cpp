#include <fmt/format.h>

#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/builder.h"
#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "grammar/words.h"

namespace landdrill::ast {

// What is said in a block, by the tables of blocks.h.

namespace {

// The member of `block` that the statement sets.
template <class Member, class Block>
Member* member_of(Block& block, const auto& said, Word word) {
  for (const Says<Block>& each : said)
    if (each.word == word) return &(block.*std::get<Member Block::*>(each.member));
  return nullptr;
}

}  // namespace

template <class Argument>
void Builder::put_said(Word word, Argument& argument) {
  if (is_among(said_in_header, word)) need_routine();
  std::optional<Argument>* place = place_for<Argument>(word);
  if (place == nullptr) return misplaced(word);
  if (once(seen_here(), {word})) *place = std::move(argument);
}
template void Builder::put_said(Word, Name&);
template void Builder::put_said(Word, Number&);
template void Builder::put_said(Word, CountedList&);
template void Builder::put_said(Word, Counts&);

template <class Argument>
std::optional<Argument>* Builder::place_for(Word word) {
  using Member = std::optional<Argument>;
  switch (place_) {
    case Place::header:
      return member_of<Member>(*routine_, said_in_header, word);
    case Place::element:
      return member_of<Member>(*variant_, said_in_variant, word);
    case Place::passage:
      return member_of<Member>(*passage_, said_in_passage, word);
    case Place::run:
      return member_of<Member>(*run_, said_in_run, word);
    case Place::panel:
      return member_of<Member>(*panel_, said_in_panel, word);
    default:
      return nullptr;
  }
}

Once& Builder::seen_here() {
  if (in_block()) return in_block_;
  return place_ == Place::header ? in_routine_ : in_variant_;
}

void Builder::misplaced(Word word) {
  const bool in_variant = is_among(said_in_variant, word);
  if (is_among(said_in_header, word))
    return in_variant ? misplaced("it in the header of a routine, in an element or in an option",
                                  "move it up, above the first element or passage, where it is meant for all")
                      : misplaced("it in the header of a routine, above its first element",
                                  "move it up, above the first element or passage");
  if (in_variant)
    return misplaced(is_among(said_in_passage, word) ? "it in an element or a passage" : "it in an element",
                     variant_hint());
  if (is_among(said_in_run, word))
    return misplaced("it in a run or a panel", "start a run above it: run 2026-04-14 \"Tuesday\"");
  misplaced("it in a panel", "a result is what was announced after a panel");
}

std::string Builder::variant_hint() const {
  if (place_ == Place::passage) return "a passage has counts only; what is scored is an element";
  return "write it below its element: element 1 hybrid \"Undertow\"";
}

void Builder::put(WordLine& line) {
  if (place_ != Place::element) return misplaced("it in an element", variant_hint());
  if (in_option()) return complain_of_option();
  if (once(in_element_, {line.word}))
    *member_of<std::string_view>(*element_, said_of_an_element, line.word) = first_word();
}

// It stands in an element all the same, so that the lines below it are in their places.
void Builder::complain_of_option() {
  mark_incomplete();
  if (!forgiving_)
    complain(first_word(), {Problem::misplaced, "\"" + std::string(first_word()) + "\" in an option",
                            "it in an element, above its options", "move it up, above the first option"});
}

void Builder::put(NamedNumbersLine& line) {
  if (!may_speak_of_the_whole()) return;
  auto& all = *member_of<std::vector<NamedNumber>>(*routine_, said_of_the_whole, line.word);
  for (const NamedNumber& each : line.numbers)
    if (once(in_routine_, {line.word, each.name.text}, each.name.text)) all.push_back(each);
}

bool Builder::may_speak_of_the_whole() {
  need_routine();
  if (in_block()) {
    misplaced("it in a routine, above its runs and panels", "move it up, above the first run or panel");
    return false;
  }
  if (place_ != Place::header) start(Place::after_elements);
  return true;
}

void Builder::put(LimitLine& line) {
  need_routine();
  if (place_ != Place::header)
    return misplaced("it in the header of a routine, above its first element",
                     "move it up, above the first element or passage");
  const std::string_view word = line.word();
  const Once::Key key{Word::limit, word.empty() ? line.name.text : word, word.empty()};
  if (once(in_routine_, key, line.name.text)) routine_->limits.push_back(line);
}

namespace {

std::string_view name_of(Place place) {
  switch (place) {
    case Place::outside:
      return "before any routine";
    case Place::header:
      return "before the first element";
    case Place::element:
      return "in an element";
    case Place::passage:
      return "in a passage";
    case Place::after_elements:
      return "after the impression marks";
    case Place::run:
      return "in a run";
    case Place::panel:
      return "in a panel";
  }
  return {};
}

}  // namespace

std::string_view Builder::name_of_place() const {
  if (place_ == Place::after_elements && routine_->impressions.empty())
    return "after the sync errors or penalties that are expected";
  return name_of(place_);
}

std::string_view Builder::first_word() const {
  const char* last = line_.data() + line_.size();
  const char* start = characters::skip_blanks(line_.data(), last);
  const char* end = characters::code_end(start, last);
  return {start, static_cast<std::size_t>(end - start)};
}

void Builder::misplaced(std::string_view expected, std::string hint, std::string_view what) {
  mark_incomplete();
  const std::string_view word = first_word();
  const std::string thing = what.empty() ? fmt::format("\"{}\"", word) : std::string(what);
  if (!forgiving_)
    complain(word, {Problem::misplaced, fmt::format("{} {}", thing, name_of_place()), std::string(expected),
                    std::move(hint)});
  forgiving_ = forgiving_ || !is_header(word);
}

bool Builder::is_header(std::string_view word) {
  const auto found = words::find(word);
  return found && is_in_header(*found);
}

bool Builder::once(Once& seen, Once::Key key, std::string_view piece) {
  const std::string_view* first = seen.first(key, piece.empty() ? line_ : piece);
  if (first != nullptr) complain_of_repeat(key, piece.empty() ? first_word() : piece, *first);
  return first == nullptr;
}

void Builder::complain_of_repeat(Once::Key key, std::string_view piece, std::string_view first) {
  mark_incomplete();
  if (!forgiving_ && wants_more()) complain(piece, repeated(key, piece, first));
}

Complaint Builder::repeated(Once::Key key, std::string_view piece, std::string_view first) const {
  const std::string hint = fmt::format("the first is on line {}", position_of(source_, first).line);
  const std::string word = fmt::format("\"{}\"", piece);
  switch (key.word) {
    case Word::element:
      return {Problem::repeated, fmt::format("element {} a second time", piece),
              in_block() ? "every element once in a run or a panel" : "a number of its own for every element",
              hint};
    case Word::option:
      return {Problem::repeated, fmt::format("the option \"{}\" a second time", piece),
              "a title of its own for every option of an element", hint};
    case Word::impression:
      return {Problem::repeated, fmt::format("the aspect {} a second time", word), "every aspect once", hint};
    case Word::errors:
      return {Problem::repeated, fmt::format("the sync errors {} a second time", word), "every class once",
              hint};
    case Word::risk:
      return {Problem::repeated, fmt::format("the penalty {} a second time", word), "every penalty once",
              hint};
    case Word::limit:
      return {Problem::repeated, fmt::format("the limit of {} a second time", word),
              "every limit once, with its least and its most on one line", hint};
    default:
      return {Problem::repeated, word + " a second time", fmt::format("it once {}", once_in(key.word)), hint};
  }
}

std::string_view Builder::once_in(Word word) const {
  if (is_among(said_of_an_element, word)) return "in an element";
  if (in_block()) return place_ == Place::run ? "in a run" : "in a panel";
  if (place_ == Place::passage) return "in a passage";
  return place_ == Place::element ? "in an element or an option" : "in a routine";
}

bool Builder::wants_more() {
  if (out_.diagnostics.wants_more()) return true;
  out_.diagnostics.count_only(Severity::error);
  return false;
}

void Builder::complain(std::string_view piece, Complaint complaint) {
  out_.diagnostics.complain(source_, piece, std::move(complaint));
}

}  // namespace landdrill::ast
