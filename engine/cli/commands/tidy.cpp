#include <cassert>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/files/replace_file.h"
#include "engine/files/read_sheets.h"
#include "grammar/ast.h"
#include "grammar/diagnostics.h"
#include "grammar/parse.h"
#include "grammar/print.h"

namespace landdrill::cli {
namespace {

bool same_statements(const ast::Lines& one, const ast::Lines& other) {
  std::vector<const ast::Line*> a, b;
  // The printer may take out empty lines; nothing else.
  const auto is_blank = [](const ast::Line& line) {
    return std::holds_alternative<ast::EmptyLine>(line.statement) && line.comment.empty();
  };
  for (const ast::Line& line : one)
    if (!is_blank(line)) a.push_back(&line);
  for (const ast::Line& line : other)
    if (!is_blank(line)) b.push_back(&line);
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i)
    if (!(a[i]->statement == b[i]->statement)) return false;
  return true;
}

struct Tidied {
  std::string text;
  Diagnostics diagnostics;
};

Tidied tidied(const std::string& file, const std::string& text) {
  Parsed parsed = parse({shown(file), text});
  Tidied result{{}, std::move(parsed.diagnostics)};
  if (!result.diagnostics.ok()) return result;
  result.text = print(parsed.lines);
  // What is about to replace the coach's file says the same, or nothing is replaced.
  assert(same_statements(parsed.lines, parse({file, result.text}).lines));
  return result;
}

Exit tidy_one(Call& call, const std::string& file) {
  const auto text = read_whole(file);
  if (!text) return refuse(call, text.error());
  const Tidied tidy = tidied(file, *text);
  if (!tidy.diagnostics.ok()) {
    call.streams.say(to_string(tidy.diagnostics));
    call.streams.say("landdrill: " + file + " is left as it is: mend it first\n");
    return Exit::errors;
  }
  if (call.given.has("--check")) {
    if (tidy.text == *text) return Exit::ok;
    call.streams.out.write(file + "\n");
    return Exit::errors;
  }
  if (!call.given.has("--write") || file == "-") {
    call.streams.out.write(tidy.text);
    return Exit::ok;
  }
  if (tidy.text == *text) return Exit::ok;
  if (const auto written = replace_file(file, tidy.text); !written) return refuse(call, written.error());
  call.streams.out.write(file + ": tidied\n");
  return Exit::ok;
}

}  // namespace

Exit tidy(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  Exit worst = Exit::ok;
  for (const std::string& file : call.given.operands) worst = worse(worst, tidy_one(call, file));
  return worst;
}

}  // namespace landdrill::cli
