#include "engine/report/pages/sheet.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "engine/report/figures.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "grammar/words.h"

namespace landdrill::report {
namespace {

void add_count(std::string& words, std::size_t count, const std::string& one) {
  if (count == 0) return;
  words += (words.empty() ? "" : ", ") + counted(count, one);
}

std::string outcome(const Checked& sheet) {
  std::string words;
  add_count(words, sheet.messages.errors(), "error");
  if (sheet.without_set) words += (words.empty() ? "" : ", ") + std::string("no value set to check it by");
  add_count(words, sheet.messages.warnings(), "broken limit");
  if (words.empty()) words = "ok";
  if (const std::size_t doubts = sheet.messages.doubts(); doubts > 0)
    words += ", " + counted(doubts, "mark") + " to look at again";
  return words;
}

}  // namespace

Page check_page(const Checked& sheet) {
  const std::string title = sheet.routine.empty() ? "" : std::string(sheet.routine) + ": ";
  // One line, however wide, as one looks for it.
  Page page = brief_page("check", std::string(sheet.file) + ": " + title + outcome(sheet) + "\n",
                         {{"file", sheet.file},
                          {"routine", sheet.routine},
                          {"ok", sheet.ok()},
                          {"value_set_found", !sheet.without_set}});
  put_messages(page, sheet.messages);
  return page;
}

Page tidy_page(const TidiedSheet& sheet) {
  using Tell = TidiedSheet::Tell;
  Page page("tidy");
  const bool ok = sheet.now.messages.ok();
  if (ok && sheet.tell == Tell::sheet)
    page.verbatim("", sheet.now.text);
  else if (ok && !sheet.was_tidy())
    page.verbatim("", std::string(sheet.file) + (sheet.tell == Tell::written ? ": tidied\n" : "\n"));
  page.fact("file", sheet.file);
  page.fact("tidy", sheet.was_tidy());
  page.fact("text", ok ? sheet.now.text : "");
  put_messages(page, sheet.now.messages);
  return page;
}

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
