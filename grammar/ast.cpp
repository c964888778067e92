#include "grammar/ast.h"

#include <algorithm>

#include "grammar/words.h"

namespace landdrill::ast {

bool Number::operator==(const Number& other) const {
  const auto as_point = [](char c) { return c == ',' ? '.' : c; };
  return std::equal(text.begin(), text.end(), other.text.begin(), other.text.end(),
                    [&](char a, char b) { return as_point(a) == as_point(b); });
}

std::string_view LimitLine::word() const {
  if (name.quoted) return {};
  for (std::string_view word : words::limited)
    if (words::same(name.text, word)) return word;
  return {};
}

bool LimitLine::operator==(const LimitLine& other) const {
  const bool same_name = word().empty() ? name == other.name : true;
  return same_name && word() == other.word() && least == other.least && most == other.most;
}

}  // namespace landdrill::ast
