#include "engine/report/json_text.h"

#include <boost/json/src.hpp>

#include "engine/report/width.h"

namespace landdrill::report {
namespace {

void indent(std::string& out, int depth) {
  out.append(1, '\n').append(static_cast<std::size_t>(2 * depth), ' ');
}

void write(std::string& out, const json::value& what, int depth);

void write_array(std::string& out, const json::array& list, int depth) {
  out += '[';
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (i > 0) out += ',';
    indent(out, depth + 1);
    write(out, list[i], depth + 1);
  }
  if (!list.empty()) indent(out, depth);
  out += ']';
}

void write_object(std::string& out, const json::object& object, int depth) {
  out += '{';
  bool first = true;
  for (const auto& [key, inside] : object) {
    if (!first) out += ',';
    first = false;
    indent(out, depth + 1);
    out += json::serialize(key) + ": ";
    write(out, inside, depth + 1);
  }
  if (!first) indent(out, depth);
  out += '}';
}

void write(std::string& out, const json::value& what, int depth) {
  if (what.is_array()) {
    write_array(out, what.get_array(), depth);
  } else if (what.is_object()) {
    write_object(out, what.get_object(), depth);
  } else {
    out += json::serialize(what);
  }
}

}  // namespace

std::string json_text(const json::value& what, JsonLayout layout) {
  if (layout == JsonLayout::one_line) return json::serialize(what) + "\n";
  return json_text_inside(what, 0) + "\n";
}

std::string json_text_inside(const json::value& what, int depth) {
  std::string out;
  write(out, what, depth);
  return out;
}

json::value text_or_null(std::string_view text) {
  if (text.empty()) return nullptr;
  return json::string(valid_text(text));
}

}  // namespace landdrill::report
