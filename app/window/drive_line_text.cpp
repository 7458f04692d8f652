#include "app/window/drive_line_text.h"

#include <QCoreApplication>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/window/parts.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

const QString kItself = QStringLiteral("%1");

QString tr(const char* text) { return QCoreApplication::translate("DriveLine", text); }

/// A field as the rig (with defaults) has it, three digits in the field's unit.
QString field_text(const Rig& rig, const std::string& path) {
  const Quantity* quantity = find_quantity(rig, path);
  const FieldInfo* info = find_info(path);
  if (!quantity || !info || !quantity->si) return tr("missing");
  return format_value(*quantity->si, info->si_unit, info->unit);
}

/// The same in a phrase of its own: "up to 10 A"; `none` and `missing` are whole phrases too.
QString field_phrase(const Rig& rig, const std::string& path, const QString& phrase,
                     const QString& missing, const QString& none = {}) {
  const Quantity* quantity = find_quantity(rig, path);
  if (!quantity || !quantity->si) return missing;
  return std::isinf(*quantity->si) ? none : phrase.arg(field_text(rig, path));
}

QString tile_figure(const Analysis& analysis, const std::string& id, std::string_view unit = {}) {
  const Figure* figure = analysis.figure(id);
  if (!figure || !figure->info) return tr("unknown");
  if (!figure->value) return tr("unknown");
  if (unit.empty()) unit = reading_unit(*figure->value, figure->info->unit);
  return format_value(*figure->value, figure->info->si_unit, unit);
}

/// "±154°", or "−35° … +60°" where it is not symmetric, "no limit" where infinite.
QString span_text(double centre_rad, const std::optional<double>& span_rad) {
  if (!span_rad) return tr("unknown");
  if (std::isinf(*span_rad)) return tr("no limit");
  const auto degrees = [](double rad) { return format_value(rad, "rad", "deg"); };
  if (std::abs(centre_rad) < 1e-9) return QStringLiteral("±") + degrees(*span_rad / 2);
  const auto with_sign = [&](double rad) {
    return (rad > 0 ? QStringLiteral("+") : QString()) + degrees(rad);
  };
  return with_sign(centre_rad - *span_rad / 2) + QStringLiteral(" … ") +
         with_sign(centre_rad + *span_rad / 2);
}

QString as_sentence(const QString& text) { return sentence_start(text) + '.'; }

TileText supply_tile(const Rig& rig, Axis axis) {
  TileText text{tr("Supply"),
                field_phrase(rig, "supply.voltage", kItself, tr("voltage missing")),
                {},
                {},
                {}};
  if (axis == Axis::tilt) {
    text.lines << tr("shared with pan");
    return text;
  }
  text.lines << field_phrase(rig, "supply.current_limit", tr("up to %1"), tr("current missing"),
                             tr("no current limit"))
             << field_phrase(rig, "supply.bus_capacitance", kItself, tr("capacitance missing"));
  return text;
}

TileText drive_tile(const Rig& rig, const std::string& axis) {
  return {tr("Drive"),
          field_phrase(rig, axis + ".drive.current_limit", kItself, tr("current missing"),
                       tr("no current limit")),
          {field_phrase(rig, axis + ".drive.control_rate", kItself, tr("control rate missing")),
           field_phrase(rig, axis + ".loop.speed_limit", tr("to %1"), tr("speed limit missing"),
                        tr("no speed limit"))},
          {},
          {}};
}

TileText motor_tile(const Rig& rig, const Analysis& analysis, const std::string& axis) {
  return {tr("Motor"),
          field_phrase(rig, axis + ".motor.speed_constant", kItself, tr("KV missing")),
          {analysis.value(axis + ".motor.torque_constant")
               ? tile_figure(analysis, axis + ".motor.torque_constant", "mN.m/A")
               : tr("Kt unknown"),
           tr("peak %1").arg(tile_figure(analysis, axis + ".step.peak_current"))},
          {},
          {}};
}

TileText gearbox_tile(const Rig& rig, const Analysis& analysis, const std::string& axis) {
  const Quantity* ratio = find_quantity(rig, axis + ".gearbox.ratio");
  const bool known = ratio && ratio->si;
  const Quantity* limit = find_quantity(rig, axis + ".loop.speed_limit");
  const auto top = analysis.value(axis + ".output.speed_top");
  const bool isHeld = limit && limit->si && top && *limit->si < *top;
  const QString fastest = tile_figure(analysis, axis + ".output.speed_top", "deg/s");
  return {tr("Gearbox"),
          known ? number_text(*ratio->si, 4) + QStringLiteral(" : 1") : tr("ratio missing"),
          {tr("stall %1").arg(tile_figure(analysis, axis + ".output.torque_stall")),
           isHeld ? tr("held to %1").arg(field_text(rig, axis + ".loop.speed_limit"))
                  : tr("top %1").arg(fastest)},
          {},
          isHeld
              ? tr("The loop holds it to its limit; without that it could turn at %1.").arg(fastest)
              : tr("Torque at the output while it stands still, and its top speed.")};
}

TileText stops_tile(const Rig& rig, const Analysis& analysis, Axis axis) {
  const Travel& travel = analysis.of(axis).travel;
  const Stops& stops = rig.axis(axis).stops;
  if (stops.presence == Presence::none) {
    return {tr("Stops"), tr("no stops"), {tr("turns on freely")}, {}, {}};
  }
  if (stops.presence == Presence::missing) {
    return {tr("Stops"), tr("not stated"), {tr("travel unknown")}, {}, {}};
  }
  TileText text{tr("Stops"),
                span_text(travel.centre_rad, travel.stops_rad),
                {tr("soft %1").arg(span_text(travel.centre_rad, travel.soft_rad))},
                {},
                {}};
  const std::string path = std::string(name_of(axis)) + ".stops.";
  if (stops.kind.value == "trailing") {
    text.lines << tr("loose tabs: %1").arg(number_text(stops.trailers.si.value_or(1)));
  } else if (stops.kind.value == "window") {
    text.lines << tr("window %1").arg(field_text(rig, path + "window"));
  } else {
    text.lines << tr("blind %1")
                      .arg(tile_figure(analysis, std::string(name_of(axis)) + ".travel.blind",
                                       "deg"));
  }
  return text;
}

/// What the routing is and the two measures that make its travel.
QStringList cable_lines(const Rig& rig, const std::string& path, const std::string& routing) {
  const auto field = [&](const char* key) { return field_text(rig, path + key); };
  const QString free_length =
      field_phrase(rig, path + "free_length", tr("%1 free"), tr("free length missing"));
  if (routing == "slip_ring") {
    return {tr("circuits: %1").arg(field("ring_circuits")),
            tr("%1 a ring").arg(field("ring_current"))};
  }
  if (routing == "coil") {
    return {tr("coil %1 in %2").arg(field("hub_radius"), field("wall_radius")), free_length};
  }
  if (routing == "loop") {
    return {tr("loop %1 to %2").arg(field("anchor_radius"), field("moving_radius")), free_length};
  }
  return {tr("twist %1").arg(field("twist_rating")), free_length};
}

TileText cable_tile(const Rig& rig, const Analysis& analysis, Axis axis) {
  const Travel& travel = analysis.of(axis).travel;
  const Cable& cable = rig.axis(axis).cable;
  if (cable.presence == Presence::none) return {tr("Cable"), tr("no cable"), {}, {}, {}};
  if (cable.presence == Presence::missing) {
    return {tr("Cable"), tr("not stated"), {tr("travel unknown")}, {}, {}};
  }
  const std::string routing = cable.routing.value.empty() ? "twist" : cable.routing.value;
  return {routing == "slip_ring" ? tr("Slip ring") : tr("Cable"),
          span_text(travel.centre_rad, travel.cable_rad),
          cable_lines(rig, std::string(name_of(axis)) + ".cable.", routing),
          {},
          {}};
}

TileText load_tile(const Analysis& analysis, Axis axis) {
  const std::string name = name_of(axis);
  TileText text{tr("Load"),
                tile_figure(analysis, name + ".inertia.load"),
                {tr("rotor %1").arg(tile_figure(analysis, name + ".inertia.rotor_reflected"))},
                {},
                {}};
  const bool pans = axis == Axis::pan;
  if (!analysis.value(pans ? "mass.total" : "tilt.balance.offset")) {
    text.lines << (pans ? tr("mass unknown") : tr("balance unknown"));
  } else {
    text.lines << (pans
                       ? tile_figure(analysis, "mass.total")
                       : tr("%1 off axis").arg(tile_figure(analysis, "tilt.balance.offset", "mm")));
  }
  text.tip =
      tr("Inertia of the load about the axis; below it the motor's rotor seen through the "
         "gear, and the mass that moves or how far its centre is off the axis.");
  return text;
}

void add_verdicts(std::vector<TilePart>& tiles, const Analysis& analysis) {
  const auto rank = [](Verdict verdict) {
    return verdict == Verdict::fails   ? 3
           : verdict == Verdict::tight ? 2
                                       : verdict == Verdict::unknown;
  };
  for (TilePart& tile : tiles) {
    for (const Finding& finding : analysis.findings) {
      if (card_of(finding.part) != tile.part.toStdString()) continue;
      std::optional<Verdict>& worst = tile.text.worst;
      if (!worst || rank(finding.verdict) > rank(*worst)) worst = finding.verdict;
    }
  }
}

}  // namespace

Headline headline(const Analysis& analysis, Axis axis) {
  const std::string name = name_of(axis);
  const Figure* settle = analysis.figure(settle_id(analysis, axis));
  Headline words{tr("unknown"),
                 ends_at_camera(analysis, axis) ? tr("camera still") : tr("move and settle"),
                 {}};
  if (settle && settle->value) {
    words.time = format_value(*settle->value, "s", "ms");
  } else if (settle && !settle->because.empty() && !begins_as("needs %1", settle->because)) {
    words.time = tr("never");
    words.about = tr("settles");
  }
  const Figure* gap = analysis.figure(name + ".pointing.gap_px");
  words.gap = gap && gap->value ? tr("%1 gap").arg(format_value(*gap->value, "1", "px"))
                                : tr("gap unknown");
  const MoveLimits& limits = analysis.limits_of(axis);
  words.limits = limit_sentences(limits).mid(0, 1);
  if (!limits.gains.empty())
    words.limits << as_sentence(QString::fromStdString(limits.gains.front().change));
  return words;
}

QStringList limit_sentences(const MoveLimits& limits) {
  QStringList sentences;
  for (const std::string& line : {limits.sentence, limits.fastest}) {
    if (!line.empty()) sentences << as_sentence(reason_text(line));
  }
  return sentences;
}

std::vector<TilePart> tile_texts(const Rig& rig, const Analysis& analysis, Axis axis) {
  const Rig full = with_defaults(rig);
  const std::string name = name_of(axis);
  const QString at = QString::fromStdString(name) + QStringLiteral(".");
  std::vector<TilePart> tiles{{QStringLiteral("supply"), supply_tile(full, axis)},
                              {at + QStringLiteral("drive"), drive_tile(full, name)},
                              {at + QStringLiteral("motor"), motor_tile(full, analysis, name)},
                              {at + QStringLiteral("gearbox"), gearbox_tile(full, analysis, name)},
                              {at + QStringLiteral("stops"), stops_tile(full, analysis, axis)},
                              {at + QStringLiteral("cable"), cable_tile(full, analysis, axis)},
                              {at + QStringLiteral("load"), load_tile(analysis, axis)}};
  add_verdicts(tiles, analysis);
  return tiles;
}

}  // namespace gazewright
