#include "engine/report/csv.h"

#include <array>

#include "engine/report/width.h"
#include "tables/csv.h"

namespace landdrill::report {
namespace {

std::string_view yes_if(bool so) {
  return so ? "yes" : "";
}

// The cells of one row; what is not set stays empty.
struct ScoreCells {
  std::string_view file = {}, routine = {}, panel = {}, line = {}, number = {}, title = {}, kind = {},
                   option = {};
  std::string_view weight = {}, declared = {}, credited = {}, base_mark = {}, mark = {}, points = {},
                   left = {};
  std::string_view rests_on = {}, recorded_credited = {}, recorded_base_mark = {}, recorded_mark = {};
  std::string_view recorded_points = {}, difference = {};
};

struct NamedCell {
  std::string_view name;
  std::string_view ScoreCells::*cell;
};
constexpr NamedCell named_cells[] = {{"file", &ScoreCells::file},
                                     {"routine", &ScoreCells::routine},
                                     {"panel", &ScoreCells::panel},
                                     {"line", &ScoreCells::line},
                                     {"number", &ScoreCells::number},
                                     {"title", &ScoreCells::title},
                                     {"kind", &ScoreCells::kind},
                                     {"option", &ScoreCells::option},
                                     {"weight", &ScoreCells::weight},
                                     {"declared", &ScoreCells::declared},
                                     {"credited", &ScoreCells::credited},
                                     {"base_mark", &ScoreCells::base_mark},
                                     {"mark", &ScoreCells::mark},
                                     {"points", &ScoreCells::points},
                                     {"left", &ScoreCells::left},
                                     {"rests_on", &ScoreCells::rests_on},
                                     {"recorded_credited", &ScoreCells::recorded_credited},
                                     {"recorded_base_mark", &ScoreCells::recorded_base_mark},
                                     {"recorded_mark", &ScoreCells::recorded_mark},
                                     {"recorded_points", &ScoreCells::recorded_points},
                                     {"difference", &ScoreCells::difference}};

std::string row_text(std::string_view file, const Account& account, ScoreCells row) {
  row.file = file;
  row.routine = account.title;
  row.panel = account.panel;
  std::vector<std::string_view> texts;
  for (const NamedCell& one : named_cells) texts.push_back(row.*one.cell);
  return csv_row(texts);
}

std::string element_csv(std::string_view file, const Account& account, const ElementLine& line) {
  const std::string number = std::to_string(line.number);
  ScoreCells row{
      .line = "element", .number = number, .title = line.title, .kind = line.kind, .option = line.option};
  row.declared = line.declared;
  row.credited = line.credited;
  row.base_mark = yes_if(line.base);
  row.mark = line.mark;
  row.points = line.points;
  row.left = line.left;
  row.rests_on = line.rests_on;
  row.recorded_credited = line.recorded_credited;
  row.recorded_base_mark = yes_if(line.recorded_base);
  row.recorded_mark = line.recorded_mark;
  row.recorded_points = line.recorded_points;
  row.difference = line.difference;
  return row_text(file, account, row);
}

std::string aspect_csv(std::string_view file, const Account& account, const AspectLine& line) {
  ScoreCells row{.line = "impression",
                 .title = line.title,
                 .weight = line.weight,
                 .mark = line.mark,
                 .points = line.points};
  row.rests_on = line.rests_on;
  row.recorded_mark = line.recorded_mark;
  row.recorded_points = line.recorded_points;
  row.difference = line.difference;
  return row_text(file, account, row);
}

std::string total_rows(std::string_view file, const Account& account) {
  ScoreCells row{.line = account.total.empty() ? "so far" : "total",
                 .declared = account.declared,
                 .credited = account.credited};
  row.points = account.total.empty() ? account.so_far : account.total;
  row.recorded_credited = account.recorded_credited;
  row.recorded_points = account.recorded_total.empty() ? account.recorded_so_far : account.recorded_total;
  row.difference = account.difference;
  std::string result = row_text(file, account, row);
  if (account.announced.empty()) return result;
  ScoreCells announced{.line = "announced"};
  announced.recorded_points = account.announced;
  announced.difference = account.announced_difference;
  return result + row_text(file, account, announced);
}

std::string points_csv(std::string_view file, const Account& account, std::string_view line,
                       const std::array<std::string_view, 3>& points) {
  if (points[0].empty() && points[1].empty()) return "";
  ScoreCells row{.line = line};
  row.points = points[0];
  row.recorded_points = points[1];
  row.difference = points[2];
  return row_text(file, account, row);
}

}  // namespace

std::string csv_header() {
  std::vector<std::string_view> names;
  for (const NamedCell& one : named_cells) names.push_back(one.name);
  return csv_row(names);
}

std::string csv_rows(const Account& account, std::string_view file) {
  std::string result;
  for (const ElementLine& line : account.elements) result += element_csv(file, account, line);
  result += points_csv(file, account, "elements together",
                       {account.weighted, account.recorded_weighted, account.weighted_difference});
  for (const AspectLine& line : account.aspects) result += aspect_csv(file, account, line);
  result += points_csv(file, account, "sync", {account.sync, account.recorded_sync, account.sync_difference});
  result += points_csv(file, account, "penalties",
                       {account.penalties, account.recorded_penalties, account.penalties_difference});
  return result + total_rows(file, account);
}

}  // namespace landdrill::report
