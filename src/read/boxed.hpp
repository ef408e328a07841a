// An optional value on the heap: where it is absent it takes no more room than a pointer. A joint may say some seventy
// things and says a dozen of them; a job may have a hundred thousand joints.
#pragma once

#include <cassert>
#include <memory>
#include <optional>
#include <utility>

namespace seambook {

/// Used as std::optional is, and copied with its value.
template <class T>
class Boxed {
 public:
  Boxed() = default;
  Boxed(std::nullopt_t) {}
  Boxed(const T& value) : held_(std::make_unique<T>(value)) {}
  Boxed(T&& value) : held_(std::make_unique<T>(std::move(value))) {}
  Boxed(const Boxed& other) : held_(other ? std::make_unique<T>(*other) : nullptr) {}
  Boxed(Boxed&&) noexcept = default;
  Boxed& operator=(Boxed other) noexcept {
    held_ = std::move(other.held_);
    return *this;
  }
  ~Boxed() = default;

  explicit operator bool() const { return held_ != nullptr; }
  bool has_value() const { return held_ != nullptr; }
  T& operator*() {
    assert(held_);
    return *held_;
  }
  const T& operator*() const {
    assert(held_);
    return *held_;
  }
  T* operator->() { return &**this; }
  const T* operator->() const { return &**this; }

 private:
  std::unique_ptr<T> held_;
};

}  // namespace seambook
