#include "engine/report/explain.h"

#include <algorithm>

#include "engine/report/grid.h"
#include "engine/report/render_tree.h"

namespace landdrill::report {
namespace {

void list(const Step& step, Grid& grid) {
  grid.add({step.path, step.label, step.value});
  for (const Step& input : step.inputs) list(input, grid);
}

}  // namespace

std::string explain(const Step& step, std::string_view set, const TextWish& wish) {
  TextWish page = wish;
  page.width = std::max(60, wish.width);
  return tree_text({"", step, std::string(set)}, page);
}

std::string explainable(const Step& step, const TextWish& wish) {
  using enum Align;
  Grid grid({{"line", words, true}, {"what it is", words, true}, {"value", amount}});
  list(step, grid);
  return grid.text(std::max(60, wish.width), wish.colour);
}

}  // namespace landdrill::report
