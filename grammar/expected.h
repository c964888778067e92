// The English names of what the grammar expects, where a hint depends on one.
#pragma once

namespace landdrill::expected {

inline constexpr const char* title = "a title in quotation marks";
inline constexpr const char* element_number = "the number of the element (like 1)";
inline constexpr const char* kind = "the kind of element (like hybrid)";
inline constexpr const char* size = "the size of the fault (like small)";
inline constexpr const char* times = "how many times (like x2)";
inline constexpr const char* comma = "a comma";
inline constexpr const char* colon = "a colon";
inline constexpr const char* end = "the end of the line";
inline constexpr const char* percent = "a percent sign";
inline constexpr const char* mark = "a mark";
inline constexpr const char* clean = "clean";
inline constexpr const char* lost_code = "the part that was lost";
inline constexpr const char* date = "a date (like 2026-04-14)";
inline constexpr const char* bound = "a number (like 2)";
inline constexpr const char* least = "least";
inline constexpr const char* most = "most";
inline constexpr const char* counts = "a number of counts";

}  // namespace landdrill::expected
