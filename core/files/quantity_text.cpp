#include <cmath>

#include "core/files/writer.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

bool is_near(double a, double b) { return a == b || std::abs(a - b) <= 1e-12 * std::abs(b); }

FieldInfo plain_number_info() {
  FieldInfo info{};
  info.si_unit = info.unit = "1";
  return info;
}

}  // namespace

std::string value_text(const Quantity& quantity, const FieldInfo& info) {
  if (!quantity.written.empty()) {
    const auto read = read_quantity(quantity.written, info);
    const auto* said = std::get_if<Quantity>(&read);
    if (said != nullptr && is_near(*said->si, *quantity.si)) return quantity.written;
  }
  const std::string unit = unit_of_written(quantity.written);
  return written_quantity(*quantity.si, info, unit.empty() ? info.unit : unit);
}

std::string spread_text(const Quantity& quantity, const FieldInfo& info) {
  if (!quantity.spread_written.empty()) {
    const auto read = read_spread(quantity.spread_written, info, quantity.value());
    const double* said = std::get_if<double>(&read);
    const bool is_percent = unit_of_written(quantity.spread_written) == "%";  // follows the value
    if (said != nullptr && (is_percent || is_near(*said, quantity.spread_si)))
      return quantity.spread_written;
  }
  if (quantity.spread_si == 0 || !std::isfinite(quantity.spread_si)) return "";
  const std::string number = written_quantity(quantity.spread_si, plain_number_info(), "1");
  return info.is_plain_number() ? number : number + " " + std::string(info.si_unit);
}

std::string quantity_text(const Quantity& quantity, const FieldInfo& info) {
  const std::string value = yaml_scalar(value_text(quantity, info));
  const std::string spread = spread_text(quantity, info);
  if (spread.empty() && quantity.source == Source::unstated) return value;
  std::string text = "{value: " + value;
  if (!spread.empty()) text += ", spread: " + yaml_scalar(spread);
  if (quantity.source != Source::unstated)
    text += std::string(", source: ") + name_of(quantity.source);
  return text + "}";
}

namespace {

/// The quantity as reading its text gives it.
void read_back(Quantity& quantity, const FieldInfo& info) {
  if (!quantity.has_value()) {
    quantity = {};
    return;
  }
  quantity.spread_written = spread_text(quantity, info);
  quantity.written = value_text(quantity, info);
  const auto value = read_quantity(quantity.written, info);
  if (const auto* read = std::get_if<Quantity>(&value)) {
    quantity.si = read->si;
    quantity.written = read->written;
  }
  if (quantity.spread_written.empty()) quantity.spread_si = 0;
  const auto spread = read_spread(quantity.spread_written, info, *quantity.si);
  if (const double* read = std::get_if<double>(&spread)) quantity.spread_si = *read;
}

}  // namespace

Rig as_read_back(const Rig& rig) {
  Rig back = rig;
  sort_unknown_keys(back);
  for (const FieldRef& field : all_fields(back))
    if (const auto* ref = std::get_if<QuantityRef>(&field)) read_back(*ref->quantity, *ref->info);
  for (PathPoint& point : back.tracking.path) {
    const auto& [time, pan, tilt] = path_point_infos();
    read_back(point.time_s, *time);
    read_back(point.pan_rad, *pan);
    read_back(point.tilt_rad, *tilt);
  }
  for (Variant& variant : back.variants)
    variant.rig = std::make_shared<const Rig>(as_read_back(*variant.rig));
  return back;
}

}  // namespace gazewright
