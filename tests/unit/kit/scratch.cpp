#include "tests/unit/kit/scratch.h"

#include <stdlib.h>

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace landdrill::test {

Scratch::Scratch() {
  std::string name = (std::filesystem::temp_directory_path() / "landdrill-test-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for the test");
  folder_ = name;
}

Scratch::~Scratch() {
  std::error_code ignored;
  std::filesystem::remove_all(folder_, ignored);
}

std::string Scratch::file(std::string_view name, std::string_view text) const {
  std::ofstream(folder_ / name, std::ios::binary) << text;
  return path(name);
}

std::string text_of(const std::string& file) {
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

}  // namespace landdrill::test
