#pragma once

#include <QPainter>
#include <QPixmap>
#include <QWidget>

namespace gazewright {

/// A widget's picture, painted once and then copied, until it is forgotten or the widget has
/// another size or font. For widgets that are painted again with what lies around them: in a drag
/// most of them have not changed.
class KeptPicture {
 public:
  void forget() { picture_ = {}; }

  /// `draw(painter)` paints it on `ground`, opaque so that letters are as sharp as elsewhere.
  template <class Draw>
  const QPixmap& of(const QWidget& widget, const QColor& ground, const Draw& draw) {
    const qreal ratio = widget.devicePixelRatioF();
    const QSize size = (QSizeF(widget.size()) * ratio).toSize();
    if (picture_.size() != size || font_ != widget.font()) {
      font_ = widget.font();
      picture_ = QPixmap(size);
      picture_.setDevicePixelRatio(ratio);
      picture_.fill(ground);
      QPainter painter(&picture_);
      painter.setFont(font_);
      painter.setLayoutDirection(widget.layoutDirection());
      draw(painter);
    }
    return picture_;
  }

 private:
  QPixmap picture_;
  QFont font_;
};

}  // namespace gazewright
