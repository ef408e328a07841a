#include "text/tree.hpp"

#include <yaml-cpp/emitterstyle.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include <istream>

#include "basics/utf8.hpp"
#include "text/text_check.hpp"
#include "text/tree_build.hpp"
#include "text/tree_keys.hpp"
#include "text/tree_quotes.hpp"
#include "text/tree_stream.hpp"
#include "text/tree_words.hpp"

namespace seambook {
namespace {

Spot spot_of(const YAML::Mark& mark, std::string_view text) {
  if (mark.is_null()) return {text.size(), 0, 0};
  return {static_cast<std::size_t>(mark.pos), static_cast<std::uint32_t>(mark.line),
          static_cast<std::uint32_t>(mark.column)};
}

/// Passes the parser's events on to the tree.
class TreeEvents final : public YAML::EventHandler {
 public:
  TreeEvents(TreeBuild& build, EventPacedBytes& bytes, std::size_t bytes_before)
      : build_(build), bytes_(bytes), bytes_before_(bytes_before) {}
  Spot last_event() const { return last_; }

  /// The parser's reaction to content that fits nowhere is to end the document and begin another.
  void OnDocumentStart(const YAML::Mark& mark) override {
    const Spot spot = noted(mark);
    if (++documents_ == 1) return;
    const Place place = place_of(build_, spot);
    const std::string_view rest = build_.text.substr(std::min(spot.byte, build_.text.size()));
    if (build_.long_quote && build_.long_quote->last_line == place.line) throw quote_closed_late(build_);
    if (rest.starts_with("---"))
      throw TextRefused{place, "a second document begins here", "a file holds one; take out the '---'"};
    if (rest.starts_with(','))
      throw TextRefused{place, "a ',' cannot stand here", "put a text that begins with ',' in quotes"};
    throw TextRefused{place, "this does not belong to what stands above it",
                      "check the indentation; a list and 'key: value' cannot stand side by side"};
  }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    const Spot spot = noted(mark);
    if (anchor != 0) refuse_mark(build_, spot, "anchors ('&')");
    add_nothing(build_, spot);
  }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    const Spot spot = noted(mark);
    refuse_mark(build_, spot, "aliases ('*')");
    build_.readable = false;
    add_scalar(build_, spot, {}, true);
  }
  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    const Spot spot = noted(mark);
    refuse_properties(spot, tag, anchor, false);
    add_scalar(build_, spot, value, tag == "?");
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value style) override {
    const Spot spot = noted(mark);
    refuse_properties(spot, tag, anchor, true);
    open_node(build_, spot, Kind::list, style == YAML::EmitterStyle::Flow);
  }
  void OnSequenceEnd() override { close_node(build_); }
  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value style) override {
    const Spot spot = noted(mark);
    refuse_properties(spot, tag, anchor, true);
    open_node(build_, spot, Kind::map, style == YAML::EmitterStyle::Flow);
  }
  void OnMapEnd() override { close_node(build_); }

 private:
  Spot noted(const YAML::Mark& mark) {
    last_ = spot_of(mark, build_.text);
    bytes_.event_at(last_.byte + bytes_before_);
    return last_;
  }
  /// The parser tags plain values `?` and quoted ones `!`; an author's lone `!` looks like the latter.
  void refuse_properties(Spot spot, const std::string& tag, YAML::anchor_t anchor, bool collection) {
    if (anchor != 0) refuse_mark(build_, spot, "anchors ('&')");
    const bool lone = tag == "!" && (collection || build_.text.substr(spot.byte).starts_with('!'));
    if (lone || (tag != "?" && tag != "!")) refuse_mark(build_, spot, "tags ('!')");
  }

  TreeBuild& build_;
  EventPacedBytes& bytes_;
  std::size_t bytes_before_;
  Spot last_{};
  int documents_ = 0;
};

/// An unclosed list or map in brackets: at its opening, unless the parser gave up in the same line before its end.
TextRefused unclosed_bracket(Place opening, char bracket, Place gave_up, bool at_end) {
  const std::string closing = bracket == '{' ? "'}'" : "']'";
  if (!at_end && opening.line == gave_up.line)
    return {gave_up, "a ',' or " + closing + " is missing before this", "put a text with such marks in quotes"};
  const std::string before = at_end ? "the end of the file" : "line " + std::to_string(gave_up.line);
  return {opening, std::string("this '") + bracket + "' is not closed",
          "a ',' or " + closing + " is missing before " + before};
}

/// Where and how to tell of a syntax fault: what the author wrote wrong often stands before where the parser gave up.
TextRefused syntax_fault(TreeBuild& build, const YAML::Exception& fault, Spot last_event) {
  const std::string_view complaint = fault.msg;
  const Spot spot = spot_of(fault.mark, build.text);
  const Place gave_up = place_of(build, spot);
  if (build.long_quote && build.long_quote->last_line == gave_up.line) return quote_closed_late(build);
  if (complaint == YAML::ErrorMsg::EOF_IN_SCALAR || complaint == YAML::ErrorMsg::DOC_IN_SCALAR)
    if (const std::optional<Spot> opening = unclosed_quote_after(build.text, last_event))
      return quote_not_closed(build, *opening);
  const bool at_end = fault.mark.is_null() || spot.byte == 0 || spot.byte >= build.text.size();
  if (complaint.find("flow not found") != complaint.npos || complaint == YAML::ErrorMsg::BLOCK_ENTRY ||
      complaint == YAML::ErrorMsg::MAP_VALUE) {
    if (!build.open.empty() && build.open.back().brackets)
      return unclosed_bracket(Value(build.tree, build.open.back().node).place(), build.open.back().map ? '{' : '[',
                              gave_up, at_end);
    // The parser reads ahead, so the bracket may stand after the last thing it told of.
    const std::optional<Spot> opening = open_bracket_between(build.text, last_event, spot.byte);
    if (opening && opening->line < spot.line)
      return unclosed_bracket(place_of(build, *opening), build.text[opening->byte], gave_up, at_end);
  }
  SyntaxWords words = syntax_words(complaint);
  return {gave_up, std::move(words.message), std::move(words.hint)};
}

/// A `%` line is a directive to the parser wherever it stands, and vanishes.
bool refuse_directives(TreeBuild& build) {
  bool good = true;
  std::uint32_t line = 1;
  for (std::size_t start = 0; start < build.text.size() && !build.diagnostics.full(); ++line) {
    if (build.text[start] == '%') {
      build.diagnostics.error({build.tree.file, line, 1}, "a line that begins with '%'",
                              "YAML directives are not read; indent a text");
      good = false;
    }
    start = std::min(build.text.find('\n', start), build.text.size()) + 1;
  }
  return good;
}

/// Drives the parser over the whole text; whatever stops it is thrown as TextRefused.
void read_events(TreeBuild& build, std::string_view whole) {
  EventPacedBytes bytes(whole);
  std::istream stream(&bytes);
  TreeEvents events(build, bytes, whole.size() - build.text.size());
  try {
    YAML::Parser parser(stream);
    // The second call tells whether something follows the document; it must not be repeated (it may never end).
    if (parser.HandleNextDocument(events)) parser.HandleNextDocument(events);
  } catch (const YAML::Exception& fault) {
    throw syntax_fault(build, fault, events.last_event());
  } catch (const OutrunEvents&) {
    throw TextRefused{
        place_of(build, events.last_event()), "more than 256 kB follow before this comes to an end",
        "write a long list in block style, each entry on a line of its own after '- '; shorten a long text "
        "or remark"};
  }
}

}  // namespace

std::optional<Tree> parse_yaml(std::uint32_t file, Diagnostics& diagnostics) {
  const TextCheck check = check_text(file, diagnostics);
  if (!check.good) return std::nullopt;
  const std::string_view whole = diagnostics.files[file].text;
  const std::size_t mark = whole.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
  TreeBuild build = start_tree(file, whole.substr(mark), check.ascii, diagnostics);
  if (!refuse_directives(build)) return std::nullopt;
  try {
    read_events(build, whole);
  } catch (TextRefused& refused) {
    for (const OpenNode& unfinished : build.open)
      if (unfinished.map) drop_repeated_keys(build.tree, unfinished.node, diagnostics);
    // A tab has been told of already; that the parser stumbles over it is no second fault.
    if (refused.place.line == 0 || refused.place.line != build.tab_line)
      diagnostics.error(refused.place, std::move(refused.message), std::move(refused.hint));
    return std::nullopt;
  }
  if (build.tree.nodes.empty() || build.tree.nodes[0].kind == Kind::nothing) {
    diagnostics.error({file, 0, 0}, "the file is empty", "begin it with 'format: 1'");
    return std::nullopt;
  }
  if (!build.readable) return std::nullopt;
  return std::move(build.tree);
}

}  // namespace seambook
