#pragma once

#include "app/window/drive_line_text.h"
#include "app/window/tile.h"

namespace gazewright {

class RatioScale;

/// The axis' own headline: time to move and settle, gap in pixels. Leads to the task's card.
class HeadlineTile : public Tile {
  Q_OBJECT
 public:
  explicit HeadlineTile(Axis axis, QWidget* parent = nullptr);
  void setHeadline(const Headline& words);
  QSize sizeHint() const override;

 protected:
  void paintTile(QPainter& painter) override;

 private:
  Headline words_;
};

/// The gearbox' tile: ratio, what comes out, and the scale to drag.
class GearboxTile : public Tile {
  Q_OBJECT
 public:
  GearboxTile(Axis axis, const QString& part, QWidget* parent = nullptr);
  RatioScale* scale() const { return scale_; }
  QSize sizeHint() const override;

 protected:
  void paintTile(QPainter& painter) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  RatioScale* scale_;
};

}  // namespace gazewright
