#include "engine/cli/find_values.h"

#include <fmt/format.h>

#include <filesystem>
#include <vector>

#include "engine/cli/exit.h"
#include "engine/report/page.h"

namespace landdrill::cli {
namespace {

bool is_path(const std::string& operand) {
  return operand.find('/') != operand.npos || operand == "." || operand == "..";
}

std::vector<std::filesystem::path> folders_told(const Call& call) {
  std::vector<std::filesystem::path> told;
  if (has_option(call.command, "--values"))
    for (const std::string& folder : call.given.values("--values")) told.emplace_back(folder);
  return told;
}

std::string season_told(const Call& call) {
  return has_option(call.command, "--season") ? std::string(call.given.value("--season")) : std::string();
}

}  // namespace

Values::Values(const Call& call) : folders_(folders_told(call)), season_(season_told(call)) {}

ValueSets& Values::of_sheets() {
  if (in_season()) return season_;
  return folders_;
}

Result<const ReadSet*> Values::of_operand(const std::string& operand) {
  return is_path(operand) ? folders_.of_path(operand) : of_sheets().of_sheet(operand, "-");
}

report::ValuesPlace values_place(const ReadSet& set) {
  report::ValuesPlace place{set.files.name, {}, set.season};
  if (!set.folder.empty()) place.folder = whole_path(set.folder);
  for (const std::filesystem::path& hidden : set.hidden) place.hidden.push_back(whole_path(hidden));
  return place;
}

report::Page with_place(report::Page page, const ReadSet& set) {
  put_values_place(page, values_place(set));
  return page;
}

std::string message(const Trouble& trouble) {
  return "landdrill: " + to_string(trouble);
}

Exit refuse(Call& call, const Trouble& trouble) {
  call.streams.say(message(trouble));
  return Exit::environment;
}

Exit refuse_set(Call& call, const ReadSet& set) {
  call.streams.say(to_string(set.loaded.diagnostics));
  call.streams.say(
      fmt::format("landdrill: the value set {} cannot be used until these are mended\n", set.files.name));
  return Exit::errors;
}

}  // namespace landdrill::cli
