#include "engine/files/value_sets.h"

namespace landdrill {

const ReadSet* ValueSets::last_of_sheet(std::string_view name, std::string_view file) const {
  const std::lock_guard lock(last_mutex_);
  return last_ != nullptr && last_name_ == name && last_beside_ == beside(file) ? last_ : nullptr;
}

Result<const ReadSet*> ValueSets::of_sheet(std::string_view name, std::string_view file) {
  if (const ReadSet* last = last_of_sheet(name, file)) return last;
  auto found = find(name, file);
  if (!found) return found;
  const std::lock_guard lock(last_mutex_);
  last_name_ = name;
  last_beside_ = beside(file);
  last_ = *found;
  return found;
}

const std::vector<std::string>& ValueSets::names(std::string_view file) {
  const auto [known, is_new] = names_.try_emplace(std::string(beside(file)));
  if (is_new) known->second = look_for_names(file);
  return known->second;
}

}  // namespace landdrill
