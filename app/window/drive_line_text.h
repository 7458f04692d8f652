#pragma once

#include <vector>

#include "app/window/tile.h"
#include "core/analysis/analysis.h"

/// The words of a drive line, from the rig and its analysis. Nothing is computed here.
namespace gazewright {

struct Headline {
  QString time;          ///< "148 ms"
  QString about;         ///< "move and settle"
  QString gap;           ///< "16 px gap"
  QString doubt{};       ///< of the time, "±9 ms"; empty: not known
  QStringList limits{};  ///< what holds the move back, and the change that saves the most
  bool operator==(const Headline&) const = default;
};
Headline headline(const Analysis& analysis, Axis axis);
/// What holds the step back and what the fastest move, each as a sentence; empty: unknown.
QStringList limit_sentences(const MoveLimits& limits);

/// Tiles from supply to load: supply, drive, motor, gearbox, stops, cable, load.
struct TilePart {
  QString part;
  TileText text;
};
std::vector<TilePart> tile_texts(const Rig& rig, const Analysis& analysis, Axis axis);

}  // namespace gazewright
