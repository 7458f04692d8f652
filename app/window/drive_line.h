#pragma once

#include <QWidget>
#include <array>
#include <vector>

#include "app/plots/kept_picture.h"
#include "app/plots/theme.h"
#include "core/analysis/doubts.h"
#include "core/analysis/ratio_ends.h"
#include "core/analysis/sweep.h"

namespace gazewright {

class GearboxTile;
class HeadlineTile;
class RatioScale;
class Tile;

/// The row of an axis' parts, power flowing from supply to load along a shaft whose thickness
/// follows the torque. Tab goes from tile to tile, and so do Left and Right.
class DriveLine : public QWidget {
  Q_OBJECT
 public:
  explicit DriveLine(Axis axis, QWidget* parent = nullptr);

  void setResults(const Rig& rig, const Analysis& analysis);
  /// How far the headline can be trusted, until the next results.
  void setDoubts(const Doubts& doubts, const Analysis& analysis);
  void setSweep(const RatioSweep& sweep);
  /// What limits the move below the flat band and above it.
  void setRatioEnds(const RatioEnds& ends);
  void setRatio(const Rig& rig);  ///< at once, before the analysis is in
  void setSelected(const QString& part);
  void setTheme(const Theme& theme);
  void setDimmed(bool dimmed);
  RatioScale* ratioScale() const;
  Tile* tile(const QString& part) const;  ///< null where there is none

 signals:
  void partChosen(const QString& part);

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  Axis axis_;
  Theme theme_;
  HeadlineTile* headline_;
  GearboxTile* gearbox_;
  std::vector<Tile*> tiles_;           ///< supply to load
  std::array<double, 2> torque_Nm_{};  ///< on the motor's shaft, at the output
  KeptPicture ground_;
};

}  // namespace gazewright
