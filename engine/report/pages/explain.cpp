#include "engine/report/pages/explain.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "engine/report/page.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "engine/score/build_up.h"
#include "grammar/words.h"

namespace landdrill::report {
namespace {

void list_lines(const Step& step, PageTable& table) {
  table.add({step.path, step.label, step.value});
  for (const Step& input : step.inputs) list_lines(input, table);
}

PageTable lines_of(std::string key, const Step& total) {
  PageTable table(std::move(key), {{"path", "line", Align::words, Wraps::yes},
                                   {"label", "what it is", Align::words, Wraps::yes},
                                   {"value", "value", Align::amount}});
  list_lines(total, table);
  return table;
}

constexpr std::string_view panel_word = "panel";

void collect_paths(const Step& step, std::vector<std::string_view>& paths) {
  if (!step.path.empty()) paths.push_back(step.path);
  for (const Step& input : step.inputs) collect_paths(input, paths);
}

std::string no_such_line(const Step& total, std::string_view line) {
  std::vector<std::string_view> paths;
  collect_paths(total, paths);
  std::string hint = words::nearest_hint(line, paths);
  if (hint.empty()) hint = "without LINE, `landdrill explain FILE` lists all lines";
  return with_hint(fmt::format("found \"{}\"; expected a line of the score", line), hint);
}

}  // namespace

Answer explain(const Asked& asked, const Routine& routine) {
  const PriceWish priced = whole_price_wish(asked, routine);
  if (!priced.mistake.empty()) return tl::unexpected(priced.mistake);
  const Account told = account(routine, priced.wish, priced.panel);
  std::vector<std::string> line(asked.operands.begin() + 1, asked.operands.end());
  if (line.empty()) return lines_page(told);
  const bool of_panel = line.front() == panel_word;
  if (of_panel && !told.recorded)
    return tl::unexpected<std::string>("found \"panel\"; but no recorded panel is chosen in this sheet");
  if (of_panel) line.erase(line.begin());
  const Step& total = of_panel ? *told.recorded : *told.estimate;
  const std::string path = line.empty() ? total.path : fmt::format("{}", fmt::join(line, " "));
  const Step* step = total.at(path);
  if (step == nullptr) return tl::unexpected(no_such_line(total, path));
  return explain_page(*step, routine.set->name);
}

Page explain_page(Step step, std::string set) {
  Page page("explain");
  page.tree("build_up", std::move(step), std::move(set));
  return page;
}

Page lines_page(const Account& account) {
  Page page("explain");
  page.add(lines_of("lines", *account.estimate));
  if (!account.recorded) return page;
  page.apart();
  page.say("With `panel` in front, of the panel of " + panel_name(account) + ":");
  page.add(lines_of("panel_lines", *account.recorded));
  return page;
}

}  // namespace landdrill::report
