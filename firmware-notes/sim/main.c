/*
 * Runs the unchanged firmware on a simulated ATmega328P with a bench around it. sim/options.c has
 * the options; the report at the end goes to standard error, a "name value" a line.
 */
#define _GNU_SOURCE
#include "bench.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include <simavr/avr_ioport.h>
#include <simavr/sim_elf.h>
#include <simavr/sim_vcd_file.h>

#include "options.h"

enum { TCCR1B_ADDRESS = 0x81, RAM_START = 0x100, RAM_END = 0x8FF, PAINT = 0xA5 };
#define SERVE_EACH (CYCLES_PER_SECOND / 1000)

static bench_t *the_bench_of_reset; /* the library's reset hook takes no parameter of ours */
static void (*library_reset)(avr_t *avr);

static void keep_pace(const bench_t *bench) {
  static struct timespec began;
  static uint64_t began_at;
  struct timespec now;
  if (bench->options.speed <= 0) return;
  clock_gettime(CLOCK_MONOTONIC, &now);
  if (began.tv_sec == 0) {
    began = now;
    began_at = bench_now(bench);
  }
  double ahead_s = (double)(bench_now(bench) - began_at) / CYCLES_PER_SECOND / bench->options.speed -
                   (double)(now.tv_sec - began.tv_sec) - (double)(now.tv_nsec - began.tv_nsec) * 1e-9;
  if (ahead_s > 0.0005) usleep((useconds_t)(ahead_s * 1e6));
}

static void serve(bench_t *bench) {
  mishap_recover(bench);
  line_serve(bench);
  keep_pace(bench);
  bench_at(bench, bench_now(bench) + SERVE_EACH, serve);
}

static void end(bench_t *bench) { bench->over = true; }

static void head_was_reset(avr_t *avr) {
  bench_t *bench = the_bench_of_reset;
  if (library_reset) library_reset(avr);
  bench->resets++;
}

static void no_sleep(avr_t *avr, avr_cycle_count_t cycles) {
  (void)avr;
  (void)cycles;
}

static void log_errors(avr_t *avr, const int level, const char *format, va_list values) {
  (void)avr;
  if (level <= LOG_ERROR) vfprintf(stderr, format, values);
}

static void find_symbols(bench_t *bench, const elf_firmware_t *firmware) {
  for (uint32_t i = 0; i < firmware->symbolcount; i++) {
    const avr_symbol_t *symbol = firmware->symbol[i];
    uint32_t address = symbol->addr & 0xFFFF;
    if (symbol->addr < 0x800000) continue;
    if (!strcmp(symbol->symbol, "clock_overflows")) bench->overflows_address = address;
    if (!strcmp(symbol->symbol, "head")) bench->seq_address = address;
    if (!strcmp(symbol->symbol, "_end")) bench->ram_end_address = address;
  }
}

static unsigned stack_used(const bench_t *bench) {
  uint32_t address = bench->ram_end_address;
  while (address <= RAM_END && bench->avr->data[address] == PAINT) address++;
  return (unsigned)(RAM_END + 1 - address);
}

static void report(const bench_t *bench) {
  const converter_t *c = &bench->converter;
  const double us = 1.0 / CYCLES_PER_US;
  fprintf(stderr, "simulatedSeconds %.3f\n", bench_seconds(bench));
  fprintf(stderr, "clockStartedUs %.1f\n", (double)bench->timer_started * us);
  fprintf(stderr, "conversions %u\n", c->conversions);
  fprintf(stderr, "conversionsUnread %u\n", c->unread);
  fprintf(stderr, "wrongPulseCounts %u\n", c->wrong_pulses);
  fprintf(stderr, "powerDowns %u\n", c->power_downs);
  fprintf(stderr, "clockHighLongestUs %.4f\n", (double)c->longest_high * us);
  fprintf(stderr, "clockHighShortestUs %.4f\n", (double)c->shortest_high * us);
  fprintf(stderr, "gaugeRequests %u\n", bench->gauge.requests);
  fprintf(stderr, "gaugeFrames %u\n", bench->gauge.frames);
  fprintf(stderr, "resets %u\n", bench->resets);
  fprintf(stderr, "charactersLost %u\n", bench->line.lost);
  fprintf(stderr, "staticRamBytes %u\n", (unsigned)(bench->ram_end_address - RAM_START));
  fprintf(stderr, "stackBytes %u\n", stack_used(bench));
}

static bool load(bench_t *bench) {
  elf_firmware_t firmware = {.flash = 0};
  avr_global_logger_set(log_errors);
  if (elf_read_firmware(bench->options.elf, &firmware)) return false;
  bench->avr = avr_make_mcu_by_name("atmega328p");
  if (!bench->avr) return false;
  avr_init(bench->avr);
  bench->avr->log = LOG_ERROR;
  bench->avr->frequency = CYCLES_PER_SECOND;
  firmware.frequency = CYCLES_PER_SECOND;
  avr_load_firmware(bench->avr, &firmware);
  bench->avr->sleep = no_sleep;
  library_reset = bench->avr->reset;
  bench->avr->reset = head_was_reset;
  the_bench_of_reset = bench;
  find_symbols(bench, &firmware);
  memset(bench->avr->data + bench->ram_end_address, PAINT, RAM_END + 1 - bench->ram_end_address);
  return true;
}

static void trace(bench_t *bench, avr_vcd_t *vcd) {
  const struct {
    char port;
    int pin;
    const char *name;
  } wires[] = {{'B', 0, "converterData"}, {'B', 1, "converterClock"}, {'D', 2, "gaugeClock"},
               {'D', 4, "gaugeData"},     {'D', 5, "gaugeRequest"}};
  if (!bench->options.vcd) return;
  avr_vcd_init(bench->avr, bench->options.vcd, vcd, 1);
  for (size_t i = 0; i < sizeof wires / sizeof *wires; i++) {
    avr_vcd_add_signal(
        vcd, avr_io_getirq(bench->avr, AVR_IOCTL_IOPORT_GETIRQ(wires[i].port), wires[i].pin), 1,
        wires[i].name);
  }
  avr_vcd_start(vcd);
}

/* Until the firmware sets its timer going; from then on the phase of its overflow is known. */
static void watch_timer(bench_t *bench) {
  if (!(bench->avr->data[TCCR1B_ADDRESS] & 7)) return;
  bench->timer_started = bench_now(bench);
  mishap_clock_forward(bench);
  if (bench->options.sweep) converter_sweep(bench);
}

static void after_reset(bench_t *bench, uint64_t cycle_before) {
  if (bench->avr->cycle < cycle_before) bench->before_reset += cycle_before - bench->avr->cycle;
  converter_head_was_reset(bench);
  gauge_head_was_reset(bench);
  bench_redrive(bench);
  bench_set_alarm(bench);
}

/* A little work an instruction: it is what the whole simulation waits for. */
static bool run(bench_t *bench) {
  avr_t *avr = bench->avr;
  while (!bench->over && !bench->abandoned) {
    uint64_t before = avr->cycle;
    unsigned resets = bench->resets;
    int state = avr_run(avr);
    if (bench->restart_due) avr_reset(avr);
    bench->restart_due = false;
    if (state == cpu_Crashed || state == cpu_Done) {
      fprintf(stderr, "the processor has stopped\n");
      return false;
    }
    if (bench->resets != resets) after_reset(bench, before);
    if (!bench->timer_started) watch_timer(bench);
  }
  return true;
}

int main(int argc, char **argv) {
  static bench_t bench;
  avr_vcd_t vcd;
  const char *out_path = 0;
  if (!options_read(&bench, argc, argv, &out_path)) return 2;
  if (!load(&bench) || !line_begin(&bench, out_path)) return 1;
  bench.random = bench.options.seed;
  bench.line_random = ~bench.options.seed;
  trace(&bench, &vcd);
  line_connect(&bench);
  converter_begin(&bench);
  gauge_begin(&bench);
  bench_at(&bench, (uint64_t)(bench.options.seconds * CYCLES_PER_SECOND), end);
  bench_at(&bench, SERVE_EACH, serve);
  mishaps_begin(&bench);
  if (!run(&bench)) return 1;
  if (bench.options.vcd) avr_vcd_close(&vcd);
  line_end(&bench);
  report(&bench);
  return 0;
}
