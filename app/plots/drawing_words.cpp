#include <QStringList>

#include "app/plots/drawing_handles.h"
#include "app/plots/format.h"
#include "app/plots/outline.h"
#include "app/plots/text.h"
#include "core/analysis/counterweight.h"
#include "core/rig/fields.h"

/// Names, values and marks of the drawing's handles.
namespace gazewright {
namespace {

QString length_text(const Quantity& quantity) { return format_value(quantity.si, "m", "mm", 5); }

QString body_word(const Rig& rig, const BodyRef& ref) {
  const QString name = QString::fromStdString(body_of(rig, ref).name);
  return name.isEmpty() ? Plots::tr("body %1").arg(ref.index + 1) : name;
}

QString axis_word_of(const std::string& path) {
  if (path.ends_with("[2]")) return Plots::tr("tilt axis, height");
  return path.ends_with("[1]") ? Plots::tr("tilt axis, to the left")
                               : Plots::tr("tilt axis, forward");
}

const Quantity* quantity_of(const Rig& rig, const std::string& path) {
  return find_quantity(rig, path);
}

}  // namespace

QString handle_name(const Rig& rig, const DrawnView& drawn, const DrawingHandle& handle) {
  if (!handle.has_body()) return axis_word_of(handle_field(rig, drawn, handle));
  const QString body = body_word(rig, handle.body);
  return handle.kind == HandleKind::body ? Plots::tr("%1, place").arg(body)
                                         : Plots::tr("%1, diameter").arg(body);
}

QString handle_value(const Rig& rig, const DrawnView& drawn, const DrawingHandle& handle) {
  if (handle.kind == HandleKind::body) {
    const auto& centre = body_of(rig, handle.body).centre_m;
    return QStringLiteral("x %1, y %2, z %3")
        .arg(length_text(centre[0]), length_text(centre[1]), length_text(centre[2]));
  }
  const Quantity* value = quantity_of(rig, handle_field(rig, drawn, handle));
  return value ? length_text(*value) : QString();
}

QStringList counterweight_lines(const Rig& rig, const BodyRef& ref) {
  if (!is_counterweight(body_of(rig, ref))) return {};
  const CounterweightEffect effect = counterweight_effect(rig, ref.on_tilt, ref.index);
  QStringList lines;
  if (effect.left_Nm) {
    lines << Plots::tr("gravity torque left %1").arg(format_value(*effect.left_Nm, "N.m", "mN.m"));
  }
  if (!effect.cancelling_kg) {
    lines << Plots::tr("no mass here would cancel");
    return lines;
  }
  const QString mass = format_value(*effect.cancelling_kg, "kg", "g", 4);
  lines << (effect.then_left_Nm ? Plots::tr("%1 here would leave %2")
                                      .arg(mass, format_value(*effect.then_left_Nm, "N.m", "mN.m"))
                                : Plots::tr("%1 here would cancel").arg(mass));
  return lines;
}

void paint_handle(QPainter& painter, const DrawingHandle& handle, const Theme& theme, bool active,
                  bool focused) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(handle.at);
  const QColor colour = !handle.has_body() || handle.body.on_tilt ? theme.tilt : theme.pan;
  if (focused) {
    painter.setPen(QPen(theme.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(0, 0), kHandleReach - 1, kHandleReach - 1);
  }
  painter.setPen(QPen(colour, active ? 2 : 1.3));
  painter.setBrush(active ? colour : theme.card);
  const double r = active ? 5 : 4;
  switch (handle.kind) {
    case HandleKind::body:
      painter.drawRect(QRectF(-r + 0.5, -r + 0.5, 2 * r - 1, 2 * r - 1));
      break;
    case HandleKind::diameter:
      painter.drawPolygon(QPolygonF{{{-r - 1, 0}, {0, -r - 1}, {r + 1, 0}, {0, r + 1}}});
      break;
    case HandleKind::axis_up:
      painter.drawPolygon(QPolygonF{{{0, -r - 3}, {r, -1}, {-r, -1}}});
      painter.drawPolygon(QPolygonF{{{0, r + 3}, {r, 1}, {-r, 1}}});
      break;
    case HandleKind::axis_across:
      painter.drawPolygon(QPolygonF{{{-r - 3, 0}, {-1, r}, {-1, -r}}});
      painter.drawPolygon(QPolygonF{{{r + 3, 0}, {1, r}, {1, -r}}});
      break;
  }
  painter.restore();
}

}  // namespace gazewright
