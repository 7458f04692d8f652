#pragma once

namespace gazewright {

/// `gazewright [RIG]`, --help, --version, --picture. Returns the exit status: 0 done, 2 wrong
/// usage, 3 unreadable or invalid rig, or a picture that cannot be written.
int run_window(int argc, char** argv);

}  // namespace gazewright
