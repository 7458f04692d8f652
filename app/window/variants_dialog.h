#pragma once

#include "app/window/seen_dialog.h"
#include "app/window/variants_model.h"

class QLabel;
class QTableView;
class QToolButton;

namespace gazewright {

/// The present design and its variants side by side, beside the window. It edits nothing itself:
/// what is wanted goes out as signals.
class VariantsDialog : public SeenDialog {
  Q_OBJECT
 public:
  explicit VariantsDialog(QWidget* parent = nullptr);

  void setContent(const std::vector<VariantHead>& heads, Comparison comparison);
  void setProblem(const QString& text);  ///< a sentence under the table; empty: none
  bool isEditing() const;                ///< a name or note is being typed
  VariantsModel& model() { return *model_; }
  QTableView& table() { return *table_; }
  int current() const;  ///< the variant of the current column; −1: the present design, or none
  void setCurrent(int variant);

 signals:
  void pinAsked();
  void restoreAsked(int variant, bool pinFirst);
  void removeAsked(int variant);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void buildTable();
  void connectParts();
  void fitButtons();
  void fitColumns();
  void copy() const;

  VariantsModel* model_;
  QTableView* table_;
  QToolButton *pin_, *restore_, *pin_and_restore_, *remove_, *copy_;
  QLabel *empty_, *problem_;
};

}  // namespace gazewright
