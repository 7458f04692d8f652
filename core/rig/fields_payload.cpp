#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr QuantityRow<Ball> kBall[]{
    {field("diameter", "Diameter", kMillimetre, kPositive, "Diameter of the solid ball."),
     &Ball::diameter_m},
};
constexpr QuantityRow<Shell> kShell[]{
    {field("diameter", "Outer diameter", kMillimetre, kPositive, "Outside of the hollow ball."),
     &Shell::diameter_m},
    {field("wall", "Wall", kMillimetre, kPositive,
           "Wall of the hollow ball; 1.6 to 3 mm when printed."),
     &Shell::wall_m},
};
constexpr std::string_view kDirections[]{"x", "y", "z"};
constexpr QuantityRow<Tube> kTube[]{
    {field("diameter", "Outer diameter", kMillimetre, kPositive, "Outside of the tube or rod."),
     &Tube::diameter_m},
    {field("bore", "Bore", kMillimetre, kNotNegative, "Inside of the tube; 0 mm for a solid rod."),
     &Tube::bore_m},
    {field("length", "Length", kMillimetre, kPositive, "Length along the tube's own axis."),
     &Tube::length_m},
};
constexpr ChoiceRow<Tube> kTubeChoices[]{
    {{"along", "Along", kDirections, "Which axis of its carrier the tube lies along."},
     &Tube::along},
};

constexpr QuantityRow<Camera> kCamera[]{
    {whole(field("columns", "Columns", kPixels, {1, 100000},
                 "Pixels across the picture; usually 640 to 4096.")),
     &Camera::columns},
    {whole(field("rows", "Rows", kPixels, {1, 100000},
                 "Pixels down the picture; usually 480 to 3072.")),
     &Camera::rows},
    {field("horizontal_view", "Horizontal view", kDegrees, {0, 179.9 * kDegree_rad, true},
           "Angle between the left and right edge of the picture; usually 20 to 120 deg. In the "
           "lens' data sheet."),
     &Camera::horizontal_view_rad},
    {field("exposure", "Exposure", {"s", "ms"}, kPositive,
           "How long one picture gathers light; usually 1 to 20 ms indoors."),
     &Camera::exposure_s},
    {field("frame_rate", "Frame rate", {"Hz", "Hz"}, kPositive,
           "Pictures a second; usually 30 to 120 Hz."),
     &Camera::frame_rate_Hz},
    {field("delay", "Vision delay", {"s", "ms"}, kNotNegative,
           "From the middle of the exposure to the new target angle: read-out, transfer and "
           "detection; usually 20 to "
           "150 ms."),
     &Camera::delay_s},
    {defaults_to(0, detail(field("readout", "Readout", {"s", "ms"}, kNotNegative,
                                 "From the first row's exposure to the last row's: 0 ms for a "
                                 "global shutter, 5 to 30 ms for a rolling one."))),
     &Camera::readout_s},
};

constexpr QuantityRow<Task> kTask[]{
    {field(
         "pan_move", "Pan move", kDegrees, kPositive,
         "Size of the pan move that must be fast, centred on the rest pose; usually 10 to 90 deg."),
     &Task::pan_move_rad},
    {field("tilt_move", "Tilt move", kDegrees, kPositive,
           "Size of the tilt move that must be fast, centred on the rest pose; usually 10 to 60 "
           "deg."),
     &Task::tilt_move_rad},
    {field("within", "Within", {"s", "ms"}, kPositive,
           "Time in which the move must have settled; an eye takes 40 to 200 ms."),
     &Task::within_s},
    {defaults_to(4, field("settle_band", "Settle band (pixels)", kPixels, kPositive,
                          "How near to the target, each way, counts as settled, in pixels of the "
                          "camera; usually 2 to "
                          "10.")),
     &Task::settle_band_px},
    {field("target_distance", "Target distance", {"m", "m"}, kPositive,
           "How far away what it looks at usually is; usually 0.5 to 10 m."),
     &Task::target_distance_m},
    {field("duty.moves_per_minute", "Moves per minute", kNumber, kNotNegative,
           "How many such moves a minute over the day; an attentive eye makes 20 to 60."),
     &Task::moves_per_minute},
};

constexpr PartTable<Ball> kBallTable{{}, kBall, {}};
constexpr PartTable<Shell> kShellTable{{}, kShell, {}};
constexpr PartTable<Tube> kTubeTable{{}, kTube, kTubeChoices};
constexpr PartTable<Camera> kCameraTable{{}, kCamera, {}};
constexpr PartTable<Task> kTaskTable{{}, kTask, {}};

constexpr FieldInfo kAxisAt =
    field("axis_at", "Tilt axis at", kMillimetre, kAny,
          "Where the tilt axis crosses the pan frame: forward, left and up of the pan axis' "
          "foot.");
constexpr FieldInfo kBodyMass =
    field("mass", "Mass", kGram, kPositive,
          "Mass of the body. Put it on a scale, or take it from the slicer.");
constexpr FieldInfo kBodyCentre =
    field("centre", "Centre", kMillimetre, kAny,
          "Centre of the body: forward, left and up in the frame that carries it.");
constexpr FieldInfo kBoxSide = field("box", "Side", kMillimetre, kPositive,
                                     "Length of the box along one axis of its carrier.");
constexpr FieldInfo kTensorDiagonal =
    field("inertia", "Moment of inertia", kInertia, kNotNegative,
          "Moment of inertia about one axis through the body's centre; from a drawing program.");
constexpr FieldInfo kTensorProduct = field("inertia", "Product of inertia", kInertia, kAny,
                                           "Tensor element with its sign (minus the integral of x "
                                           "times y over the mass); 0 for symmetric bodies.");
constexpr Allowed kAnyTurn{-3600 * kDegree_rad, 3600 * kDegree_rad};
constexpr FieldInfo kKeepOutPan =
    field("pan", "Pan", kDegrees, kAnyTurn,
          "Pan angles, from and to, of a window that the camera must stay out of.");
constexpr FieldInfo kKeepOutTilt =
    field("tilt", "Tilt", kDegrees, kAnyTurn,
          "Tilt angles, from and to, of a window that the camera must stay out of.");
}  // namespace

template <>
const PartTable<Ball>& table_of<Ball>() {
  return kBallTable;
}
template <>
const PartTable<Shell>& table_of<Shell>() {
  return kShellTable;
}
template <>
const PartTable<Tube>& table_of<Tube>() {
  return kTubeTable;
}
template <>
const PartTable<Camera>& table_of<Camera>() {
  return kCameraTable;
}
template <>
const PartTable<Task>& table_of<Task>() {
  return kTaskTable;
}

const FieldInfo& axis_at_info() { return kAxisAt; }
const FieldInfo& body_mass_info() { return kBodyMass; }
const FieldInfo& body_centre_info() { return kBodyCentre; }
const FieldInfo& box_side_info() { return kBoxSide; }
const FieldInfo& tensor_diagonal_info() { return kTensorDiagonal; }
const FieldInfo& tensor_product_info() { return kTensorProduct; }
const FieldInfo& keep_out_pan_info() { return kKeepOutPan; }
const FieldInfo& keep_out_tilt_info() { return kKeepOutTilt; }

}  // namespace gazewright
