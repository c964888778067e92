// The name of an official in training, as it is typed, kept and compared.
//
//   *trainee_name("  Robin   Reed ")         // "Robin Reed"
//   trainee_name("Ro\x1bbin").error()        // found a control character, expected a name on one line
//   same_trainee("robin", "Robin")           // true
#pragma once

#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "grammar/diagnostics.h"

namespace landdrill {

constexpr std::size_t longest_trainee_name = 80;  // characters

// Blanks at the ends are gone, those inside are one each.
tl::expected<std::string, Complaint> trainee_name(std::string_view typed);
// Whether two names differ in nothing but case, of any alphabet.
bool same_trainee(std::string_view one, std::string_view other);

}  // namespace landdrill
