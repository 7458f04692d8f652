#include "app/window/edged_style.h"

#include <QPainter>
#include <QStyleOption>

namespace gazewright {
namespace {

void draw_edge(const QStyleOption& option, QPainter* painter) {
  const bool has_focus = option.state & QStyle::State_HasFocus;
  if (has_focus && option.state & QStyle::State_KeyboardFocusChange) return;  // its frame is there
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setBrush(Qt::NoBrush);
  painter->setPen(option.palette.color(QPalette::Dark));
  painter->drawRoundedRect(QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
  painter->restore();
}

}  // namespace

EdgedStyle::EdgedStyle() : QProxyStyle(QStringLiteral("fusion")) {}

void EdgedStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
  QProxyStyle::drawPrimitive(element, option, painter, widget);
  if (element == PE_IndicatorCheckBox) draw_edge(*option, painter);
}

void EdgedStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
  QProxyStyle::drawComplexControl(control, option, painter, widget);
  const auto* list = qstyleoption_cast<const QStyleOptionComboBox*>(option);
  if (control == CC_ComboBox && list != nullptr && list->frame) draw_edge(*option, painter);
}

}  // namespace gazewright
