// How JSON is laid out.
#pragma once

namespace landdrill::report {

// indented: for people's eyes too. one_line: one text a line, for streams of many sheets. Both end in a newline.
enum class JsonLayout { indented, one_line };

}  // namespace landdrill::report
