#pragma once

#include <QFrame>
#include <string>

#include "app/plots/theme.h"
#include "core/analysis/analysis.h"
#include "core/analysis/open_verdicts.h"

class QLabel;
class QTableView;

namespace gazewright {

class FindingsDelegate;
class FindingsModel;

/// The findings, worst first, with their count and the reason of the one that is selected.
class FindingsView : public QFrame {
  Q_OBJECT
 public:
  explicit FindingsView(QWidget* parent = nullptr);

  void setFindings(const std::vector<Finding>& findings, bool remediesAreIn);
  /// Marks verdicts that the doubt may turn, until the next findings.
  void setOpen(std::vector<OpenVerdict> open);
  void setTheme(const Theme& theme);
  void setDimmed(bool dimmed);
  QString summary() const;
  QTableView* table() const { return table_; }
  /// Offers the remedies of the selected finding as a menu, or applies the only one.
  void applyRemedyOfSelected();
  void selectFirst();

 signals:
  void findingChosen(const QString& part);
  void remedyChosen(const gazewright::Remedy& remedy);
  void whyAsked();  ///< of the selected finding

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fitText();
  void makeTable();
  void currentChanged();
  void applyRemedy(int row, int remedy);

  FindingsModel* model_;
  FindingsDelegate* delegate_;
  QTableView* table_ = nullptr;
  QLabel *summary_, *because_, *empty_;
  std::string current_id_;
  bool filling_ = false;
};

}  // namespace gazewright
