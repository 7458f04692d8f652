#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/motion/loop_tuning.h"
#include "core/rig/rig.h"

namespace gazewright {

class Context;

/// A field's new value.
struct FieldValue {
  std::string path;
  double value_si = 0;

  bool operator==(const FieldValue&) const = default;
};

/// The three gains to start with, and why they are not higher.
struct GainAdvice {
  std::optional<Tuning> tuning;  ///< empty: no advice, `sentences` says why
  std::string limited_by;        ///< "the resonance, at 134 Hz"
  std::vector<std::string> sentences;
  std::vector<FieldValue> values;  ///< speed gain, speed integral gain, position gain
};

GainAdvice gain_advice(Context& context, Axis axis);

/// "pan gains 271 1/s, 3.71 N·m·s/rad and 715 N·m/rad"; empty without advice.
std::string gains_in_words(const GainAdvice& advice, Axis axis);

}  // namespace gazewright
