#pragma once

#include <QDate>
#include <QString>

#include "core/rig/rig.h"

namespace gazewright {

/// What a picture's title says after the plot's: "pan and tilt, variant C".
QString picture_subject(const QString& variant);

/// What a picture says in small type: the rig's title, the variant or revision where there is one,
/// the conditions (volts, ratios and the drives' limits, those that are known) and the day.
QString picture_caption(const Rig& rig, const QString& variant, const QDate& day);

}  // namespace gazewright
