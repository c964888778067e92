#include "engine/report/pages/values_show.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"

namespace landdrill::cli {

Exit values_show(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  Values values(call);
  const auto set = values.of_operand(typed[0]);
  if (!set) return refuse(call, set.error());
  const std::string table = typed.size() > 1 ? typed[1] : std::string();
  const std::string row =
      typed.size() > 2 ? fmt::format("{}", fmt::join(typed.begin() + 2, typed.end(), " ")) : std::string();
  const report::Answer page = report::values_show_page((*set)->files, table, row);
  if (!page) return misused(call, page.error());
  print_page(call, *page);
  return Exit::ok;
}

}  // namespace landdrill::cli
