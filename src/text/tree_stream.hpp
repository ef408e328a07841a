// A file's bytes under the YAML parser. The parser queues a whole flow collection before it tells of it, at 200 bytes
// of memory a byte of text, so the bytes are handed out only while its events keep up; then OutrunEvents is thrown.
#pragma once

#include <array>
#include <cstddef>
#include <streambuf>
#include <string_view>

#include "text/tree.hpp"

namespace seambook {

struct OutrunEvents {};

class EventPacedBytes final : public std::streambuf {
 public:
  explicit EventPacedBytes(std::string_view text) : rest_(text) {}
  /// The parser told of something that begins at this byte.
  void event_at(std::size_t byte) { last_event_ = byte; }

 protected:
  int_type underflow() override {
    if (handed_out_ > last_event_ + limit::bytes_between_events) throw OutrunEvents{};
    if (rest_.empty()) return traits_type::eof();
    const std::size_t count = rest_.copy(piece_.data(), piece_.size());
    rest_.remove_prefix(count);
    handed_out_ += count;
    setg(piece_.data(), piece_.data(), piece_.data() + count);
    return traits_type::to_int_type(piece_[0]);
  }

 private:
  std::array<char, 4096> piece_{};
  std::string_view rest_;
  std::size_t handed_out_ = 0, last_event_ = 0;
};

}  // namespace seambook
