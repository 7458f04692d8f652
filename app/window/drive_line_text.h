#pragma once

#include <vector>

#include "app/window/tile.h"
#include "core/analysis/analysis.h"

/// The words of a drive line, from the rig and its analysis. Nothing is computed here.
namespace gazewright {

struct Headline {
  QString time;     ///< "148 ms"
  QString about;    ///< "move and settle"
  QString gap;      ///< "16 px gap"
  QString doubt{};  ///< of the time, "±9 ms"; empty: not known
  bool operator==(const Headline&) const = default;
};
Headline headline(const Analysis& analysis, Axis axis);

/// Tiles from supply to load: supply, drive, motor, gearbox, stops, cable, load.
struct TilePart {
  QString part;
  TileText text;
};
std::vector<TilePart> tile_texts(const Rig& rig, const Analysis& analysis, Axis axis);

}  // namespace gazewright
