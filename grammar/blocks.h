// The tree of a sheet in blocks: a routine with its elements, options and passages; runs; panels. And where in it a
// statement goes.
//
//   sheet.routine.items[1]      // the Element of `element 2 hybrid "Undertow"`, with its Variants
//
// Every `routine` line starts a new sheet; runs and panels belong to the routine above them, also across
// files read one after the other. A line in the wrong place is reported and left out.
#pragma once

#include <algorithm>
#include <iterator>
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "grammar/ast.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "grammar/words.h"

namespace landdrill::ast {

// One way to swim an element: as written first, then each `option`.
struct Variant {
  std::optional<Name> title;  // none for the element as written
  std::optional<CountedList> parts;
  std::optional<Counts> counts;
  std::optional<Number> difficulty, expect, best, slip, spread;
  bool incomplete = false;  // a line of it was in error: do not complain of what is missing
};

struct Element {
  ElementLine head;
  std::vector<Variant> variants;     // never empty
  std::string_view optional, stays;  // the word as typed; empty when it is not said
};

struct Passage {
  TitleLine head;
  std::optional<Counts> counts;
};

using Item = std::variant<Element, Passage>;

struct Routine {
  TitleLine head;
  std::optional<Name> event, values;
  std::optional<Number> tempo, swimmers, spread, day, best;
  std::vector<LimitLine> limits;
  std::vector<Item> items;
  std::vector<NamedNumber> impressions, errors, risks;
  bool incomplete = false;  // a line of it was in error, perhaps a whole element
};

struct Run {
  DatedLine head;
  std::vector<FaultsLine> elements;
  std::vector<ElementMarksLine> marks;  // of elements, one mark each
  std::vector<AspectMarksLine> aspects;
  std::optional<CountedList> sync, penalty;
  bool incomplete = false;  // a line of it was in error
};

struct Panel {
  DatedLine head;
  std::vector<ElementMarksLine> elements;
  std::vector<AspectMarksLine> aspects;
  std::optional<CountedList> sync, penalty;
  std::optional<Number> result;
  bool incomplete = false;  // a line of it was in error
};

struct Sheet {
  Sources sources;  // of the routine first, then of its runs and panels
  Routine routine;
  std::vector<Run> runs;
  std::vector<Panel> panels;
};

// Where a statement goes: the block and the member of it. A new keyword needs a line here and one in
// the word list; a hint of its own, for where it is misplaced, stands in builder_said.cpp.
template <class Block>
struct Says {
  Word word;
  std::variant<std::optional<Name> Block::*, std::optional<Number> Block::*,
               std::optional<CountedList> Block::*, std::optional<Counts> Block::*,
               std::vector<NamedNumber> Block::*, std::string_view Block::*>
      member;
};
inline constexpr Says<Routine> said_in_header[] = {
    {Word::event, &Routine::event},       {Word::values, &Routine::values}, {Word::tempo, &Routine::tempo},
    {Word::swimmers, &Routine::swimmers}, {Word::spread, &Routine::spread}, {Word::day, &Routine::day},
    {Word::best, &Routine::best}};
inline constexpr Says<Routine> said_of_the_whole[] = {{Word::impression, &Routine::impressions},
                                                      {Word::errors, &Routine::errors},
                                                      {Word::risk, &Routine::risks}};
inline constexpr Says<Element> said_of_an_element[] = {{Word::optional, &Element::optional},
                                                       {Word::stays, &Element::stays}};
inline constexpr Says<Variant> said_in_variant[] = {{Word::parts, &Variant::parts},
                                                    {Word::counts, &Variant::counts},
                                                    {Word::difficulty, &Variant::difficulty},
                                                    {Word::expect, &Variant::expect},
                                                    {Word::best, &Variant::best},
                                                    {Word::slip, &Variant::slip},
                                                    {Word::spread, &Variant::spread}};
inline constexpr Says<Passage> said_in_passage[] = {{Word::counts, &Passage::counts}};
inline constexpr Says<Run> said_in_run[] = {{Word::sync, &Run::sync}, {Word::penalty, &Run::penalty}};
inline constexpr Says<Panel> said_in_panel[] = {
    {Word::sync, &Panel::sync}, {Word::penalty, &Panel::penalty}, {Word::result, &Panel::result}};

bool is_among(const auto& said, Word word) {
  return std::any_of(std::begin(said), std::end(said), [&](const auto& each) { return each.word == word; });
}

inline bool is_in_header(Word word) {
  return word == Word::limit || is_among(said_in_header, word);
}

}  // namespace landdrill::ast

namespace landdrill {

struct Assembled {
  std::vector<ast::Sheet> sheets;
  Diagnostics diagnostics;
  bool routine_lost =
      false;  // the last `routine` line was in error: its runs and panels belong to no sheet here
};

// The blocks of one source after another; `source` must outlive the result. Runs and panels before any
// `routine` line of a source continue the last sheet of `so_far`; with none there, they are reported as
// misplaced. Checks: order and place of lines, things said twice (also element numbers), dates that exist.
// The mistakes of its lines (parse.h) stand with those of the blocks.
void assemble(const Source& source, Assembled& so_far);

}  // namespace landdrill
