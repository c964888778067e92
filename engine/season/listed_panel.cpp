#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "engine/season/kept_sheets.h"
#include "engine/season/marks_import.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/parse.h"
#include "grammar/print.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/decimal.h"
#include "tables/marks_list.h"
#include "tables/store/kept_blocks.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

using Listed = ListedPanel::Line;

bool is_element(std::string_view name) {
  return characters::all_digits(name);
}

std::string_view aspect_called(std::string_view name, std::span<const std::string> aspects) {
  const auto known = std::find_if(aspects.begin(), aspects.end(),
                                  [&](const std::string& one) { return words::same(one, name); });
  return known == aspects.end() ? name : std::string_view(*known);
}

const ast::JudgeMarks* marks_of(const ast::Statement& statement) {
  if (const auto* element = std::get_if<ast::ElementMarksLine>(&statement)) return &element->marks;
  if (const auto* aspect = std::get_if<ast::AspectMarksLine>(&statement)) return &aspect->marks;
  return nullptr;
}
ast::JudgeMarks* marks_of(ast::Statement& statement) {
  return const_cast<ast::JudgeMarks*>(marks_of(std::as_const(statement)));
}

// The words of a panel's lines: those of the list are views into it.
class Writing {
 public:
  Writing(const ListedPanel& panel, std::span<const std::string> aspects, Spellings& spellings)
      : panel_(panel), aspects_(aspects), spellings_(spellings) {}

  ListedLines anew() {
    add_head();
    for (const Listed& line : panel_.lines) {
      std::size_t at = line_of(line);
      if (at == nowhere) {
        at = out_.lines.size();
        insert(at, new_line(line));
      }
      put(line, at);
    }
    return std::move(out_);
  }

  ListedLines into(std::string_view kept) {
    out_.lines = parse({"", spellings_.add(kept, panel_.date_piece)}).lines;
    from_.resize(out_.lines.size());
    const ast::Lines before = out_.lines;
    for (const Listed& line : panel_.lines) merge(line);
    out_.marks = marks_apart(before, out_.lines);
    return std::move(out_);
  }

 private:
  static constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

  void add_head() {
    ast::DatedLine head{words::Word::panel, {spellings_.add(panel_.date, panel_.date_piece)}, std::nullopt};
    if (!panel_.meet.empty()) head.title = ast::Name{spellings_.add(panel_.meet, panel_.meet_piece), true};
    insert(0, head);
  }

  void merge(const Listed& line) {
    std::size_t at = line_of(line);
    if (at == nowhere) {
      at = place_for(line);
      insert(at, new_line(line));
    }
    ast::Statement& statement = out_.lines[at].statement;
    auto* element = std::get_if<ast::ElementMarksLine>(&statement);
    if (element != nullptr) {
      element->element.text = spellings_.add(element->element.text, line.piece);
      if (panel_.says_base) element->base = line.base;
    } else {
      std::get<ast::AspectMarksLine>(statement).aspect.text = aspect_of(line);
    }
    put(line, at);
  }

  // That a seat of it was given by `first` already.
  void tell_twice(const Listed& line, const Listed& first, std::size_t seat) {
    if (!out_.twice.empty() && out_.twice.back().line == &line) return;
    out_.twice.push_back(
        {&line, &first, is_element(line.name) ? line.name : aspect_called(line.name, aspects_), seat + 1});
  }

  std::string_view aspect_of(const Listed& line) {
    return spellings_.add(aspect_called(line.name, aspects_), line.piece);
  }

  ast::Statement new_line(const Listed& line) {
    if (is_element(line.name))
      return ast::ElementMarksLine{{spellings_.add(line.name, line.piece)}, line.base, {}};
    return ast::AspectMarksLine{{aspect_of(line), false}, {}};
  }

  void put(const Listed& line, std::size_t at) {
    ast::JudgeMarks& marks = *marks_of(out_.lines[at].statement);
    std::vector<const Listed*>& from = from_[at];
    marks.resize(std::max(marks.size(), line.judges.size()));
    from.resize(marks.size());
    for (std::size_t seat = 0; seat < marks.size(); ++seat) {
      const bool given = seat < line.judges.size() && line.judges[seat];
      if (given && from[seat] != nullptr) tell_twice(line, *from[seat], seat);
      if (from[seat] != nullptr) continue;
      marks[seat] = given ? mark_of(*line.judges[seat], marks[seat]) : of_line(marks[seat], line);
      if (given) from[seat] = &line;
    }
  }

  // A kept mark of the same value stays as it is written.
  ast::JudgeMark mark_of(const ListedPanel::Given& given, const ast::JudgeMark& before) {
    if (!given.mark) return std::nullopt;
    const bool same = before && Decimal::parse(before->text) == given.mark;
    return ast::Number{spellings_.add(same ? std::string(before->text) : given.mark->text(2), given.piece)};
  }
  ast::JudgeMark of_line(const ast::JudgeMark& kept, const Listed& line) {
    if (!kept) return kept;
    return ast::Number{spellings_.add(kept->text, line.piece)};
  }

  // Where these marks stand already.
  std::size_t line_of(const Listed& line) const {
    const bool wants_element = is_element(line.name);
    const auto number = Decimal::parse(line.name);  // none of one that is too large
    const std::string_view name = aspect_called(line.name, aspects_);
    for (std::size_t i = 0; i < out_.lines.size(); ++i) {
      const auto* element = std::get_if<ast::ElementMarksLine>(&out_.lines[i].statement);
      const auto* aspect = std::get_if<ast::AspectMarksLine>(&out_.lines[i].statement);
      if (wants_element && element != nullptr && number && Decimal::parse(element->element.text) == number)
        return i;
      if (!wants_element && aspect != nullptr && aspect->aspect.text == name) return i;
    }
    return nowhere;
  }
  // Where they are to stand: elements by their number, aspects behind them.
  std::size_t place_for(const Listed& line) const {
    const auto number = Decimal::parse(line.name);
    std::size_t place = 1;
    for (std::size_t i = 0; i < out_.lines.size(); ++i) {
      const ast::Statement& statement = out_.lines[i].statement;
      const auto* element = std::get_if<ast::ElementMarksLine>(&statement);
      const auto its = element != nullptr ? Decimal::parse(element->element.text) : std::nullopt;
      const bool before =
          is_element(line.name) ? its && (!number || *its < *number) : marks_of(statement) != nullptr;
      if (before) place = i + 1;
    }
    while (place < out_.lines.size() && !starts(place)) ++place;
    return place;
  }
  // Below the panel's first line, which comments may stand above.
  bool starts(std::size_t place) const {
    return std::any_of(
        out_.lines.begin(), out_.lines.begin() + static_cast<std::ptrdiff_t>(place),
        [](const ast::Line& line) { return ast::word_of(line.statement) == words::Word::panel; });
  }

  void insert(std::size_t place, ast::Statement statement) {
    const auto at = static_cast<std::ptrdiff_t>(place);
    out_.lines.insert(out_.lines.begin() + at, ast::Line{std::move(statement), {}, {}});
    from_.insert(from_.begin() + at, std::vector<const Listed*>());
  }

  const ListedPanel& panel_;
  const std::span<const std::string> aspects_;
  Spellings& spellings_;
  ListedLines out_;
  std::vector<std::vector<const Listed*>> from_;  // of each line: who gave the mark of each seat
};

struct ToPanel {
  ast::Panel& panel;

  void operator()(const ast::DatedLine& line) { panel.head = line; }
  void operator()(const ast::ElementMarksLine& line) { panel.elements.push_back(line); }
  void operator()(const ast::AspectMarksLine& line) { panel.aspects.push_back(line); }
  void operator()(const ast::CountedLine& line) {
    if (line.word == words::Word::sync) panel.sync = line.items;
    if (line.word == words::Word::penalty) panel.penalty = line.items;
  }
  void operator()(const ast::NumberLine& line) {
    if (line.word == words::Word::result) panel.result = line.number;
  }
  void operator()(const auto&) {}
};

}  // namespace

ListedLines written(const ListedPanel& panel, std::span<const std::string> aspects, Spellings& spellings) {
  return Writing(panel, aspects, spellings).anew();
}

ListedLines written_into(std::string_view kept, const ListedPanel& panel,
                         std::span<const std::string> aspects, Spellings& spellings) {
  return Writing(panel, aspects, spellings).into(kept);
}

ast::Panel panel_of(const ast::Lines& lines) {
  ast::Panel panel;
  for (const ast::Line& line : lines) std::visit(ToPanel{panel}, line.statement);
  return panel;
}

namespace {

class Checking {
 public:
  Checking(const KeptSheet& routine, const Source& list) : routine_(routine), list_(list) {
    sheet_.sources.add(list);
    sheet_.sources.add(spellings_);
    if (!routine.sheet.routine()) return;
    for (const PanelRule* rule : routine.sheet.routine()->aspects) aspects_.push_back(rule->aspect);
  }

  ListedBlocks of(std::span<const OnePanel> panels) {
    for (const OnePanel& one : panels) add(one);
    check();
    if (!made_.wrong.empty()) made_.panels.clear();
    return std::move(made_);
  }

 private:
  void add(const OnePanel& one) {
    const ListedLines lines = one.kept.empty() ? written(*one.listed, aspects_, spellings_)
                                               : written_into(one.kept, *one.listed, aspects_, spellings_);
    for (const ListedLines::Twice& twice : lines.twice) tell_twice(twice);
    if (one.kept.empty()) check_head(*one.listed, lines.lines.front().statement);
    const KeptBlock& of = routine_.routine;
    made_.panels.emplace_back();
    made_.panels.back().block = {Block::What::panel, of.routine,         of.event, one.listed->date,
                                 one.listed->meet,   print(lines.lines), 0};
    made_.panels.back().marks = lines.marks;
    sheet_.panels.push_back(panel_of(lines.lines));
  }

  // A meet can be called what no sheet can say, as with a quotation mark in it.
  void check_head(const ListedPanel& panel, const ast::Statement& head) {
    const std::string text = print(head);
    const Parsed parsed = parse({"", text});
    for (const Diagnostic& one : parsed.diagnostics.list())
      complain(panel.meet_piece, {one.problem, one.found, one.expected, one.hint});
  }

  void tell_twice(const ListedLines::Twice& twice) {
    const bool element = characters::all_digits(twice.name);
    complain(twice.line->piece,
             {Problem::repeated,
              element ? fmt::format("a second mark of judge {} for element {}", twice.judge, twice.name)
                      : fmt::format("a second mark of judge {} for \"{}\"", twice.judge, twice.name),
              "one mark of each judge",
              fmt::format("the first is on line {}", position_of(list_, twice.first->piece).line)});
  }

  // The routine alone with the panels: its other runs and panels were checked when they came.
  void check() {
    const ast::Sheet* tree = routine_.sheet.tree();
    if (tree == nullptr || !routine_.set->loaded.set) {
      for (const Diagnostic& one : routine_.sheet.messages().list()) made_.wrong.push_back(one);
      return;
    }
    for (const Source& source : routine_.sheet.sources()) sheet_.sources.add(source);
    sheet_.routine = tree->routine;
    const Resolved resolved = understood(sheet_, *routine_.set->loaded.set);
    for (const Diagnostic& one : resolved.diagnostics.list())
      if (severity_of(one.problem) == Severity::error && one.file == list_.name) made_.wrong.push_back(one);
  }

  void complain(std::string_view piece, Complaint complaint) {
    made_.wrong.push_back(diagnostic_at(list_, piece, std::move(complaint)));
  }

  const KeptSheet& routine_;
  const Source& list_;
  Spellings spellings_;
  ast::Sheet sheet_;
  std::vector<std::string> aspects_;
  ListedBlocks made_;
};

}  // namespace

ListedBlocks listed_blocks(const KeptSheet& routine, const Source& list, std::span<const OnePanel> panels) {
  return Checking(routine, list).of(panels);
}

}  // namespace landdrill
