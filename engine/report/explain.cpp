#include "engine/report/explain.h"

#include <algorithm>

#include "engine/report/render_tree.h"

namespace landdrill::report {
std::string explain(const Step& step, std::string_view set, const TextWish& wish) {
  TextWish page = wish;
  page.width = std::max(60, wish.width);
  return tree_text({"", step, std::string(set)}, page);
}

}  // namespace landdrill::report
