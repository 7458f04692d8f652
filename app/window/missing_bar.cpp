#include "app/window/missing_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

#include "app/plots/text.h"
#include "app/window/parts.h"
#include "app/window/widgets.h"
#include "core/analysis/explain.h"

namespace gazewright {
namespace {

/// "rotor inertia (pan motor)", "the bodies that turn with tilt".
QString entry_name(const Rig& rig, const std::string& path) {
  if (path == "on_tilt") return MissingBar::tr("the bodies that turn with tilt");
  if (path == "on_pan") return MissingBar::tr("the bodies that turn with pan");
  const QString part = mid_sentence(part_title(rig, card_of(path)));
  const FieldInfo* info = find_info(path);
  return info ? QStringLiteral("%1 (%2)").arg(mid_sentence(worded(info->label)), part) : part;
}

/// Whether plots and headline have nothing to show for want of inputs.
bool moves_wait(const Analysis& analysis) {
  return std::ranges::any_of(kAxes, [&](Axis axis) {
    const Figure* settle = analysis.figure(std::string(name_of(axis)) + ".step.settle_time");
    return settle && !settle->value && begins_as("needs %1", settle->because);
  });
}

}  // namespace

MissingBar::MissingBar(QWidget* parent) : QFrame(parent) {
  setKind(this, "card");
  setObjectName(QStringLiteral("missing"));
  text_ = new QLabel;
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::PlainText);
  enter_ = textButton(tr("Enter it"), tr("Go to the field that most figures wait for"));
  connect(enter_, &QToolButton::clicked, this,
          [this] { emit fieldChosen(QString::fromStdString(path_)); });
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 3, 6, 3);
  row->addWidget(text_, 1);
  row->addWidget(enter_);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  hide();
}

void MissingBar::setAnalysis(const Rig& rig, const Analysis& analysis) {
  const std::vector<MissingEntry> entries =
      moves_wait(analysis) ? missing_entries(analysis) : std::vector<MissingEntry>();
  setVisible(!entries.empty());
  if (entries.empty()) return path_.clear();
  path_ = entries.front().path;
  text_->setText(
      tr("? Inputs are missing: %1. Most depends on %2: without it %n figures are unknown.",
         nullptr, static_cast<int>(entries.front().figures))
          .arg(entries.size())
          .arg(entry_name(rig, path_)));
}

QString MissingBar::text() const { return isHidden() ? QString() : text_->text(); }

}  // namespace gazewright
