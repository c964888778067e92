// A number kept beside a text, so that a text that was damaged on the disk is noticed.
//
//   checksum_of("")      // -3750763034362895579, that is 0xCBF29CE484222325
//
// FNV-1a with 64 bits (Fowler, Noll and Vo). Finds accidents, not forgery.
#pragma once

#include <cstdint>
#include <string_view>

namespace landdrill::store {

constexpr std::int64_t checksum_of(std::string_view text) {
  std::uint64_t sum = 0xCBF29CE484222325u;
  for (const char byte : text) sum = (sum ^ static_cast<unsigned char>(byte)) * 0x100000001B3u;
  return static_cast<std::int64_t>(sum);
}

}  // namespace landdrill::store
