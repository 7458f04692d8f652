#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"

namespace gazewright {
namespace {

struct Caution {
  const char* what;
  const char* text;
};
constexpr Caution kCautions[]{
    {QT_TRANSLATE_NOOP("Plots", "Fast masses and pinch points."),
     QT_TRANSLATE_NOOP(
         "Plots",
         "The head starts without warning and faster than a hand can draw back. Keep "
         "fingers, hair and cables out of the gaps at stops, arm and ball; guard them "
         "where people can reach. Wear eye protection at the first fast moves.")},
    {QT_TRANSLATE_NOOP("Plots", "Hot motors."),
     QT_TRANSLATE_NOOP(
         "Plots",
         "Windings and brackets may burn skin and soften prints before the shell feels "
         "warm; metal above some 60 °C burns at a touch. Guard what people can reach, keep "
         "paper, cloth and solvents away, give every motor a thermal trip, never leave a "
         "stalled motor unwatched, and measure the bracket in the first hour.")},
    {QT_TRANSLATE_NOOP("Plots", "Stored and returned energy."),
     QT_TRANSLATE_NOOP(
         "Plots",
         "Braking lifts the bus voltage; a supply that cannot take it back needs a "
         "brake resistor or room in its capacitors. Capacitors stay charged after "
         "switching off: wait and measure before touching. Fuse batteries at the cell, "
         "charge them watched, and never short them. Brake resistors get hot enough to burn "
         "skin: mount them clear of prints and cables. Never replace a fuse by one rated above "
         "its wire.")},
    {QT_TRANSLATE_NOOP("Plots", "Screws and bearings work loose."),
     QT_TRANSLATE_NOOP(
         "Plots",
         "Reversing torque undoes screws: lock the threads with something that suits the "
         "material (some lockers crack plastics). Prints and inserts creep under a screw: "
         "tighten again after a day and after the first hot hours, and look at screws and "
         "play at every service. What hangs over heads needs a second hold.")},
    {QT_TRANSLATE_NOOP("Plots", "What falls and tips."),
     QT_TRANSLATE_NOOP(
         "Plots",
         "An axis that gravity turns drops when power goes: park it or hold it before switching "
         "off, and fix counterweights so that they cannot come loose. A stand that somebody leans "
         "on tips earlier than computed: screw it down where people pass. Printed arms tire, creep "
         "and soften in heat; look for cracks, and do not hang a load over people on print "
         "alone.")},
    {QT_TRANSLATE_NOOP("Plots", "First power-up."),
     QT_TRANSLATE_NOOP(
         "Plots",
         "Clamp the stand. Start with a current-limited supply and a tenth to a fifth "
         "of the final current and speed (common practice, no source), with the head "
         "off or balanced. Check the sign of encoder and torque, then soft limits by "
         "hand, then an emergency stop that cuts the motor power, and only then raise "
         "current step by step.")},
    {QT_TRANSLATE_NOOP("Plots", "What this sheet is not."),
     QT_TRANSLATE_NOOP("Plots",
                       "Figures come from a model and from the assumptions above; they replace "
                       "neither a measurement nor a risk assessment. Local codes and rules and the "
                       "judgement of licensed practitioners have the last word.")},
};

}  // namespace

void draw_cautions(SheetPage& page, const SheetContent&) {
  page.heading(Plots::tr("Before you build and switch on"));
  for (const Caution& caution : kCautions) {
    const TextStyle bold{8.5, true, page.theme().text}, plain{8.5, false, page.theme().text};
    const double indent = 118;
    const QString text = Plots::tr(caution.text);
    const double width = page.frame().width() - indent;
    const double height = SheetPage::textHeight(text, width, plain);
    const QRectF rect = page.take(height + 5);
    page.text({rect.left(), rect.top(), indent - 8, height},
              Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, Plots::tr(caution.what), bold);
    page.text({rect.left() + indent, rect.top(), width, height},
              Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text, plain);
  }
}

void draw_signatures(SheetPage& page, const SheetContent&) {
  page.ensure(86);
  page.heading(Plots::tr("Checked and released"));
  const QRectF row = page.take(48);
  const QString words[]{Plots::tr("Designed by, date"), Plots::tr("Checked by, date"),
                        Plots::tr("Released by, date")};
  const double width = (row.width() - 2 * 16) / 3;
  double x = row.left();
  for (const QString& word : words) {
    page.painter().setPen(QPen(page.theme().control, 0.6));
    page.painter().drawLine(QLineF(x, row.top() + 32, x + width, row.top() + 32));
    page.text({x, row.top() + 34, width, 10}, Qt::AlignLeft | Qt::AlignVCenter, word,
              {7, false, page.theme().quiet});
    x += width + 16;
  }
}

}  // namespace gazewright
