#include "engine/report/explain.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "engine/cli/messages.h"
#include "engine/cli/misused.h"
#include "engine/cli/sheet_reader.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/price_wish.h"
#include "engine/score/account.h"
#include "grammar/words.h"

namespace landdrill::cli {
namespace {

constexpr std::string_view panel_word = "panel";

void collect_paths(const Step& step, std::vector<std::string_view>& paths) {
  if (!step.path.empty()) paths.push_back(step.path);
  for (const Step& input : step.inputs) collect_paths(input, paths);
}

// A line that was asked for: in the estimate, or, after the word `panel`, in what was recorded.
struct AskedLine {
  const Step* tree = nullptr;
  std::string line;
};

Exit list_lines(Call& call, const Account& told, const report::TextWish& wish) {
  call.streams.out.write(report::explainable(*told.estimate, wish));
  if (told.recorded)
    call.streams.out.write(fmt::format("\nWith `panel` in front, of the panel of {}:\n{}", told.panel,
                                       report::explainable(*told.recorded, wish)));
  return Exit::ok;
}

Exit no_such_line(Call& call, const AskedLine& asked) {
  std::vector<std::string_view> paths;
  collect_paths(*asked.tree, paths);
  std::string hint = words::nearest_hint(asked.line, paths);
  if (hint.empty()) hint = "without LINE, `landdrill explain FILE` lists all lines";
  return misused(
      call, report::with_hint(fmt::format("found \"{}\"; expected a line of the score", asked.line), hint));
}

Exit explain_line(Call& call, const ReadSheet& sheet, const Account& told, const report::TextWish& wish) {
  std::vector<std::string> line(call.given.operands.begin() + 1, call.given.operands.end());
  if (line.empty()) return list_lines(call, told, wish);
  const bool of_panel = line.front() == panel_word;
  if (of_panel && !told.recorded)
    return misused(call, "found \"panel\"; but no recorded panel is chosen in this sheet");
  if (of_panel) line.erase(line.begin());
  const AskedLine asked{
      of_panel ? &*told.recorded : &*told.estimate,
      line.empty() ? std::string(word_of(Role::total)) : fmt::format("{}", fmt::join(line, " "))};
  const Step* step = asked.tree->at(asked.line);
  if (step == nullptr) return no_such_line(call, asked);
  call.streams.out.write(report::explain(*step, sheet.set->files.name, wish));
  return Exit::ok;
}

Exit explain_sheet(Call& call, const ReadSheet& sheet) {
  const report::PriceWish priced = report::whole_price_wish(call.given, *sheet.routine());
  if (!priced.mistake.empty()) return misused(call, priced.mistake);
  const report::TextWish wish{wants_colour(call.given.value("--colour", "auto"), 1), page_width(1), true};
  return explain_line(call, sheet, account(*sheet.routine(), priced.wish, priced.panel), wish);
}

}  // namespace

Exit explain(Call& call) {
  const std::vector<std::string> file(call.given.operands.begin(), call.given.operands.begin() + 1);
  if (!all_readable(call, file)) return Exit::environment;
  SheetReader reader(call, file);
  if (!reader.next()) return reader.worst();
  if (reader.more()) return misused(call, file.front() + " holds several routines; expected one");
  const ReadSheet& sheet = reader.sheet();
  if (!sheet.ok()) {
    Messages(call.streams).add(sheet.diagnostics);
    return worse(Exit::errors, reader.worst());
  }
  return explain_sheet(call, sheet);
}

}  // namespace landdrill::cli
