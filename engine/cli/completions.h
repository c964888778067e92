// Completions for bash, zsh and fish, made from the command table.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace landdrill::cli {

// The script for one shell; empty for a shell that is not known.
std::optional<std::string> completion_script(std::string_view shell);

}  // namespace landdrill::cli
