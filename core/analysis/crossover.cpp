#include "core/analysis/crossover.h"

#include <cmath>

#include "core/words/words.h"

namespace gazewright {

std::string say_never_below_1(const char* loop) {
  return words("%1 loop: gain above 1 up to half the sample rate, which no sampled loop can hold",
               words(loop));
}

Compared without_crossover(Context& c, Axis a, double mode, std::string stays_below) {
  const AxisModel& model = c.model(a);
  if (std::abs(speed_loop(model, M_PI * model.control.control_rate_Hz)) < 1)
    return moot(std::move(stays_below));
  return {std::nullopt, mode, say_never_below_1("speed"), Compared::Outcome::impossible};
}

}  // namespace gazewright
