#include "engine/report/pages/check.h"

#include <fmt/format.h>

#include "engine/report/figures.h"
#include "engine/report/pages/face.h"

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
    words += fmt::format(", {} to look at again", counted(doubts, "mark"));
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

}  // namespace landdrill::report
