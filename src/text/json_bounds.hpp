// JSON documents that earlier runs printed are read whole by a library; a hostile one is refused before that.
#pragma once

#include <string_view>

namespace seambook {

/// False when brackets stand deeper than limit::depth or there are more than limit::json_values values. Says nothing of
/// whether it is JSON at all. Linear, needs no memory.
bool json_within_bounds(std::string_view text);

}  // namespace seambook
