#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr QuantityRow<Pointing> kPointing[]{
    {detail(field("mount_error", "Mounting error", kDegrees, {0, 90 * kDegree_rad},
                  "Largest angle by which stand and camera are mounted amiss; usually 0.2 to 2 "
                  "deg.")),
     &Pointing::mount_error_rad},
    {detail(field("calibration_error", "Calibration error", kDegrees, {0, 90 * kDegree_rad},
                  "Largest angle that is left after the camera was calibrated to the axes; "
                  "usually 0.05 to 0.5 deg.")),
     &Pointing::calibration_error_rad},
    {detail(field("vision_noise", "Vision noise", kPixels, kNotNegative,
                  "Standard deviation of the place that the detector finds; usually 0.5 to 10 "
                  "px.")),
     &Pointing::vision_noise_px},
};

constexpr Allowed kAnyTurn{-3600 * kDegree_rad, 3600 * kDegree_rad};
constexpr QuantityRow<DutyMove> kDutyMove[]{
    {field("pan", "Pan to", kDegrees, kAnyTurn, "Pan angle that the move goes to."),
     &DutyMove::pan_rad},
    {field("tilt", "Tilt to", kDegrees, kAnyTurn, "Tilt angle that the move goes to."),
     &DutyMove::tilt_rad},
    {field("dwell", "Dwell", {"s", "s"}, kNotNegative,
           "How long it rests there until the next move; usually 0.2 to 30 s."),
     &DutyMove::dwell_s},
};

constexpr PartTable<Pointing> kPointingTable{{}, kPointing, {}};
constexpr PartTable<DutyMove> kDutyMoveTable{{}, kDutyMove, {}};
}  // namespace

template <>
const PartTable<Pointing>& table_of<Pointing>() {
  return kPointingTable;
}
template <>
const PartTable<DutyMove>& table_of<DutyMove>() {
  return kDutyMoveTable;
}

}  // namespace gazewright
