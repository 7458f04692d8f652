#pragma once

#include <string>
#include <vector>

#include "core/travel/travel.h"

/// The marks of a travel dial: where each lies, which field makes it, and what that field has to be
/// for a mark to lie elsewhere.
namespace gazewright {

enum class MarkKind { hard_stop, bumper, soft_limit, cable, centre, home, park };

struct TravelMark {
  MarkKind kind = MarkKind::centre;
  int side = 0;          ///< −1 or +1 for the two ends of a limit, 0 for a single mark
  double angle_rad = 0;  ///< of the axis; beyond ±π where the travel is more than a turn
  std::string field;     ///< that makes it, below the axis: "stops.post_width"
  bool moves = true;     ///< whether fields_for_mark() knows how to move it

  bool is_same_as(const TravelMark& other) const {
    return kind == other.kind && side == other.side;
  }
  bool operator==(const TravelMark&) const = default;
};

/// Every mark that is known and finite, limits from the negative end to the positive one. A bumper
/// ends its travel beyond the hard stop. @pre `parts` has its defaults filled in.
std::vector<TravelMark> travel_marks(const AxisParts& parts, const Travel& travel);

struct MarkField {
  std::string key;  ///< below the axis
  double si = 0;
};
/// Fields that put `mark` at `angle_rad`, as near as their ranges allow and rounded to 0.01 mm or
/// 0.01°. Limits move on both sides alike, about the centre; with `one_side` a hard stop moves
/// alone and the centre goes half as far. Empty where the mark does not move. @pre as above.
std::vector<MarkField> fields_for_mark(const AxisParts& parts, const TravelMark& mark,
                                       double angle_rad, bool one_side);

}  // namespace gazewright
