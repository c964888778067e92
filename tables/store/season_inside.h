// What a season is inside, and how its refusals become values. Only season.cpp and book*.cpp include this.
//
//   return attempt([&] { refuse_damaged(inside.db); });   // a Result<void>
#pragma once

#include <type_traits>

#include "tables/folder.h"
#include "tables/store/database.h"
#include "tables/store/refusal.h"
#include "tables/store/season.h"

namespace landdrill {

struct Season::Inside {
  store::Database db;
};

namespace store {

// Inside this folder refusals are exceptions, so that a transaction ends at once; outside they are values.
template <class Work>
auto attempt(Work work) -> Result<decltype(work())> {
  try {
    if constexpr (std::is_void_v<decltype(work())>) {
      work();
      return {};
    } else {
      return work();
    }
  } catch (const Refused& refused) {
    return tl::unexpected(refused.trouble);
  } catch (const std::filesystem::filesystem_error& error) {
    return tl::unexpected(Trouble{error.path1().string(), error.code().message(), ""});
  }
}

}  // namespace store
}  // namespace landdrill
