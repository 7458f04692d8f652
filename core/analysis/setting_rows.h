#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/analysis/drive_settings.h"

namespace gazewright {

/// A value with where it is from, or why there is none.
struct Known {
  std::optional<double> value{};  ///< SI; may be infinite: no such limit
  std::string why{};              ///< "needs pan.motor.pole_pairs"
  std::string from{};
  bool is_default = false;

  /// The same made into something else.
  Known times(double factor) const;
};

struct SettingUnit {
  std::string_view si, shown;
};

/// Makes the rows of one axis. `<axis>` in paths and ids is filled in.
class SettingRows {
 public:
  SettingRows(const Rig& rig, const Analysis& analysis, Axis axis);

  void group(std::string_view name) { group_ = name; }
  Known field(std::string_view path) const;
  Known figure(std::string_view id) const;
  /// From the first field; empty where any of them lacks a value.
  Known derived(std::initializer_list<std::string_view> paths, double value) const;
  double value(std::string_view path) const;  ///< NaN where missing

  DriveSetting& add(std::string_view key, std::string_view label, const SettingUnit& unit,
                    const Known& known, std::string_view formula = {});
  /// A field as it is, with its own label and unit.
  DriveSetting& plain(std::string_view key, std::string_view path, std::string_view label = {});
  DriveSetting& say(std::string_view key, std::string_view label, std::string text,
                    std::string_view from = {});

  const Analysis& analysis() const { return analysis_; }
  Axis axis() const { return axis_; }
  std::vector<DriveSetting> taken() && { return std::move(rows_); }

 private:
  Rig rig_;  ///< with defaults
  const Analysis& analysis_;
  Axis axis_;
  std::string_view group_;
  std::vector<DriveSetting> rows_;
};

/// A remark beside a value; what a row without one says stays.
void remark(DriveSetting& row, const std::string& text);
/// The value to begin with, where there is a value.
void begin_with(DriveSetting& row, double part);

}  // namespace gazewright
