#include "engine/report/render_json.h"

#include <fmt/format.h>

#include <boost/json.hpp>

#include "engine/report/json_text.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

json::value json_of(const Datum& datum);

struct JsonValue {
  json::value operator()(std::monostate) const { return nullptr; }
  json::value operator()(bool truth) const { return truth; }
  json::value operator()(std::int64_t number) const { return number; }
  json::value operator()(const std::string& text) const { return text_or_null(text); }
  json::value operator()(const Record& record) const {
    json::object result;
    for (const auto& [key, datum] : record) result[key] = json_of(datum);
    return result;
  }
  json::value operator()(const Data& list) const {
    json::array result;
    for (const Datum& one : list) result.push_back(json_of(one));
    return result;
  }
};

json::value json_of(const Datum& datum) {
  return std::visit(JsonValue{}, datum.is);
}

json::value json_of(const Step& step) {
  json::array rows, below;
  for (const Provenance& row : step.rows)
    rows.push_back(json::object{{"table", text_or_null(row.table)},
                                {"row", text_or_null(row.key)},
                                {"line", row.line},
                                {"status", text_or_null(word_of(row.status))},
                                {"source", text_or_null(row.source)}});
  for (const Step& input : step.inputs) below.push_back(json_of(input));
  return json::object{{"what", text_or_null(word_of(step.role))},
                      {"path", text_or_null(step.path)},
                      {"label", text_or_null(step.label)},
                      {"rule", text_or_null(step.rule)},
                      {"value", text_or_null(step.value)},
                      {"remark", text_or_null(step.remark)},
                      {"rows", std::move(rows)},
                      {"below", std::move(below)}};
}

// Puts each block under its key; the others are for people alone.
class JsonObject {
 public:
  json::object of(const PageParts& parts) && {
    for (const PagePart& part : parts.all())
      if (is_for_programs(part.seen)) std::visit(*this, part.what);
    return std::move(object_);
  }

  void operator()(const Fact& fact) { put(fact.key, json_of(fact.cell.data())); }
  void operator()(const Tree& tree) { put(tree.key, json_of(tree.step)); }
  void operator()(const Verbatim& verbatim) { put(verbatim.key, text_or_null(verbatim.text)); }
  void operator()(const Bullets& bullets) {
    json::array list;
    for (const auto& [item, seen] : bullets.items)
      if (is_for_programs(seen)) list.push_back(text_or_null(item));
    put(bullets.key, std::move(list));
  }
  // Tables of one name stand in one list.
  void operator()(const PageTable& table) {
    if (table.key.empty()) return;
    if (!object_.contains(table.key)) object_[table.key] = json::array();
    for (const Datum& row : records_of(table)) object_[table.key].as_array().push_back(json_of(row));
  }
  void operator()(const Section& section) {
    if (section.key.empty()) return add(section.inside);
    if (section.in == Section::In::single) return put(section.key, JsonObject().of(section.inside));
    if (!object_.contains(section.key)) object_[section.key] = json::array();
    if (section.in == Section::In::list)
      object_[section.key].as_array().push_back(JsonObject().of(section.inside));
  }
  void operator()(const auto&) {}  // for people

 private:
  void put(const std::string& key, json::value what) {
    if (!key.empty()) object_[key] = std::move(what);
  }
  // A section without a key only says where something stands on the page.
  void add(const PageParts& inside) {
    for (const PagePart& part : inside.all())
      if (is_for_programs(part.seen)) std::visit(*this, part.what);
  }

  json::object object_;
};

}  // namespace

std::string render_json(const Page& page, JsonLayout layout) {
  json::object all{{"format", 1}, {"report", page.question}};
  for (auto& [key, inside] : JsonObject().of(page)) all[key] = std::move(inside);
  return json_text(all, layout);
}

std::string as_number(double amount) {
  return fmt::format("{:.12g}", amount);
}

}  // namespace landdrill::report
