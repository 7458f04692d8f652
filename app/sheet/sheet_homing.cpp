#include "app/plots/charts.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"

namespace gazewright {

void draw_marked(SheetPage& page, std::optional<Axis> axis, const QString& mark,
                 const QString& text) {
  const TextStyle mark_style{8.5, true,
                             axis ? axis_text_colour(page.theme(), *axis) : page.theme().text};
  const TextStyle plain{8.5, false, page.theme().text};
  const double indent = 46;
  const double width = page.frame().width() - indent;
  const double height = SheetPage::textHeight(text, width, plain);
  const QRectF rect = page.take(height + 3);
  page.text({rect.left(), rect.top(), indent - 6, height}, Qt::AlignLeft | Qt::AlignTop, mark,
            mark_style);
  page.text({rect.left() + indent, rect.top(), width, height},
            Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text, plain);
}

void draw_advice(SheetPage& page, const SheetContent& content) {
  page.ensure(80);
  page.heading(Plots::tr("Gain advice"));
  for (const Axis axis : kAxes) {
    QStringList sentences;
    for (const std::string& text :
         content.analysis.advice[static_cast<std::size_t>(axis)].sentences)
      sentences << reason_text(text);
    draw_marked(page, axis, axis_word(axis), sentences.join(' '));
  }
}

void draw_homing(SheetPage& page, const SheetContent& content) {
  page.ensure(80);
  page.heading(Plots::tr("Homing plan"));
  for (const Axis axis : kAxes) {
    int step = 0;
    for (const std::string& text : content.analysis.homing[static_cast<std::size_t>(axis)]) {
      const QString mark = Plots::tr("%1 %2").arg(axis_word(axis)).arg(++step);
      draw_marked(page, axis, mark, reason_text(text));
    }
  }
}

}  // namespace gazewright
