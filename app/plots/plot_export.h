#pragma once

#include <QDate>
#include <QString>

#include "core/rig/rig.h"

namespace gazewright {

/// What a picture says in small type: the rig's title, the variant or revision where there is one,
/// the conditions (volts and ratios, those that are known) and the day.
QString picture_caption(const Rig& rig, const QString& variant, const QDate& day);

}  // namespace gazewright
