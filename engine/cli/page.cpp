#include "engine/cli/page.h"

#include "engine/report/page.h"
#include "engine/report/render_text.h"

namespace landdrill::cli {

report::TextWish page_wish(const Call& call) {
  report::TextWish wish;
  wish.width = page_width(call.streams.out.descriptor());
  const std::string_view asked =
      has_option(call.command, "--colour") ? call.given.value("--colour", "auto") : "auto";
  wish.colour = wants_colour(asked, call.streams.out.descriptor());
  wish.full = call.given.has("--full");
  return wish;
}

report::Format format_of(const Call& call) {
  const std::string_view typed = call.given.value("--format", "text");
  return typed == "csv" ? report::Format::csv : typed == "json" ? report::Format::json : report::Format::text;
}

void print_page(Call& call, const report::Page& page, report::JsonLayout layout) {
  const report::Format format = format_of(call);
  call.streams.out.write(format == report::Format::json ? render_json(page, layout)
                                                        : render(page, format, page_wish(call)));
}

}  // namespace landdrill::cli
