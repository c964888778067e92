#include "engine/report/json_text.h"
#include "engine/report/listing.h"

namespace landdrill::report {
namespace {

json::array listing_array(const Listing& listing) {
  json::array rows;
  for (const std::vector<std::string>& row : listing.rows) {
    json::object object;
    for (std::size_t i = 0; i < row.size(); ++i) object[listing.columns[i].heading] = text_or_null(row[i]);
    rows.push_back(std::move(object));
  }
  return rows;
}

}  // namespace

std::string as_json(const std::vector<std::pair<std::string_view, std::string_view>>& heads,
                    const std::vector<Listing>& listings) {
  json::object object;
  for (const auto& [key, text] : heads) object[key] = text_or_null(text);
  for (const Listing& listing : listings) object[listing.name] = listing_array(listing);
  return json_text(object, JsonLayout::indented);
}

}  // namespace landdrill::report
