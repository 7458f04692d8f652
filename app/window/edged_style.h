#pragma once

#include <QProxyStyle>

namespace gazewright {

/// Fusion with edges of check boxes and lists that can be seen on a dark ground too: its own are
/// shades of the ground (WCAG 2.2, 1.4.11 asks for 3:1). Their colour is the palette's Dark.
class EdgedStyle : public QProxyStyle {
  Q_OBJECT
 public:
  EdgedStyle();
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                          QPainter* painter, const QWidget* widget) const override;
};

}  // namespace gazewright
