#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "grammar/diagnostics.h"
#include "tables/complaints.h"
#include "tables/problems.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

std::string line_of(const Quota& quota) {
  return "line " + std::to_string(quota.from.line);
}

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
    check_own_limits(quota);
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

  void check_own_limits(const Quota& quota) {
    if (quota.least && quota.most && *quota.least > *quota.most) {
      complain(quota, "most",
               {Problem::contradiction, "most " + std::to_string(*quota.most),
                "at least " + std::to_string(*quota.least) + ", which stands in the column \"least\""});
    }
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
                       "at most " + std::to_string(*wide.most) + ", as " + line_of(wide) + " allows"});
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
