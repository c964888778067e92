// How to print: what --format, --colour and the terminal say.
#pragma once

#include "engine/cli/call.h"
#include "engine/report/render.h"

namespace landdrill::cli {

report::TextWish page_wish(const Call& call);
// Of a command with --format.
report::Format format_of(const Call& call);
// As it is asked for.
void print_page(Call& call, const report::Page& page);

}  // namespace landdrill::cli
