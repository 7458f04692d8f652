#pragma once

#include <string>

namespace gazewright {

struct SystemWords {
  std::string problem, fix;
};
/// An errno of the system in plain words, for a file that is read.
SystemWords words_for_reading(int error);
/// The same for a file that is written.
SystemWords words_for_writing(int error);

}  // namespace gazewright
