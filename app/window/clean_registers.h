#pragma once

namespace gazewright {

/// Frees the upper halves of the wide registers. Qt leaves them in use (6.4 of Debian 12, from the
/// application's constructor on), each thread begins with those of the one that made it, and as
/// long as they are in use, code for plain SSE waits for them: an analysis took four times as long.
/// Work off the GUI thread calls it first. Does nothing where there are no such registers.
inline void clean_registers() {
#ifdef __x86_64__
  if (__builtin_cpu_supports("avx")) asm volatile("vzeroupper");
#endif
}

}  // namespace gazewright
