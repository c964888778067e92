// The present day, for telling what cannot have happened yet.
#pragma once

#include <string>

namespace landdrill::cli {

// "2026-05-09": of the clock here or of UTC, the later of the two. LANDDRILL_TODAY takes its place, for
// tests.
std::string today();

}  // namespace landdrill::cli
