// The program, from its command line to its exit code. No exception leaves it.
#pragma once

namespace landdrill::cli {

int run(int count, char** words);

}  // namespace landdrill::cli
