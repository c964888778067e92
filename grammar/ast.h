// The sheet as a tree, free of Boost: first line by line, as typed, then in blocks (blocks.h).
//
//   element 2 hybrid "Undertow"   ->  ElementLine{number "2", kind "hybrid", title "Undertow"}
//     parts split-hold x2         ->  CountedLine{parts, {{"split-hold", times "2"}}}
//
// Every text is a view into the source, so a node's place is where its view points. Numbers are kept as
// typed; what they mean is decided in the engine.
#pragma once

#include <algorithm>
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "grammar/words.h"

namespace landdrill::ast {

using words::Word;

// Digits as typed: "7.25", "7,25", "128". Two numbers are equal when they read the same with a point.
struct Number {
  std::string_view text;
  bool operator==(const Number& other) const {
    const auto as_point = [](char c) { return c == ',' ? '.' : c; };
    return std::equal(text.begin(), text.end(), other.text.begin(), other.text.end(),
                      [&](char a, char b) { return as_point(a) == as_point(b); });
  }
};

// A code, a word or a quoted title: the text without its quotation marks.
struct Name {
  std::string_view text;
  bool quoted = false;
  bool operator==(const Name& other) const { return text == other.text; }
};

// `2026-04-14`, as typed; blocks.cpp checks that the day exists.
struct Date {
  std::string_view text;
  bool operator==(const Date&) const = default;
};

// `split-hold x2`: a code and how many times; no `times` means once.
struct Counted {
  Name code;
  std::optional<Number> times;
  bool operator==(const Counted&) const = default;
};

// `8 under`
struct Count {
  Number counts;
  Name where;
  bool operator==(const Count&) const = default;
};

// `choreography 7.50`, `small 2.5` or `overtime 10%`: a code and a number that is expected of it.
struct NamedNumber {
  Name name;
  Number number;
  bool operator==(const NamedNumber&) const = default;
};

// `bent-knee small x2`, or `lost spin-720` (then only `lost_part` is set).
struct Fault {
  std::optional<Name> lost_part;
  Name fault;
  Name size;
  std::optional<Number> times;
  bool operator==(const Fault&) const = default;
};

// One judge: a mark, or `-` for a judge who is missing.
using JudgeMark = std::optional<Number>;

using CountedList = std::vector<Counted>;
using Counts = std::vector<Count>;
using NamedNumbers = std::vector<NamedNumber>;
using JudgeMarks = std::vector<JudgeMark>;

// ---- the statements, one a line, by the shape of what stands behind the keyword (words.h) ----
struct TitleLine {
  Word word = {};
  Name title;
  bool operator==(const TitleLine&) const = default;
};
struct CodeLine {
  Word word = {};
  Name code;
  bool operator==(const CodeLine&) const = default;
};
// With a percent sign or without.
struct NumberLine {
  Word word = {};
  Number number;
  bool operator==(const NumberLine&) const = default;
};
struct WordLine {
  Word word = {};
  bool operator==(const WordLine&) const = default;
};
struct DatedLine {
  Word word = {};
  Date date;
  std::optional<Name> title;
  bool operator==(const DatedLine&) const = default;
};
// An empty list means `none`.
struct CountedLine {
  Word word = {};
  CountedList items;
  bool operator==(const CountedLine&) const = default;
};
struct CountsLine {
  Word word = {};
  Counts counts;
  bool operator==(const CountsLine&) const = default;
};
// With percent signs or without.
struct NamedNumbersLine {
  Word word = {};
  NamedNumbers numbers;
  bool operator==(const NamedNumbersLine&) const = default;
};
struct ElementLine {
  Number number;
  Name kind;
  std::optional<Name> title;
  bool operator==(const ElementLine&) const = default;
};
// `element 2 base: travel small x2, lost spin-720`; no faults means `clean`.
struct FaultsLine {
  Number element;
  bool base = false;
  std::vector<Fault> faults;
  bool operator==(const FaultsLine&) const = default;
};
// `element 2 base: 6.75 7.00 - 7.00 6.75`
struct ElementMarksLine {
  Number element;
  bool base = false;
  JudgeMarks marks;
  bool operator==(const ElementMarksLine&) const = default;
};
// `choreography: 7.50 7.75 7.50 7.25 7.50`; in a run, one mark.
struct AspectMarksLine {
  Name aspect;
  JudgeMarks marks;
  bool operator==(const AspectMarksLine&) const = default;
};
// `limit hybrid least 2 most 5`; the name is one of words::limited, or a code, then also in quotation marks.
struct LimitLine {
  Name name;
  std::optional<Number> least, most;  // never both empty
  // The word of words::limited that is meant; empty for a code.
  std::string_view word() const {
    for (std::string_view word : words::limited)
      if (!name.quoted && words::same(name.text, word)) return word;
    return {};
  }
  bool operator==(const LimitLine& other) const {
    const bool same_name = !word().empty() || name == other.name;
    return same_name && word() == other.word() && least == other.least && most == other.most;
  }
};
// An empty line, or one that holds only a comment.
struct EmptyLine {
  bool operator==(const EmptyLine&) const = default;
};

// What a line in error was meant to start, as far as one can tell; `unknown` may have been anything.
enum class Opens { nothing, routine, element, option, passage, run, panel, unknown };

// A line in error, as typed, so that tidying loses nothing and the lines below it are not blamed for it.
struct BadLine {
  std::string_view text;
  Opens opens = Opens::unknown;
  bool operator==(const BadLine& other) const { return text == other.text; }
};

using Statement = std::variant<EmptyLine, TitleLine, CodeLine, NumberLine, WordLine, DatedLine, CountedLine,
                               CountsLine, NamedNumbersLine, ElementLine, FaultsLine, ElementMarksLine,
                               AspectMarksLine, LimitLine, BadLine>;

struct WordOf {
  std::optional<Word> operator()(const auto& line) const { return line.word; }
  std::optional<Word> operator()(const ElementLine&) const { return Word::element; }
  std::optional<Word> operator()(const FaultsLine&) const { return Word::element; }
  std::optional<Word> operator()(const ElementMarksLine&) const { return Word::element; }
  std::optional<Word> operator()(const LimitLine&) const { return Word::limit; }
  std::optional<Word> operator()(const AspectMarksLine&) const { return std::nullopt; }
  std::optional<Word> operator()(const EmptyLine&) const { return std::nullopt; }
  std::optional<Word> operator()(const BadLine&) const { return std::nullopt; }
};
// The keyword that starts it; none for an empty line, one in error, and the marks of an aspect.
inline std::optional<Word> word_of(const Statement& statement) {
  return std::visit(WordOf{}, statement);
}

// A statement, its comment (from `#` on, without the line ending; empty when there is none), and the line as
// typed.
struct Line {
  Statement statement;
  std::string_view comment;
  std::string_view text;
};

// The lines of a sheet in order. Empty lines that follow each other are one; none stands first or last.
using Lines = std::vector<Line>;

}  // namespace landdrill::ast
