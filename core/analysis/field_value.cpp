#include "core/analysis/field_value.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/input_names.h"
#include "core/analysis/say.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {

double rounded_value(const FieldInfo& info, double value_si, bool up, int digits) {
  const double scale = info.is_plain_number() ? 1 : from_si(1, info.si_unit, info.unit);
  const double shown = value_si * scale;
  const double step = std::pow(10, std::floor(std::log10(shown)) - (digits - 1));
  const double steps = up ? std::ceil(shown / step - 1e-9) : std::floor(shown / step + 1e-9);
  return steps * step / scale;
}

std::string say_field(const std::string& path, const FieldInfo& info, double value_si) {
  return field_words(path, info.label) + " " + say(value_si, info.si_unit, info.unit);
}

}  // namespace gazewright
