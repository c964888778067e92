#include "grammar/print.h"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <vector>

#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/characters.h"
#include "grammar/leaves.h"
#include "grammar/parse.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

using words::Shape;
using words::Word;

// ---- words ----

std::string text_of(const ast::Number& number) {
  std::string text(number.text);
  std::replace(text.begin(), text.end(), ',', '.');
  return text;
}

// The first pair of quotation marks that the text does not close.
std::string in_fitting_quotes(std::string_view text) {
  const auto fits = [&](const characters::Quotes& pair) {
    return characters::closing_of(pair, text).length == 0;
  };
  const auto* pair = std::find_if(characters::quotes.begin(), characters::quotes.end(), fits);
  if (pair == characters::quotes.end()) pair = characters::quotes.begin();
  return std::string(pair->opening).append(text).append(pair->closing[0]);
}

// Bare where parse would take it for this code again; `means_else` says which bare words it would not.
template <class MeansElse>
std::string code(const ast::Name& name, MeansElse means_else) {
  return characters::is_bare_code(name.text) && !means_else(name.text) ? std::string(name.text)
                                                                       : in_fitting_quotes(name.text);
}
bool means_nothing_else(std::string_view) {
  return false;
}
std::string code(const ast::Name& name) {
  return code(name, means_nothing_else);
}

bool begins_no_aspect(std::string_view text) {
  const auto word = words::find(text);
  return word && !words::may_be_an_aspect(*word);
}

template <class List, class Each>
std::string joined(const List& list, std::string_view between, Each each) {
  std::string text;
  for (const auto& item : list) {
    if (!text.empty()) text += between;
    text += each(item);
  }
  return text;
}

template <class MeansElse>
std::string counted(const ast::CountedList& list, MeansElse means_else) {
  return joined(list, ", ", [&](const ast::Counted& item) {
    return code(item.code, means_else) + (item.times ? " x" + text_of(*item.times) : "");
  });
}

std::string counted_or_none(const ast::CountedList& list) {
  return list.empty() ? std::string(words::none) : counted(list, leaves::is_none);
}

std::string text_of(const ast::JudgeMarks& marks) {
  return joined(marks, " ", [](const ast::JudgeMark& mark) { return mark ? text_of(*mark) : "-"; });
}

std::string text_of(const ast::Fault& fault) {
  if (fault.lost_part) return std::string(words::lost) + " " + code(*fault.lost_part);
  return code(fault.fault, leaves::is_no_fault) + " " + code(fault.size, characters::looks_like_times) +
         (fault.times ? " x" + text_of(*fault.times) : "");
}

std::string with_title(std::string text, const std::optional<ast::Name>& title) {
  return title ? text + " " + in_fitting_quotes(title->text) : text;
}

// A code that is spelled like something else that can be limited keeps its quotation marks.
std::string limited(const ast::LimitLine& line) {
  if (!line.word().empty()) return std::string(line.word());
  return code(line.name, [](std::string_view text) {
    return leaves::is_bound(text) || !ast::LimitLine{{text}, {}, {}}.word().empty();
  });
}

std::string marked(const ast::Number& element, bool base) {
  return "element " + text_of(element) + (base ? " base:" : ":");
}

// ---- statements ----

// A keyword with what belongs to it, and the rest.
struct Pieces {
  std::string head;
  std::string rest;
};

std::string head_of(Word word) {
  const words::Keyword& keyword = words::keyword(word);
  return std::string(keyword.word) + (keyword.colon == words::Colon::written ? ":" : "");
}

std::string percent_sign(Word word) {
  const Shape shape = words::keyword(word).shape;
  return shape == Shape::percent || shape == Shape::percents ? "%" : "";
}

struct ToPieces {
  Pieces operator()(const ast::EmptyLine&) const { return {}; }
  Pieces operator()(const ast::BadLine& line) const { return {std::string(line.text), {}}; }
  Pieces operator()(const ast::TitleLine& line) const {
    return {head_of(line.word), in_fitting_quotes(line.title.text)};
  }
  Pieces operator()(const ast::CodeLine& line) const { return {head_of(line.word), code(line.code)}; }
  Pieces operator()(const ast::NumberLine& line) const {
    return {head_of(line.word), text_of(line.number) + percent_sign(line.word)};
  }
  Pieces operator()(const ast::WordLine& line) const { return {head_of(line.word), {}}; }
  Pieces operator()(const ast::DatedLine& line) const {
    return {head_of(line.word), with_title(std::string(line.date.text), line.title)};
  }
  Pieces operator()(const ast::CountedLine& line) const {
    const bool may_be_none = words::keyword(line.word).shape == Shape::counted_or_none;
    return {head_of(line.word),
            may_be_none ? counted_or_none(line.items) : counted(line.items, means_nothing_else)};
  }
  Pieces operator()(const ast::CountsLine& line) const {
    return {head_of(line.word), joined(line.counts, ", ", [](const ast::Count& count) {
              return text_of(count.counts) + " " + code(count.where, characters::looks_like_number);
            })};
  }
  Pieces operator()(const ast::NamedNumbersLine& line) const {
    return {head_of(line.word), joined(line.numbers, ", ", [&](const ast::NamedNumber& each) {
              return code(each.name, characters::looks_like_number) + " " + text_of(each.number) +
                     percent_sign(line.word);
            })};
  }
  Pieces operator()(const ast::ElementLine& line) const {
    const std::string kind = code(line.kind, characters::looks_like_number);
    return {"element " + text_of(line.number), with_title(kind, line.title)};
  }
  Pieces operator()(const ast::FaultsLine& line) const {
    const auto each = [](const ast::Fault& fault) { return text_of(fault); };
    return {marked(line.element, line.base),
            line.faults.empty() ? std::string(words::clean) : joined(line.faults, ", ", each)};
  }
  Pieces operator()(const ast::ElementMarksLine& line) const {
    return {marked(line.element, line.base), text_of(line.marks)};
  }
  Pieces operator()(const ast::AspectMarksLine& line) const {
    return {code(line.aspect, begins_no_aspect) + ":", text_of(line.marks)};
  }
  Pieces operator()(const ast::LimitLine& line) const {
    std::string rest = limited(line);
    if (line.least) rest += " least " + text_of(*line.least);
    if (line.most) rest += " most " + text_of(*line.most);
    return {"limit", rest};
  }
};

// ---- indentation ----

bool is_empty(const ast::Statement& statement) {
  return std::holds_alternative<ast::EmptyLine>(statement);
}

bool is_of_the_whole(Word word) {
  return word == Word::routine || ast::is_among(ast::said_of_the_whole, word);
}

bool starts_block(const ast::Statement& statement) {
  const auto* title = std::get_if<ast::TitleLine>(&statement);
  return std::holds_alternative<ast::ElementLine>(statement) ||
         std::holds_alternative<ast::DatedLine>(statement) ||
         (title != nullptr && title->word == Word::passage);
}

// How far the lines that belong to `statement` are indented, or `before` when nothing belongs to it.
std::size_t indentation_below(const ast::Statement& statement, std::size_t before) {
  const std::optional<Word> word = ast::word_of(statement);
  if (starts_block(statement)) return 2;
  if (word == Word::option) return 4;
  return word && is_of_the_whole(*word) ? 0 : before;
}

bool starts_at_the_margin(const ast::Statement& statement) {
  const std::optional<Word> word = ast::word_of(statement);
  if (starts_block(statement) || std::holds_alternative<ast::BadLine>(statement)) return true;
  return word && (is_of_the_whole(*word) ||
                  (ast::is_in_header(*word) && !ast::is_among(ast::said_in_variant, *word)));
}

std::size_t indentation_of(const ast::Statement& statement, std::size_t current) {
  if (starts_at_the_margin(statement)) return 0;
  return ast::word_of(statement) == Word::option ? 2 : current;
}

// A comment alone stands as the statement below it does; below the last statement, as that one.
std::vector<std::size_t> indentations(const ast::Lines& lines) {
  std::vector<std::size_t> result(lines.size());
  std::size_t current = 0;
  std::size_t last = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!is_empty(lines[i].statement)) last = indentation_of(lines[i].statement, current);
    result[i] = last;
    current = indentation_below(lines[i].statement, current);
  }
  for (std::size_t i = lines.size(); i-- > 1;)
    if (is_empty(lines[i - 1].statement)) {
      const bool ends_here = i == lines.size();
      if (!ends_here) result[i - 1] = result[i];
    }
  return result;
}

// ---- lines ----

// Keywords of a kind are padded to one width.
std::size_t width_of(const ast::Statement& statement, std::size_t indentation) {
  constexpr std::size_t header_width = 8;  // swimmers
  constexpr std::size_t child_width = 6;   // counts, expect
  const std::optional<Word> word = ast::word_of(statement);
  if (!word) return 0;
  const bool in_element = ast::is_among(ast::said_in_variant, *word);
  // `spread` and `best` stand in the header as well as in elements.
  if (ast::is_in_header(*word) && !(in_element && indentation > 0)) return header_width;
  return in_element ? child_width : 0;
}

std::string aligned(const ast::Statement& statement, std::size_t width) {
  const Pieces pieces = std::visit(ToPieces{}, statement);
  if (pieces.rest.empty()) return pieces.head;
  std::string text = pieces.head;
  text.append(std::max(width, text.size()) - text.size() + 1, ' ');
  return text + pieces.rest;
}

std::string printed(const ast::Line& line, std::size_t indentation) {
  if (const auto* bad = std::get_if<ast::BadLine>(&line.statement)) return std::string(bad->text);
  std::string text = aligned(line.statement, width_of(line.statement, indentation));
  if (text.empty() && line.comment.empty()) return {};
  if (!text.empty() && !line.comment.empty()) text += "  ";
  return std::string(indentation, ' ').append(text).append(line.comment);
}

// Bytes that would be taken for a byte order mark at the start of a text.
bool starts_like_a_file_mark(std::string_view text) {
  return text.starts_with("\xEF\xBB\xBF") || text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
}

}  // namespace

std::string print(const ast::Lines& lines) {
  const std::vector<std::size_t> indentation = indentations(lines);
  std::string text;
  bool empty_before = true;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::string line = printed(lines[i], indentation[i]);
    if (line.empty() && empty_before) continue;
    if (text.empty() && starts_like_a_file_mark(line)) text += '\n';
    text.append(line) += '\n';
    empty_before = line.empty();
  }
  if (text.ends_with("\n\n")) text.pop_back();
  return text;
}

std::string print(const ast::Statement& statement) {
  return aligned(statement, 0);
}

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
