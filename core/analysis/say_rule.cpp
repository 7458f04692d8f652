#include "core/analysis/say_rule.h"

#include "core/analysis/say.h"
#include "core/data/data_library.h"

namespace gazewright {

std::string say_rule(double part, std::string_view file, std::string_view row,
                     std::string_view key) {
  const DataRow* found = data_table(file).find(row);
  const std::string source = found == nullptr ? std::string() : found->source(key);
  return say_percent(part) + " is " + source.substr(0, source.find(','));
}

}  // namespace gazewright
