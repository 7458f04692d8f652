#pragma once

#include <QCoreApplication>
#include <QString>
#include <string_view>

namespace gazewright {

/// Translation context of free functions in app/plots and app/sheet: Plots::tr("Time").
struct Plots {
  Q_DECLARE_TR_FUNCTIONS(Plots)
};

/// Text of core, which is UTF-8.
inline QString qstring(std::string_view text) {
  return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

}  // namespace gazewright
