#include "core/travel/pose_windows.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/bodies/two_axis.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * kPi;
constexpr double kHair_rad = 1e-9;

/// Angle in [0, 2π) above `from`.
double turns_dropped(double angle_rad, double from_rad) {
  const double above = std::fmod(angle_rad - from_rad, kTurn_rad);
  return above < 0 ? above + kTurn_rad : above;
}

struct Span {
  double least = 0, most = 0;
};

void sort_and_drop_doubles(std::vector<double>& places) {
  std::ranges::sort(places);
  const auto is_same = [](double a, double b) { return b - a < kHair_rad; };
  places.erase(std::unique(places.begin(), places.end(), is_same), places.end());
}

/// Places of `angle` and its turns within a span.
void add_turns(std::vector<double>& places, double angle_rad, const Span& span) {
  double at = span.least + turns_dropped(angle_rad, span.least);
  for (; at < span.most; at += kTurn_rad) places.push_back(at);
}

/// The open windows of one strip of tilt, neighbours joined.
void add_strip(std::vector<PoseWindow>& windows, const PoseWindow& strip,
               const std::vector<double>& cuts, const std::vector<PoseWindow>& keep_outs) {
  const double tilt = (strip.tilt_least_rad + strip.tilt_most_rad) / 2;
  bool joins = false;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    const double pan = (cuts[i] + cuts[i + 1]) / 2;
    const bool closed = std::ranges::any_of(
        keep_outs, [&](const PoseWindow& window) { return is_inside(window, pan, tilt); });
    if (!closed && joins) windows.back().pan_most_rad = cuts[i + 1];
    if (!closed && !joins)
      windows.push_back({cuts[i], cuts[i + 1], strip.tilt_least_rad, strip.tilt_most_rad});
    joins = !closed;
  }
}

/// A window beyond straight up or down as the one that looks the same way. @pre it lies on one side
/// of straight up and of straight down.
PoseWindow folded(const PoseWindow& window) {
  const double tilt = (window.tilt_least_rad + window.tilt_most_rad) / 2;
  if (std::abs(tilt) <= kPi / 2) return window;
  const double over = tilt > 0 ? kPi : -kPi;
  return {window.pan_least_rad + kPi, window.pan_most_rad + kPi, over - window.tilt_most_rad,
          over - window.tilt_least_rad};
}

/// Length of the union of spans on a circle.
double covered_rad(const std::vector<Span>& spans) {
  std::vector<Span> parts;
  for (const Span& span : spans) {
    if (span.most - span.least >= kTurn_rad) return kTurn_rad;
    const double from = turns_dropped(span.least, 0), to = from + span.most - span.least;
    parts.push_back({from, std::min(to, kTurn_rad)});
    if (to > kTurn_rad) parts.push_back({0, to - kTurn_rad});
  }
  std::ranges::sort(parts, {}, &Span::least);
  double covered = 0, done = 0;
  for (const Span& part : parts) {
    covered += std::max(0.0, part.most - std::max(done, part.least));
    done = std::max(done, part.most);
  }
  return covered;
}

/// How far sideways from the camera's pan a direction at this elevation is in the picture, for some
/// tilt of the window: the first stretch, from straight ahead. Empty: nowhere.
class Picture {
 public:
  Picture(double horizontal_rad, double vertical_rad)
      : across_(std::tan(horizontal_rad / 2)),
        half_vertical_rad_(vertical_rad / 2 + kHair_rad),
        least_cosine_(half_vertical_rad_ < kPi ? std::cos(half_vertical_rad_) - kHair_rad : -2) {
    for (int i = 0; i <= kSteps; ++i) steps_[static_cast<std::size_t>(i)] = Turn::of(i * kStep_rad);
  }

  std::optional<Span> sideways(const PoseWindow& window, double elevation_rad) const {
    // Aside of the pan a direction only looks steeper in the camera's upright plane.
    if (elevation_rad > std::max(window.tilt_most_rad, 0.0) + half_vertical_rad_ ||
        elevation_rad < std::min(window.tilt_least_rad, 0.0) - half_vertical_rad_)
      return std::nullopt;
    const Turn level = Turn::of(elevation_rad);
    const Turn least = Turn::of(window.tilt_least_rad), most = Turn::of(window.tilt_most_rad);
    const auto in_picture = [&](const Turn& aside) {
      const double ahead = level.c * aside.c, up = level.s;
      const double sideways = level.c * aside.s, flat = std::sqrt(ahead * ahead + up * up);
      if (sideways > across_ * flat + kHair_rad) return false;  // at the best tilt already
      // Looked at right on where it lies between both ends of the tilt, which are half a turn apart
      // at most.
      if (up * least.c >= ahead * least.s && ahead * most.s >= up * most.c) return true;
      // Cheaper than an angle: farther from either end than the picture is high.
      if (std::max(ahead * least.c + up * least.s, ahead * most.c + up * most.s) <
          least_cosine_ * flat)
        return false;
      return is_beside(window, ahead, up, sideways);
    };
    const auto at = [&](int step) { return in_picture(steps_[static_cast<std::size_t>(step)]); };
    int first = 0;
    while (first <= kSteps && !at(first)) ++first;
    if (first > kSteps) return std::nullopt;
    int last = first;
    while (last < kSteps && at(last + 1)) ++last;
    const double from = first == 0 ? 0 : edge(in_picture, first, first - 1);
    const double to = last == kSteps ? kPi : edge(in_picture, last, last + 1);
    return Span{from, to};
  }

 private:
  static constexpr int kSteps = 90;
  static constexpr double kStep_rad = kPi / kSteps;

  /// Of a direction above or below the window.
  bool is_beside(const PoseWindow& window, double ahead, double up, double sideways) const {
    const double seen_rad = std::atan2(up, ahead);  // elevation in the camera's upright plane
    const double off_rad =
        seen_rad - std::clamp(seen_rad, window.tilt_least_rad, window.tilt_most_rad);
    return std::abs(off_rad) <= half_vertical_rad_ &&
           sideways <= across_ * std::hypot(ahead, up) * std::cos(off_rad) + kHair_rad;
  }

  template <class Test>
  static double edge(Test in_picture, int inside_step, int outside_step) {
    double inside = inside_step * kStep_rad, outside = outside_step * kStep_rad;
    for (int i = 0; i < 8; ++i) {
      const double middle = (inside + outside) / 2;
      (in_picture(Turn::of(middle)) ? inside : outside) = middle;
    }
    return inside;
  }

  double across_, half_vertical_rad_, least_cosine_;
  std::array<Turn, kSteps + 1> steps_{};
};

void add_seen(std::vector<Span>& spans, const PoseWindow& window, const Span& aside) {
  const double least = window.pan_least_rad, most = window.pan_most_rad;
  if (most - least >= 2 * aside.least) {
    spans.push_back({least - aside.most, most + aside.most});
    return;
  }
  spans.push_back({least - aside.most, most - aside.least});
  spans.push_back({least + aside.least, most + aside.most});
}

}  // namespace

std::optional<PoseWindow> window_of(const KeepOut& keep_out) {
  for (const auto* ends : {&keep_out.pan_rad, &keep_out.tilt_rad}) {
    if (!(*ends)[0].has_value() || !(*ends)[1].has_value()) return std::nullopt;
  }
  return PoseWindow{*keep_out.pan_rad[0].si, *keep_out.pan_rad[1].si, *keep_out.tilt_rad[0].si,
                    *keep_out.tilt_rad[1].si};
}

bool is_inside(const PoseWindow& keep_out, double pan_rad, double tilt_rad) {
  if (tilt_rad <= keep_out.tilt_least_rad + kHair_rad ||
      tilt_rad >= keep_out.tilt_most_rad - kHair_rad)
    return false;
  const double width = keep_out.pan_most_rad - keep_out.pan_least_rad;
  if (width >= kTurn_rad) return true;
  const double above = turns_dropped(pan_rad, keep_out.pan_least_rad);
  return above > kHair_rad && above < width - kHair_rad;
}

std::vector<PoseWindow> looked_at(const PoseWindow& whole,
                                  const std::vector<PoseWindow>& keep_outs) {
  PoseWindow window = whole;
  const double middle = (whole.pan_least_rad + whole.pan_most_rad) / 2;
  if (!(whole.pan_most_rad - whole.pan_least_rad <= kTurn_rad)) {
    const double centre = std::isfinite(middle) ? middle : 0;
    window.pan_least_rad = centre - kPi;
    window.pan_most_rad = centre + kPi;
  }
  window.tilt_least_rad = std::max(window.tilt_least_rad, -kPi);
  window.tilt_most_rad = std::min(window.tilt_most_rad, kPi);
  if (window.is_empty()) return {};
  std::vector<double> pans{window.pan_least_rad, window.pan_most_rad};
  std::vector<double> tilts{window.tilt_least_rad, window.tilt_most_rad, -kPi / 2, kPi / 2};
  for (const PoseWindow& keep_out : keep_outs) {
    const Span pan{window.pan_least_rad, window.pan_most_rad};
    add_turns(pans, keep_out.pan_least_rad, pan);
    add_turns(pans, keep_out.pan_most_rad, pan);
    tilts.insert(tilts.end(), {keep_out.tilt_least_rad, keep_out.tilt_most_rad});
  }
  std::erase_if(tilts, [&](double tilt) {
    return tilt < window.tilt_least_rad || tilt > window.tilt_most_rad;
  });
  sort_and_drop_doubles(pans);
  sort_and_drop_doubles(tilts);
  std::vector<PoseWindow> windows;
  for (std::size_t i = 0; i + 1 < tilts.size(); ++i)
    add_strip(windows, {window.pan_least_rad, window.pan_most_rad, tilts[i], tilts[i + 1]}, pans,
              keep_outs);
  std::ranges::transform(windows, windows.begin(), folded);
  return windows;
}

double axis_share(const std::vector<PoseWindow>& windows) {
  std::vector<double> tilts;
  for (const PoseWindow& window : windows)
    tilts.insert(tilts.end(), {window.tilt_least_rad, window.tilt_most_rad});
  sort_and_drop_doubles(tilts);
  double area_sr = 0;
  for (std::size_t i = 0; i + 1 < tilts.size(); ++i) {
    const double middle = (tilts[i] + tilts[i + 1]) / 2;
    std::vector<Span> spans;
    for (const PoseWindow& window : windows) {
      if (window.tilt_least_rad < middle && middle < window.tilt_most_rad)
        spans.push_back({window.pan_least_rad, window.pan_most_rad});
    }
    area_sr += covered_rad(spans) * (std::sin(tilts[i + 1]) - std::sin(tilts[i]));
  }
  return area_sr / (4 * kPi);
}

double view_share(const std::vector<PoseWindow>& windows, double horizontal_rad,
                  double vertical_rad) {
  constexpr int kRings = 720;
  const Picture picture(horizontal_rad, vertical_rad);
  double area_sr = 0;
  std::vector<Span> spans;
  for (int i = 0; i < kRings; ++i) {
    const double low = kPi * i / kRings - kPi / 2, high = low + kPi / kRings;
    spans.clear();
    for (const PoseWindow& window : windows) {
      if (const auto aside = picture.sideways(window, (low + high) / 2))
        add_seen(spans, window, *aside);
    }
    area_sr += covered_rad(spans) * (std::sin(high) - std::sin(low));
  }
  return area_sr / (4 * kPi);
}

double vertical_view_rad(double horizontal_rad, double columns, double rows) {
  return 2 * std::atan(std::tan(horizontal_rad / 2) * rows / columns);
}

}  // namespace gazewright
