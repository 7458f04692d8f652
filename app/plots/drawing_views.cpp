#include <algorithm>

#include "app/plots/drawing.h"

namespace gazewright {
namespace {

constexpr double kLeastWide = 215, kLeastTall = 180;  // of one view in which all can be told apart
constexpr double kGap = 6;

/// Three places beside each other.
std::array<QRectF, 3> in_a_row(const QRectF& page) {
  const double wide = (page.width() - 2 * kGap) / 3;
  std::array<QRectF, 3> places;
  for (std::size_t i = 0; i < 3; ++i) {
    places[i] = {page.left() + double(i) * (wide + kGap), page.top(), wide, page.height()};
  }
  return places;
}

/// Side and front beside each other, top below the side, as it folds down.
std::array<QRectF, 3> two_by_two(const QRectF& page) {
  const double wide = (page.width() - kGap) / 2, tall = (page.height() - kGap) / 2;
  return {QRectF(page.left(), page.top(), wide, tall),
          QRectF(page.right() - wide, page.top(), wide, tall),
          QRectF(page.left(), page.bottom() - tall, wide, tall)};
}

bool can_be_read(const std::array<QRectF, 3>& places) {
  return std::ranges::all_of(places, [](const QRectF& place) {
    return place.width() >= kLeastWide && place.height() >= kLeastTall;
  });
}

std::vector<DrawnView> drawn_in(const std::array<QRectF, 3>& places, const Rig& rig, double pan_rad,
                                double tilt_rad) {
  constexpr std::array<View, 3> kViews{View::side, View::front, View::top};
  std::vector<DrawnView> views;
  views.reserve(kViews.size());
  for (std::size_t i = 0; i < kViews.size(); ++i) {
    views.push_back(
        {places[i], drawing_projection(places[i], rig, kViews[i], pan_rad, tilt_rad), true});
  }
  double scale = kInfinity;  // that suits all
  for (const DrawnView& view : views) scale = std::min(scale, view.projection.px_per_m);
  for (DrawnView& view : views) view.projection = scaled_to(view.projection, view.rect, scale);
  return views;
}

}  // namespace

bool has_room_for_all_views(const QSizeF& page) {
  const QRectF place(QPointF(0, 0), page);
  return can_be_read(in_a_row(place)) || can_be_read(two_by_two(place));
}

std::vector<DrawnView> all_views(const QRectF& page, const Rig& rig, double pan_rad,
                                 double tilt_rad) {
  std::vector<DrawnView> row = drawn_in(in_a_row(page), rig, pan_rad, tilt_rad);
  std::vector<DrawnView> square = drawn_in(two_by_two(page), rig, pan_rad, tilt_rad);
  const bool prefers_row = row[0].projection.px_per_m >= square[0].projection.px_per_m;
  return prefers_row ? row : square;
}

DrawnView one_view(const QRectF& page, const Rig& rig, View view, double pan_rad, double tilt_rad) {
  return {page, drawing_projection(page, rig, view, pan_rad, tilt_rad), false};
}

}  // namespace gazewright
