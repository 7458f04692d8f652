#include "core/analysis/say_rule.h"

#include <array>

#include "core/analysis/say.h"
#include "core/data/data_library.h"
#include "core/words/words.h"

namespace gazewright {

/// What the files say most of the time.
[[maybe_unused]] constexpr std::array kSources{for_words("common practice"),
                                               for_words("from memory")};

std::string say_rule(double part, std::string_view file, std::string_view row,
                     std::string_view key) {
  const DataRow* found = data_table(file).find(row);
  const std::string source = found == nullptr ? std::string() : found->source(key);
  return words("%1 is %2", say_percent(part), words(source.substr(0, source.find(','))));
}

}  // namespace gazewright
