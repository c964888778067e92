#include "engine/season/listed_blocks.h"

#include <fmt/format.h>

#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "engine/season/listed_panel.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/characters.h"
#include "grammar/parse.h"
#include "grammar/print.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "tables/value_set.h"

namespace landdrill {
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
    if (!made_.wrong.empty()) made_.blocks.clear();
    if (!made_.wrong.empty()) made_.marks.clear();
    return std::move(made_);
  }

 private:
  void add(const OnePanel& one) {
    const ListedLines lines = one.kept.empty() ? written(*one.listed, aspects_, spellings_)
                                               : written_into(one.kept, *one.listed, aspects_, spellings_);
    for (const ListedLines::Twice& twice : lines.twice) tell_twice(twice);
    if (one.kept.empty()) check_head(*one.listed, lines.lines.front().statement);
    const KeptBlock& of = routine_.routine;
    made_.blocks.push_back({Block::What::panel, of.routine, of.event, one.listed->date, one.listed->meet,
                            print(lines.lines), 0});
    made_.marks.push_back(lines.marks);
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
