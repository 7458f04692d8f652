#pragma once

#include "core/analysis/setting_rows.h"

/// Groups of settings that have a file of their own.
namespace gazewright {

void loop_settings(SettingRows& rows, bool encoder_at_output);
void homing_settings(SettingRows& rows, const Homing& homing, bool encoder_at_output);
void bus_settings(SettingRows& rows);

}  // namespace gazewright
