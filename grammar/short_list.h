// A list of plain values that keeps its first `inside` items within itself, so that a usual one asks no
// memory.
//
//   ShortList<int, 4> few = {1, 2, 3};
//   few.push_back(4);     // in place; a fifth one moves them all to the heap
//
// Used like std::vector. Its items are copied byte by byte. References end with the next push_back. Not Boost's
// small_vector, because the tree knows no Boost.
#pragma once

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <memory>
#include <type_traits>
#include <utility>

namespace landdrill {

template <class Item, std::size_t inside>
class ShortList {
  static_assert(std::is_trivially_copyable_v<Item> && std::is_trivially_destructible_v<Item>);

 public:
  using value_type = Item;
  using size_type = std::size_t;
  using difference_type = std::ptrdiff_t;
  using reference = Item&;
  using const_reference = const Item&;
  using pointer = Item*;
  using const_pointer = const Item*;
  using iterator = Item*;
  using const_iterator = const Item*;

  ShortList() noexcept {}
  ShortList(std::initializer_list<Item> items) : ShortList(items.begin(), items.end()) {}
  template <std::forward_iterator At>
  ShortList(At first, At last) {
    reserve(static_cast<std::size_t>(std::distance(first, last)));
    for (; first != last; ++first) push_back(*first);
  }
  ShortList(const ShortList& other) : ShortList(other.begin(), other.end()) {}
  ShortList(ShortList&& other) noexcept { take(other); }
  ShortList& operator=(ShortList other) noexcept {
    give_back();
    take(other);
    return *this;
  }
  ~ShortList() { give_back(); }

  Item* data() { return outside_ != nullptr ? outside_ : within_; }
  const Item* data() const { return outside_ != nullptr ? outside_ : within_; }
  std::size_t size() const { return size_; }
  std::size_t capacity() const { return capacity_; }
  bool empty() const { return size_ == 0; }
  Item* begin() { return data(); }
  Item* end() { return data() + size_; }
  const Item* begin() const { return data(); }
  const Item* end() const { return data() + size_; }
  Item& operator[](std::size_t at) { return data()[at]; }
  const Item& operator[](std::size_t at) const { return data()[at]; }
  Item& front() { return *begin(); }
  const Item& front() const { return *begin(); }
  Item& back() { return end()[-1]; }
  const Item& back() const { return end()[-1]; }

  void reserve(std::size_t wanted) {
    if (wanted > capacity_) move_to(wanted);
  }
  template <class... Values>
  Item& emplace_back(Values&&... values) {
    const Item item{std::forward<Values>(values)...};  // may be made of an item that is about to move
    if (size_ == capacity_) move_to(2 * capacity_);
    return *std::construct_at(data() + size_++, item);
  }
  void push_back(const Item& item) { emplace_back(item); }
  void pop_back() { --size_; }
  void clear() { size_ = 0; }
  // At the end only: what a parser asks of its container.
  Item* insert(const Item* at, const Item& item) {
    assert(at == end());
    return &emplace_back(item);
  }
  template <class At>
  void insert(const Item* at, At first, At last) {
    assert(at == end());
    for (; first != last; ++first) push_back(*first);
  }

  friend bool operator==(const ShortList& one, const ShortList& other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end());
  }

 private:
  void move_to(std::size_t wanted) {
    Item* to = std::allocator<Item>().allocate(wanted);
    std::uninitialized_copy(begin(), end(), to);
    give_back();
    outside_ = to;
    capacity_ = wanted;
  }
  void give_back() {
    if (outside_ != nullptr) std::allocator<Item>().deallocate(outside_, capacity_);
  }
  // What this list held before is given back already.
  void take(ShortList& other) {
    outside_ = std::exchange(other.outside_, nullptr);
    capacity_ = std::exchange(other.capacity_, inside);
    size_ = std::exchange(other.size_, 0);
    if (outside_ == nullptr) std::uninitialized_copy(other.within_, other.within_ + size_, within_);
  }

  Item* outside_ = nullptr;
  std::size_t size_ = 0, capacity_ = inside;
  union {
    Item within_[inside];  // the first size_ of them, while nothing is outside
  };
};

}  // namespace landdrill
