#include "engine/cli/shell_quoted.h"

namespace landdrill::cli {

std::string shell_quoted(std::string_view text) {
  constexpr std::string_view plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./";
  if (!text.empty() && text.find_first_not_of(plain) == text.npos) return std::string(text);
  std::string quoted = "'";
  for (const char c : text) quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return quoted + "'";
}

}  // namespace landdrill::cli
