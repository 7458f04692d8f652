#pragma once

#include <array>
#include <string>
#include <vector>

/// What the moves of both axes take from the supply and give back.
namespace gazewright {

/// A pair of moves that the search found, with what it does to the bus.
struct WorstCase {
  std::string text;  ///< which move, when and in which pose
  std::vector<double> time_s, current_A, voltage_V;
};

/// Both axes making the task's moves at once. All vectors have the same length; empty where inputs
/// are missing, and in a quick analysis.
struct BusCurve {
  std::vector<double> time_s, current_A, voltage_V, power_W;  ///< current of the source
  std::array<std::vector<double>, 2> drive_A;  ///< of each drive at the supply's voltage, by Axis
  double trip_V = 0, limit_A = 0;              ///< 0: not known; limit_A may be infinite
  double source_V = 0, chopper_V = 0;          ///< chopper 0: none
  std::string because;                         ///< why there is none; else empty
  std::vector<WorstCase> worst;                ///< by current, then by voltage where that is known
  std::vector<std::string> sentences;          ///< worst moves, resistor, fuse, leads
};

class Context;
BusCurve bus_curve(Context& context);

}  // namespace gazewright
