#include "app/window/missing.h"

#include <QCoreApplication>
#include <algorithm>

namespace gazewright {
namespace {

/// Whether an input of the figure table, in which `<axis>` stands for pan or tilt, is this path.
bool stands_for(std::string_view input, std::string_view path) {
  constexpr std::string_view kAxis = "<axis>";
  if (!input.starts_with(kAxis)) return input == path;
  const std::string_view rest = input.substr(kAxis.size());
  return path == "pan" + std::string(rest) || path == "tilt" + std::string(rest);
}

}  // namespace

QString missing_cost(const Analysis& analysis, std::string_view path) {
  int waiting = 0;
  QString example;
  const std::string_view axis = path.substr(0, path.find('.'));
  for (const Figure& figure : analysis.figures) {
    if (figure.value || !figure.info) continue;
    const bool otherAxis = (axis == "pan" && figure.id.starts_with("tilt.")) ||
                           (axis == "tilt" && figure.id.starts_with("pan."));
    const auto& inputs = figure.info->inputs;
    const bool waits = figure.because.find(path) != std::string::npos ||
                       (!otherAxis && std::ranges::any_of(inputs, [&](std::string_view input) {
                         return stands_for(input, path);
                       }));
    if (!waits) continue;
    if (waiting++ == 0) {
      example = QString::fromUtf8(figure.info->label.data(), qsizetype(figure.info->label.size()));
    }
  }
  if (waiting == 0) return {};
  const auto tr = [](const char* text) { return QCoreApplication::translate("Missing", text); };
  if (waiting == 1) return tr("? missing: leaves “%1” unknown.").arg(example);
  return tr("? missing: leaves %1 figures unknown, such as “%2”.").arg(waiting).arg(example);
}

}  // namespace gazewright
