#include "app/window/material_names.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/window/document.h"
#include "app/window/widgets.h"
#include "core/data/data_library.h"
#include "core/data/materials.h"

namespace gazewright {
namespace {

QString names_of(const Rig& rig) {
  QStringList names;
  for (const std::string& name : material_names(rig)) {
    const QString shown = QString::fromStdString(name);
    names << (is_own_row("materials", name) ? MaterialNames::tr("%1 (own)").arg(shown) : shown);
  }
  return names.join(QStringLiteral(", "));
}

}  // namespace

MaterialNames::MaterialNames(Document& document)
    : document_(document),
      hint_(quietLabel()),
      problem_(sentencesLabel(tr("What is wrong with the arm's material"))) {
  setObjectName(QStringLiteral("materials.row"));
  setKind(problem_, "problem");
  hint_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(problem_);
  layout->addWidget(hint_);
  refresh();
}

void MaterialNames::refresh() {
  const Rig& rig = document_.rig();
  hint_->setText(tr("Materials to choose from: %1.").arg(names_of(rig)));
  const QString problem = QString::fromStdString(material_problem(rig, rig.arm.material));
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
}

}  // namespace gazewright
