#include "app/window/plan_row.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/plots/charts.h"
#include "app/window/widgets.h"

namespace gazewright {

PlanRow::PlanRow(Axis axis, QWidget* parent)
    : CardRow(parent), axis_(axis), steps_(sentencesLabel(tr("Homing plan"))) {
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(".homing plan"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(heading(tr("Homing plan")));
  layout->addWidget(steps_);
}

void PlanRow::showCost(const Analysis& analysis) {
  QStringList lines;
  for (const std::string& step : analysis.homing[static_cast<std::size_t>(axis_)]) {
    lines << tr("%1. %2").arg(lines.size() + 1).arg(reason_text(step));
  }
  steps_->setText(lines.join('\n'));
}

QString PlanRow::text() const { return steps_->text(); }

}  // namespace gazewright
