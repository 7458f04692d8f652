#include "app/plots/reach_grid.h"

#include <algorithm>

namespace gazewright {

std::vector<ReachPatch> patches_of(const ReachMap& map) {
  std::vector<ReachPatch> done, open;
  for (std::size_t k = 0; k < map.tilt_rad.size(); ++k) {
    std::vector<ReachPatch> row;
    for (std::size_t i = 0; i < map.pan_rad.size(); ++i) {
      if (row.empty() || row.back().limit != map.at(i, k))
        row.push_back({map.at(i, k), i, i, k, k});
      row.back().pan_last = i;
    }
    for (ReachPatch& run : row) {
      const auto below = std::ranges::find_if(open, [&](const ReachPatch& patch) {
        return patch.limit == run.limit && patch.pan_first == run.pan_first &&
               patch.pan_last == run.pan_last;
      });
      if (below == open.end()) continue;
      run.tilt_first = below->tilt_first;
      open.erase(below);
    }
    done.insert(done.end(), open.begin(), open.end());
    open = std::move(row);
  }
  done.insert(done.end(), open.begin(), open.end());
  return done;
}

ReachGrid::ReachGrid(const QRectF& inside, const ReachMap& map)
    : inside_(inside),
      pan_{map.pan_rad.front(), map.pan_rad.back()},
      tilt_{map.tilt_rad.front(), map.tilt_rad.back()},
      half_rad_((map.pan_rad[1] - map.pan_rad[0]) / 2) {}

double ReachGrid::x(double pan_rad) const {
  const double part = (pan_rad - pan_.lo) / (pan_.hi - pan_.lo);
  return inside_.left() + std::clamp(part, 0.0, 1.0) * inside_.width();
}

double ReachGrid::y(double tilt_rad) const {
  const double part = (tilt_rad - tilt_.lo) / (tilt_.hi - tilt_.lo);
  return inside_.bottom() - std::clamp(part, 0.0, 1.0) * inside_.height();
}

QRectF ReachGrid::window(const PoseWindow& w) const {
  return {QPointF(x(w.pan_least_rad), y(w.tilt_most_rad)),
          QPointF(x(w.pan_most_rad), y(w.tilt_least_rad))};
}

QRectF ReachGrid::patch(const ReachMap& map, const ReachPatch& p) const {
  return {
      QPointF(x(map.pan_rad[p.pan_first] - half_rad_), y(map.tilt_rad[p.tilt_last] + half_rad_)),
      QPointF(x(map.pan_rad[p.pan_last] + half_rad_), y(map.tilt_rad[p.tilt_first] - half_rad_))};
}

double ReachGrid::pan_rad(double x) const {
  return pan_.lo + (x - inside_.left()) / inside_.width() * (pan_.hi - pan_.lo);
}

double ReachGrid::tilt_rad(double y) const {
  return tilt_.lo + (inside_.bottom() - y) / inside_.height() * (tilt_.hi - tilt_.lo);
}

}  // namespace gazewright
