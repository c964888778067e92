#include "engine/cli/page.h"

namespace landdrill::cli {

report::TextWish page_wish(const Call& call) {
  report::TextWish wish;
  wish.width = page_width(call.streams.out.descriptor());
  bool can_be_coloured = false;
  for (const OptionRow* option : call.command.options) can_be_coloured |= option->name == "--colour";
  const std::string_view asked = can_be_coloured ? call.given.value("--colour", "auto") : "auto";
  wish.colour = wants_colour(asked, call.streams.out.descriptor());
  return wish;
}

report::Format format_of(const Call& call) {
  const std::string_view typed = call.given.value("--format", "text");
  return typed == "csv" ? report::Format::csv : typed == "json" ? report::Format::json : report::Format::text;
}

}  // namespace landdrill::cli
