#include "engine/report/render_tree.h"

#include <algorithm>

#include "engine/report/grid.h"
#include "engine/report/width.h"
#include "engine/score/build_up.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

constexpr int deepest_indent = 24;  // columns; below that the tree goes on without moving further right

// What a line is called: its own words, with the number of an element and the word for a part.
std::string step_words(const Step& step) {
  if (step.role == Role::element) return step.path + " " + step.label;
  if (step.role == Role::part) return "part " + step.label;
  return step.label;
}

class TreeLines {
 public:
  explicit TreeLines(const TextWish& wish) : width_(wish.width), colour_(wish.colour) {}
  void tell(const Step& step, int depth);
  std::string result(std::string_view set) const;

 private:
  void line(int depth, std::string_view start, std::string_view text, Look look = Look::usual);
  std::size_t source_number(const Provenance& row);

  int width_;
  bool colour_;
  std::string lines_;
  std::vector<std::pair<Status, std::string_view>> sources_;
};

void TreeLines::line(int depth, std::string_view start, std::string_view text, Look look) {
  const std::string indent(static_cast<std::size_t>(std::min(2 * depth, deepest_indent)), ' ');
  const std::string whole = paragraph(indent + std::string(start), plain(text), width_);
  lines_ += colour_ ? coloured(whole, look) : whole;
}

// The place of a source in the list below the tree: the same words are not printed under every row.
std::size_t TreeLines::source_number(const Provenance& row) {
  const std::pair<Status, std::string_view> source{row.status, row.source};
  const auto at = std::find(sources_.begin(), sources_.end(), source);
  const std::size_t number = static_cast<std::size_t>(at - sources_.begin()) + 1;
  if (at == sources_.end()) sources_.push_back(source);
  return number;
}

void TreeLines::tell(const Step& step, int depth) {
  const std::string value = step.value.empty() ? "" : ": " + step.value;
  const std::string remark = step.remark.empty() ? "" : " (" + step.remark + ")";
  line(depth, "", step_words(step) + value + remark, depth == 0 ? Look::total : Look::usual);
  if (!step.rule.empty()) line(depth + 1, "= ", step.rule);
  for (const Provenance& row : step.rows) {
    const bool known = row.key.empty() || step.label.find(row.key) != std::string::npos;
    const std::string key = known ? "" : " " + row.key + ",";
    line(depth + 1, "from ",
         std::string(row.table) + ".csv" + key + " line " + std::to_string(row.line) + " [" +
             std::to_string(source_number(row)) + "]");
  }
  for (const Step& input : step.inputs) tell(input, depth + 1);
}

std::string TreeLines::result(std::string_view set) const {
  if (sources_.empty()) return lines_;
  std::string result =
      lines_ + "\n" + paragraph("", "Where the values of " + plain(set) + " are from", width_);
  for (std::size_t i = 0; i < sources_.size(); ++i) {
    const auto& [status, source] = sources_[i];
    const std::string number = "  [" + std::to_string(i + 1) + "] ";
    result += paragraph(number, std::string(word_of(status)) + ": " + plain(source), width_);
  }
  return result;
}

}  // namespace

std::string tree_text(const Tree& tree, const TextWish& wish) {
  TreeLines lines(wish);
  lines.tell(tree.step, 0);
  return lines.result(tree.set);
}

}  // namespace landdrill::report
