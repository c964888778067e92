#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/read_table.h"
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
    check_run_base();
    check_best();
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

  void check_run_base() {
    if (!rule_.run_base) return;
    if (!rule_.per_element) {
      complain("run_base", {Problem::never_counts, "a share of runs for marks that are per routine",
                            "an empty cell, or per element"});
    } else if (*rule_.run_base >= Decimal::whole(1)) {
      complain("run_base", {Problem::contradiction, "more than " + rule_.run_base->text() + " of all runs",
                            "a share below 1, such as 0.5"});
    }
  }

  void check_best() {
    if (!rule_.best) return;
    if (!rule_.per_element) {
      complain("best", {Problem::never_counts, "the mark of a faultless showing for marks that are per routine",
                        "an empty cell, or per element"});
    } else if (*rule_.best < rule_.least || *rule_.best > rule_.most) {
      complain("best", {Problem::out_of_range, "the mark " + rule_.best->text(),
                        "one from " + rule_.least.text() + " to " + rule_.most.text()});
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

// Each row that weights elements by difficulty divides by the difficulties of its own ones: two of them would count the
// elements of an event twice.
void check_weighted_once(const ValueSet& set, Complaints& complaints) {
  std::map<std::string_view, const PanelRule*> first_for;
  for (const PanelRule& rule : set.panels) {
    if (!rule.per_element || rule.use != Use::weighted) continue;
    const PanelRule& first = *first_for.try_emplace(rule.event, &rule).first->second;
    if (&first == &rule) continue;
    complaints.at(rule.from, "use",
                  {Problem::contradiction,
                   "a second row that weights the elements of " + in_quotes(rule.event) + " by difficulty",
                   "one row for all of them, with an empty kind: line " + std::to_string(first.from.line) +
                       " has its own sum of difficulties, and the elements would count twice"});
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
  check_weighted_once(set, complaints);
  check_events_marked(set, complaints);
}

namespace {

using Key = std::array<std::string_view, 3>;  // event, kind, family

class QuotaCheck {
 public:
  QuotaCheck(const ValueSet& set, Complaints& complaints) : set_(set), complaints_(complaints) {
    for (const Part& part : set.parts) families_with_parts_.insert(part.family);
    for (const Quota& quota : set.quotas) {
      quotas_.try_emplace({quota.event, quota.kind, quota.family}, &quota);
      if (quota.kind.empty()) continue;
      int& least = least_of_kinds_[quota.event][quota.kind];
      least = std::max(least, quota.least.value_or(0));
    }
  }

  void check(const Quota& quota) {
    check_has_number(quota);
    check_wider_limits(quota);
    if (quota.least.value_or(0) > 0) {
      check_family_has_parts(quota);
      check_family_in_kind(quota);
      check_family_limit(quota);
    }
  }

  // The kinds share the elements that the event allows in all.
  void check_sum_of_kinds(const Quota& all) {
    if (!all.kind.empty() || !all.family.empty() || !all.most) return;
    const auto& least = least_of_kinds_[all.event];
    long long sum = 0;
    for (const auto& [kind, count] : least) sum += count;
    if (sum <= *all.most || least.size() < 2) return;
    complain(all, "most",
             {Problem::impossible_quota,
              "at most " + std::to_string(*all.most) + " elements in " + in_quotes(all.event),
              "at least " + std::to_string(sum) + ", which its kinds ask for together"});
  }

 private:
  void complain(const Quota& quota, std::string_view column, Complaint complaint) {
    complaints_.at(quota.from, column, std::move(complaint));
  }

  void check_has_number(const Quota& quota) {
    if (quota.least || quota.most) return;
    complain(quota, "event",
             {Problem::never_counts, "a quota without a number", "a number under least or most"});
  }

  // Every element that counts for a kind and a family counts for the kind, and for the family, and in all.
  void check_wider_limits(const Quota& narrow) {
    if (!narrow.least) return;
    for (const Key& wider : {Key{narrow.event, narrow.kind, ""}, Key{narrow.event, "", narrow.family},
                             Key{narrow.event, "", ""}}) {
      const auto at = quotas_.find(wider);
      if (at == quotas_.end() || at->second == &narrow) continue;
      const Quota& wide = *at->second;
      if (!wide.most || *narrow.least <= *wide.most) continue;
      return complain(narrow, "least",
                      {Problem::impossible_quota, "at least " + std::to_string(*narrow.least),
                       "at most " + std::to_string(*wide.most) + ", as line " +
                           std::to_string(wide.from.line) + " allows"});
    }
  }

  const Family* family_of(const Quota& quota) const {
    return quota.family.empty() ? nullptr : set_.families.find(quota.family);
  }

  void check_family_has_parts(const Quota& quota) {
    if (!family_of(quota) || complaints_.is_incomplete("parts")) return;
    if (families_with_parts_.contains(quota.family)) return;
    complain(quota, "family",
             {Problem::impossible_quota, "a quota for " + in_quotes(quota.family) + ", which has no part",
              "a family with parts in parts.csv"});
  }

  void check_family_in_kind(const Quota& quota) {
    const Family* family = family_of(quota);
    if (!family || quota.kind.empty() || family->kinds.empty()) return;
    if (std::find(family->kinds.begin(), family->kinds.end(), quota.kind) != family->kinds.end()) return;
    complain(quota, "family",
             {Problem::impossible_quota, in_quotes(quota.family) + " in the kind " + in_quotes(quota.kind),
              "a family that families.csv allows in this kind"});
  }

  void check_family_limit(const Quota& quota) {
    const Family* family = family_of(quota);
    if (!family || !family->most_in_routine || *quota.least <= *family->most_in_routine) return;
    complain(quota, "least",
             {Problem::impossible_quota,
              "at least " + std::to_string(*quota.least) + " elements with " + in_quotes(family->code),
              "at most " + std::to_string(*family->most_in_routine) +
                  ", as families.csv allows so many parts in a routine"});
  }

  const ValueSet& set_;
  Complaints& complaints_;
  std::set<std::string_view> families_with_parts_;
  std::map<Key, const Quota*> quotas_;
  std::map<std::string_view, std::map<std::string_view, int>> least_of_kinds_;
};

}  // namespace

void check_quotas(const ValueSet& set, Complaints& complaints) {
  QuotaCheck quotas(set, complaints);
  for (const Quota& quota : set.quotas) {
    quotas.check(quota);
    quotas.check_sum_of_kinds(quota);
  }
}

}  // namespace landdrill
