// The keys of the documents that --json prints, as data: what their schemas are made from. A test holds documents
// against them, so that a key which is printed and not named here, or the other way round, is found.
#pragma once

#include <span>
#include <string_view>

namespace seambook {

/// `type`: string, number, integer, boolean; `[]` before it is a list, `{}` a map of any keys, `?` at its end may be
/// null; other words name objects of this list.
struct DocumentKey {
  std::string_view key, type, about;
  bool always = true;
};
struct DocumentObject {
  std::string_view name, about;
  std::span<const DocumentKey> keys;
};

/// Objects that stand inside documents.
std::span<const DocumentObject> document_objects();
/// Those of plans and comparisons.
std::span<const DocumentObject> shop_document_objects();
/// A command's document, without `format`, `program` and `diagnostics`; several where it prints one of several.
std::span<const DocumentObject> documents();

}  // namespace seambook
