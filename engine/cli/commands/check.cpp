#include "engine/report/pages/check.h"

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/files/read_ahead.h"
#include "engine/files/sheet_reader.h"
#include "engine/report/render.h"
#include "engine/report/render_json.h"

namespace landdrill::cli {

Exit check(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  CallSheets sheets(call);
  SheetReader& reader = sheets.reader();
  Messages messages(call.streams);
  const report::Format format = format_of(call);
  Exit worst = Exit::ok;
  bool many = false;
  while (call.streams.out.failure() == 0 && reader.next()) {
    const StreamSheet& sheet = reader.sheet();
    const report::Checked checked{sheet.file(), sheet.title(), sheet.messages(), sheet.without_set};
    many = many || reader.more();
    if (format == report::Format::text) messages.add(sheet.messages());
    print_page(call, check_page(checked), many ? report::JsonLayout::one_line : report::JsonLayout::indented);
    if (!checked.ok()) worst = Exit::errors;
  }
  messages.finish();
  return worse(worst, sheets.worst());
}

}  // namespace landdrill::cli
