#include "app/window/missing_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

#include "app/window/missing_links.h"
#include "app/window/widgets.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

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
  text_ = linksLabel(tr("Inputs that are missing"));
  connect(text_, &QLabel::linkActivated, this, &MissingBar::fieldChosen);
  connect(text_, &QLabel::linkHovered, this, &MissingBar::explain);
  enter_ = textButton(tr("Enter it"), tr("Go to the first of the fields to fill in"));
  connect(enter_, &QToolButton::clicked, this,
          [this] { emit fieldChosen(QString::fromStdString(path())); });
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 3, 6, 3);
  row->addWidget(text_, 1);
  row->addWidget(enter_);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  hide();
}

void MissingBar::setAnalysis(const Rig& rig, const Analysis& analysis) {
  missing_ = moves_wait(analysis) ? missing_inputs(analysis) : MissingInputs();
  setVisible(!missing_.first.empty());
  if (missing_.first.empty()) return;
  const QString waits = waiting_text(missing_.figures, missing_.findings);
  const QString head = tr("? %n inputs are missing; without them unknown: %1.", nullptr,
                          static_cast<int>(missing_.all.size()))
                           .arg(waits);
  const QString first =
      missing_.are_few()
          ? tr("Fill in:")
          : tr("Fill in first, then nothing else is missing for %1:")
                .arg(waiting_text(missing_.of_first_figures, missing_.of_first_findings));
  text_->setText(QStringLiteral("%1 %2<br>%3")
                     .arg(head.toHtmlEscaped(), first.toHtmlEscaped(),
                          missing_links(rig, missing_.first, true)));
}

/// The numbers behind an entry.
void MissingBar::explain(const QString& path) {
  const auto at = std::ranges::find(missing_.first, path.toStdString(), &MissingEntry::path);
  text_->setToolTip(
      at == missing_.first.end()
          ? QString()
          : tr("Unknown without it: %1").arg(waiting_text(at->figures, at->findings)));
}

const std::string& MissingBar::path() const {
  static const std::string none;
  return missing_.first.empty() ? none : missing_.first.front().path;
}

QString MissingBar::text() const { return isHidden() ? QString() : plain_text(*text_); }

}  // namespace gazewright
