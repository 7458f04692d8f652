#include "tests/batch/program.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

extern char** environ;

namespace gazewright::test {
namespace {

struct Streams {
  std::string in, out, err;  ///< files
  int out_handle = -1;       ///< instead of `out` where not -1
};

/// The tester's own data files stay out of the tests.
[[maybe_unused]] const int kNoOwnData = setenv("XDG_DATA_HOME", "/nonexistent", 1);

/// Runs the program to its end with files as its streams.
int spawn(const std::vector<std::string>& arguments, const Streams& streams) {
  std::vector<char*> words;
  std::string program = GAZEWRIGHT_BATCH;
  std::vector<std::string> copies = arguments;
  words.push_back(program.data());
  for (std::string& copy : copies) words.push_back(copy.data());
  words.push_back(nullptr);

  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 0, streams.in.c_str(), O_RDONLY, 0);
  if (streams.out_handle >= 0)
    posix_spawn_file_actions_adddup2(&actions, streams.out_handle, 1);
  else
    posix_spawn_file_actions_addopen(&actions, 1, streams.out.c_str(), O_WRONLY | O_CREAT, 0600);
  posix_spawn_file_actions_addopen(&actions, 2, streams.err.c_str(), O_WRONLY | O_CREAT, 0600);
  pid_t child = 0;
  const int error = posix_spawn(&child, program.c_str(), &actions, nullptr, words.data(), environ);
  posix_spawn_file_actions_destroy(&actions);
  EXPECT_EQ(error, 0) << "cannot start " << program;
  if (error != 0) return -1;
  int how = 0;
  waitpid(child, &how, 0);
  return WIFEXITED(how) ? WEXITSTATUS(how) : -1;
}

}  // namespace

Ran run_batch(const std::vector<std::string>& arguments, const std::string& input) {
  const Folder folder;
  Streams streams{folder.write("in", input), folder.path("out"), folder.path("err")};
  const int status = spawn(arguments, streams);
  return {status, bytes_of(streams.out), bytes_of(streams.err)};
}

Ran run_batch_into(const std::string& out, const std::vector<std::string>& arguments) {
  const Folder folder;
  Streams streams{"/dev/null", out, folder.path("err")};
  const int status = spawn(arguments, streams);
  return {status, {}, bytes_of(streams.err)};
}

Ran run_batch_unread(const std::vector<std::string>& arguments) {
  const Folder folder;
  int ends[2] = {-1, -1};
  EXPECT_EQ(pipe2(ends, O_CLOEXEC), 0);
  close(ends[0]);
  Streams streams{"/dev/null", {}, folder.path("err"), ends[1]};
  const int status = spawn(arguments, streams);
  close(ends[1]);
  return {status, {}, bytes_of(streams.err)};
}

std::string sample(const std::string& name) {
  return std::string(GAZEWRIGHT_SOURCE_DIR) + "/sample-rigs/" + name + ".rig.yaml";
}

std::string sample_with(const std::string& name, const std::string& from, const std::string& to) {
  std::string text = bytes_of(sample(name));
  const std::size_t at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from << " is not in " << name;
  if (at != std::string::npos) text.replace(at, from.size(), to);
  return text;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

std::vector<std::string> fields_of(const std::string& csv_line) {
  std::vector<std::string> fields(1);
  bool quoted = false;
  for (const char c : csv_line) {
    if (c == '"')
      quoted = !quoted;
    else if (c == ',' && !quoted)
      fields.emplace_back();
    else
      fields.back() += c;
  }
  return fields;
}

std::string bytes_of(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace gazewright::test
