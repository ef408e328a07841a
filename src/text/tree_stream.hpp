// A file's bytes under the YAML parser. The parser queues a whole flow collection before it tells of it, at 200 bytes
// of memory a byte of text, so the bytes are handed out only while its events keep up; then OutrunEvents is thrown.
#pragma once

#include <cstddef>
#include <streambuf>
#include <string_view>

#include "text/tree.hpp"

namespace seambook {

struct OutrunEvents {};

class EventPacedBytes final : public std::streambuf {
 public:
  explicit EventPacedBytes(std::string_view text) {
    char* bytes = const_cast<char*>(text.data());  // streambuf wants it so; nothing writes
    setg(bytes, bytes, bytes + text.size());
  }
  /// The parser told of something that begins at this byte.
  void event_at(std::size_t byte) { last_event_ = byte; }

 protected:
  std::streamsize xsgetn(char* to, std::streamsize count) override {
    const auto handed_out = static_cast<std::size_t>(gptr() - eback());
    if (handed_out > last_event_ + limit::bytes_between_events) throw OutrunEvents{};
    return std::streambuf::xsgetn(to, count);
  }

 private:
  std::size_t last_event_ = 0;
};

}  // namespace seambook
