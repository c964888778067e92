#include "engine/report/pages/sheet.h"

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/output.h"
#include "engine/files/sheet_reader.h"
#include "engine/report/render.h"
#include "grammar/diagnostics.h"
#include "grammar/print.h"
#include "tables/folder.h"

namespace landdrill::cli {

Exit check(Call& call) {
  bool many = false;
  CallSheets sheets(call);
  return with_sheets(call, sheets, [&](SheetReader& reader, Messages& messages) {
    const StreamSheet& sheet = reader.sheet();
    const report::Checked checked{sheet.file(), sheet.title(), sheet.messages(), sheet.without_set};
    many = many || reader.more();
    if (format_of(call) == report::Format::text) messages.add(sheet.messages());
    print_page(call, check_page(checked), many);
    return checked.ok() ? Exit::ok : Exit::errors;
  });
}

Exit explain(Call& call) {
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const report::Answer answer = report::explain(call.given, one.routine());
  if (!answer) return misused(call, answer.error());
  print_page(call, *answer);
  return Exit::ok;
}

namespace {

Exit tidy_one(Call& call, const std::string& file) {
  using Tell = report::TidiedSheet::Tell;
  const auto text = read_whole(file);
  if (!text) return refuse(call, text.error());
  const Tidied now = landdrill::tidy({shown(file), *text});
  const bool writes = call.given.has("--write") && file != "-";
  const report::TidiedSheet sheet{file, *text, now,
                                  call.given.has("--check") ? Tell::name
                                  : writes                  ? Tell::written
                                                            : Tell::sheet};
  if (!now.messages.ok() && format_of(call) == report::Format::text) {
    call.streams.say(to_string(now.messages));
    call.streams.say("landdrill: " + file + " is left as it is: mend it first\n");
  }
  if (now.messages.ok() && sheet.tell == Tell::written && !sheet.was_tidy())
    if (const auto written = replace_file(file, now.text); !written) return refuse(call, written.error());
  print_page(call, tidy_page(sheet), call.given.operands.size() > 1);
  return now.messages.ok() && (sheet.tell != Tell::name || sheet.was_tidy()) ? Exit::ok : Exit::errors;
}

}  // namespace

Exit tidy(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  Exit worst = Exit::ok;
  for (const std::string& file : call.given.operands) worst = worse(worst, tidy_one(call, file));
  return worst;
}

}  // namespace landdrill::cli
