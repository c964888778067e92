#include "engine/routine/sheet.h"

#include <utility>

#include "engine/routine/problems.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "tables/marks_list.h"
#include "tables/problems.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// False for what may only follow from a line that was not understood, and so is not in the tree.
bool stands_by_itself(const Diagnostic& one) {
  return severity_of(one.problem) == Severity::error && one.problem != Problem::missing_line &&
         one.problem != Problem::no_difficulty && one.problem != Problem::unknown_element;
}

}  // namespace

Sheet read_sheet(std::vector<NamedText> texts) {
  Sheet sheet;
  if (texts.empty()) texts.emplace_back();
  sheet.texts_.reserve(texts.size());
  sheet.sources_.reserve(texts.size());
  for (NamedText& one : texts)
    sheet.sources_.push_back(
        {std::move(one.name), sheet.texts_.emplace_back(std::move(one.text)), one.first_line});
  sheet.put_together();
  return sheet;
}

void Sheet::put_together() {
  for (const Source& source : sources_) assemble(source, assembled_);
  messages_.append(std::move(assembled_.diagnostics));
  if (assembled_.sheets.size() > 1) {
    const ast::Sheet& second = assembled_.sheets[1];
    messages_.add(diagnostic_at(second.sources, second.routine.head.title.text,
                                {Problem::repeated, "a second routine", "one routine in a sheet"}));
  }
  if (tree() != nullptr) return;
  if (!messages_.ok() && looks_like_a_list(sources_.front())) {
    messages_ = {};
    messages_.add(diagnostic_about(
        file(), {Problem::not_a_sheet, "a list of marks", "a sheet",
                 "`landdrill book add BOOK FILE.csv` keeps such a list; its name has to end in .csv"}));
  } else if (messages_.ok()) {
    messages_.add(diagnostic_about(
        file(), {Problem::missing_line, "no routine in it", "a line such as `routine \"Harbour Lights\"`"}));
  }
}

const ast::Sheet* Sheet::tree() const {
  return assembled_.sheets.empty() ? nullptr : &assembled_.sheets.front();
}

std::string_view Sheet::title() const {
  return tree() == nullptr ? std::string_view() : tree()->routine.head.title.text;
}

void Sheet::take(Resolved resolved) {
  resolved_ = std::move(resolved);
  if (messages_.ok()) return messages_.append(std::exchange(resolved_.diagnostics, {}));
  resolved_.routine.reset();
  for (const Diagnostic& one : resolved_.diagnostics.list())
    if (stands_by_itself(one)) messages_.add(one);
}

void Sheet::forget_routine() {
  assembled_ = {};
  resolved_ = {};
}

}  // namespace landdrill
