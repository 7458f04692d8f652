#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <algorithm>

#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/path_import.h"
#include "app/window/plots_panel.h"
#include "app/window/shelf_panel.h"
#include "core/files/part_file.h"

/// What becomes of a file that is dropped on the window.
namespace gazewright {
namespace {

constexpr qint64 kEnough_bytes = 4096;

QList<QByteArray> first_lines(const QString& file) {
  QFile source(file);
  return source.open(QIODevice::ReadOnly) ? source.read(kEnough_bytes).split('\n')
                                          : QList<QByteArray>();
}

/// A part of the shelf says so in a key of its own.
bool is_part(const QString& file) {
  return std::ranges::any_of(first_lines(file),
                             [](const QByteArray& line) { return line.startsWith("shelf:"); });
}

/// Time and angle alone; a target's path has pan and tilt.
bool has_two_columns(const QString& file) {
  for (const QByteArray& line : first_lines(file)) {
    if (line.trimmed().isEmpty()) continue;
    return std::max({line.count(','), line.count(';'), line.count('\t')}) == 1;
  }
  return false;
}

}  // namespace

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  const QString file = urls.isEmpty() ? QString() : urls.front().toLocalFile();
  const auto ends = [&](const char* ending) {
    return file.endsWith(QLatin1String(ending), Qt::CaseInsensitive);
  };
  const QPoint on_plots = plots_->mapFrom(this, event->position().toPoint());
  if (ends(".csv") && (plots_->rect().contains(on_plots) || has_two_columns(file)))
    return plots_->compareLog(file);
  if (ends(".csv")) return takePath(file);
  if (!ends(".yaml") && !ends(".yml")) {
    return messages_->showFault(
        tr("%1 is nothing that the window takes. Drop a rig or a part of the shelf, which end in "
           ".yaml, a target's path with time, pan and tilt, or a measured move with time and "
           "angle, "
           "which end in .csv.")
            .arg(urls.isEmpty() ? tr("That") : urls.front().fileName()));
  }
  if (is_part(file)) return takePart(file);
  if (mayLeaveRig()) openFile(file);
}

void MainWindow::takePath(const QString& file) {
  const QString problem = import_path(document_, file);
  if (problem.isEmpty()) return select(QStringLiteral("tracking"));
  messages_->showFault(tr("No path taken. %1").arg(problem));
}

void MainWindow::takePart(const QString& file) {
  const LoadedPart loaded = load_part(file.toStdString());
  if (!loaded.part) {
    return messages_->showProblems(
        tr("%1 did not get on the shelf. What to mend:").arg(QFileInfo(file).fileName()),
        loaded.diagnostics);
  }
  shelf().add(*loaded.part);
  showShelf();
}

}  // namespace gazewright
