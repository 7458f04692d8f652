#include "app/sheet/write_sheet.h"

#include <QApplication>
#include <memory>

#include "app/sheet/sheet.h"

namespace gazewright {
namespace {

/// A QApplication for programs that have none; plots are widgets, seen or not. It needs no display.
std::unique_ptr<QApplication> make_application() {
  if (QCoreApplication::instance() != nullptr) return nullptr;
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  static int count = 1;
  static char name[] = "gazewright-batch";
  static char* arguments[] = {name, nullptr};
  return std::make_unique<QApplication>(count, arguments);
}

}  // namespace

std::optional<Diagnostic> write_sheet(const Rig& rig, const Analysis& analysis,
                                      const std::array<RatioSweep, 2>* sweeps,
                                      const std::filesystem::path& out,
                                      const SheetOptions& options) {
  const auto application = make_application();
  const QByteArray bytes = sheet_pdf({rig, analysis, sweeps, options});
  return save_text(out, {bytes.constData(), std::size_t(bytes.size())});
}

}  // namespace gazewright
