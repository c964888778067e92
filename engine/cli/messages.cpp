#include "engine/cli/messages.h"

#include <fmt/format.h>

namespace landdrill::cli {

void Messages::add(const Diagnostics& diagnostics) {
  if (shown_ >= most) {
    hidden_ += diagnostics.errors() + diagnostics.warnings();
    return;
  }
  shown_ += diagnostics.list().size();
  if (!diagnostics.list().empty()) streams_.say(to_string(diagnostics));
}

void Messages::finish() {
  if (hidden_ > 0) streams_.say(fmt::format("landdrill: and {} more messages, not shown\n", hidden_));
}

}  // namespace landdrill::cli
