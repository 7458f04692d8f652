#pragma once

#include <QString>

#include "core/analysis/drive_settings.h"

/// Settings of the drives as sheet and window show them.
namespace gazewright {

/// "14 A"; what stands in place of a value; "–" where the axis has no such setting.
QString setting_text(const std::optional<DriveSetting>& setting);
/// For the first power-up: "2.8 A", "same", or "–" where there is no value.
QString first_text(const std::optional<DriveSetting>& setting);
/// A remark beside the value.
QString setting_remark(const std::optional<DriveSetting>& setting);
/// The field or figure that it comes from, and the formula: "loop.speed_gain: K/N²".
QString setting_from(const SettingPair& pair);

}  // namespace gazewright
