#include "grammar/ast.h"

#include <algorithm>

namespace landdrill::ast {

bool Number::operator==(const Number& other) const {
  const auto as_point = [](char c) { return c == ',' ? '.' : c; };
  return std::equal(text.begin(), text.end(), other.text.begin(), other.text.end(),
                    [&](char a, char b) { return as_point(a) == as_point(b); });
}

}  // namespace landdrill::ast
