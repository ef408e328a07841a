// Jobs and what keeps them from the floor, for the tests of one gate each: a job that is gated and the closest one that
// is not.
#pragma once

#include "estimate/gates.hpp"
#include "shop_files.hpp"

namespace seambook::test {

/// A job of one weldment `body`, with more keys of it and its joints as text, against the example rate book.
std::string gated_job(const std::string& weldment, const std::string& joints);
/// Piece `from` of the rate book's file replaced by `to`.
std::vector<RateFile> rates_with(const std::string& file, const std::string& from, const std::string& to);
/// Gates of one kind on a date, with a day file's text or none.
std::vector<Gate> gates_of(GateKind, const std::string& job, const std::vector<RateFile>& rates = rate_texts(),
                           Date date = {2026, 5, 12}, const std::string& day = "");

}  // namespace seambook::test
