// Any bytes at all: reading gives a rig or an error with its place, and what is written from a rig
// reads back as that rig.
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "core/files/rig_file.h"

namespace {

void demand(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "broken: %s\n", what);
  std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace gazewright;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const LoadedRig loaded = parse_rig(text, "fuzz.rig.yaml");
  bool has_error = false;
  for (const Diagnostic& diagnostic : loaded.diagnostics) {
    has_error = has_error || diagnostic.weight == Diagnostic::Weight::error;
    demand(!diagnostic.problem.empty() && !diagnostic.fix.empty(), "a problem has no words");
  }
  demand(loaded.rig.has_value() != has_error, "there is a rig and an error, or neither");
  if (!loaded.rig) return 0;
  demand(write_rig(*loaded.rig, loaded.text) == loaded.text,
         "an unchanged rig is written otherwise");
  const LoadedRig again = parse_rig(write_rig(*loaded.rig), "again.rig.yaml");
  demand(again.rig.has_value() && *again.rig == *loaded.rig,
         "a rig laid out anew reads back otherwise");
  Rig renamed = *loaded.rig;
  renamed.title += "!";
  const LoadedRig edited = parse_rig(write_rig(renamed, loaded.text), "edited.rig.yaml");
  demand(edited.rig.has_value() && *edited.rig == renamed, "an edited rig reads back otherwise");
  return 0;
}
