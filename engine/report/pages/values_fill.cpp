#include "engine/report/pages/values_fill.h"

namespace landdrill::report {
namespace {

// What became of these codes: in a sentence, and as rows.
class CodesTold {
 public:
  explicit CodesTold(Page& page) : page_(page) { table_.in_csv = true; }

  void add(const std::vector<std::string>& codes, std::string_view words, std::string_view outcome) {
    std::string list;
    for (const std::string& code : codes) {
      list += (list.empty() ? "" : ", ") + code;
      table_.add({code, outcome});
    }
    if (!codes.empty()) page_.say(std::string(words) + " (" + std::to_string(codes.size()) + "): " + list);
  }
  void finish() {
    if (table_.rows.empty()) page_.say("Nothing to fill in.");
    page_.add(std::move(table_), Seen::by_programs);
  }

 private:
  Page& page_;
  PageTable table_{"codes", {{"code", "code"}, {"outcome", "outcome"}}};
};

}  // namespace

Page values_fill_page(const Filled& outcome) {
  Page page("values fill");
  CodesTold codes(page);
  codes.add(outcome.filled, "Filled in", "filled");
  codes.add(outcome.added, "New in the set", "added");
  codes.add(outcome.unchanged, "The same as before", "unchanged");
  codes.add(outcome.still_missing, "Still missing", "missing");
  codes.finish();
  return page;
}

}  // namespace landdrill::report
