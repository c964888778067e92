// What the program tells the shell when it ends.
#pragma once

#include <algorithm>

namespace landdrill::cli {

enum class Exit {
  ok = 0,
  errors = 1,       // a sheet or a table has errors
  usage = 2,        // the command line cannot be understood
  environment = 3,  // a file, a folder, a season file or the output refused
};

// Of two outcomes the one that weighs more: errors on errors, a refusing file on everything.
inline Exit worse(Exit one, Exit other) {
  return std::max(one, other);
}

}  // namespace landdrill::cli
