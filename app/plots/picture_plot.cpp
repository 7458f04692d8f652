#include "app/plots/picture_plot.h"

namespace gazewright {

PicturePlot::PicturePlot(PlotKind kind, QWidget* parent, Build build)
    : PaintedPlot(kind, parent), build_(build) {
  setInput({});
}

}  // namespace gazewright
