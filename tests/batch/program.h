#pragma once

#include <string>
#include <vector>

#include "tests/support/folder.h"

/// The built gazewright-batch as a user runs it: arguments and standard input in; status, standard
/// output and standard error out.
namespace gazewright::test {

struct Ran {
  int status = -1;  ///< exit status; -1 where it did not end by itself (a signal)
  std::string out, err;
};
Ran run_batch(const std::vector<std::string>& arguments, const std::string& input = {});
/// The same with standard output going to an existing file or device.
Ran run_batch_into(const std::string& out, const std::vector<std::string>& arguments);
/// Standard output is a pipe whose reader is gone.
Ran run_batch_unread(const std::vector<std::string>& arguments);

/// A sample rig's path.
std::string sample(const std::string& name);
inline const std::string kNewt = sample("quick-newt");
/// Text of a sample rig with the first `from` replaced by `to`; fails the test where it is absent.
std::string sample_with(const std::string& name, const std::string& from, const std::string& to);

std::vector<std::string> lines_of(const std::string& text);
std::vector<std::string> fields_of(const std::string& csv_line);

using tests::Folder;

std::string bytes_of(const std::string& file);

}  // namespace gazewright::test
