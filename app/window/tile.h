#pragma once

#include <QAbstractButton>
#include <QStringList>
#include <optional>

#include "app/plots/kept_picture.h"
#include "app/plots/theme.h"

namespace gazewright {

/// What a tile says. Pure text, made by drive_line_text.
struct TileText {
  QString title;   ///< "Motor"
  QString figure;  ///< the one that matters most
  QStringList lines;
  std::optional<Verdict> worst;  ///< of the findings that belong to this part
  QString tip;
  bool operator==(const TileText&) const = default;
};

/// A part of a drive line: title, one bold figure and up to two lines. A button, so that focus,
/// keys and screen readers work as everywhere.
class Tile : public QAbstractButton {
  Q_OBJECT
 public:
  Tile(Axis axis, const QString& part, QWidget* parent = nullptr);

  const QString& part() const { return part_; }
  void setTileText(const TileText& text);
  const TileText& tileText() const { return text_; }
  void setTheme(const Theme& theme);
  void setDimmed(bool dimmed);  ///< the figures are behind the rig
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {60, sizeHint().height()}; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  virtual void paintTile(QPainter& painter);
  void paintFrame(QPainter& painter);
  void paintAgain();  ///< after a change of what it says
  QFont smallFont() const;
  QFont figureFont() const;

  Axis axis_;
  Theme theme_;
  TileText text_;
  bool dimmed_ = false;

 private:
  QString part_;
  KeptPicture picture_;  ///< neither chosen nor focused
};

}  // namespace gazewright
