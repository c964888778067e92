#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/files/own_folder.h"

namespace landdrill::cli {

Exit values_copy(Call& call) {
  Values values(call);
  const auto set = values.of_operand(call.given.operands[0]);
  if (!set) return refuse(call, set.error());
  const std::filesystem::path folder = call.given.operands[1];
  if (const auto trouble = not_new(folder)) return refuse(call, *trouble);
  if (const auto written = write_folder((*set)->files, folder); !written)
    return refuse(call, written.error());
  const std::string name = std::filesystem::weakly_canonical(folder).filename().string();
  call.streams.out.write(
      fmt::format("{} is written into {}. In a sheet beside it, the line is\n  values {}\n",
                  (*set)->files.name, folder.string(), name));
  return Exit::ok;
}

}  // namespace landdrill::cli
