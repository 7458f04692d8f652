#include "core/analysis/setting_rows.h"

#include <cmath>
#include <utility>

#include "core/analysis/context.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {

Known Known::times(double factor) const {
  Known made = *this;
  if (made.value) *made.value *= factor;
  return made;
}

SettingRows::SettingRows(const Rig& rig, const Analysis& analysis, Axis axis)
    : rig_(with_defaults(rig)), analysis_(analysis), axis_(axis) {
  rows_.reserve(48);
}

Known SettingRows::field(std::string_view path) const {
  Known known{.from = for_axis(path, axis_)};
  const Quantity* quantity = find_quantity(rig_, known.from);
  if (quantity != nullptr && quantity->si) {
    known.value = quantity->si;
    known.is_default = quantity->source == Source::by_default;
  } else {
    known.why = say_needs(std::span(&known.from, 1));
  }
  return known;
}

Known SettingRows::figure(std::string_view id) const {
  Known known{.from = for_axis(id, axis_)};
  if (const Figure* figure = analysis_.figure(known.from)) {
    known.value = figure->value;
    known.why = figure->because;
  }
  return known;
}

Known SettingRows::derived(std::initializer_list<std::string_view> paths, double value) const {
  Known known{.value = value, .from = for_axis(*paths.begin(), axis_)};
  std::vector<std::string> missing;
  missing.reserve(paths.size());
  for (const std::string_view path : paths) {
    if (const Known part = field(path); !part.value) missing.push_back(part.from);
  }
  if (!missing.empty()) {
    known.value.reset();
    known.why = say_needs(missing);
  }
  return known;
}

double SettingRows::value(std::string_view path) const {
  return field(path).value.value_or(kNotEntered);
}

DriveSetting& SettingRows::add(std::string_view key, std::string_view label,
                               const SettingUnit& unit, const Known& known,
                               std::string_view formula) {
  DriveSetting& row = rows_.emplace_back();
  row.key = key;
  row.group = group_;
  row.label = label;
  row.si_unit = unit.si;
  row.unit = unit.shown;
  row.from = known.from;
  row.formula = formula;
  if (known.value && std::isfinite(*known.value)) {
    row.value = known.value;
    if (known.is_default) row.text = words("not entered: the usual value");
  } else {
    row.text = known.why.empty() ? words("none") : known.why;
  }
  return row;
}

DriveSetting& SettingRows::plain(std::string_view key, std::string_view path,
                                 std::string_view label) {
  const FieldInfo& info = *find_info(for_axis(path, axis_));
  return add(key, label.empty() ? info.label : label, {info.si_unit, info.unit}, field(path));
}

DriveSetting& SettingRows::say(std::string_view key, std::string_view label, std::string text,
                               std::string_view from) {
  DriveSetting& row = add(key, label, {"1", "1"}, {.from = for_axis(from, axis_)});
  row.text = std::move(text);
  return row;
}

void remark(DriveSetting& row, const std::string& text) {
  if (!row.value || text.empty()) return;
  row.text = row.text.empty() ? text : row.text + "; " + text;
}

void begin_with(DriveSetting& row, double part) {
  if (row.value) row.first = part * *row.value;
}

}  // namespace gazewright
