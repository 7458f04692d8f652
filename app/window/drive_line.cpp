#include "app/window/drive_line.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plots/charts.h"
#include "app/plots/doubt_text.h"
#include "app/window/drive_line_text.h"
#include "app/window/ratio_scale.h"
#include "app/window/special_tiles.h"

namespace gazewright {
namespace {

constexpr const char* kParts[] = {"drive", "motor", "gearbox", "stops", "cable", "load"};
constexpr int kGap = 14;
constexpr std::size_t kFirstShaft = 2;  ///< from motor to gearbox; wires lie before it

/// A shaft of one strength is as thick as the cube root of its torque.
/// Source: torsion of a round bar, τ = 16·T/(π·d³).
double shaft_px(double torque_Nm) { return std::clamp(5.3 * std::cbrt(torque_Nm), 2.0, 18.0); }

/// How much room a tile gets, from what it has to say.
int stretch_of(const QString& part) {
  if (part.endsWith(QStringLiteral("gearbox"))) return 17;
  if (part.endsWith(QStringLiteral("stops"))) return 12;
  if (part.endsWith(QStringLiteral("cable")) || part.endsWith(QStringLiteral("load"))) return 11;
  return 9;
}

}  // namespace

DriveLine::DriveLine(Axis axis, QWidget* parent)
    : QWidget(parent), axis_(axis), theme_(theme_for(ThemeKind::light)) {
  const QString at = QString::fromUtf8(name_of(axis)) + QStringLiteral(".");
  headline_ = new HeadlineTile(axis);
  tiles_.push_back(new Tile(axis, QStringLiteral("supply")));
  tiles_.back()->setObjectName(at + QStringLiteral("supply tile"));
  for (const char* part : kParts) {
    const QString path = at + QLatin1String(part);
    if (path.endsWith(QStringLiteral("gearbox"))) {
      gearbox_ = new GearboxTile(axis, path);
      tiles_.push_back(gearbox_);
    } else {
      tiles_.push_back(new Tile(axis, path));
    }
  }
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(6, 5, 8, 5);
  layout->setSpacing(kGap);
  layout->addWidget(headline_);
  for (Tile* tile : tiles_) layout->addWidget(tile, stretch_of(tile->part()));
  std::vector<Tile*> all = tiles_;
  all.push_back(headline_);
  for (Tile* tile : all) {
    tile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    tile->installEventFilter(this);
    connect(tile, &Tile::clicked, this, [this, tile] { emit partChosen(tile->part()); });
  }
  headline_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAttribute(Qt::WA_OpaquePaintEvent);
}

void DriveLine::setResults(const Rig& rig, const Analysis& analysis) {
  headline_->setHeadline(headline(analysis, axis_));
  for (const TilePart& entry : tile_texts(rig, analysis, axis_)) {
    if (Tile* at = tile(entry.part)) at->setTileText(entry.text);
  }
  setRatio(rig);
  const std::string name = name_of(axis_);
  const double out_Nm = analysis.value(name + ".output.torque_stall").value_or(0);
  const double ratio = rig.axis(axis_).gearbox.ratio.si.value_or(1);
  const std::array torque_Nm{out_Nm / ratio, out_Nm};
  if (torque_Nm == torque_Nm_) return;
  torque_Nm_ = torque_Nm;
  for (std::size_t i = kFirstShaft; i + 1 < tiles_.size(); ++i) {
    const QRect left = tiles_[i]->geometry(), right = tiles_[i + 1]->geometry();
    update(left.united(right).adjusted(left.width() - 1, 0, 1 - right.width(), 0));
  }
}

void DriveLine::setDoubts(const Doubts& doubts, const Analysis& analysis) {
  Headline words = headline(analysis, axis_);
  words.doubt = plus_minus(doubts, analysis, settle_id(analysis, axis_));
  headline_->setHeadline(words);
}

void DriveLine::setRatio(const Rig& rig) {
  gearbox_->scale()->setRatio(rig.axis(axis_).gearbox.ratio.si);
}

void DriveLine::setSweep(const RatioSweep& sweep) {
  gearbox_->scale()->setBand(sweep.band_least, sweep.band_most, sweep.best_time_ratio);
}

void DriveLine::setRatioEnds(const RatioEnds& ends) {
  const auto word = [](const std::optional<MoveLimit>& limit) {
    return limit ? limit_word(*limit) : QString();
  };
  gearbox_->scale()->setEnds(word(ends.below), word(ends.above));
}

void DriveLine::setSelected(const QString& part) {
  headline_->setChecked(part == headline_->part());
  for (Tile* tile : tiles_) tile->setChecked(tile->part() == part);
}

void DriveLine::setTheme(const Theme& theme) {
  theme_ = theme;
  headline_->setTheme(theme);
  for (Tile* tile : tiles_) tile->setTheme(theme);
  gearbox_->scale()->setTheme(theme);
  ground_.forget();
  update();
}

void DriveLine::setDimmed(bool dimmed) {
  headline_->setDimmed(dimmed);
  for (Tile* tile : tiles_) tile->setDimmed(dimmed);
}

RatioScale* DriveLine::ratioScale() const { return gearbox_->scale(); }

Tile* DriveLine::tile(const QString& part) const {
  for (Tile* tile : tiles_) {
    if (tile->part() == part) return tile;
  }
  return nullptr;
}

void DriveLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.drawPixmap(0, 0, ground_.of(*this, theme_.surface, [this](QPainter& ground) {
    ground.setRenderHint(QPainter::Antialiasing);
    ground.setPen(QPen(theme_.border, 1));
    ground.setBrush(theme_.card);
    ground.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
  }));
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor colour = axis_colour(theme_, axis_);
  for (std::size_t i = 0; i + 1 < tiles_.size(); ++i) {
    const QRect left = tiles_[i]->geometry(), right = tiles_[i + 1]->geometry();
    const double y = left.center().y();
    QPen pen(colour, 2, Qt::DotLine, Qt::FlatCap);
    if (i >= kFirstShaft)
      pen =
          QPen(colour, shaft_px(torque_Nm_[i == kFirstShaft ? 0 : 1]), Qt::SolidLine, Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(QPointF(left.right(), y), QPointF(right.left() + 1, y));
  }
}

bool DriveLine::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const auto [on, back] = isRightToLeft() ? std::pair(Qt::Key_Left, Qt::Key_Right)
                                            : std::pair(Qt::Key_Right, Qt::Key_Left);
    const auto at = std::find(tiles_.begin(), tiles_.end(), watched);
    if (key == on && at == tiles_.end()) {
      tiles_.front()->setFocus();
      return true;
    }
    if (key == on && at + 1 != tiles_.end()) {
      (*(at + 1))->setFocus();
      return true;
    }
    if (key == back && at != tiles_.end()) {
      (at == tiles_.begin() ? static_cast<Tile*>(headline_) : *(at - 1))->setFocus();
      return true;
    }
    if ((key == Qt::Key_Return || key == Qt::Key_Enter)) {
      static_cast<QAbstractButton*>(watched)->click();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace gazewright
