#include "text/zip_part.hpp"

#include <zip.h>

#include <algorithm>
#include <memory>

namespace seambook {
namespace {

struct Discard {
  void operator()(zip_t* archive) const { zip_discard(archive); }
  void operator()(zip_file_t* file) const { zip_fclose(file); }
};
using Archive = std::unique_ptr<zip_t, Discard>;
using PackedFile = std::unique_ptr<zip_file_t, Discard>;

constexpr const char* damaged_hint = "open it in a spreadsheet program and save it again";

ZipPart refused_part(std::string problem, std::string hint) { return {false, {}, std::move(problem), std::move(hint)}; }

/// Null when the bytes are no archive.
Archive open_archive(std::string_view bytes) {
  zip_error_t error;
  zip_error_init(&error);
  zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
  Archive archive(source == nullptr ? nullptr : zip_open_from_source(source, ZIP_RDONLY, &error));
  if (source != nullptr && archive == nullptr) zip_source_free(source);
  zip_error_fini(&error);
  return archive;
}

/// Inflates block by block, so that a bomb is left before it grows.
ZipPart inflated(zip_file_t* file, std::size_t packed) {
  constexpr std::size_t block = 64u << 10;
  ZipPart part;
  for (;;) {
    const std::size_t had = part.text.size();
    part.text.resize(had + block);
    const zip_int64_t got = zip_fread(file, part.text.data() + had, block);
    if (got < 0) return refused_part("a part of the workbook cannot be unpacked", damaged_hint);
    part.text.resize(had + static_cast<std::size_t>(got));
    if (got == 0) break;
    if (part.text.size() > zip_limit::part_bytes)
      return refused_part("a part of the workbook unpacks to more than 32 MB",
                          "split the sheet, and clear formats of whole rows and columns");
    if (part.text.size() > zip_limit::free_bytes &&
        part.text.size() / std::max<std::size_t>(packed, 1) > zip_limit::ratio)
      return refused_part("a part of the workbook unpacks to more than 250 times its size",
                          "clear formats of whole rows and columns");
  }
  part.found = true;
  return part;
}

}  // namespace

ZipPart zip_part(std::string_view bytes, const std::string& name) {
  const Archive archive = open_archive(bytes);
  if (archive == nullptr) return refused_part("the workbook is damaged: its packing cannot be read", damaged_hint);
  if (zip_get_num_entries(archive.get(), 0) > static_cast<zip_int64_t>(zip_limit::entries))
    return refused_part("the workbook has more than 2000 parts", "save the sheet alone in a new workbook");
  const zip_int64_t at = zip_name_locate(archive.get(), name.c_str(), 0);
  if (at < 0) return {};
  zip_stat_t facts;
  zip_stat_init(&facts);
  if (zip_stat_index(archive.get(), static_cast<zip_uint64_t>(at), 0, &facts) != 0 ||
      (facts.valid & ZIP_STAT_COMP_SIZE) == 0)
    return refused_part("a part of the workbook cannot be unpacked", damaged_hint);
  if ((facts.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && facts.encryption_method != ZIP_EM_NONE)
    return refused_part("the workbook is locked by a password", "save it without one");
  const bool known_packing = facts.comp_method == ZIP_CM_STORE || facts.comp_method == ZIP_CM_DEFLATE;
  const PackedFile file(known_packing ? zip_fopen_index(archive.get(), static_cast<zip_uint64_t>(at), 0) : nullptr);
  if (file == nullptr) return refused_part("a part of the workbook cannot be unpacked", damaged_hint);
  return inflated(file.get(), std::min<std::size_t>(facts.comp_size, bytes.size()));
}

}  // namespace seambook
