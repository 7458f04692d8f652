#include "app/window/tracking_row.h"

#include <QFileDialog>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/plots/format.h"
#include "app/window/document.h"
#include "app/window/path_import.h"
#include "app/window/widgets.h"

namespace gazewright {

TrackingRow::TrackingRow(Document& document)
    : document_(document),
      path_(quietLabel()),
      problem_(sentencesLabel(tr("What is wrong with the path"))) {
  setObjectName(QStringLiteral("tracking.row"));
  setKind(problem_, "problem");
  path_->setWordWrap(true);
  auto* import = textButton(tr("Import a path…"),
                            tr("CSV: a line for each point, time in seconds, pan and tilt in "
                               "degrees. The points go into the rig."));
  import->setObjectName(QStringLiteral("tracking.import"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(path_);
  layout->addWidget(import, 0, Qt::AlignLeft);
  layout->addWidget(problem_);
  problem_->hide();
  connect(import, &QToolButton::clicked, this, &TrackingRow::choosePath);
  refresh();
}

void TrackingRow::refresh() {
  const std::vector<PathPoint>& points = document_.rig().tracking.path;
  path_->setText(points.empty()
                     ? tr("No path is entered.")
                     : tr("Path of %n points, %1 long.", nullptr, static_cast<int>(points.size()))
                           .arg(format_value(points.back().time_s.si, "s", "s")));
}

void TrackingRow::choosePath() {
  const QString file =
      QFileDialog::getOpenFileName(this, tr("Import a path"), {}, tr("CSV (*.csv);;All files (*)"));
  if (!file.isEmpty()) importPath(file);
}

void TrackingRow::importPath(const QString& file) {
  const QString problem = import_path(document_, file);
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
}

}  // namespace gazewright
