#include "engine/season/listed_text.h"

#include <algorithm>
#include <deque>
#include <map>

#include "grammar/ast.h"
#include "grammar/parse.h"
#include "grammar/print.h"
#include "grammar/words.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

using Listed = ListedPanel::Line;

bool is_element(std::string_view name) {
  return !name.empty() && name.find_first_not_of("0123456789") == name.npos;
}

std::string_view aspect_called(std::string_view name, std::span<const std::string> aspects) {
  const auto known = std::find_if(aspects.begin(), aspects.end(),
                                  [&](const std::string& one) { return words::same(one, name); });
  return known == aspects.end() ? name : std::string_view(*known);
}

std::string text_of(const ListedPanel::Given& given) {
  return given.mark ? given.mark->text(2) : "-";
}

std::string start_of(const Listed& line, std::span<const std::string> aspects) {
  if (is_element(line.name)) return "  element " + line.name + (line.base ? " base:" : ":");
  const ast::Name aspect{aspect_called(line.name, aspects), false};
  std::string start = "  " + print(ast::Statement(ast::AspectMarksLine{aspect, {}}));
  while (start.ends_with(' ')) start.pop_back();
  return start;
}

// The marks of a panel by their line and seat, and which elements have the base mark.
struct PanelMarks {
  std::map<std::pair<std::string, std::size_t>, std::optional<Decimal>> marks;
  std::map<std::string, bool> bases;
};
PanelMarks marks_in(const ast::Lines& lines) {
  PanelMarks all;
  for (const ast::Line& line : lines) {
    const auto* element = std::get_if<ast::ElementMarksLine>(&line.statement);
    const auto* aspect = std::get_if<ast::AspectMarksLine>(&line.statement);
    if (element == nullptr && aspect == nullptr) continue;
    const std::string name(element != nullptr ? element->element.text : aspect->aspect.text);
    if (element != nullptr) all.bases[name] = element->base;
    std::size_t seat = 0;
    for (const ast::JudgeMark& mark : element != nullptr ? element->marks : aspect->marks) {
      if (mark) all.marks[{name, seat}] = Decimal::parse(mark->text);
      ++seat;
    }
  }
  return all;
}

MarksApart apart(const PanelMarks& old_panel, const PanelMarks& new_panel) {
  MarksApart marks{old_panel.marks.size()};
  for (const auto& [seat, mark] : old_panel.marks) {
    const auto other = new_panel.marks.find(seat);
    if (other == new_panel.marks.end())
      ++marks.gone;
    else if (other->second != mark)
      ++marks.changed;
  }
  for (const auto& [seat, mark] : new_panel.marks) marks.added += old_panel.marks.count(seat) == 0;
  for (const auto& [element, base] : new_panel.bases) {
    const auto other = old_panel.bases.find(element);
    if (other != old_panel.bases.end() && other->second != base) ++(base ? marks.based : marks.unbased);
  }
  return marks;
}

// A kept panel, line by line, into which the marks of a list are put.
class Merging {
 public:
  Merging(std::string_view kept, const ListedPanel& panel, std::span<const std::string> aspects)
      : lines_(parse({"", kept}).lines), from_(lines_.size()), panel_(panel), aspects_(aspects) {}

  ListedText merge() {
    const PanelMarks before = marks_in(lines_);
    for (const Listed& line : panel_.lines) take(line);
    return {print(lines_), std::move(from_), apart(before, marks_in(lines_))};
  }

 private:
  static ast::JudgeMarks* marks_of(ast::Statement& statement) {
    if (auto* element = std::get_if<ast::ElementMarksLine>(&statement)) return &element->marks;
    if (auto* aspect = std::get_if<ast::AspectMarksLine>(&statement)) return &aspect->marks;
    return nullptr;
  }
  static const ast::JudgeMarks* marks_of(const ast::Statement& statement) {
    return marks_of(const_cast<ast::Statement&>(statement));
  }

  void take(const Listed& line) {
    const std::size_t at = is_element(line.name) ? element_line(line) : aspect_line(line);
    from_[at] = &line;
    auto* element = std::get_if<ast::ElementMarksLine>(&lines_[at].statement);
    if (element != nullptr && panel_.says_base) element->base = line.base;
    put(line, *marks_of(lines_[at].statement));
  }

  void put(const Listed& line, ast::JudgeMarks& marks) {
    std::vector<ast::JudgeMark> seats(marks.begin(), marks.end());
    if (seats.size() < line.judges.size()) seats.resize(line.judges.size());
    for (std::size_t seat = 0; seat < line.judges.size(); ++seat) {
      const auto& given = line.judges[seat];
      if (!given || is_same(seats[seat], *given)) continue;
      seats[seat].reset();
      if (given->mark) seats[seat] = ast::Number{words_.emplace_back(text_of(*given))};
    }
    marks = {};
    for (const ast::JudgeMark& one : seats) marks.push_back(one);
  }

  static bool is_same(const ast::JudgeMark& kept, const ListedPanel::Given& given) {
    if (!kept) return !given.mark;
    return given.mark && Decimal::parse(kept->text) == given.mark;
  }

  // The line for these marks, made in its place when there is none.
  std::size_t element_line(const Listed& line) {
    const auto number = Decimal::parse(line.name);  // none of one that is too large
    std::size_t place = 1;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      const auto* element = std::get_if<ast::ElementMarksLine>(&lines_[i].statement);
      const auto its = element != nullptr ? Decimal::parse(element->element.text) : std::nullopt;
      if (its && its == number) return i;
      if (its && (!number || *its < *number)) place = i + 1;
    }
    return insert(place, ast::ElementMarksLine{{line.name}, line.base, {}});
  }
  std::size_t aspect_line(const Listed& line) {
    const std::string_view name = aspect_called(line.name, aspects_);
    std::size_t place = 1;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      const auto* aspect = std::get_if<ast::AspectMarksLine>(&lines_[i].statement);
      if (aspect != nullptr && aspect->aspect.text == name) return i;
      if (marks_of(lines_[i].statement) != nullptr) place = i + 1;
    }
    return insert(place, ast::AspectMarksLine{{name, false}, {}});
  }
  std::size_t insert(std::size_t place, ast::Statement statement) {
    while (place < lines_.size() && !starts(place)) ++place;
    const auto at = static_cast<std::ptrdiff_t>(place);
    lines_.insert(lines_.begin() + at, ast::Line{std::move(statement), {}, {}});
    from_.insert(from_.begin() + at, nullptr);
    return place;
  }
  // Below the panel's first line, which comments may stand above.
  bool starts(std::size_t place) const {
    return std::any_of(
        lines_.begin(), lines_.begin() + static_cast<std::ptrdiff_t>(place),
        [](const ast::Line& line) { return std::holds_alternative<ast::PanelLine>(line.statement); });
  }

  ast::Lines lines_;
  std::vector<const Listed*> from_;
  const ListedPanel& panel_;
  const std::span<const std::string> aspects_;
  std::deque<std::string> words_;
};

}  // namespace

std::string_view ListedText::piece_at(std::size_t line, std::size_t column) const {
  if (line >= lines.size() || lines[line] == nullptr) return {};
  std::string_view rest = text;
  for (std::size_t i = 0; i < line; ++i) rest.remove_prefix(rest.find('\n') + 1);
  rest = rest.substr(0, rest.find('\n'));
  const std::size_t start = rest.find(": ") + 2;
  if (column <= start || column > rest.size()) return lines[line]->piece;
  // One blank stands between two marks.
  const std::string_view before = rest.substr(start, column - 1 - start);
  const auto seat = static_cast<std::size_t>(std::count(before.begin(), before.end(), ' '));
  const auto& judges = lines[line]->judges;
  return seat < judges.size() && judges[seat] ? judges[seat]->piece : lines[line]->piece;
}

ListedText written(const ListedPanel& panel, std::span<const std::string> aspects) {
  ast::PanelLine head{{panel.date}, std::nullopt};
  if (!panel.meet.empty()) head.title = ast::Name{panel.meet, true};
  ListedText result;
  result.text = print(ast::Statement(head)) + "\n";
  result.lines.push_back(nullptr);
  for (const Listed& line : panel.lines) {
    result.text += start_of(line, aspects);
    for (const auto& given : line.judges) (result.text += ' ') += given ? text_of(*given) : "-";
    result.text += '\n';
    result.lines.push_back(&line);
  }
  return result;
}

MarksApart marks_apart(std::string_view before, std::string_view now) {
  return apart(marks_in(parse({"", before}).lines), marks_in(parse({"", now}).lines));
}

ListedText written_into(std::string_view kept, const ListedPanel& panel,
                        std::span<const std::string> aspects) {
  return Merging(kept, panel, aspects).merge();
}

}  // namespace landdrill
