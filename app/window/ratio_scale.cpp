#include "app/window/ratio_scale.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/window/document.h"

namespace gazewright {
namespace {

constexpr double kMargin = 9, kHandle = 8;

}  // namespace

double tidy_ratio(double ratio) {
  const double whole = std::round(ratio);
  if (whole >= 3 && std::abs(ratio / whole - 1) < 0.015) return whole;
  const double unit = std::pow(10, std::floor(std::log10(ratio)) - 2);
  return std::round(ratio / unit) * unit;
}

RatioScale::RatioScale(Axis axis, QWidget* parent)
    : QWidget(parent), axis_(axis), theme_(theme_for(ThemeKind::light)) {
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(" ratio scale"));
  setLayoutDirection(Qt::LeftToRight);  // low ratios are at the left in every language
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::SizeHorCursor);
  setAccessibleName(tr("%1 gearbox ratio").arg(axis_word(axis)));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setStock({});
}

void RatioScale::setRatio(std::optional<double> ratio) {
  if (ratio == ratio_) return;
  ratio_ = ratio;
  describe();
  update();
}

void RatioScale::setEnds(const QString& below, const QString& above) {
  below_ = below;
  above_ = above;
  describe();
  update();
}

void RatioScale::setStock(std::vector<double> ratios) {
  has_shelf_ = !ratios.empty();
  stock_ = std::move(ratios);
  if (!has_shelf_) stock_.assign(stock_ratios().begin(), stock_ratios().end());
  describe();
  update();
}

/// The same in words, for tool tip and screen reader.
void RatioScale::describe() {
  QStringList words{ratio_ ? tr("%1 to 1").arg(number_text(*ratio_)) : tr("missing")};
  if (band_most_ > band_least_)
    words << tr("within 5 % of the quickest move from %1 to %2")
                 .arg(number_text(band_least_), number_text(band_most_));
  if (!below_.isEmpty()) words << tr("lower ratios run out of %1").arg(below_);
  if (!above_.isEmpty()) words << tr("higher ratios run out of %1").arg(above_);
  const QString text = words.join(QStringLiteral("; "));
  const QString ticks = has_shelf_ ? tr("Ticks: gearboxes on the shelf.")
                                   : tr("Ticks: ratios that are usually sold.");
  setAccessibleDescription(text);
  setToolTip(QStringLiteral("<p>%1.</p><p>%2 %3</p>")
                 .arg(text.toHtmlEscaped(),
                      tr("Drag, or use the arrow and Page keys; Home takes the quickest, a digit "
                         "types.")
                          .toHtmlEscaped(),
                      ticks.toHtmlEscaped()));
}

void RatioScale::setBand(double least, double most, std::optional<double> best) {
  band_least_ = least;
  band_most_ = most;
  best_ = best;
  describe();
  update();
}

void RatioScale::setTheme(const Theme& theme) {
  theme_ = theme;
  update();
}

QSize RatioScale::sizeHint() const { return {150, 24 + fontMetrics().height()}; }
double RatioScale::lineY() const { return 15; }

double RatioScale::xOf(double ratio) const {
  const double part =
      std::log(std::clamp(ratio, kLeast, kMost) / kLeast) / std::log(kMost / kLeast);
  return kMargin + part * (width() - 2 * kMargin);
}

double RatioScale::ratioAt(double x) const {
  const double part = std::clamp((x - kMargin) / (width() - 2 * kMargin), 0.0, 1.0);
  return kLeast * std::exp(part * std::log(kMost / kLeast));
}

QPointF RatioScale::handlePoint() const { return {xOf(ratio_.value_or(kLeast)), lineY() - 6}; }

void RatioScale::moveTo(double ratio, int dragId) {
  const double tidy = std::clamp(tidy_ratio(ratio), kLeast, kMost);
  if (ratio_ && *ratio_ == tidy) return;
  setRatio(tidy);
  emit ratioMoved(tidy, dragId);
}

void RatioScale::step(double factor) {
  if (key_id_ < 0) key_id_ = Document::newDragId();
  const double from = ratio_.value_or(10);
  double to = tidy_ratio(from * factor);
  if (to == from) to = from + (factor > 1 ? 1 : -1) * std::max(0.01, std::abs(from * 0.01));
  // Whole numbers attract: a fine step must get away from one.
  if (tidy_ratio(to) == from) to = factor > 1 ? from * 1.02 : from / 1.02;
  moveTo(to, key_id_);
}

void RatioScale::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  drag_id_ = Document::newDragId();
  key_id_ = -1;
  emit dragStarted();
  if (std::abs(event->position().x() - handlePoint().x()) > 12) {
    moveTo(ratioAt(event->position().x()), drag_id_);
  }
}

void RatioScale::mouseMoveEvent(QMouseEvent* event) {
  if (drag_id_ >= 0) moveTo(ratioAt(event->position().x()), drag_id_);
}

void RatioScale::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || drag_id_ < 0) return;
  drag_id_ = -1;
  emit dragEnded();
}

void RatioScale::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Up:
      return step(event->modifiers() & Qt::ShiftModifier ? 1.005 : 1.03);
    case Qt::Key_Left:
    case Qt::Key_Down:
      return step(1 / (event->modifiers() & Qt::ShiftModifier ? 1.005 : 1.03));
    case Qt::Key_PageUp:
      return step(1.25);
    case Qt::Key_PageDown:
      return step(1 / 1.25);
    case Qt::Key_Home:
    case Qt::Key_End:
      if (best_) moveTo(*best_, -1);
      return;
    default:
      if (!event->text().isEmpty() && event->text().front().isDigit()) {
        emit typed(event->text());
        return;
      }
      QWidget::keyPressEvent(event);
  }
}

void RatioScale::wheelEvent(QWheelEvent* event) {
  if (!hasFocus() || event->angleDelta().y() == 0) {
    event->ignore();
    return;
  }
  step(event->angleDelta().y() > 0 ? 1.03 : 1 / 1.03);
  event->accept();
}

void RatioScale::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setLayoutDirection(Qt::LeftToRight);
  painter.setRenderHint(QPainter::Antialiasing);
  paintScale(painter);
  if (ratio_) paintHandle(painter);
  if (hasFocus()) {
    painter.setPen(QPen(theme_.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
  }
}

void RatioScale::paintScale(QPainter& painter) const {
  const double y = lineY();
  if (band_most_ > band_least_) {
    const double left = xOf(band_least_), right = xOf(band_most_);
    painter.setPen(QPen(theme_.good, 1));
    painter.setBrush(theme_.band);
    painter.drawRoundedRect(QRectF(left, y - 5, std::max(3.0, right - left), 10), 4, 4);
  }
  painter.setPen(QPen(theme_.control, 1.5));
  painter.drawLine(QPointF(kMargin, y), QPointF(width() - kMargin, y));
  painter.setPen(QPen(theme_.control, 1));
  for (double stock : stock_)
    painter.drawLine(QPointF(xOf(stock), y + 2), QPointF(xOf(stock), y + 7));

  QFont small = font();
  small.setPointSizeF(font().pointSizeF() * 0.85);
  painter.setFont(small);
  painter.setPen(theme_.quiet);
  const QRectF words(3, y + 8, width() - 6, height() - y - 9);
  const QFontMetrics metrics(small);
  const auto [below, above] = endWords(metrics, static_cast<int>(words.width()) - 6);
  painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, below);
  painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter, above);
}

/// What runs out below and above. They share the room: only where both do not fit into it whole,
/// the longer one is said in brief, then the other one too.
std::pair<QString, QString> RatioScale::endWords(const QFontMetrics& metrics, int room) const {
  QString below = below_.isEmpty() ? tr("torque runs out") : tr("‹ %1 runs out").arg(below_);
  QString above = above_.isEmpty() ? tr("speed runs out") : tr("%1 runs out ›").arg(above_);
  const QString brief_below = below_.isEmpty() ? below : tr("‹ %1").arg(below_);
  const QString brief_above = above_.isEmpty() ? above : tr("%1 ›").arg(above_);
  const auto wide = [&metrics](const QString& text) { return metrics.horizontalAdvance(text); };
  const auto fits = [&] { return wide(below) + wide(above) <= room; };
  const bool below_first = wide(below) >= wide(above);
  if (!fits()) (below_first ? below : above) = below_first ? brief_below : brief_above;
  if (!fits()) (below_first ? above : below) = below_first ? brief_above : brief_below;
  if (fits()) return {below, above};
  return {metrics.elidedText(below, Qt::ElideRight, room / 2),
          metrics.elidedText(above, Qt::ElideRight, room / 2)};
}

void RatioScale::paintHandle(QPainter& painter) const {
  const double x = handlePoint().x(), y = lineY();
  QPainterPath handle;
  handle.moveTo(x, y + 1);
  handle.lineTo(x - kHandle * 0.8, y - kHandle * 0.7);
  handle.lineTo(x - kHandle * 0.8, y - kHandle * 1.5);
  handle.lineTo(x + kHandle * 0.8, y - kHandle * 1.5);
  handle.lineTo(x + kHandle * 0.8, y - kHandle * 0.7);
  handle.closeSubpath();
  painter.setPen(QPen(theme_.card, 1));
  painter.setBrush(axis_colour(theme_, axis_));
  painter.drawPath(handle);
}

}  // namespace gazewright
