// What is said in a block, by the tables of tree.h.
#include "grammar/ast.h"
#include "grammar/builder.h"
#include "grammar/diagnostics.h"
#include "grammar/once.h"
#include "grammar/problems.h"
#include "grammar/tree.h"
#include "grammar/words.h"

namespace landdrill::ast {
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

}  // namespace landdrill::ast
