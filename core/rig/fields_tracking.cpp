#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr Unit kMetresPerSecond{"m/s", "m/s"};
constexpr Unit kSeconds{"s", "s"};
constexpr Unit kHertz{"Hz", "Hz"};
constexpr double kHalfTurn_rad = 180 * kDegree_rad;

constexpr std::string_view kTargets[]{"walk", "sine", "jump", "path"};
constexpr std::string_view kActsOn[]{"error", "angle"};
constexpr ChoiceRow<Tracking> kChoices[]{
    {{"target", "Target", kTargets,
      "What it has to follow: somebody who walks past (walk), something that runs a sine (sine) or "
      "jumps (jump), both on both axes, or that follows a path (path) of points."},
     &Tracking::target},
    {{"acts_on", "Acts on", kActsOn,
      "What sets the speed: the error in the picture (error) as it comes, or the angle of the "
      "target "
      "(angle), which is that error added to the encoder's angle of the same instant, less the "
      "angle "
      "of now."},
     &Tracking::acts_on},
};
constexpr QuantityRow<Tracking> kTracking[]{
    {defaults_to(1.4, detail(field("speed", "Speed", kMetresPerSecond, kPositive,
                                   "Speed of somebody who walks past on a straight line; 1.4 m/s "
                                   "walks, 4 m/s runs."))),
     &Tracking::speed_mps},
    {default_follows("the task's target distance",
                     detail(field("passing_distance", "Passing distance", {"m", "m"}, kPositive,
                                  "Distance on the ground at which the walk passes the pan axis; "
                                  "usually 0.5 to 10 m."))),
     &Tracking::passing_distance_m},
    {defaults_to(0, detail(field("height", "Height", {"m", "m"}, kAny,
                                 "How far the target is above the tilt axis; below it is "
                                 "negative."))),
     &Tracking::height_m},
    {defaults_to(20 * kDegree_rad,
                 detail(field("amplitude", "Amplitude", kDegrees, {0, kHalfTurn_rad, true},
                              "Amplitude of the sine, each way; usually 5 to 30 deg."))),
     &Tracking::amplitude_rad},
    {defaults_to(0.5, detail(field("frequency", "Frequency", kHertz, {0, 1000, true},
                                   "Frequency of the sine; usually 0.1 to 3 Hz."))),
     &Tracking::frequency_Hz},
    {default_follows("the task's move of each axis",
                     detail(field("jump", "Jump", kDegrees, {0, kHalfTurn_rad, true},
                                  "How far the target jumps, on both axes; usually 5 to 30 "
                                  "deg."))),
     &Tracking::jump_rad},
    {default_follows(
         "0.5 over the dead time; the axis' position gain where it acts on the angle",
         detail(field("gain", "Gain", {"1/s", "1/s"}, kPositive,
                      "Speed that the outer loop asks for per angle of error; usually 2 "
                      "to 20 1/s. In the tracking program's settings."))),
     &Tracking::gain_1ps},
    {defaults_to(0, detail(field("feed_forward", "Feed-forward", kNumber, {0, 1},
                                 "Part of the target's estimated speed that is added to the "
                                 "command; 1 is all of it."))),
     &Tracking::feed_forward},
};

constexpr TextRow<Detector> kDetectorTexts[]{
    {{"name", "Name", "What you call the detector."}, &Detector::name},
};
constexpr QuantityRow<Detector> kDetector[]{
    {default_follows("the camera's",
                     detail(field("frame_rate", "Frame rate", kHertz, kPositive,
                                  "Pictures a second that it looks at; usually 5 to 120 Hz."))),
     &Detector::frame_rate_Hz},
    {default_follows("the camera's",
                     detail(field("delay", "Delay", {"s", "ms"}, kNotNegative,
                                  "From the middle of the exposure to the new target angle: "
                                  "read-out, transfer and detection; usually 20 to 300 ms."))),
     &Detector::delay_s},
    {defaults_to(0, detail(field("noise", "Noise", kPixels, kNotNegative,
                                 "Standard deviation of the place that it finds, in pixels of the "
                                 "camera; usually 1 to 15."))),
     &Detector::noise_px},
    {defaults_to(0, detail(field("drop_outs", "Drop-outs", kNumber, {0, 1},
                                 "Part of the pictures in which it finds nothing; usually 0 to "
                                 "0.2."))),
     &Detector::drop_outs},
};

constexpr Allowed kAnyTurn{-3600 * kDegree_rad, 3600 * kDegree_rad};
constexpr FieldInfo kPointTime = field("path", "Time", kSeconds, kNotNegative, "Time of a point.");
constexpr FieldInfo kPointPan = field("path", "Pan", kDegrees, kAnyTurn, "Pan angle of a point.");
constexpr FieldInfo kPointTilt =
    field("path", "Tilt", kDegrees, kAnyTurn, "Tilt angle of a point.");

constexpr PartTable<Tracking> kTrackingTable{{}, kTracking, kChoices};
constexpr PartTable<Detector> kDetectorTable{kDetectorTexts, kDetector, {}};
}  // namespace

template <>
const PartTable<Tracking>& table_of<Tracking>() {
  return kTrackingTable;
}
template <>
const PartTable<Detector>& table_of<Detector>() {
  return kDetectorTable;
}

const std::array<const FieldInfo*, 3>& path_point_infos() {
  static constexpr std::array<const FieldInfo*, 3> kInfos{&kPointTime, &kPointPan, &kPointTilt};
  return kInfos;
}

}  // namespace gazewright
