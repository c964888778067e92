#include "grammar/tidy.h"

#include <cassert>
#include <vector>

#include "grammar/ast.h"
#include "grammar/parse.h"
#include "grammar/print.h"

namespace landdrill {
namespace {

// The printer may take out empty lines; nothing else.
std::vector<const ast::Statement*> statements_of(const ast::Lines& lines) {
  std::vector<const ast::Statement*> all;
  for (const ast::Line& line : lines)
    if (!std::holds_alternative<ast::EmptyLine>(line.statement) || !line.comment.empty())
      all.push_back(&line.statement);
  return all;
}

bool says_the_same(const ast::Lines& one, const ast::Lines& other) {
  const auto a = statements_of(one), b = statements_of(other);
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const ast::Statement* mine, const ast::Statement* yours) { return *mine == *yours; });
}

}  // namespace

Tidied tidy(const Source& sheet) {
  Parsed parsed = parse(sheet);
  Tidied result{{}, std::move(parsed.diagnostics)};
  if (!result.messages.ok()) return result;
  result.text = print(parsed.lines);
  // What may replace the coach's file says the same, or nothing is replaced.
  assert(says_the_same(parsed.lines, parse({sheet.name, result.text}).lines));
  return result;
}

}  // namespace landdrill
