// Inside this folder refusals are exceptions, so that a transaction ends at once; outside they are values.
//
//   return attempt([&] { refuse_damaged(db); });   // a Result<void>
#pragma once

#include <filesystem>
#include <type_traits>

#include "tables/folder.h"
#include "tables/store/refusal.h"

namespace landdrill::store {

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

}  // namespace landdrill::store
