#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <span>
#include <vector>

#include "app/plots/plot_view.h"
#include "app/window/variant_analyses.h"
#include "core/analysis/compare.h"

namespace gazewright {

class Document;
class VariantsDialog;

/// Everything the window does with variants: pins, renames, restores and removes them, each an
/// undoable step, keeps their analyses and the comparison in step, and knows which are in the
/// plots.
class VariantsDesk : public QObject {
  Q_OBJECT
 public:
  static constexpr std::size_t kMostInPlots = 4;

  VariantsDesk(Document& document, QWidget* window);

  void pin();
  void openDialog();
  VariantsDialog& dialog();  ///< made when first asked for

  void rename(std::size_t variant, const QString& name);
  void setNote(std::size_t variant, const QString& note);
  void restore(std::size_t variant, bool pinFirst);
  void remove(std::size_t variant);
  void setInPlots(std::size_t variant, bool on);
  bool isInPlots(std::size_t variant) const;

  void rigChanged();
  void setPresent(std::shared_ptr<const Analysis> analysis);
  /// What the plots draw; valid until curvesChanged().
  std::span<const VariantCurves> curves() const { return curves_; }

  bool isAnalysed() const;  ///< every variant is
  void analyseAll();        ///< for the sheet; analysed() tells
  Comparison comparison() const;

 signals:
  void curvesChanged();
  void analysed();
  void dialogMade(gazewright::VariantsDialog* dialog);
  void told(const QString& notice);  ///< something worth a line in the window

 private:
  void connectDialog();
  bool isShown() const;  ///< the dialog is
  bool mayPin();
  void say(const QString& problem);
  void want();
  void analysisCame();
  std::size_t countInPlots() const;
  void fillCurves();
  void refreshSoon();
  void refresh();

  Document& document_;
  VariantAnalyses analyses_;
  QWidget* window_;
  VariantsDialog* dialog_ = nullptr;
  QTimer refresh_;
  std::shared_ptr<const Analysis> present_ = std::make_shared<const Analysis>();
  std::vector<Variant> seen_;
  std::vector<std::shared_ptr<const Rig>> in_plots_;
  std::vector<VariantCurves> curves_;
  std::vector<std::shared_ptr<const Analysis>> drawn_;  ///< keeps what curves_ points to
  bool for_sheet_ = false;
};

}  // namespace gazewright
