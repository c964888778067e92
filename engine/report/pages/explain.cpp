#include "engine/report/pages/explain.h"

#include "engine/report/pages/face.h"

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

}  // namespace

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
