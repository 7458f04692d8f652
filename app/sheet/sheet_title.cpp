#include <algorithm>
#include <array>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/choice_word.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "core/rig/fields.h"

/// The head of the first page, and the drive line of each axis.
namespace gazewright {
namespace {

constexpr double kTileHeight = 50, kHeadline = 74, kTileGap = 5;

QString quantity_text(const Quantity& quantity, const char* si_unit, const char* unit) {
  return format_value(quantity.si, si_unit, unit);
}

struct Tile {
  QString title;
  QStringList lines;  ///< the first is the strongest
};

QString travel_text(const std::optional<double>& span_rad, const QString& none) {
  if (!span_rad) return QStringLiteral("–");
  if (std::isinf(*span_rad)) return none;
  return QStringLiteral("±") + format_value(*span_rad / 2, "rad", "deg");
}

std::vector<Tile> tiles_of(const SheetContent& content, Axis axis) {
  const Rig rig = with_defaults(content.rig);
  const AxisParts& parts = rig.axis(axis);
  const Travel& travel = content.analysis.of(axis).travel;
  const auto figure = [&](const char* rest, const char* si, const char* unit) {
    return format_value(content.analysis.value(std::string(name_of(axis)) + '.' + rest), si, unit);
  };
  return {
      {Plots::tr("Supply"),
       {quantity_text(rig.supply.voltage_V, "V", "V"),
        Plots::tr("limit %1").arg(quantity_text(rig.supply.current_limit_A, "A", "A"))}},
      {Plots::tr("Drive"),
       {quantity_text(parts.drive.current_limit_A, "A", "A"),
        quantity_text(parts.drive.control_rate_Hz, "Hz", "kHz")}},
      {Plots::tr("Motor"),
       {quantity_text(parts.motor.speed_constant_radpsV, "rad/s/V", "rpm/V"),
        figure("motor.torque_constant", "N.m/A", "mN.m/A"),
        Plots::tr("peak %1").arg(quantity_text(parts.motor.peak_current_A, "A", "A"))}},
      {Plots::tr("Gearbox"),
       {parts.gearbox.ratio.si ? Plots::tr("%1 : 1").arg(number_text(*parts.gearbox.ratio.si))
                               : QStringLiteral("–"),
        Plots::tr("peak %1").arg(quantity_text(parts.gearbox.peak_torque_Nm, "N.m", "N.m")),
        Plots::tr("gap %1").arg(quantity_text(parts.gearbox.backlash_rad, "rad", "arcmin"))}},
      {Plots::tr("Stops"),
       {travel_text(travel.stops_rad, Plots::tr("none")),
        Plots::tr("soft %1").arg(travel_text(travel.soft_rad, Plots::tr("none"))),
        Plots::tr("centre %1").arg(format_value(travel.centre_rad, "rad", "deg"))}},
      {Plots::tr("Cable"),
       {travel_text(travel.cable_rad, Plots::tr("none")),
        parts.cable.presence == Presence::given ? choice_word(parts.cable.routing.value)
                                                : QString()}},
      {Plots::tr("Load"),
       {figure("inertia.load", "kg.m2", "g.m2"),
        Plots::tr("rotor %1").arg(figure("inertia.rotor_reflected", "kg.m2", "g.m2"))}},
  };
}

void draw_tile(SheetPage& page, const QRectF& rect, const Tile& tile) {
  page.painter().setPen(QPen(page.theme().control, 0.5));
  page.painter().setBrush(Qt::NoBrush);
  page.painter().drawRoundedRect(rect, 3, 3);
  const QRectF inside = rect.adjusted(4, 3, -2, -2);
  page.text(inside, Qt::AlignLeft | Qt::AlignTop, tile.title, {6.5, false, page.theme().quiet});
  double y = inside.top() + 10;
  for (qsizetype i = 0; i < tile.lines.size(); ++i) {
    TextStyle style = i == 0 ? TextStyle{8.5, true, page.theme().text}
                             : TextStyle{6.8, false, page.theme().quiet};
    const double needed = SheetPage::textWidth(tile.lines[i], style);
    style.size_pt *= std::clamp(inside.width() / std::max(needed, 1.0), 0.6, 1.0);
    page.text({inside.left(), y, inside.width(), 12}, Qt::AlignLeft | Qt::AlignVCenter,
              tile.lines[i], style);
    y += i == 0 ? 13 : 10.5;
  }
}

/// "motor: flat outrunner 42 · gearbox: one stage, 8 to 1"; empty where neither has a name.
QString names_of(const AxisParts& parts) {
  QStringList names;
  if (!parts.motor.name.empty())
    names << Plots::tr("motor: %1").arg(QString::fromStdString(parts.motor.name));
  if (!parts.gearbox.name.empty())
    names << Plots::tr("gearbox: %1").arg(QString::fromStdString(parts.gearbox.name));
  return names.join(QStringLiteral("  ·  "));
}

void draw_drive_line(SheetPage& page, const SheetContent& content, Axis axis) {
  const QString names = names_of(content.rig.axis(axis));
  const QRectF row = page.take(kTileHeight);
  if (!names.isEmpty()) {
    page.text(page.take(12).adjusted(kHeadline, 1, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, names,
              {7.5, false, page.theme().text});
  }
  page.skip(6);
  const Figure* settle = content.analysis.figure(settle_id(content.analysis, axis));
  const bool settles = settle != nullptr && settle->value;
  const bool is_unknown = settle == nullptr || begins_as("needs %1", settle->because);
  const QColor colour = axis_text_colour(page.theme(), axis);
  page.text({row.left(), row.top(), kHeadline, 14}, Qt::AlignLeft | Qt::AlignVCenter,
            axis_word(axis), {10, true, colour});
  page.text({row.left(), row.top() + 15, kHeadline, 20}, Qt::AlignLeft | Qt::AlignVCenter,
            settles      ? format_value(*settle->value, "s", "ms")
            : is_unknown ? Plots::tr("unknown")
                         : Plots::tr("never"),
            {settles ? 15.0 : 11.0, true, page.theme().text});
  page.text({row.left(), row.top() + 37, kHeadline, 12}, Qt::AlignLeft | Qt::AlignVCenter,
            !settles && !is_unknown                  ? Plots::tr("settles")
            : ends_at_camera(content.analysis, axis) ? Plots::tr("camera still")
                                                     : Plots::tr("move and settle"),
            {6.8, false, page.theme().quiet});
  const std::vector<Tile> tiles = tiles_of(content, axis);
  const double width =
      (row.width() - kHeadline - kTileGap * double(tiles.size() - 1)) / double(tiles.size());
  double x = row.left() + kHeadline;
  for (std::size_t i = 0; i < tiles.size(); ++i) {
    if (i > 0) {  // the shaft
      page.painter().setPen(QPen(axis_colour(page.theme(), axis), i > 3 ? 2.5 : 1.2));
      page.painter().drawLine(QLineF(x - kTileGap, row.center().y(), x, row.center().y()));
    }
    draw_tile(page, {x, row.top(), width, row.height()}, tiles[i]);
    x += width + kTileGap;
  }
}

}  // namespace

QString verdict_count(const std::vector<Finding>& findings) {
  QStringList parts;
  const auto add = [&](Verdict verdict, const char* words) {
    int count = 0;
    for (const Finding& finding : findings) count += finding.verdict == verdict;
    if (count > 0) {
      parts << verdict_symbol(verdict) + ' ' + Plots::tr(words).arg(count);
    }
  };
  add(Verdict::fails, QT_TRANSLATE_NOOP("Plots", "%1 fail"));
  add(Verdict::tight, QT_TRANSLATE_NOOP("Plots", "%1 tight"));
  add(Verdict::unknown, QT_TRANSLATE_NOOP("Plots", "%1 unknown"));
  add(Verdict::holds, QT_TRANSLATE_NOOP("Plots", "%1 hold"));
  return parts.join(QStringLiteral("   "));
}

void draw_title(SheetPage& page, const SheetContent& content) {
  const QString title = content.rig.title.empty() ? Plots::tr("Untitled rig")
                                                  : QString::fromStdString(content.rig.title);
  page.paragraph(title, {18, true, page.theme().text});
  page.paragraph(Plots::tr("Design sheet of a pan-tilt rig"), {8, false, page.theme().quiet});
  page.paragraph(verdict_count(content.analysis.findings), {11, true, page.theme().text});
  page.skip(2);
}

void draw_drive_lines(SheetPage& page, const SheetContent& content) {
  page.ensure(50 + kTileHeight);  // the heading with the first axis and its names
  page.heading(Plots::tr("Drive line of each axis"));
  for (const Axis axis : kAxes) draw_drive_line(page, content, axis);
  if (!content.analysis.swap.text.empty()) {
    page.paragraph(sentence_start(reason_text(content.analysis.swap.text)),
                   {7.5, false, page.theme().quiet});
  }
  const QString notes = QString::fromStdString(content.rig.notes).trimmed();
  if (!notes.isEmpty()) page.paragraph(notes, {7.5, false, page.theme().quiet});
}

}  // namespace gazewright
