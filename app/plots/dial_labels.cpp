#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/travel_dial.h"
#include "core/units/angle.h"

/// The texts of a travel dial. Where there is room each mark has its word and angle in a column at
/// its side, led to by a line; else only the ends have their angle; else all is in the note.
namespace gazewright {
namespace {

struct Label {
  QString text;
  QPointF from;  ///< of its line, at the mark
  double y = 0;  ///< of its middle
};

QString from_to(double centre_rad, double span_rad) {
  if (centre_rad == 0) return QStringLiteral("±") + dial_angle_text(span_rad / 2);
  return dial_angle_text(centre_rad - span_rad / 2) + QStringLiteral(" … ") +
         dial_angle_text(centre_rad + span_rad / 2);
}

double blind_rad(const Travel& travel) {
  return travel.usable_rad ? std::max(0.0, 2 * kPi - *travel.usable_rad) : 0;
}

/// Moves labels apart so that none overlaps and all lie within top and bottom.
void spread_out(std::vector<Label>& labels, double top, double bottom, double line) {
  std::ranges::sort(labels, {}, &Label::y);
  double least = top + line / 2;
  for (Label& label : labels) {
    label.y = std::max(label.y, least);
    least = label.y + line;
  }
  double most = bottom - line / 2;
  for (auto label = labels.rbegin(); label != labels.rend(); ++label) {
    label->y = std::min(label->y, most);
    most = label->y - line;
  }
}

/// The side with more room gets what lies in the middle.
std::array<std::vector<Label>, 2> columns_of(const DialLayout& layout, const DialPicture& picture) {
  std::array<std::vector<Label>, 2> columns;
  const auto add = [&](const QString& text, QPointF from) {
    const double off = from.x() - layout.centre.x();
    const bool middle = std::abs(off) < 0.12 * layout.radius;
    const std::size_t side =
        middle ? (columns[0].size() > columns[1].size() ? 1 : 0) : (off > 0 ? 1 : 0);
    columns[side].push_back({text, from, from.y()});
  };
  for (const TravelMark& mark : picture.marks) {
    add(mark_word(mark) + QChar(' ') + dial_angle_text(mark.angle_rad), layout.grip(mark));
  }
  if (blind_rad(picture.travel) > 1e-6) {
    add(Plots::tr("blind %1").arg(dial_angle_text(blind_rad(picture.travel))),
        layout.at(picture.travel.centre_rad + kPi, 0.62 * layout.radius));
  }
  return columns;
}

void draw_columns(QPainter& painter, const DialLayout& layout, const DialPicture& picture,
                  const Theme& theme) {
  const double line = QFontMetricsF(painter.font()).height();
  auto columns = columns_of(layout, picture);
  for (std::size_t side = 0; side < 2; ++side) {
    auto& labels = columns[side];
    const double top = layout.rect.top(), bottom = layout.title.top();
    const auto room = std::size_t(std::max(0.0, (bottom - top) / line));
    if (labels.size() > room) labels.resize(room);
    spread_out(labels, top, bottom, line);
    const double sign = side == 0 ? -1 : 1;
    const double edge = layout.centre.x() + sign * (layout.radius + 16);
    const double outer = side == 0 ? layout.rect.left() : layout.rect.right();
    for (const Label& label : labels) {
      painter.setPen(QPen(blended(theme.quiet, theme.card, 0.6), 0.8));
      painter.drawPolyline(QPolygonF{label.from, {edge, label.y}, {edge + sign * 4, label.y}});
      painter.setPen(theme.text);
      const QRectF box(std::min(edge + sign * 6, outer), label.y - line / 2,
                       std::abs(outer - edge - sign * 6), line);
      painter.drawText(box, int(side == 0 ? Qt::AlignRight : Qt::AlignLeft) | int(Qt::AlignVCenter),
                       label.text);
    }
  }
}

void draw_angles(QPainter& painter, const DialLayout& layout, const DialPicture& picture,
                 const Theme& theme) {
  painter.setPen(theme.text);
  for (const DialLabel& label : angle_labels(layout, QFontMetricsF(painter.font()), picture)) {
    painter.drawText(label.box, Qt::AlignCenter, label.text);
  }
}

/// Whether the blind sector's angle fits into it; drawn there if so.
bool draw_blind(QPainter& painter, const DialLayout& layout, const DialPicture& picture,
                const Theme& theme) {
  const double blind = blind_rad(picture.travel), r = 0.6 * layout.radius;
  const QFontMetricsF metrics(painter.font());
  const QString text = dial_angle_text(blind);
  const double width = metrics.horizontalAdvance(text) + 4, height = metrics.height() - 2;
  const double chord = 2 * r * std::sin(std::min(blind, kPi) / 2);
  if (blind <= 0 || chord < std::hypot(width, height)) return false;
  const QPointF middle = layout.at(picture.travel.centre_rad + kPi, r);
  const QRectF box(middle.x() - width / 2, middle.y() - height / 2, width, height);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.card);
  painter.drawRoundedRect(box, 3, 3);
  painter.setPen(theme.quiet);
  painter.drawText(box, Qt::AlignCenter, text);
  return true;
}

/// What the note may say, the fullest first.
QStringList notes_of(const Travel& travel, bool with_blind) {
  if (!travel.usable_rad) return {Plots::tr("travel unknown"), Plots::tr("unknown")};
  if (std::isinf(*travel.usable_rad)) return {Plots::tr("no limit")};
  const QString span = from_to(travel.centre_rad, *travel.usable_rad);
  const double turns = *travel.usable_rad / (2 * kPi);
  const QString ends = dial_angle_text(*travel.usable_rad);
  if (turns > 1) {
    const QString wound = Plots::tr("%1 turns").arg(number_text(turns));
    return {span + QStringLiteral(", ") + wound, wound};
  }
  if (!with_blind) return {span, ends};
  return {
      span + QStringLiteral(", ") + Plots::tr("blind %1").arg(dial_angle_text(blind_rad(travel))),
      span, ends};
}

QStringList titles_of(const DialLayout& layout, const DialPicture& picture) {
  const TravelMark* active = picture.active ? picture.mark(*picture.active) : nullptr;
  if (!active) return {Plots::tr("%1 travel").arg(axis_word(layout.axis)), axis_word(layout.axis)};
  const QString angle = QChar(' ') + dial_angle_text(active->angle_rad, 4);
  return {mark_long_word(*active) + angle, mark_word(*active) + angle};
}

/// The first of the texts that fits, else the last one with an ellipsis.
void draw_line(QPainter& painter, const QRectF& row, const QColor& colour,
               const QStringList& texts) {
  const QFontMetricsF metrics(painter.font());
  const auto fits = [&](const QString& text) {
    return metrics.horizontalAdvance(text) <= row.width();
  };
  const auto text = std::ranges::find_if(texts, fits);
  painter.setPen(colour);
  painter.drawText(
      row, Qt::AlignCenter,
      text != texts.end() ? *text : metrics.elidedText(texts.back(), Qt::ElideRight, row.width()));
}

}  // namespace

void paint_dial_labels(QPainter& painter, const DialLayout& layout, const DialPicture& picture,
                       const Theme& theme) {
  bool blind_is_said = false;
  if (layout.radius > 12) {
    const bool words = layout.labels == DialLayout::Labels::words;
    if (words) draw_columns(painter, layout, picture, theme);
    if (layout.labels == DialLayout::Labels::angles) draw_angles(painter, layout, picture, theme);
    blind_is_said = words || draw_blind(painter, layout, picture, theme);
  }
  draw_line(painter, layout.title, axis_text_colour(theme, layout.axis),
            titles_of(layout, picture));
  draw_line(painter, layout.note, theme.quiet, notes_of(picture.travel, !blind_is_said));
}

QString travel_summary(const Travel& travel) {
  QStringList parts;
  const auto add = [&](const std::optional<double>& span, const QString& given,
                       const QString& none) {
    if (!span) return;
    parts << (std::isinf(*span) ? none : given.arg(from_to(travel.centre_rad, *span)));
  };
  add(travel.stops_rad, Plots::tr("stops %1"), Plots::tr("no stops"));
  add(travel.soft_rad, Plots::tr("soft limits %1"), {});
  add(travel.cable_rad, Plots::tr("cable %1"), Plots::tr("no cable limit"));
  parts.removeAll(QString());
  if (const double blind = blind_rad(travel); blind > 0) {
    parts << Plots::tr("blind %1").arg(dial_angle_text(blind));
  }
  return parts.isEmpty() ? Plots::tr("travel unknown: stops or cable are missing")
                         : parts.join(QStringLiteral(", "));
}

QString dial_summary(const DialPicture& picture) {
  QStringList parts{travel_summary(picture.travel)};
  const TravelMark* stop = picture.mark({MarkKind::hard_stop, 1, 0, {}});
  const TravelMark* bumper = picture.mark({MarkKind::bumper, 1, 0, {}});
  if (stop && bumper) {
    parts << Plots::tr("bumper %1 beyond the stops")
                 .arg(dial_angle_text(bumper->angle_rad - stop->angle_rad));
  }
  for (const MarkKind kind : {MarkKind::centre, MarkKind::home, MarkKind::park}) {
    if (const TravelMark* mark = picture.mark({kind, 0, 0, {}})) {
      parts << mark_word(*mark) + QChar(' ') + dial_angle_text(mark->angle_rad);
    }
  }
  return parts.join(QStringLiteral(", "));
}

}  // namespace gazewright
