#include "grammar/ast.h"

#include <algorithm>

#include "grammar/words.h"

namespace landdrill::ast {
namespace {

struct WordOf {
  std::optional<Word> operator()(const auto& line) const { return line.word; }
  std::optional<Word> operator()(const ElementLine&) const { return Word::element; }
  std::optional<Word> operator()(const FaultsLine&) const { return Word::element; }
  std::optional<Word> operator()(const ElementMarksLine&) const { return Word::element; }
  std::optional<Word> operator()(const LimitLine&) const { return Word::limit; }
  std::optional<Word> operator()(const AspectMarksLine&) const { return std::nullopt; }
  std::optional<Word> operator()(const EmptyLine&) const { return std::nullopt; }
  std::optional<Word> operator()(const BadLine&) const { return std::nullopt; }
};

}  // namespace

std::optional<Word> word_of(const Statement& statement) {
  return std::visit(WordOf{}, statement);
}

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
