// Boost.JSON values as text in the layout asked for. Only the json*.cpp files of this folder include this.
#pragma once

#include <boost/json.hpp>
#include <optional>
#include <string>
#include <string_view>

namespace landdrill::report {

// How JSON is laid out.

// indented: for people's eyes too. one_line: one text a line, for streams of many sheets. Both end in a newline.
enum class JsonLayout { indented, one_line };

namespace json = boost::json;

// Keys in the order in which they were put in. Ends in a newline. Bytes that are no UTF-8 are spelled out.
std::string json_text(const json::value& value, JsonLayout layout);
// The same as it stands at this depth of something larger: indented, without a newline at the end.
std::string json_text_inside(const json::value& value, int depth);

// A text, or null when it is empty.
json::value text_or_null(std::string_view text);

}  // namespace landdrill::report
