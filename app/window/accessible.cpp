#include "app/window/accessible.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <algorithm>

#include "app/plots/dial_view.h"
#include "app/plots/format.h"
#include "app/plots/plot_view.h"
#include "app/window/drawing_panel.h"
#include "app/window/ratio_scale.h"

namespace gazewright {
namespace {

/// A picture whose words are its value: of a plot what it says, of the drawing what the chosen
/// handle reads, else the description.
class Pictured : public QAccessibleWidget {
 public:
  Pictured(QWidget* widget, QAccessible::Role role) : QAccessibleWidget(widget, role) {}
  QString text(QAccessible::Text kind) const override {
    if (kind == QAccessible::Value) {
      if (const auto* plot = qobject_cast<const PlotView*>(widget())) return plot->summary();
      if (auto* canvas = qobject_cast<DrawingCanvas*>(widget()))
        return canvas->readout().join(QStringLiteral(", "));
      return widget()->accessibleDescription();
    }
    return QAccessibleWidget::text(kind);
  }
};

class ScaleValue : public QAccessibleWidget, public QAccessibleValueInterface {
 public:
  explicit ScaleValue(RatioScale* scale) : QAccessibleWidget(scale, QAccessible::Slider) {}

  void* interface_cast(QAccessible::InterfaceType type) override {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
  }
  QString text(QAccessible::Text kind) const override {
    if (kind == QAccessible::Value)
      return scale().ratio() ? number_text(*scale().ratio(), 4) : QString();
    return QAccessibleWidget::text(kind);
  }
  QVariant currentValue() const override {
    return scale().ratio() ? QVariant(*scale().ratio()) : QVariant();
  }
  void setCurrentValue(const QVariant& value) override {
    emit scale().ratioMoved(std::clamp(value.toDouble(), RatioScale::kLeast, RatioScale::kMost),
                            -1);
  }
  QVariant maximumValue() const override { return RatioScale::kMost; }
  QVariant minimumValue() const override { return RatioScale::kLeast; }
  QVariant minimumStepSize() const override { return 0.01; }

 private:
  RatioScale& scale() const { return *static_cast<RatioScale*>(widget()); }
};

QAccessibleInterface* make_accessible(const QString&, QObject* object) {
  if (auto* scale = qobject_cast<RatioScale*>(object)) return new ScaleValue(scale);
  if (auto* dial = qobject_cast<TravelDial*>(object)) return new Pictured(dial, QAccessible::Dial);
  if (auto* plot = qobject_cast<PlotView*>(object)) return new Pictured(plot, QAccessible::Chart);
  if (auto* canvas = qobject_cast<DrawingCanvas*>(object))
    return new Pictured(canvas, QAccessible::Canvas);
  return nullptr;
}

}  // namespace

void install_accessibility() {
  static const bool once = [] {
    QAccessible::installFactory(make_accessible);
    return true;
  }();
  Q_UNUSED(once);
}

}  // namespace gazewright
