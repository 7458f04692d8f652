#pragma once

#include <memory>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/rig/rig.h"

namespace gazewright {

/// What leads from one rig to another, both ways and exactly. Keeps the fields that differ; the
/// whole rigs only where more than fields does (a body more, another name in a list). So a long
/// history of edits is small.
class RigChange {
 public:
  RigChange(const Rig& before, const Rig& after);

  /// @pre `before` equals the rig that the change was made from
  Rig redone(Rig before) const;
  /// @pre `after` equals the rig that the change was made to
  Rig undone(Rig after) const;
  bool keeps_whole_rigs() const { return whole_ != nullptr; }

 private:
  using Value = std::variant<Quantity, Choice, std::string>;
  struct FieldChange {
    std::string path;
    Value before, after;
  };
  static Rig with(Rig rig, const std::vector<FieldChange>& fields, Value FieldChange::*side);

  std::vector<FieldChange> fields_;  ///< in the order of all_fields()
  std::unique_ptr<const std::pair<Rig, Rig>> whole_;
};

}  // namespace gazewright
