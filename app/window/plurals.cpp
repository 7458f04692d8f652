#include "app/window/plurals.h"

#include <array>
#include <string_view>

namespace gazewright {
namespace {

struct Singular {
  std::string_view many, one;
};
constexpr std::array kSingulars{
    Singular{"Found in: %n sections", "Found in: %n section"},
    Singular{"%n points have no value and leave a gap", "%n point has no value and leaves a gap"},
    Singular{"? %n inputs are missing; without them unknown: %1.",
             "? %n input is missing; without it unknown: %1."},
    Singular{"%n figures", "%n figure"},
    Singular{"%n findings", "%n finding"},
    Singular{"Of its %n inputs – %1.", "Of its %n input – %1."},
    Singular{"What stands on it: %n figures", "What stands on it: %n figure"},
    Singular{"Path of %n points, %1 long.", "Path of %n point, %1 long."},
    Singular{"%n points compared: rms %1°, at most %2°.",
             "%n point compared: rms %1°, at most %2°."},
    Singular{"%Ln combinations: %1 fit, %2 fail, %3 lack data.",
             "%Ln combination: %1 fit, %2 fail, %3 lack data."},
    Singular{"No ranking: the rig lacks %n inputs, see below.",
             "No ranking: the rig lacks %n input, see below."},
    Singular{"and %n parts more", "and %n part more"}};

}  // namespace

QString Plurals::translate(const char*, const char* source, const char*, int count) const {
  if (count != 1) return {};
  for (const Singular& entry : kSingulars) {
    if (entry.many == source)
      return QString::fromUtf8(entry.one.data(), qsizetype(entry.one.size()));
  }
  return {};
}

}  // namespace gazewright
