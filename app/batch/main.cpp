#include <csignal>
#include <string_view>
#include <vector>

#include "app/batch/verbs.h"

int main(int argc, char** argv) {
  // A reader that goes away is an error that the writer reports, not the end of the program.
  std::signal(SIGPIPE, SIG_IGN);
  const std::vector<std::string_view> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
  return gazewright::batch::run(arguments);
}
