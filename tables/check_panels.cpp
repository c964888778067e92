#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "grammar/diagnostics.h"
#include "tables/complaints.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// The other lines of a panel that have a colon after their first word.
constexpr std::array<std::string_view, 4> panel_words = {"element", "sync", "penalty", "result"};

class PanelCheck {
 public:
  PanelCheck(const PanelRule& rule, Complaints& complaints) : rule_(rule), complaints_(complaints) {}

  void run() {
    check_place();
    check_judges();
    check_scale();
    check_missing();
  }

 private:
  void complain(std::string_view column, Complaint complaint) {
    complaints_.at(rule_.from, column, std::move(complaint));
  }

  void check_place() {
    if (rule_.per_element) return;
    if (!rule_.kind.empty()) {
      complain("kind", {Problem::contradiction, "a kind of element in a row that is per routine",
                        "an empty cell, or per element"});
    }
    if (rule_.use != Use::plain) {
      complain("use",
               {Problem::contradiction, "marks per routine that are used with the difficulty of an element",
                "plain, or per element"});
    }
    if (std::find(panel_words.begin(), panel_words.end(), rule_.aspect) != panel_words.end()) {
      complain("aspect", {Problem::bad_code, in_quotes(rule_.aspect) + " as an aspect",
                          "another word, since " + rule_.aspect + " begins another line of a panel"});
    }
  }

  void check_judges() {
    const int dropped = rule_.drop_high + rule_.drop_low;
    if (dropped < rule_.judges) return;
    complain(rule_.drop_high > 0 ? "drop_high" : "drop_low",
             {Problem::no_marks_kept,
              std::to_string(dropped) + " dropped marks of " + std::to_string(rule_.judges),
              "fewer dropped marks than judges"});
  }

  void check_scale() {
    const Decimal least = rule_.least.value(), most = rule_.most.value();
    if (most <= least) {
      return complain("most", {Problem::contradiction, "the highest mark " + most.text(),
                               "more than the least mark, " + least.text()});
    }
    if ((most - least).is_multiple_of(rule_.step) && least.is_multiple_of(rule_.step)) return;
    complain("step", {Problem::bad_step, "the step " + rule_.step.text(),
                      "one that leads from " + least.text() + " to " + most.text() + " in whole steps"});
  }

  void check_missing() {
    const bool has_step = rule_.missing_step.has_value();
    if (rule_.missing == Missing::mean && !has_step) {
      complain("missing",
               {Problem::contradiction, "the mean for a missing judge, without the step to round it to",
                "a number in the column \"missing_step\""});
    }
    if (rule_.missing != Missing::mean && has_step) {
      complain("missing_step", {Problem::never_counts, "a step for the mean of the other judges",
                                "mean in the column \"missing\", or an empty cell"});
    }
    if (rule_.missing != Missing::mean && rule_.missing_rounding) {
      complain("missing_rounding", {Problem::never_counts, "a rounding for the mean of the other judges",
                                    "mean in the column \"missing\", or an empty cell"});
    }
  }

  const PanelRule& rule_;
  Complaints& complaints_;
};

// Two aspects for each element of one kind would give each element two execution scores.
void check_one_aspect(const ValueSet& set, Complaints& complaints) {
  std::map<std::pair<std::string_view, std::string_view>, const PanelRule*> first_for;
  for (const PanelRule& rule : set.panels) {
    if (!rule.per_element) continue;
    const PanelRule& first = *first_for.try_emplace({rule.event, rule.kind}, &rule).first->second;
    if (first.aspect == rule.aspect) continue;
    const std::string kind = rule.kind.empty() ? "every kind of element" : "the kind " + in_quotes(rule.kind);
    complaints.at(rule.from, "aspect",
                  {Problem::two_element_panels,
                   in_quotes(rule.aspect) + " for " + kind + " in " + in_quotes(rule.event),
                   "one aspect per element, and line " + std::to_string(first.from.line) + " has " +
                       in_quotes(first.aspect)});
  }
}

void check_events_marked(const ValueSet& set, Complaints& complaints) {
  if (complaints.is_incomplete("panels") || set.panels.empty()) return;
  std::set<std::string_view> marked;
  for (const PanelRule& rule : set.panels) marked.insert(rule.event);
  for (const Event& event : set.events) {
    if (marked.contains(event.code)) continue;
    complaints.at(event.from, "code",
                  {Problem::no_panel, "the event " + in_quotes(event.code) + " without a panel",
                   "at least one row for it in panels.csv"});
  }
}

}  // namespace

void check_panels(const ValueSet& set, Complaints& complaints) {
  for (const PanelRule& rule : set.panels) PanelCheck(rule, complaints).run();
  check_one_aspect(set, complaints);
  check_events_marked(set, complaints);
}

}  // namespace landdrill
