#include "engine/report/pages/values_check.h"

#include "engine/report/figures.h"
#include "engine/report/pages/face.h"
#include "grammar/diagnostics.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

std::string usable(const Loaded& loaded) {
  const Diagnostics& messages = loaded.diagnostics;
  if (messages.errors() > 0) return counted(messages.errors(), "error", "errors");
  std::string text = "ok";
  if (messages.warnings() > 0) text = "can be used, with " + counted(messages.warnings(), "warning", "warnings");
  if (const std::size_t gaps = gaps_in(*loaded.set); gaps > 0)
    text += "; " + counted(gaps, "value", "values") + " still to fill in";
  return text;
}

}  // namespace

Page values_check_page(std::string_view set, const Loaded& loaded) {
  Page page("values check");
  page.verbatim("", std::string(set) + ": " + usable(loaded) + "\n");
  page.fact("set", set);
  page.fact("can_be_used", {"", loaded.set.has_value()});
  if (loaded.set) page.fact("to_fill_in", {"", Datum(gaps_in(*loaded.set))});
  put_messages(page, loaded.diagnostics);
  return page;
}

}  // namespace landdrill::report
