#include "core/travel/marks.h"

#include <algorithm>
#include <cmath>

#include "core/units/angle.h"

namespace gazewright {
namespace {

constexpr double kLength_m = 1e-5;                    // the step of lengths that are set
constexpr double kLeastTravel_rad = 2 * kDegree_rad;  // so that there are stops left to drag

bool is_finite(const std::optional<double>& value) { return value && std::isfinite(*value); }
double tidy(double value, double step) { return std::round(value / step) * step; }
double tidy_angle(double rad) {
  return std::round(rad / kDegree_rad * 100) / 100 * kDegree_rad;  // exact in degrees
}

std::string stop_field(const Stops& stops) {
  return stops.kind.value == "window" ? "stops.window" : "stops.post_width";
}

void add_both(std::vector<TravelMark>& marks, MarkKind mark, double centre_rad, double half_rad,
              const std::string& field, bool moves = true) {
  for (const int side : {-1, 1}) {
    marks.push_back({mark, side, centre_rad + side * half_rad, field, moves});
  }
}

/// The value in [least, most] at which a span that grows (or shrinks) with it comes nearest to
/// `wanted_rad`, by halving: right for whatever geometry makes the span.
template <class Span>
double halved(double least, double most, double wanted_rad, bool grows, const Span& span_at) {
  for (int i = 0; i < 80; ++i) {
    const double middle = (least + most) / 2;
    const std::optional<double> span = span_at(middle);
    const bool too_little = span.value_or(-kInfinity) < wanted_rad;  // empty: nothing is left
    (too_little == grows ? least : most) = middle;
  }
  return (least + most) / 2;
}

MarkField for_stops(const AxisParts& parts, double wanted_rad) {
  const double span_rad = std::max(wanted_rad, kLeastTravel_rad);
  const std::string key = stop_field(parts.stops);
  Stops stops = parts.stops;
  const bool window = key == "stops.window";
  Quantity& width = window ? stops.window_rad : stops.post_width_m;
  const double most = window ? 2 * kPi : 2 * stops.radius_m.si.value_or(0) - kLength_m;
  const double least = window ? kDegree_rad : kLength_m;
  const double value = halved(least, most, span_rad, window, [&](double tried) {
    width.si = tried;
    return travel_between_stops_rad(stops);
  });
  return {key, window ? std::clamp(tidy_angle(value), least, most)
                      : std::clamp(tidy(value, kLength_m), least, most)};
}

/// To 0.01 mm, and still within the lengths that have a travel, so that the mark stays.
double tidy_within(double value_m, const LengthRange& range) {
  const double least = std::floor(range.least_m / kLength_m + 1) * kLength_m;
  const double steps = range.most_m / kLength_m;  // more than enough is harmless where it grows
  const double most = (range.grows ? std::ceil(steps) : std::floor(steps)) * kLength_m;
  if (least > most) return value_m;
  if (range.grows && value_m > range.most_m - kLength_m / 2) return most;
  return std::clamp(tidy(value_m, kLength_m), least, most);
}

std::vector<MarkField> for_cable(const AxisParts& parts, double span_rad) {
  const auto range = lengths_that_move(parts.cable);
  if (!range) return {};
  Cable cable = parts.cable;
  const double value =
      halved(range->least_m, range->most_m, span_rad, range->grows, [&](double tried) {
        cable.free_length_m.si = tried;
        return cable_travel_rad(cable);
      });
  return {{"cable.free_length", tidy_within(value, *range)}};
}

}  // namespace

std::vector<TravelMark> travel_marks(const AxisParts& parts, const Travel& travel) {
  std::vector<TravelMark> marks;
  const double centre = travel.centre_rad;
  if (is_finite(travel.stops_rad)) {
    const double half = *travel.stops_rad / 2;
    add_both(marks, MarkKind::hard_stop, centre, half, stop_field(parts.stops));
    if (is_finite(parts.stops.bumper_travel_rad.si)) {
      add_both(marks, MarkKind::bumper, centre, half + *parts.stops.bumper_travel_rad.si,
               "stops.bumper_travel");
    }
    if (is_finite(travel.soft_rad)) {
      add_both(marks, MarkKind::soft_limit, centre, *travel.soft_rad / 2, "stops.soft_inset");
    }
  }
  if (is_finite(travel.cable_rad)) {
    const bool moves = lengths_that_move(parts.cable).has_value();
    add_both(marks, MarkKind::cable, centre, *travel.cable_rad / 2,
             moves ? "cable.free_length" : "cable.routing", moves);
  }
  if (parts.stops.presence == Presence::given) {
    marks.push_back({MarkKind::centre, 0, centre, "stops.centre"});
  }
  if (is_finite(parts.homing.home_rad.si)) {
    marks.push_back({MarkKind::home, 0, *parts.homing.home_rad.si, "homing.home"});
  }
  if (is_finite(parts.homing.park_rad.si)) {
    marks.push_back({MarkKind::park, 0, *parts.homing.park_rad.si, "homing.park"});
  }
  return marks;
}

std::vector<MarkField> fields_for_mark(const AxisParts& parts, const TravelMark& mark,
                                       double angle_rad, bool one_side) {
  if (!mark.moves || !std::isfinite(angle_rad)) return {};
  const Travel travel = travel_of(parts);
  const double half = std::max(0.0, mark.side * (angle_rad - travel.centre_rad));
  const double stops_half = travel.stops_rad.value_or(0) / 2;
  switch (mark.kind) {
    case MarkKind::hard_stop: {
      if (!one_side) return {for_stops(parts, 2 * half)};
      const double shift = mark.side * (half - stops_half) / 2;
      const double centre = std::clamp(travel.centre_rad + shift, -2 * kPi, 2 * kPi);
      return {for_stops(parts, half + stops_half), {"stops.centre", tidy_angle(centre)}};
    }
    case MarkKind::bumper:
      return {{mark.field, std::max(0.1 * kDegree_rad, tidy_angle(half - stops_half))}};
    case MarkKind::soft_limit:
      return {
          {mark.field, std::clamp(tidy_angle(stops_half - half), 0.0, std::min(stops_half, kPi))}};
    case MarkKind::cable:
      return for_cable(parts, 2 * half);
    case MarkKind::centre:
      return {{mark.field, std::clamp(tidy_angle(angle_rad), -2 * kPi, 2 * kPi)}};
    case MarkKind::home:
    case MarkKind::park:
      return {{mark.field, std::clamp(tidy_angle(angle_rad), -20 * kPi, 20 * kPi)}};
  }
  return {};
}

}  // namespace gazewright
