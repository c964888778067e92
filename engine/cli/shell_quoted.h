// A word of a command as a shell reads it again.
//
//   shell_quoted("club.season")     // club.season
//   shell_quoted("Tarn Open")       // 'Tarn Open'
#pragma once

#include <string>
#include <string_view>

namespace landdrill::cli {

std::string shell_quoted(std::string_view text);

}  // namespace landdrill::cli
