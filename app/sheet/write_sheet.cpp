#include "app/sheet/write_sheet.h"

#include <QApplication>
#include <cstdio>
#include <memory>

#include "app/sheet/sheet.h"

namespace gazewright {
namespace {

/// Qt's remarks on the desktop it finds do not belong in a batch program's output.
void pass_on_faults_only(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtCriticalMsg || type == QtFatalMsg) std::fprintf(stderr, "%s\n", qPrintable(text));
}

/// A QApplication for programs that have none; plots are widgets, seen or not. It needs no display.
std::unique_ptr<QApplication> make_application() {
  if (QCoreApplication::instance() != nullptr) return nullptr;
  qputenv("QT_QPA_PLATFORM", "offscreen");  // whatever the desktop asks for: nothing is shown
  qInstallMessageHandler(pass_on_faults_only);
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
