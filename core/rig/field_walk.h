#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "core/rig/fields.h"

/// How fields.cpp and defaults.cpp go through the fields of a rig. Used by them only.
namespace gazewright {

/// Gathers the fields that are on the way to a wanted path or begin with it. Making a path takes
/// longer than all else: none is made of what is passed by, nor where nobody reads them.
struct FieldWalk {
  std::string_view wanted;  ///< empty: all fields
  bool with_paths = true;   ///< else those found have empty ones
  std::vector<FieldRef> found{};

  bool may_hold(std::string_view part, std::string_view key = {}) const {
    return is_same_way(part, wanted) &&
           is_same_way(key, wanted.substr(std::min(part.size(), wanted.size())));
  }
  template <class Ref, class Info, class Value>
  void add(const std::string& part, std::string_view key, const Info& info, Value& value) {
    if (may_hold(part, key))
      found.push_back(Ref{with_paths ? part + std::string(key) : std::string(), &info, &value});
  }

 private:
  /// Whether one of them begins with the other.
  static bool is_same_way(std::string_view a, std::string_view b) {
    return a.starts_with(b) || b.starts_with(a);
  }
};

/// Lets the walk pass every field of the rig, in the order of the file.
void add_all(FieldWalk& fields, Rig& rig);

}  // namespace gazewright
