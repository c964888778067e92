#include "engine/report/pages/score_words.h"

#include "engine/report/pages/face.h"
#include "engine/score/account_notes.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"

namespace landdrill::report {
namespace {

void add_of_estimate(const MissingMarks& missing, std::vector<std::string>& sentences) {
  if (missing.nothing_is_marked)
    return sentences.push_back(
        "nothing is expected yet: add `expect` to the elements and a line `impression`, or a run");
  if (!missing.elements.empty())
    sentences.push_back(elements_have(missing.elements) + " no expected mark: add `expect`, or a run");
  for (const std::string& aspect : missing.aspects)
    sentences.push_back(aspect + " has no expected mark: add it to a line `impression`");
}

void add_of_panel(const MissingMarks& missing, const std::string& panel,
                  std::vector<std::string>& sentences) {
  const std::string no_marks = " no marks in the panel of " + panel;
  if (!missing.elements.empty()) sentences.push_back(elements_have(missing.elements) + no_marks);
  for (const std::string& aspect : missing.aspects) sentences.push_back(aspect + " has" + no_marks);
}

}  // namespace

std::string words_of(const RestsOn& rests_on) {
  switch (rests_on.from) {
    case ExpectedMark::From::nothing:
      return "no mark yet";
    case ExpectedMark::From::sheet:
      return "expected";
    case ExpectedMark::From::run:
      return "run of " + rests_on.date;
    case ExpectedMark::From::runs:
      return "mean of " + std::to_string(rests_on.runs) + " runs";
  }
  return "";
}

std::string named(const ElementLine& line) {
  return std::to_string(line.number) + " " + (line.title.empty() ? line.kind : line.title);
}

std::string text_of(const std::optional<PanelMark>& mark) {
  return mark ? mark->value.text(mark->places) : "";
}

std::vector<std::string> missing_sentences(const Account& account) {
  std::vector<std::string> sentences;
  for (const MissingMarks& missing : account.missing) {
    if (missing.of == MissingMarks::Of::estimate)
      add_of_estimate(missing, sentences);
    else
      add_of_panel(missing, panel_name(account), sentences);
  }
  return sentences;
}

}  // namespace landdrill::report
