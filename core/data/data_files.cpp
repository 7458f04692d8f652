#include "core/data/data_files.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/data/data_library.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr DataColumn kMaterials[]{
    {"modulus", "Pa", "GPa", 1e5, 2e12},         {"layer_modulus", "Pa", "GPa", 1e5, 2e12},
    {"strength", "Pa", "MPa", 1e4, 1e10},        {"layer_strength", "Pa", "MPa", 1e4, 1e10},
    {"softening", "K", "degC", 273.15, 4273.15}, {"density", "kg/m3", "g/cm3", 1, 3e4},
    {"shear_share", "1", "1", 0.05, 1}};
constexpr DataColumn kThreads[]{{"diameter", "m", "mm", 3e-4, 0.2, true},
                                {"pitch", "m", "mm", 3e-5, 0.02, true},
                                {"head_mean", "m", "mm", 3e-4, 0.5, true}};
constexpr DataColumn kScrews[]{{"proof", "Pa", "MPa", 1e6, 1e10, true},
                               {"tensile", "Pa", "MPa", 1e6, 1e10, true}};
constexpr DataColumn kJoints[]{{"preload_scatter", "1", "1", 0, 0.95},
                               {"left_in_plastic", "1", "1", 0.01, 1},
                               {"share_of_proof", "1", "1", 0.01, 1},
                               {"share_of_pull_out", "1", "1", 0.01, 1}};
constexpr DataColumn kInsulation[]{{"limit", "K", "degC", 273.15, 1273.15, true}};
constexpr DataColumn kWires[]{
    {"conductivity", "S/m", "MS/m", 1e4, 1e9},      {"rise", "1/K", "1/K", 0, 0.1},
    {"circular_mil_per_ampere", "1", "1", 10, 1e5}, {"most_drop", "1", "1", 1e-4, 1},
    {"lasting_share", "1", "1", 0.05, 1},           {"short_factor", "1", "1", 1, 100}};
constexpr DataColumn kCables[]{{"lasting", "1", "1", 0.1, 1000}, {"still", "1", "1", 0.1, 1000}};
constexpr DataColumn kDuty[]{{"winding_part", "1", "1", 0.01, 0.99},
                             {"winding_time", "s", "s", 0.01, 3600},
                             {"part_into_mount", "1", "1", 0, 1}};
constexpr DataColumn kSupply[]{{"most_sag", "1", "1", 1e-4, 1},
                               {"chopper_of_trip", "1", "1", 0.1, 1}};
constexpr DataColumn kBearings[]{
    {"angle", "rad", "deg", 0, 1.5}, {"load", "1", "1", 0, 1000},
    {"e", "1", "1", 0.01, 100},      {"x", "1", "1", 0, 10},
    {"y", "1", "1", 0, 100},         {"x0", "1", "1", 0, 10},
    {"y0", "1", "1", 0, 100},        {"static_safety", "1", "1", 0.1, 100}};
constexpr DataColumn kSpreads[]{{"estimate", "1", "1", 0, 0.9}, {"datasheet", "1", "1", 0, 0.9},
                                {"default", "1", "1", 0, 0.9},  {"place", "m", "mm", 0, 1},
                                {"angle", "rad", "deg", 0, 1},  {"warmth", "K", "K", 0, 100}};

std::string thread_problem(const DataRow& row) {
  const double diameter_m = row.si("diameter");
  if (row.si("pitch") > 0.5 * diameter_m) return words("its pitch is too coarse for its diameter");
  if (row.si("head_mean") < diameter_m) return words("its head rubs inside its thread");
  return {};
}
std::string screw_problem(const DataRow& row) {
  return row.si("proof") > row.si("tensile")
             ? words("its proof stress is above its tensile strength")
             : std::string();
}
/// Rows by load are those of two contact angles; without either there would be no table.
std::string bearing_problem(const DataRow& row) {
  const DataRow* built_in = built_in_data("bearings").find(row.name);
  if (built_in == nullptr || row.find("load") == nullptr) return {};
  constexpr double kRounding_rad = 1e-6;
  return std::abs(row.si("angle") - built_in->si("angle")) <= kRounding_rad
             ? std::string()
             : words("its angle tells which table it belongs to and cannot be changed");
}

constexpr std::array<DataFile, 11> kFiles{{{"materials", kMaterials, true, nullptr},
                                           {"threads", kThreads, true, thread_problem},
                                           {"screws", kScrews, true, screw_problem},
                                           {"insulation", kInsulation, true, nullptr},
                                           {"joints", kJoints, false, nullptr},
                                           {"bearings", kBearings, false, bearing_problem},
                                           {"wires", kWires, false, nullptr},
                                           {"cables", kCables, false, nullptr},
                                           {"duty", kDuty, false, nullptr},
                                           {"supply", kSupply, false, nullptr},
                                           {"spreads", kSpreads, false, nullptr}}};

constexpr std::array<std::pair<std::string_view, std::string_view>, 5> kNamedBy{
    {{"thread", "threads"},
     {"property_class", "screws"},
     {"insulation", "insulation"},
     {"material", "materials"},
     {"mount_material", "materials"}}};

}  // namespace

std::span<const DataFile> data_files() { return kFiles; }

const DataFile* find_data_file(std::string_view name) {
  const auto* found = std::ranges::find(kFiles, name, &DataFile::name);
  return found == kFiles.end() ? nullptr : found;
}

std::string_view data_file_of(std::string_view field_key) {
  for (const auto& [key, file] : kNamedBy)
    if (key == field_key) return file;
  return {};
}

}  // namespace gazewright
