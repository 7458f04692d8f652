#include "core/analysis/unknowns.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/input_names.h"
#include "core/data/data_library.h"

namespace gazewright {
namespace {

bool is_body(std::string_view path) {
  return path.starts_with("on_pan[") || path.starts_with("on_tilt[");
}

/// The usual spread of a value from there, SI; 0: there is none.
double usual_spread_si(const DataRow& row, Source source, double value_si) {
  const auto share = [&](std::string_view column) {
    const DataValue* value = row.find(column);
    return value == nullptr ? 0 : value->si * std::abs(value_si);
  };
  if (source == Source::by_default) return share("default");
  if (source != Source::estimate && source != Source::datasheet) return 0;
  for (const std::string_view column : {"place", "angle", "warmth"})
    if (const DataValue* value = row.find(column)) return value->si;
  return share(source == Source::estimate ? "estimate" : "datasheet");
}

/// An end of the range that the field allows; a limit that is not allowed itself is kept away from
/// by a hundredth of the way.
double allowed(const FieldInfo& info, double value_si, double end_si) {
  const double least = info.above_least ? info.least + 0.01 * (value_si - info.least) : info.least;
  return std::clamp(end_si, std::min(least, value_si), std::max(info.most, value_si));
}

}  // namespace

std::string kind_of_input(std::string_view path, const FieldInfo& info) {
  if (is_body(path)) {
    if (info.si_unit == "kg.m2") return "body.inertia";
    if (path.find(".shape.") != std::string_view::npos) return "body.size";
    return path.ends_with(".mass") ? "body.mass" : "body.centre";
  }
  for (const Axis axis : kAxes) {
    const std::string prefix = std::string(name_of(axis)) + '.';
    if (path.starts_with(prefix)) path.remove_prefix(prefix.size());
  }
  return std::string(path.substr(0, path.find('[')));
}

namespace {

/// Calls `visit(ref, quantity, spread_si)` with each known input that a row of spreads.yaml
/// describes: its place in the rig, its value with defaults, its spread or 0.
template <class Visit>
void for_each_input(const Rig& rig, const Visit& visit) {
  Rig written = rig, full = with_defaults(rig);
  const std::vector<FieldRef> fields = all_fields(written), defaults = all_fields(full);
  const DataTable& spreads = data_table("spreads");
  for (std::size_t i = 0; i < fields.size(); ++i) {
    const auto* ref = std::get_if<QuantityRef>(&fields[i]);
    if (ref == nullptr || ref->info->whole) continue;
    const Quantity& quantity = *std::get<QuantityRef>(defaults[i]).quantity;
    if (!quantity.has_value() || !std::isfinite(*quantity.si)) continue;
    const DataRow* row = spreads.find(kind_of_input(ref->path, *ref->info));
    if (row == nullptr) continue;
    const double spread = quantity.spread_si > 0
                              ? quantity.spread_si
                              : usual_spread_si(*row, quantity.source, *quantity.si);
    visit(*ref, quantity, spread > 0 && std::isfinite(spread) ? spread : 0.0);
  }
}

}  // namespace

std::vector<FoundUnknown> unknowns_of(const Rig& rig) {
  const InputNames names(rig);
  std::vector<FoundUnknown> found;
  for_each_input(rig, [&](const QuantityRef& ref, const Quantity& quantity, double spread) {
    if (spread == 0) return;
    const double value = *quantity.si;
    const std::string id = names.id_of(ref.path);
    found.push_back({{id, input_label(id, ref.info->label), value, spread, quantity.spread_si > 0,
                      quantity.source, ref.info->si_unit, ref.info->unit},
                     ref.path,
                     allowed(*ref.info, value, value - spread),
                     allowed(*ref.info, value, value + spread),
                     measuring_phrase(id, ref.info->label)});
  });
  return found;
}

std::size_t exact_inputs(const Rig& rig) {
  std::size_t count = 0;
  for_each_input(rig, [&](const QuantityRef& ref, const Quantity&, double spread) {
    if (spread == 0 && ref.quantity->has_value()) ++count;
  });
  return count;
}

}  // namespace gazewright
