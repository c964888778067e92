// The manual page, made from the command table: `landdrill man | man -l -`.
#pragma once

#include <string>

namespace landdrill::cli {

std::string man_page(std::string_view version);

}  // namespace landdrill::cli
