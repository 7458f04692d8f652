#pragma once

/// What a motor bears for a short time or with rests, over what it bears without end: duty types of
/// IEC 60034-1 with one thermal time constant (common practice; worked examples in Dubey,
/// Fundamentals of Electrical Drives, 4.3 and 4.4).
namespace gazewright {

/// S2, short time: cold at the start, cools fully afterwards. Load factor that brings it just to
/// its limit in `time_s`. @param constant_to_copper  losses that do not depend on the load over
/// copper losses, both at the lasting load
double short_time_factor(double time_s, double thermal_time_s, double constant_to_copper = 0);

/// S3, intermittent: `on_s` at that load, `off_s` at rest, again and again. The time constant may
/// be longer at rest.
double intermittent_factor(double on_s, double off_s, double heating_time_s, double cooling_time_s);

}  // namespace gazewright
