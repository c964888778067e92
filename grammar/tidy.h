// A sheet as it is printed: the same statements, in columns, with the blanks and empty lines that belong between them.
//
//   tidy({"duet.sheet", "routine   \"Reeds\"\nevent open\n"}).text     // "routine \"Reeds\"\nevent    open\n"
#pragma once

#include <string>

#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill {

struct Tidied {
  std::string text;  // empty when a line is in error
  Diagnostics messages;
};
Tidied tidy(const Source& sheet);

}  // namespace landdrill
