// Value sets from a season file.
//
//   SeasonSets sets("club.season");
//   sets.of_sheet("my-2026", "duet.sheet")      // whatever the sheet's folder
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/files/value_sets.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill {

class SeasonSets : public ValueSets {
 public:
  explicit SeasonSets(std::string file) : file_(std::move(file)) {}

  const std::string& file() const { return file_; }
  // Opened once, and again when it is to be changed.
  Result<Season*> season(Season::Mode mode);

 private:
  Result<const ReadSet*> find(std::string_view name, std::string_view file) override;
  std::vector<std::string> look_for_names(std::string_view file) override;

  std::string file_;
  std::optional<Season> season_;
  Season::Mode mode_ = Season::Mode::read;
  std::map<std::string, std::unique_ptr<ReadSet>> read_;  // by name
};

}  // namespace landdrill
