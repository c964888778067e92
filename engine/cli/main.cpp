#include "engine/cli/run.h"

int main(int count, char** words) {
  return landdrill::cli::run(count, words);
}
