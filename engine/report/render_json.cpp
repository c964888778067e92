#include <fmt/format.h>

#include <algorithm>
#include <boost/json/src.hpp>

#include "engine/report/page.h"
#include "engine/report/render.h"
#include "engine/report/width.h"
#include "engine/score/build_up.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

Record record_of(const Step& step) {
  Data rows, below;
  for (const Provenance& row : step.rows)
    rows.push_back(Record{{"table", row.table},
                          {"row", row.key},
                          {"line", row.line},
                          {"status", word_of(row.status)},
                          {"source", row.source}});
  for (const Step& input : step.inputs) below.push_back(record_of(input));
  return {{"what", word_of(step.role)}, {"path", step.path},        {"label", step.label},
          {"rule", step.rule},          {"value", step.value},      {"remark", step.remark},
          {"rows", std::move(rows)},    {"below", std::move(below)}};
}

// Puts each block under its key; the others are for people alone.
class JsonRecord {
 public:
  void add(const PageParts& parts) {
    for (const PagePart& part : parts.all())
      if (is_for_programs(part.seen)) std::visit(*this, part.what);
  }
  Record record() && { return std::move(record_); }

  void operator()(const Fact& fact) { put(fact.key, fact.cell.data()); }
  void operator()(const Tree& tree) { put(tree.key, record_of(tree.step)); }
  void operator()(const Verbatim& verbatim) { put(verbatim.key, verbatim.text); }
  void operator()(const Bullets& bullets) {
    Data list;
    for (const auto& [item, seen] : bullets.items)
      if (is_for_programs(seen)) list.emplace_back(item);
    put(bullets.key, std::move(list));
  }
  // Tables of one name stand in one list.
  void operator()(const PageTable& table) {
    if (table.key.empty()) return;
    Data& list = list_at(table.key);
    for (Datum& row : records_of(table)) list.push_back(std::move(row));
  }
  // A section without a key only says where something stands on the page.
  void operator()(const Section& section) {
    if (section.key.empty()) return add(section.inside);
    JsonRecord inside;
    inside.add(section.inside);
    if (section.in == Section::In::single) return put(section.key, std::move(inside.record_));
    Data& list = list_at(section.key);
    if (section.in == Section::In::list) list.emplace_back(std::move(inside.record_));
  }
  void operator()(const auto&) {}  // for people

 private:
  Datum& at(const std::string& key) {
    const auto known =
        std::find_if(record_.begin(), record_.end(), [&](const auto& one) { return one.first == key; });
    return known != record_.end() ? known->second : record_.emplace_back(key, Datum()).second;
  }
  Data& list_at(const std::string& key) {
    Datum& list = at(key);
    if (!std::holds_alternative<Data>(list.is)) list = Data();
    return std::get<Data>(list.is);
  }
  void put(const std::string& key, Datum what) {
    if (!key.empty()) at(key) = std::move(what);
  }

  Record record_;
};

class JsonText {
 public:
  explicit JsonText(JsonLayout layout) : indented_(layout == JsonLayout::indented) {}
  void write(const Datum& datum) { std::visit(*this, datum.is); }
  std::string text() && { return std::move(text_); }

  void operator()(std::monostate) { text_ += "null"; }
  void operator()(bool truth) { text_ += truth ? "true" : "false"; }
  void operator()(std::int64_t number) { text_ += std::to_string(number); }
  void operator()(const std::string& text) { text_ += boost::json::serialize(valid_text(text)); }
  void operator()(const Record& record) {
    write_all("{}", record, [&](const auto& one) {
      text_ += boost::json::serialize(one.first) + (indented_ ? ": " : ":");
      write(one.second);
    });
  }
  void operator()(const Data& list) {
    write_all("[]", list, [&](const Datum& one) { write(one); });
  }

 private:
  void write_all(std::string_view brackets, const auto& all, auto write_one) {
    text_ += brackets.front();
    ++depth_;
    for (const auto& one : all) {
      if (&one != &all.front()) text_ += ',';
      next_line();
      write_one(one);
    }
    --depth_;
    if (!all.empty()) next_line();
    text_ += brackets.back();
  }
  void next_line() {
    if (indented_) text_.append(1, '\n').append(2 * depth_, ' ');
  }

  std::string text_;
  const bool indented_;
  std::size_t depth_ = 0;
};

}  // namespace

std::string render_json(const Page& page, JsonLayout layout) {
  Record all{{"format", 1}, {"report", page.question}};
  JsonRecord inside;
  inside.add(page);
  for (auto& one : std::move(inside).record()) all.push_back(std::move(one));
  JsonText json(layout);
  json.write(all);
  return std::move(json).text() + "\n";
}

}  // namespace landdrill::report
