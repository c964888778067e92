#include <fmt/format.h>

#include "engine/cli/messages.h"
#include "engine/cli/sheet_reader.h"

namespace landdrill::cli {
namespace {

std::string counted(std::size_t number, std::string_view one) {
  return fmt::format("{} {}{}", number, one, number == 1 ? "" : "s");
}

std::string sheet_verdict(const ReadSheet& sheet) {
  std::string text;
  if (sheet.diagnostics.errors() > 0) text = counted(sheet.diagnostics.errors(), "error");
  if (sheet.without_set) text += (text.empty() ? "" : ", ") + std::string("no value set to check it by");
  if (sheet.diagnostics.warnings() > 0)
    text += (text.empty() ? "" : ", ") + counted(sheet.diagnostics.warnings(), "broken limit");
  if (text.empty()) text = "ok";
  const std::string title(sheet.title());
  return title.empty() ? fmt::format("{}: {}\n", sheet.file(), text)
                       : fmt::format("{}: {}: {}\n", sheet.file(), title, text);
}

}  // namespace

Exit check(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  SheetReader reader(call);
  Messages messages(call.streams);
  Exit worst = Exit::ok;
  std::size_t sheets = 0;
  while (call.streams.out.failure() == 0 && reader.next()) {
    ++sheets;
    const ReadSheet& sheet = reader.sheet();
    messages.add(sheet.diagnostics);
    call.streams.out.write(sheet_verdict(sheet));
    if (!sheet.ok() || sheet.diagnostics.warnings() > 0) worst = Exit::errors;
  }
  messages.finish();
  return worse(worst, reader.worst());
}

}  // namespace landdrill::cli
