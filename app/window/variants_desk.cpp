#include "app/window/variants_desk.h"

#include <algorithm>

#include "app/window/document.h"
#include "app/window/variant_edits.h"
#include "app/window/variants_dialog.h"
#include "core/files/text_check.h"

namespace gazewright {
namespace {

constexpr int kRefreshAfter_ms = 80;

QString quoted_name(const Rig& rig, std::size_t variant) {
  return QStringLiteral("“%1”").arg(QString::fromStdString(shown_name(rig, variant)));
}

}  // namespace

VariantsDesk::VariantsDesk(Document& document, QWidget* window)
    : QObject(window), document_(document), window_(window) {
  refresh_.setSingleShot(true);
  refresh_.setInterval(kRefreshAfter_ms);
  connect(&refresh_, &QTimer::timeout, this, &VariantsDesk::refresh);
  connect(&analyses_, &VariantAnalyses::changed, this, &VariantsDesk::analysisCame);
}

VariantsDialog& VariantsDesk::dialog() {
  if (!dialog_) {
    dialog_ = new VariantsDialog(window_);
    connectDialog();
    emit dialogMade(dialog_);
  }
  return *dialog_;
}

bool VariantsDesk::isShown() const { return dialog_ && dialog_->isVisible(); }

void VariantsDesk::connectDialog() {
  connect(dialog_, &VariantsDialog::shownOrHidden, this, [this] {
    want();
    refresh();
  });
  connect(dialog_, &VariantsDialog::pinAsked, this, &VariantsDesk::pin);
  connect(dialog_, &VariantsDialog::restoreAsked, this, [this](int variant, bool pinFirst) {
    restore(static_cast<std::size_t>(variant), pinFirst);
  });
  connect(dialog_, &VariantsDialog::removeAsked, this,
          [this](int variant) { remove(static_cast<std::size_t>(variant)); });
  // What a cell starts goes on when the cell's editor is gone.
  const VariantsModel* model = &dialog_->model();
  connect(model, &VariantsModel::nameEntered, this, [this](int variant, const QString& name) {
    rename(static_cast<std::size_t>(variant), name);
  });
  connect(model, &VariantsModel::noteEntered, this, [this](int variant, const QString& note) {
    setNote(static_cast<std::size_t>(variant), note);
  });
  connect(model, &VariantsModel::inPlotsSwitched, this,
          [this](int variant, bool on) { setInPlots(static_cast<std::size_t>(variant), on); });
}

void VariantsDesk::openDialog() {
  dialog().show();
  dialog_->raise();
  dialog_->activateWindow();
}

void VariantsDesk::say(const QString& problem) {
  if (dialog_) dialog_->setProblem(problem);
  if (!problem.isEmpty() && !isShown()) emit told(problem);
}

/// Says why not.
bool VariantsDesk::mayPin() {
  const Rig& rig = document_.rig();
  if (rig.variants.size() >= kMostVariants) {
    say(tr("A rig holds %1 variants at most. Remove one first.").arg(kMostVariants));
    return false;
  }
  if (const auto like = variant_like(rig, *design_of(rig))) {
    say(tr("The present design is pinned already, as %1.").arg(quoted_name(rig, *like)));
    return false;
  }
  if (write_rig(with_variant_pinned(rig, "x")).size() > kLargestFile_bytes) {
    say(tr("With one more variant the rig file would be larger than 1 MiB. Remove one first."));
    return false;
  }
  say({});
  return true;
}

void VariantsDesk::pin() {
  if (!mayPin()) return;
  const Rig after = with_variant_pinned(
      document_.rig(), free_variant_name(document_.rig(), tr("Variant").toStdString()));
  const std::size_t variant = after.variants.size() - 1;
  if (countInPlots() < kMostInPlots) in_plots_.push_back(after.variants.back().rig);
  document_.edit(tr("pin %1").arg(quoted_name(after, variant)), after);
  if (isShown()) {
    dialog_->setCurrent(static_cast<int>(variant));
  } else {
    emit told(tr("Pinned as %1: it stays in the plots while you go on. Ctrl+Shift+D compares.")
                  .arg(quoted_name(after, variant)));
  }
}

void VariantsDesk::rename(std::size_t variant, const QString& name) {
  if (variant >= document_.rig().variants.size()) return;
  const Rig& rig = document_.rig();
  const std::string wanted = name.toStdString();
  if (rig.variants[variant].name == wanted) return;
  if (name.isEmpty()) return say(tr("A variant needs a name."));
  if (std::ranges::find(rig.variants, wanted, &Variant::name) != rig.variants.end())
    return say(tr("There is a variant “%1” already.").arg(name));
  say({});
  document_.edit(tr("rename %1").arg(quoted_name(rig, variant)),
                 with_variant_named(rig, variant, wanted));
}

void VariantsDesk::setNote(std::size_t variant, const QString& note) {
  if (variant >= document_.rig().variants.size()) return;
  say({});
  document_.edit(tr("note of %1").arg(quoted_name(document_.rig(), variant)),
                 with_variant_noted(document_.rig(), variant, note.toStdString()));
}

void VariantsDesk::restore(std::size_t variant, bool pinFirst) {
  if (variant >= document_.rig().variants.size()) return;
  const Rig rig = document_.rig();
  const bool pins = pinFirst && !variant_like(rig, *design_of(rig));
  if (pins && !mayPin()) return;
  say({});
  const Rig from =
      pins ? with_variant_pinned(rig, free_variant_name(rig, tr("Before").toStdString())) : rig;
  document_.edit(tr("restore %1").arg(quoted_name(rig, variant)),
                 with_variant_restored(from, variant));
}

void VariantsDesk::remove(std::size_t variant) {
  if (variant >= document_.rig().variants.size()) return;
  say({});
  const Rig rig = document_.rig();
  document_.edit(tr("remove %1").arg(quoted_name(rig, variant)),
                 with_variant_removed(rig, variant));
}

bool VariantsDesk::isInPlots(std::size_t variant) const {
  return std::ranges::find(in_plots_, document_.rig().variants[variant].rig) != in_plots_.end();
}

std::size_t VariantsDesk::countInPlots() const {
  std::size_t count = 0;
  for (std::size_t i = 0; i < document_.rig().variants.size(); ++i) count += isInPlots(i) ? 1 : 0;
  return count;
}

void VariantsDesk::setInPlots(std::size_t variant, bool on) {
  if (variant >= document_.rig().variants.size()) return;
  const std::vector<Variant>& variants = document_.rig().variants;
  if (on && countInPlots() >= kMostInPlots)
    return say(tr("The plots show %1 variants at most. Hide one first.").arg(kMostInPlots));
  say({});
  std::erase(in_plots_, variants[variant].rig);
  if (on) in_plots_.push_back(variants[variant].rig);
  want();
  fillCurves();
  refreshSoon();
}

void VariantsDesk::rigChanged() {
  if (document_.rig().variants == seen_) return refreshSoon();
  seen_ = document_.rig().variants;
  want();
  fillCurves();
  refresh();
}

void VariantsDesk::setPresent(std::shared_ptr<const Analysis> analysis) {
  present_ = std::move(analysis);
  refreshSoon();
}

/// All where somebody looks at all of them, else those in the plots.
void VariantsDesk::want() {
  std::vector<std::shared_ptr<const Rig>> rigs;
  const std::vector<Variant>& variants = document_.rig().variants;
  for (std::size_t i = 0; i < variants.size(); ++i)
    if (for_sheet_ || isShown() || isInPlots(i)) rigs.push_back(variants[i].rig);
  analyses_.want(std::move(rigs));
}

void VariantsDesk::analysisCame() {
  fillCurves();
  refreshSoon();
  if (!for_sheet_ || !isAnalysed()) return;
  for_sheet_ = false;
  emit analysed();
}

void VariantsDesk::fillCurves() {
  const std::vector<Variant>& variants = document_.rig().variants;
  const bool were_none = curves_.empty();
  curves_.clear();
  std::vector<std::shared_ptr<const Analysis>> drawn;
  for (std::size_t i = 0; i < variants.size() && curves_.size() < kMostInPlots; ++i) {
    auto analysis = isInPlots(i) ? analyses_.of(variants[i].rig) : nullptr;
    if (analysis == nullptr) continue;
    curves_.push_back({QString::fromStdString(shown_name(document_.rig(), i)), analysis.get(),
                       variants[i].rig.get()});
    drawn.push_back(std::move(analysis));
  }
  drawn_ = std::move(drawn);
  if (!were_none || !curves_.empty()) emit curvesChanged();
}

bool VariantsDesk::isAnalysed() const {
  return std::ranges::all_of(document_.rig().variants, [this](const Variant& variant) {
    return analyses_.of(variant.rig) != nullptr;
  });
}

void VariantsDesk::analyseAll() {
  for_sheet_ = true;
  want();
}

Comparison VariantsDesk::comparison() const {
  std::vector<const Analysis*> variants;
  variants.reserve(document_.rig().variants.size());
  for (const Variant& variant : document_.rig().variants)
    variants.push_back(analyses_.of(variant.rig).get());
  return compare(document_.rig(), *present_, variants);
}

void VariantsDesk::refreshSoon() {
  if (isShown() && !refresh_.isActive()) refresh_.start();
}

void VariantsDesk::refresh() {
  if (!isShown()) return;
  if (dialog_->isEditing()) return refresh_.start();
  const Rig& rig = document_.rig();
  std::vector<VariantHead> heads;
  heads.reserve(rig.variants.size());
  for (std::size_t i = 0; i < rig.variants.size(); ++i)
    heads.push_back({QString::fromStdString(rig.variants[i].name),
                     QString::fromStdString(rig.variants[i].note), isInPlots(i)});
  dialog_->setContent(heads, comparison());
}

}  // namespace gazewright
