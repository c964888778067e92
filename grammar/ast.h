// The sheet as a tree, free of Boost: first line by line, as typed, then in blocks (blocks.h).
//
//   element 2 hybrid "Undertow"   ->  ElementLine{number "2", kind "hybrid", title "Undertow"}
//     parts split-hold x2         ->  PartsLine{{{"split-hold", times "2"}}}
//
// Every text is a view into the source, so a node's place is where its view points. Numbers are kept as
// typed; what they mean is decided in the engine.
#pragma once

#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "grammar/short_list.h"

namespace landdrill::ast {

// Digits as typed: "7.25", "7,25", "128". Two numbers are equal when they read the same with a point.
struct Number {
  std::string_view text;
  bool operator==(const Number& other) const;
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

// `choreography 7.50`
struct ExpectedAspect {
  Name aspect;
  Number mark;
  bool operator==(const ExpectedAspect&) const = default;
};

// `small 2.5`: of a class of sync errors so many are expected.
struct ExpectedErrors {
  Name sync;
  Number number;
  bool operator==(const ExpectedErrors&) const = default;
};

// `overtime 10%`
struct ExpectedPenalty {
  Name penalty;
  Number percent;
  bool operator==(const ExpectedPenalty&) const = default;
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

// As long as they usually are.
using CountedList = ShortList<Counted, 4>;
using JudgeMarks = ShortList<JudgeMark, 7>;

// ---- the statements, one a line ----
struct RoutineLine {
  Name title;
  bool operator==(const RoutineLine&) const = default;
};
struct EventLine {
  Name event;
  bool operator==(const EventLine&) const = default;
};
struct ValuesLine {
  Name set;
  bool operator==(const ValuesLine&) const = default;
};
struct TempoLine {
  Number beats_a_minute;
  bool operator==(const TempoLine&) const = default;
};
struct SwimmersLine {
  Number swimmers;
  bool operator==(const SwimmersLine&) const = default;
};
struct ElementLine {
  Number number;
  Name kind;
  std::optional<Name> title;
  bool operator==(const ElementLine&) const = default;
};
struct OptionLine {
  Name title;
  bool operator==(const OptionLine&) const = default;
};
struct PartsLine {
  CountedList parts;
  bool operator==(const PartsLine&) const = default;
};
struct CountsLine {
  ShortList<Count, 2> counts;
  bool operator==(const CountsLine&) const = default;
};
struct DifficultyLine {
  Number difficulty;
  bool operator==(const DifficultyLine&) const = default;
};
struct ExpectLine {
  Number mark;
  bool operator==(const ExpectLine&) const = default;
};
struct SlipLine {
  Number percent;
  bool operator==(const SlipLine&) const = default;
};
struct PassageLine {
  Name title;
  bool operator==(const PassageLine&) const = default;
};
struct ImpressionLine {
  ShortList<ExpectedAspect, 4> marks;
  bool operator==(const ImpressionLine&) const = default;
};
struct RunLine {
  Date date;
  std::optional<Name> title;
  bool operator==(const RunLine&) const = default;
};
struct PanelLine {
  Date date;
  std::optional<Name> title;
  bool operator==(const PanelLine&) const = default;
};
// `element 2 base: travel small x2, lost spin-720`; no faults means `clean`.
struct FaultsLine {
  Number element;
  bool base = false;
  ShortList<Fault, 2> faults;
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
// `sync: small x3, clear x1`; an empty list means `none`.
struct SyncLine {
  CountedList errors;
  bool operator==(const SyncLine&) const = default;
};
struct PenaltyLine {
  CountedList penalties;
  bool operator==(const PenaltyLine&) const = default;
};
struct ResultLine {
  Number result;
  bool operator==(const ResultLine&) const = default;
};
struct SpreadLine {
  Number spread;
  bool operator==(const SpreadLine&) const = default;
};
struct DayLine {
  Number day;
  bool operator==(const DayLine&) const = default;
};
struct ErrorsLine {
  std::vector<ExpectedErrors> errors;
  bool operator==(const ErrorsLine&) const = default;
};
struct RiskLine {
  std::vector<ExpectedPenalty> penalties;
  bool operator==(const RiskLine&) const = default;
};
struct OptionalLine {
  bool operator==(const OptionalLine&) const = default;
};
struct StaysLine {
  bool operator==(const StaysLine&) const = default;
};
// `limit hybrid least 2 most 5`; the name is one of words::limited, or a code, then also in quotation marks.
struct LimitLine {
  Name name;
  std::optional<Number> least, most;  // never both empty
  // The word of words::limited that is meant; empty for a code.
  std::string_view word() const;
  bool operator==(const LimitLine& other) const;
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

using Statement =
    std::variant<EmptyLine, RoutineLine, EventLine, ValuesLine, TempoLine, SwimmersLine, ElementLine,
                 OptionLine, PartsLine, CountsLine, DifficultyLine, ExpectLine, SlipLine, PassageLine,
                 ImpressionLine, RunLine, PanelLine, FaultsLine, ElementMarksLine, AspectMarksLine, SyncLine,
                 PenaltyLine, ResultLine, SpreadLine, DayLine, ErrorsLine, RiskLine, OptionalLine, StaysLine,
                 LimitLine, BadLine>;

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
