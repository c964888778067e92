// A folder of its own for one test, gone afterwards.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace landdrill::test {

class Scratch {
 public:
  Scratch();
  ~Scratch();
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;

  // Writes a file; its path.
  std::string file(std::string_view name, std::string_view text) const;
  std::string path(std::string_view name) const { return (folder_ / name).string(); }

 private:
  std::filesystem::path folder_;
};

std::string text_of(const std::string& file);

}  // namespace landdrill::test
