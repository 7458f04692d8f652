#include "app/window/material_rows.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <charconv>

#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"
#include "core/data/materials.h"
#include "core/files/rig_file.h"

namespace gazewright {
namespace {

constexpr std::string_view kList = "materials[";

QString material_title(const Rig& rig, std::size_t index) {
  const std::string& name = rig.materials[index].name;
  return name.empty() ? QCoreApplication::translate("Materials", "Material %1").arg(index + 1)
                      : QCoreApplication::translate("Materials", "Material: %1")
                            .arg(QString::fromStdString(name));
}

QString names_of(const Rig& rig) {
  QStringList names;
  for (const std::string& name : material_names(rig)) names << QString::fromStdString(name);
  return names.join(QStringLiteral(", "));
}

}  // namespace

std::string material_path(std::size_t index) {
  return std::string(kList) + std::to_string(index) + "]";
}

std::optional<std::size_t> material_index(std::string_view path) {
  if (!path.starts_with(kList)) return std::nullopt;
  const std::string_view digits = path.substr(kList.size());
  std::size_t index = 0;
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), index);
  return read.ec == std::errc() ? std::optional(index) : std::nullopt;
}

MaterialHead::MaterialHead(Document& document, std::size_t index)
    : document_(document), index_(index) {
  setObjectName(QString::fromStdString(material_path(index)) + QStringLiteral(" head"));
  title_ = heading({});
  title_->setWordWrap(true);  // a long name must not widen the card
  auto* away = textButton(tr("Remove"), tr("Take this material away; undo brings it back"));
  away->setObjectName(QStringLiteral("material.remove"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 6, 0, 0);
  line->addWidget(title_, 1);
  line->addWidget(away);
  connect(away, &QToolButton::clicked, this, [this] {
    const Rig& rig = document_.rig();
    document_.edit(tr("remove %1").arg(material_title(rig, index_)),
                   with_material_removed(rig, index_));
  });
  refresh();
}

void MaterialHead::refresh() {
  if (index_ < document_.rig().materials.size())
    title_->setText(material_title(document_.rig(), index_));
}

MaterialAdd::MaterialAdd(Document& document)
    : document_(document),
      hint_(quietLabel()),
      problem_(sentencesLabel(tr("What is wrong with the arm's material"))) {
  setObjectName(QStringLiteral("materials.row"));
  setKind(problem_, "problem");
  hint_->setWordWrap(true);
  add_ = textButton(tr("Add a material"),
                    tr("A material of the rig's own, to start with the values of the arm's"));
  add_->setObjectName(QStringLiteral("material.add"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(problem_);
  layout->addWidget(hint_);
  layout->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QToolButton::clicked, this,
          [this] { document_.edit(tr("add a material"), with_new_material(document_.rig())); });
  refresh();
}

void MaterialAdd::refresh() {
  const Rig& rig = document_.rig();
  hint_->setText(tr("Materials to choose from: %1.").arg(names_of(rig)));
  const QString problem = QString::fromStdString(material_problem(rig, rig.arm.material));
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
  add_->setEnabled(rig.materials.size() < kMostMaterials);
}

}  // namespace gazewright
