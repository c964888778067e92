// The tree of a sheet in blocks: a routine with its elements, options and passages; runs; panels. And where in it a
// statement goes.
//
//   sheet.routine.items[1]      // the Element of `element 2 hybrid "Undertow"`, with its Variants
//
// blocks.h makes it.
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
  std::optional<Number> difficulty, expect, slip, spread;
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
  std::optional<Number> tempo, swimmers, spread, day;
  std::vector<LimitLine> limits;
  std::vector<Item> items;
  std::vector<NamedNumber> impressions, errors, risks;
  bool incomplete = false;  // a line of it was in error, perhaps a whole element
};

struct Run {
  DatedLine head;
  std::vector<FaultsLine> elements;
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

// Where a statement goes: the block and the member of it. A new keyword needs a line here, and nothing else of the
// grammar beside the word list.
template <class Block>
struct Says {
  words::Word word;
  std::variant<std::optional<Name> Block::*, std::optional<Number> Block::*,
               std::optional<CountedList> Block::*, std::optional<Counts> Block::*,
               std::vector<NamedNumber> Block::*, std::string_view Block::*>
      member;
};
inline constexpr Says<Routine> said_in_header[] = {
    {words::Word::event, &Routine::event},   {words::Word::values, &Routine::values},
    {words::Word::tempo, &Routine::tempo},   {words::Word::swimmers, &Routine::swimmers},
    {words::Word::spread, &Routine::spread}, {words::Word::day, &Routine::day}};
inline constexpr Says<Routine> said_of_the_whole[] = {{words::Word::impression, &Routine::impressions},
                                                      {words::Word::errors, &Routine::errors},
                                                      {words::Word::risk, &Routine::risks}};
inline constexpr Says<Element> said_of_an_element[] = {{words::Word::optional, &Element::optional},
                                                       {words::Word::stays, &Element::stays}};
inline constexpr Says<Variant> said_in_variant[] = {{words::Word::parts, &Variant::parts},
                                                    {words::Word::counts, &Variant::counts},
                                                    {words::Word::difficulty, &Variant::difficulty},
                                                    {words::Word::expect, &Variant::expect},
                                                    {words::Word::slip, &Variant::slip},
                                                    {words::Word::spread, &Variant::spread}};
inline constexpr Says<Passage> said_in_passage[] = {{words::Word::counts, &Passage::counts}};
inline constexpr Says<Run> said_in_run[] = {{words::Word::sync, &Run::sync},
                                            {words::Word::penalty, &Run::penalty}};
inline constexpr Says<Panel> said_in_panel[] = {{words::Word::sync, &Panel::sync},
                                                {words::Word::penalty, &Panel::penalty},
                                                {words::Word::result, &Panel::result}};

bool is_among(const auto& said, words::Word word) {
  return std::any_of(std::begin(said), std::end(said), [&](const auto& each) { return each.word == word; });
}

inline bool is_in_header(words::Word word) {
  return word == words::Word::limit || is_among(said_in_header, word);
}

}  // namespace landdrill::ast

namespace landdrill {

struct Assembled {
  std::vector<ast::Sheet> sheets;
  Diagnostics diagnostics;
  bool routine_lost =
      false;  // the last `routine` line was in error: its runs and panels belong to no sheet here
};

}  // namespace landdrill
