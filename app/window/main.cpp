#include "app/window/command_line.h"

int main(int argc, char** argv) { return gazewright::run_window(argc, argv); }
