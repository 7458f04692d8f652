#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/rig/rig.h"

namespace gazewright {

/// How inputs are named in lists for people: the entries of a list that have names go by these, not
/// by their places.
class InputNames {
 public:
  explicit InputNames(const Rig& rig);

  /// "on_tilt[1].mass" -> "on_tilt[camera].mass"; a second camera is "camera 2".
  std::string id_of(const std::string& path) const;

 private:
  std::map<std::string, std::vector<std::string>, std::less<>> names_;
};

/// "pan gearbox" for "pan.gearbox", in the user's language; what is no part stays as it is.
std::string part_words(std::string_view steps);
/// A field with its part: "pan gearbox ratio"; "pan stop stiffness" of pan.stops.stiffness, where
/// the label says its part itself.
std::string field_words(const std::string& path, std::string_view label);
/// The same of any path, "pan stops" of a whole part; empty where it is no path in words.
std::string path_words(const std::string& path);
/// "Pan gearbox: ratio", "Camera: centre x".
std::string input_label(const std::string& id, std::string_view label);
/// The same within a sentence: "the ratio of the pan gearbox", "the centre x of the camera".
std::string input_phrase(const std::string& id, std::string_view label);
/// "weighing the camera", "measuring the ratio of the pan gearbox".
std::string measuring_phrase(const std::string& id, std::string_view label);

}  // namespace gazewright
