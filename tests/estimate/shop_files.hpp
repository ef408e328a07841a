// The repository's rate book and example jobs, read and resolved for a test.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "estimate/estimate.hpp"

namespace seambook::test {

struct LoadedJob {
  Diagnostics diagnostics;
  std::optional<RateBook> book;
  std::optional<Job> job;
};

std::string file_text(const std::string& path);
/// A job of jobs/ by its file's name, against rates/; of a shop's folder in jobs/, against the rates in that folder.
LoadedJob load_job(const std::string& name);

struct RateFile {
  std::string name, text;
};
/// The files of a folder of rates below the repository's root, by name.
std::vector<RateFile> rate_texts(const std::string& folder = "rates");
/// Those of rates/ without the files `with-...`: a shop without covered electrodes, cored wires and welding under flux.
std::vector<RateFile> plain_rate_texts();
/// The same without what jobs may ask of the price policy.
std::vector<RateFile> rates_without_policy();
/// A job given as text, against rates given as text.
LoadedJob load_text(const std::string& text, const std::vector<RateFile>& rates = rate_texts());

}  // namespace seambook::test
