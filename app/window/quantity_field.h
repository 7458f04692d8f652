#pragma once

#include <string>

#include "app/window/card_row.h"
#include "core/rig/fields.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace gazewright {

class Document;

/// One quantity of the rig: label, value with unit, source, spread, and what is wrong with the last
/// entry. A bad entry changes nothing; Escape brings the last valid value back.
class QuantityField : public CardRow {
  Q_OBJECT
 public:
  QuantityField(Document& document, std::string path, const FieldInfo& info, const QString& label,
                const QString& part, QWidget* parent = nullptr);

  const std::string& path() const { return path_; }
  const FieldInfo& info() const { return info_; }
  QLineEdit* edit() const { return edit_; }
  QString errorText() const;
  void refresh() override;
  /// Says how many figures wait for this entry while it is missing.
  void showCost(const Analysis& analysis) override;

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fitWidth();
  void showQuantity();
  void commitValue(int drag_id = -1);
  void commitSpread();
  void commitSource(int index);
  bool stepBy(int steps);  ///< false: there is no number to step
  void showProblem(QLineEdit* edit, const QString& problem, bool adds_range = true);
  void clearProblem();
  QString help() const;
  QString unusualText() const;  ///< empty where the value is as usual
  const Quantity& quantity() const;

  Document& document_;
  std::string path_;
  const FieldInfo& info_;
  QString part_;
  QLabel *label_, *note_;
  QLineEdit *edit_ = nullptr, *spread_ = nullptr;
  QComboBox* source_;
  Quantity shown_;
  QString cost_;
  bool has_problem_ = false;
  int steps_id_ = -1;  ///< steps that follow each other are undone as one
};

}  // namespace gazewright
