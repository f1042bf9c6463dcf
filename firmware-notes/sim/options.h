#ifndef SAGWRIGHT_SIM_OPTIONS_H
#define SAGWRIGHT_SIM_OPTIONS_H

#include "bench.h"

/* Reads the command line; false (with a line on standard error) where it cannot be followed. */
bool options_read(bench_t *bench, int argc, char **argv, const char **out_path);

#endif
