// The spreadsheet library's return codes as exceptions. Its own "ok" is checked at every call.
#pragma once

namespace seambook {

/// Throws std::bad_alloc or std::invalid_argument unless `code` (an lxw_error) is 0.
void must(int code);

}  // namespace seambook
