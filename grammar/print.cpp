#include "grammar/print.h"

#include <algorithm>
#include <cstddef>

#include "grammar/characters.h"
#include "grammar/leaves.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

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
std::string code(const ast::Name& name) {
  return code(name, [](std::string_view) { return false; });
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

// A keyword with what belongs to it, the rest, and the width to which keywords of its kind are padded.
struct Pieces {
  std::string head;
  std::string rest;
  std::size_t width = 0;
};

constexpr std::size_t header_width = 8;  // swimmers
constexpr std::size_t child_width = 6;   // counts, expect

struct ToPieces {
  Pieces operator()(const ast::EmptyLine&) const { return {}; }
  Pieces operator()(const ast::BadLine& line) const { return {std::string(line.text), {}}; }
  Pieces operator()(const ast::RoutineLine& line) const {
    return {"routine", in_fitting_quotes(line.title.text)};
  }
  Pieces operator()(const ast::EventLine& line) const { return {"event", code(line.event), header_width}; }
  Pieces operator()(const ast::ValuesLine& line) const { return {"values", code(line.set), header_width}; }
  Pieces operator()(const ast::TempoLine& line) const {
    return {"tempo", text_of(line.beats_a_minute), header_width};
  }
  Pieces operator()(const ast::SwimmersLine& line) const {
    return {"swimmers", text_of(line.swimmers), header_width};
  }
  Pieces operator()(const ast::ElementLine& line) const {
    const std::string kind = code(line.kind, characters::looks_like_number);
    return {"element " + text_of(line.number), with_title(kind, line.title)};
  }
  Pieces operator()(const ast::OptionLine& line) const {
    return {"option", in_fitting_quotes(line.title.text)};
  }
  Pieces operator()(const ast::PartsLine& line) const {
    return {"parts", counted(line.parts, [](std::string_view) { return false; }), child_width};
  }
  Pieces operator()(const ast::CountsLine& line) const {
    return {"counts",
            joined(line.counts, ", ",
                   [](const ast::Count& count) {
                     return text_of(count.counts) + " " + code(count.where, characters::looks_like_number);
                   }),
            child_width};
  }
  Pieces operator()(const ast::DifficultyLine& line) const {
    return {"difficulty", text_of(line.difficulty), child_width};
  }
  Pieces operator()(const ast::ExpectLine& line) const { return {"expect", text_of(line.mark), child_width}; }
  Pieces operator()(const ast::SlipLine& line) const {
    return {"slip", text_of(line.percent) + "%", child_width};
  }
  Pieces operator()(const ast::PassageLine& line) const {
    return {"passage", in_fitting_quotes(line.title.text)};
  }
  Pieces operator()(const ast::ImpressionLine& line) const {
    return {"impression", joined(line.marks, ", ", [](const ast::ExpectedAspect& each) {
              return code(each.aspect, characters::looks_like_number) + " " + text_of(each.mark);
            })};
  }
  Pieces operator()(const ast::RunLine& line) const {
    return {"run", with_title(std::string(line.date.text), line.title)};
  }
  Pieces operator()(const ast::PanelLine& line) const {
    return {"panel", with_title(std::string(line.date.text), line.title)};
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
  Pieces operator()(const ast::SyncLine& line) const { return {"sync:", counted_or_none(line.errors)}; }
  Pieces operator()(const ast::PenaltyLine& line) const {
    return {"penalty:", counted_or_none(line.penalties)};
  }
  Pieces operator()(const ast::ResultLine& line) const { return {"result:", text_of(line.result)}; }
  Pieces operator()(const ast::SpreadLine& line) const {
    return {"spread", text_of(line.spread), child_width};
  }
  Pieces operator()(const ast::DayLine& line) const { return {"day", text_of(line.day), header_width}; }
  Pieces operator()(const ast::ErrorsLine& line) const {
    return {"errors", joined(line.errors, ", ", [](const ast::ExpectedErrors& each) {
              return code(each.sync, characters::looks_like_number) + " " + text_of(each.number);
            })};
  }
  Pieces operator()(const ast::RiskLine& line) const {
    return {"risk", joined(line.penalties, ", ", [](const ast::ExpectedPenalty& each) {
              return code(each.penalty, characters::looks_like_number) + " " + text_of(each.percent) + "%";
            })};
  }
  Pieces operator()(const ast::OptionalLine&) const { return {"optional", {}}; }
  Pieces operator()(const ast::StaysLine&) const { return {"stays", {}}; }
  Pieces operator()(const ast::LimitLine& line) const {
    std::string rest = limited(line);
    if (line.least) rest += " least " + text_of(*line.least);
    if (line.most) rest += " most " + text_of(*line.most);
    return {"limit", rest, header_width};
  }
};

// ---- indentation ----

template <class... Lines>
bool is_one_of(const ast::Statement& statement) {
  return (std::holds_alternative<Lines>(statement) || ...);
}

// How far the lines that belong to `statement` are indented, or `before` when nothing belongs to it.
std::size_t indentation_below(const ast::Statement& statement, std::size_t before) {
  if (is_one_of<ast::ElementLine, ast::PassageLine, ast::RunLine, ast::PanelLine>(statement)) return 2;
  if (is_one_of<ast::OptionLine>(statement)) return 4;
  if (is_one_of<ast::RoutineLine, ast::ImpressionLine, ast::ErrorsLine, ast::RiskLine>(statement)) return 0;
  return before;
}

bool starts_at_the_margin(const ast::Statement& statement) {
  return is_one_of<ast::RoutineLine, ast::EventLine, ast::ValuesLine, ast::TempoLine, ast::SwimmersLine,
                   ast::DayLine, ast::LimitLine, ast::ElementLine, ast::PassageLine, ast::ImpressionLine,
                   ast::ErrorsLine, ast::RiskLine, ast::RunLine, ast::PanelLine, ast::BadLine>(statement);
}

std::size_t indentation_of(const ast::Statement& statement, std::size_t current) {
  if (starts_at_the_margin(statement)) return 0;
  return is_one_of<ast::OptionLine>(statement) ? 2 : current;
}

// A comment alone stands as the statement below it does; below the last statement, as that one.
std::vector<std::size_t> indentations(const ast::Lines& lines) {
  std::vector<std::size_t> result(lines.size());
  std::size_t current = 0;
  std::size_t last = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!is_one_of<ast::EmptyLine>(lines[i].statement)) last = indentation_of(lines[i].statement, current);
    result[i] = last;
    current = indentation_below(lines[i].statement, current);
  }
  for (std::size_t i = lines.size(); i-- > 1;)
    if (is_one_of<ast::EmptyLine>(lines[i - 1].statement)) {
      const bool ends_here = i == lines.size();
      if (!ends_here) result[i - 1] = result[i];
    }
  return result;
}

// ---- lines ----

std::string aligned(const Pieces& pieces) {
  if (pieces.rest.empty()) return pieces.head;
  std::string text = pieces.head;
  text.append(std::max(pieces.width, text.size()) - text.size() + 1, ' ');
  return text + pieces.rest;
}

std::string print(const ast::Line& line, std::size_t indentation) {
  if (const auto* bad = std::get_if<ast::BadLine>(&line.statement)) return std::string(bad->text);
  Pieces pieces = std::visit(ToPieces{}, line.statement);
  // `spread` alone stands in the header as well as in elements.
  if (indentation == 0 && std::holds_alternative<ast::SpreadLine>(line.statement))
    pieces.width = header_width;
  std::string text = aligned(pieces);
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
    const std::string line = print(lines[i], indentation[i]);
    if (line.empty() && empty_before) continue;
    if (text.empty() && starts_like_a_file_mark(line)) text += '\n';
    text.append(line) += '\n';
    empty_before = line.empty();
  }
  if (text.ends_with("\n\n")) text.pop_back();
  return text;
}

std::string print(const ast::Statement& statement) {
  Pieces pieces = std::visit(ToPieces{}, statement);
  pieces.width = 0;
  return aligned(pieces);
}

}  // namespace landdrill
