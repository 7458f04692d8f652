#pragma once

#include <QCoreApplication>

namespace gazewright {

/// Translation context of free functions in app/plots and app/sheet: Plots::tr("Time").
struct Plots {
  Q_DECLARE_TR_FUNCTIONS(Plots)
};

}  // namespace gazewright
