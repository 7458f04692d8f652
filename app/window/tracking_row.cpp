#include "app/window/tracking_row.h"

#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/plots/format.h"
#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"
#include "core/files/path_csv.h"
#include "core/files/text_check.h"

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
  add_ = textButton(tr("Add a detector"), tr("Another way of finding the target, to compare"));
  add_->setObjectName(QStringLiteral("detector.add"));
  remove_ = textButton(tr("Remove the last"), tr("Take the last detector off the rig"));
  remove_->setObjectName(QStringLiteral("detector.remove"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* buttons = new QHBoxLayout;
  for (QToolButton* button : {add_, remove_}) buttons->addWidget(button);
  buttons->addStretch();
  layout->addLayout(buttons);
  layout->addWidget(path_);
  layout->addWidget(import, 0, Qt::AlignLeft);
  layout->addWidget(problem_);
  problem_->hide();
  connect(import, &QToolButton::clicked, this, &TrackingRow::choosePath);
  connect(add_, &QToolButton::clicked, this,
          [this] { document_.edit(tr("add a detector"), with_new_detector(document_.rig())); });
  connect(remove_, &QToolButton::clicked, this, [this] {
    const std::size_t count = document_.rig().detectors.size();
    if (count > 0)
      document_.edit(tr("remove a detector"), with_detector_removed(document_.rig(), count - 1));
  });
  refresh();
}

void TrackingRow::refresh() {
  const Rig& rig = document_.rig();
  const std::vector<PathPoint>& points = rig.tracking.path;
  path_->setText(points.empty() ? tr("No path is entered.")
                                : tr("Path of %1 points, %2 long.")
                                      .arg(points.size())
                                      .arg(format_value(points.back().time_s.si, "s", "s")));
  add_->setEnabled(rig.detectors.size() < kMostDetectors);
  remove_->setEnabled(!rig.detectors.empty());
}

void TrackingRow::choosePath() {
  const QString file =
      QFileDialog::getOpenFileName(this, tr("Import a path"), {}, tr("CSV (*.csv);;All files (*)"));
  if (!file.isEmpty()) importPath(file);
}

void TrackingRow::importPath(const QString& file) {
  QFile in(file);
  const bool opened = in.open(QIODevice::ReadOnly);
  const QByteArray text = in.read(kLargestFile_bytes + 1);  // one more, so that more is seen
  QString problem;
  if (!opened || in.error() != QFileDevice::NoError) {
    problem = tr("%1 cannot be read: %2").arg(file, in.errorString());
  } else {
    auto read = read_path_csv({text.constData(), std::size_t(text.size())}, file.toStdString());
    if (const auto* points = std::get_if<std::vector<PathPoint>>(&read)) {
      document_.edit(tr("import a path"), with_path(document_.rig(), *points));
    } else {
      problem = QString::fromStdString(to_text(std::get<Diagnostic>(read)));
    }
  }
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
}

}  // namespace gazewright
