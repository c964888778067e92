// How to print: what --format, --colour, --full and the terminal say.
#pragma once

#include "engine/cli/call.h"
#include "engine/report/page.h"
#include "engine/report/render.h"
#include "engine/report/render_json.h"
#include "engine/report/render_text.h"

namespace landdrill::cli {

report::TextWish page_wish(const Call& call);
// Of a command with --format.
report::Format format_of(const Call& call);
// As it is asked for. `layout`: of JSON.
void print_page(Call& call, const report::Page& page,
                report::JsonLayout layout = report::JsonLayout::indented);

}  // namespace landdrill::cli
