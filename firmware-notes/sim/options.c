/* The command line of the simulated bench. */
#include "options.h"

#include <stdlib.h>
#include <string.h>

static const char USAGE[] =
    "usage: bench-sim [options] firmware.elf\n"
    "  --seconds S           simulated time (10)\n"
    "  --say T:TEXT          TEXT and LF go down the line at T seconds; may be repeated, in order\n"
    "  --out FILE            what the head sends (- standard output)\n"
    "  --pty                 also through a pseudo-terminal, its path printed as \"port PATH\"; at\n"
    "                        the end \"end\" is printed and the line held until standard input closes\n"
    "  --speed X             X times as fast as the clock on the wall (0: as fast as it goes)\n"
    "  --wait                time stands still until the first character comes from the terminal\n"
    "  --garble N            one character in N is spoiled on its way\n"
    "  --hang-up-at T        the plug of the serial line is pulled\n"
    "the shaft\n"
    "  --bend COUNTS,UM      one bend test up to this load and gauge value (400000,10000)\n"
    "  --signal FILE.csv     another shape: rows of timeS,counts,gaugeUm, straight in between\n"
    "  --repeat S            the shape begins again every S seconds\n"
    "  --noise COUNTS        rms on the load (0)\n"
    "  --gauge-noise UM      rms on the gauge (0)\n"
    "  --seed N              of the noise and of random faults (1)\n"
    "the converter\n"
    "  --rate-ppm P          how far off its rate is\n"
    "  --period CYCLES       between conversions, whatever the rate pin says\n"
    "  --sweep CYCLES        the first conversion this far from an overflow of the head's timer\n"
    "  --load-window N       conversions that one value is the mean of (4)\n"
    "the gauge\n"
    "  --gauge-bits 52|24    kind of frame (52)\n"
    "  --gauge-places N      decimals of a millimetre that it shows (3)\n"
    "  --gauge-wait MS       from request to first clock (30)\n"
    "  --gauge-bit US        a bit takes (240)\n"
    "  --gauge-hz F          24-bit frames a second (6)\n"
    "  --gauge-age US        how long before its first clock it takes its value (0)\n"
    "faults\n"
    "  --fault KIND[:FROM[:TO]]  seconds; an unknown KIND lists them\n"
    "  --restart-at T        reset of the head\n"
    "  --hang-at T           its main loop hangs\n"
    "  --time-wraps-at T     its clock is set forward so that it goes round after T seconds\n"
    "  --seq-from N          its count is set forward\n"
    "  --vcd FILE            the wires, for a waveform viewer\n";

static bool number(const char *name, const char *text, double *value) {
  char *end;
  *value = strtod(text, &end);
  if (*text && !*end) return true;
  fprintf(stderr, "%s %s: not a number\n", name, text);
  return false;
}

static bool integer(const char *name, const char *text, long long *value) {
  char *end;
  *value = strtoll(text, &end, 10);
  if (*text && !*end) return true;
  fprintf(stderr, "%s %s: not a whole number\n", name, text);
  return false;
}

static bool say(bench_t *bench, char *text) {
  char *colon = strchr(text, ':');
  double at_s;
  if (!colon || bench->say_count == 64) {
    fprintf(stderr, "--say %s: not T:TEXT\n", text);
    return false;
  }
  *colon = 0;
  if (!number("--say", text, &at_s)) return false;
  bench->says[bench->say_count].at_s = at_s;
  bench->says[bench->say_count++].text = colon + 1;
  return true;
}

static bool bend(bench_t *bench, const char *text) {
  double counts, um;
  char rest;
  if (sscanf(text, "%lf,%lf%c", &counts, &um, &rest) != 2) {
    fprintf(stderr, "--bend %s: not COUNTS,UM\n", text);
    return false;
  }
  signal_bend(&bench->signal, counts, um);
  return true;
}

static bool with_value(bench_t *bench, const char *name, char *value, const char **out_path) {
  options_t *o = &bench->options;
  const struct {
    const char *name;
    double *number;
  } numbers[] = {{"--seconds", &o->seconds},         {"--speed", &o->speed},
                 {"--hang-up-at", &o->hang_up_at},   {"--repeat", &bench->signal.repeat_s},
                 {"--noise", &o->noise_counts},      {"--gauge-noise", &o->noise_um},
                 {"--rate-ppm", &o->rate_ppm},       {"--gauge-wait", &o->gauge_wait_ms},
                 {"--gauge-bit", &o->gauge_bit_us},  {"--gauge-hz", &o->gauge_hz},
                 {"--gauge-age", &o->gauge_age_us},  {"--restart-at", &o->restart_at},
                 {"--hang-at", &o->hang_at},         {"--time-wraps-at", &o->time_wraps_at}};
  long long whole;
  for (size_t i = 0; i < sizeof numbers / sizeof *numbers; i++) {
    if (!strcmp(name, numbers[i].name)) return number(name, value, numbers[i].number);
  }
  if (!strcmp(name, "--say")) return say(bench, value);
  if (!strcmp(name, "--fault")) return fault_add(bench, value);
  if (!strcmp(name, "--bend")) return bend(bench, value);
  if (!strcmp(name, "--signal")) return signal_read(&bench->signal, value);
  if (!strcmp(name, "--out")) return (*out_path = value) != 0;
  if (!strcmp(name, "--vcd")) return (o->vcd = value) != 0;
  if (!integer(name, value, &whole)) return false;
  if (!strcmp(name, "--seed")) return o->seed = (uint64_t)whole, true;
  if (!strcmp(name, "--garble")) return o->garble = whole, true;
  if (!strcmp(name, "--period")) return o->period = (uint64_t)whole, true;
  if (!strcmp(name, "--sweep")) return o->sweep = true, o->sweep_from = whole, true;
  if (!strcmp(name, "--load-window")) return o->load_window = (int)whole, true;
  if (!strcmp(name, "--gauge-bits")) return o->gauge_bits = (int)whole, true;
  if (!strcmp(name, "--gauge-places")) return o->gauge_places = (int)whole, true;
  if (!strcmp(name, "--seq-from")) return o->seq_from = (long)whole, true;
  fprintf(stderr, "%s: not an option\n%s", name, USAGE);
  return false;
}

bool options_read(bench_t *bench, int argc, char **argv, const char **out_path) {
  bench->options = (options_t){.seconds = 10, .seed = 1, .load_window = 4, .gauge_wait_ms = 30,
                               .gauge_bit_us = 240, .gauge_hz = 6, .gauge_bits = 52,
                               .gauge_places = 3, .hang_up_at = -1, .restart_at = -1, .hang_at = -1,
                               .time_wraps_at = -1, .seq_from = -1};
  for (int i = 1; i < argc; i++) {
    if (!strcmp(argv[i], "--help")) {
      printf("%s", USAGE);
      exit(0);
    } else if (!strcmp(argv[i], "--pty")) {
      bench->options.pty = true;
    } else if (!strcmp(argv[i], "--wait")) {
      bench->options.wait = true;
    } else if (argv[i][0] == '-' && i + 1 < argc) {
      if (!with_value(bench, argv[i], argv[i + 1], out_path)) return false;
      i++;
    } else if (!bench->options.elf) {
      bench->options.elf = argv[i];
    }
  }
  if (!bench->options.elf) {
    fprintf(stderr, "which firmware?\n%s", USAGE);
    return false;
  }
  if (bench->options.gauge_bits != 52 && bench->options.gauge_bits != 24) {
    fprintf(stderr, "--gauge-bits %d: 52 or 24\n", bench->options.gauge_bits);
    return false;
  }
  if (!bench->signal.count) signal_bend(&bench->signal, 400000, 10000);
  return true;
}
