#include "grammar/blocks.h"

#include "grammar/ast.h"
#include "grammar/builder.h"
#include "grammar/parse.h"

namespace landdrill {

void assemble(const Source& source, Assembled& so_far) {
  struct ToBlocks : LineTaker {
    explicit ToBlocks(ast::Builder& to) : builder(to) {}
    void take(ast::Line& line) override { builder.add(line); }
    ast::Builder& builder;
  };
  ast::Builder builder(source, so_far);
  ToBlocks lines(builder);
  parse(source, lines, so_far.diagnostics);
}

}  // namespace landdrill
