#include <algorithm>

#include "engine/report/grid.h"
#include "engine/report/page.h"
#include "engine/report/render.h"
#include "engine/report/width.h"
#include "engine/score/build_up.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

constexpr int readable_part = 12;  // columns that a wrapped cell needs where a table is cut into several

// The columns of a table that this page has.
std::vector<std::size_t> shown_columns(const PageTable& table, const TextWish& wish) {
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const PageColumn& column = table.columns[i];
    if (!is_for_people(column.seen, wish.full) || wish.width < column.from_width) continue;
    const bool empty = table.hides_empty_columns &&
                       std::all_of(table.rows.begin(), table.rows.end(),
                                   [&](const PageRow& row) { return row.cells[i].text.empty(); });
    if (!empty) shown.push_back(i);
  }
  return shown;
}

Grid grid_of(const PageTable& table, const std::vector<std::size_t>& shown, bool full) {
  std::vector<PageColumn> columns;
  for (const std::size_t i : shown) columns.push_back(table.columns[i]);
  Grid grid(std::move(columns));
  for (const PageRow& row : table.rows) {
    if (!is_for_people(row.seen, full)) continue;
    if (row.rule_above) grid.add_rule();
    std::vector<std::string> cells;
    for (const std::size_t i : shown) cells.push_back(row.cells[i].text);
    grid.add(std::move(cells), row.look);
  }
  return grid;
}

// The key columns, and after them as many from `next` on as fit, one at least.
std::vector<std::size_t> columns_that_fit(const PageTable& table, const std::vector<std::size_t>& all,
                                          std::size_t& next, const TextWish& wish) {
  std::vector<std::size_t> part(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(table.keys));
  const std::size_t first = next;
  for (; next < all.size(); ++next) {
    part.push_back(all[next]);
    if (next == first || grid_of(table, part, wish.full).fits(wish.width, readable_part)) continue;
    part.pop_back();
    break;
  }
  return part;
}

// Several tables one below the other. Short cells stand together in the first, and only long texts move to
// the next.
std::string cut_table(const PageTable& table, std::vector<std::size_t> all, const TextWish& wish) {
  if (!grid_of(table, all, wish.full).fits(wish.width, readable_part))
    std::stable_sort(all.begin() + static_cast<std::ptrdiff_t>(table.keys), all.end(),
                     [&](std::size_t a, std::size_t b) {
                       return table.columns[a].wraps == Wraps::no && table.columns[b].wraps == Wraps::yes;
                     });
  std::string result;
  std::size_t next = table.keys;
  do {
    const Grid part = grid_of(table, columns_that_fit(table, all, next, wish), wish.full);
    result += (result.empty() ? "" : "\n") + part.text(wish.width, wish.colour);
  } while (next < all.size());
  return result;
}

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

  void tell(const Step& step, int depth) {
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

  std::string result(std::string_view set) const {
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

 private:
  void line(int depth, std::string_view start, std::string_view text, Look look = Look::usual) {
    const std::string indent(static_cast<std::size_t>(std::min(2 * depth, deepest_indent)), ' ');
    const std::string whole = paragraph(indent + std::string(start), plain(text), width_);
    lines_ += colour_ ? coloured(whole, look) : whole;
  }

  // The place of a source in the list below the tree: the same words are not printed under every row.
  std::size_t source_number(const Provenance& row) {
    const std::pair<Status, std::string_view> source{row.status, row.source};
    const auto at = std::find(sources_.begin(), sources_.end(), source);
    const std::size_t number = static_cast<std::size_t>(at - sources_.begin()) + 1;
    if (at == sources_.end()) sources_.push_back(source);
    return number;
  }

  int width_;
  bool colour_;
  std::string lines_;
  std::vector<std::pair<Status, std::string_view>> sources_;
};

std::string tree_text(const Tree& tree, const TextWish& wish) {
  TreeLines lines(wish);
  lines.tell(tree.step, 0);
  return lines.result(tree.set);
}

class TextPage {
 public:
  explicit TextPage(const TextWish& wish) : wish_(wish) {}

  void add(const PageParts& parts) {
    for (const PagePart& part : parts.all()) {
      if (!is_for_people(part.seen, wish_.full)) continue;
      const bool was_apart = apart_;
      const std::size_t before = text_.size();
      apart_ = apart_ || (part.apart && !text_.empty());
      std::visit(*this, part.what);
      if (text_.size() == before) apart_ = was_apart;
    }
  }
  std::string text() && { return std::move(text_); }

  void operator()(const Title& title) {
    const std::string words = plain(title.text);
    const int line = std::max(1, std::min(width_of(words), wish_.width));
    put(bold(paragraph("", words, wish_.width)) + std::string(static_cast<std::size_t>(line), '=') + "\n");
  }
  void operator()(const Heading& heading) { put(bold(paragraph("", plain(heading.text), wish_.width))); }
  void operator()(const Sentence& one) { put(paragraph(one.first, plain(one.text), wish_.width)); }
  void operator()(const Bullets& bullets) {
    for (const auto& [item, seen] : bullets.items)
      if (is_for_people(seen, wish_.full)) put(paragraph(bullet, plain(item), wish_.width));
  }
  void operator()(const Fact& fact) { put(paragraph(fact.key + " ", plain(fact.cell.text), wish_.width)); }
  void operator()(const PageTable& table) {
    const std::vector<std::size_t> shown = shown_columns(table, wish_);
    put(table.keys > 0 ? cut_table(table, shown, wish_)
                       : grid_of(table, shown, wish_.full).text(wish_.width, wish_.colour));
  }
  void operator()(const Tree& tree) { put(tree_text(tree, wish_)); }
  void operator()(const Verbatim& verbatim) { put(verbatim.text); }
  void operator()(const Path& one) { put(one.before + plain(one.path) + "\n"); }
  void operator()(const Section& section) { add(section.inside); }
  void operator()(const Either& either) {
    const Grid wide = grid_of(either.wide, shown_columns(either.wide, wish_), wish_.full);
    if (wide.fits(wish_.width, either.readable))
      put(wide.text(wish_.width, wish_.colour));
    else
      add(either.narrow);
  }

 private:
  void put(const std::string& text) {
    if (text.empty()) return;
    if (std::exchange(apart_, false)) text_ += "\n";
    text_ += text;
  }
  std::string bold(const std::string& text) const {
    return wish_.colour ? coloured(text, Look::total) : text;
  }

  const TextWish& wish_;
  std::string text_;
  bool apart_ = false;  // an empty line comes before what is put next
};

}  // namespace

std::string render_text(const Page& page, const TextWish& asked) {
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  TextPage text(wish);
  text.add(page);
  return std::move(text).text();
}

std::string render(const Page& page, Format format, const TextWish& wish, JsonLayout layout) {
  if (format == Format::csv) return render_csv(page);
  return format == Format::json ? render_json(page, layout) : render_text(page, wish);
}

}  // namespace landdrill::report
