#include "text/first_value.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include <istream>

#include "text/tree_stream.hpp"

namespace seambook {
namespace {

struct Found {
  std::string text;
};

/// Counts keys and values of the outermost map; throws Found.
class KeyEvents final : public YAML::EventHandler {
 public:
  KeyEvents(std::string_view key, EventPacedBytes& bytes) : key_(key), bytes_(bytes) {}

  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t) override { next(mark, nullptr); }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override { next(mark, nullptr); }
  void OnScalar(const YAML::Mark& mark, const std::string&, YAML::anchor_t, const std::string& value) override {
    next(mark, &value);
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t, YAML::EmitterStyle::value) override {
    next(mark, nullptr);
    ++depth_;
  }
  void OnSequenceEnd() override { --depth_; }
  void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t, YAML::EmitterStyle::value) override {
    next(mark, nullptr);
    ++depth_;
  }
  void OnMapEnd() override { --depth_; }

 private:
  void next(const YAML::Mark& mark, const std::string* scalar) {
    if (!mark.is_null()) bytes_.event_at(static_cast<std::size_t>(mark.pos));
    if (depth_ != 1) return;
    if (wanted_ && scalar != nullptr) throw Found{*scalar};
    wanted_ = !value_ && scalar != nullptr && *scalar == key_;
    value_ = !value_;
  }

  std::string_view key_;
  EventPacedBytes& bytes_;
  int depth_ = 0;
  bool value_ = false, wanted_ = false;  // whether a value comes next, and whether it is the one looked for
};

}  // namespace

std::optional<std::string> first_value(std::string_view text, std::string_view key) {
  EventPacedBytes bytes(text);
  std::istream stream(&bytes);
  KeyEvents events(key, bytes);
  try {
    YAML::Parser parser(stream);
    parser.HandleNextDocument(events);
  } catch (Found& found) {
    return std::move(found.text);
  } catch (const YAML::Exception&) {
  } catch (const OutrunEvents&) {
  }
  return std::nullopt;
}

}  // namespace seambook
