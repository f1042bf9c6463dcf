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

enum { TCCR1B_ADDRESS = 0x81, MCUSR_ADDRESS = 0x54, RAM_START = 0x100, RAM_END = 0x8FF, PAINT = 0xA5 };
#define SERVE_EACH (CYCLES_PER_SECOND / 1000)

static bench_t *the_bench_of_reset; /* the library's reset hook takes no parameter of ours */
static void (*library_reset)(avr_t *avr);

uint64_t bench_now(const bench_t *bench) { return bench->before_reset + bench->avr->cycle; }

double bench_seconds(const bench_t *bench) {
  return (double)bench_now(bench) / (double)CYCLES_PER_SECOND;
}

/* ---- the diary: one cycle timer of the library for all of our events, so that a reset keeps them */

static avr_cycle_count_t alarm_rings(avr_t *avr, avr_cycle_count_t when, void *param);

static appointment_t *first_appointment(bench_t *bench) {
  appointment_t *first = 0;
  for (size_t i = 0; i < sizeof bench->diary / sizeof *bench->diary; i++) {
    appointment_t *one = &bench->diary[i];
    if (one->event && (!first || one->at < first->at)) first = one;
  }
  return first;
}

static void set_alarm(bench_t *bench) {
  appointment_t *first = first_appointment(bench);
  avr_cycle_timer_cancel(bench->avr, alarm_rings, bench);
  if (!first) return;
  uint64_t now = bench_now(bench);
  avr_cycle_timer_register(bench->avr, first->at > now ? first->at - now : 1, alarm_rings, bench);
}

static avr_cycle_count_t alarm_rings(avr_t *avr, avr_cycle_count_t when, void *param) {
  bench_t *bench = param;
  appointment_t *first;
  (void)avr;
  (void)when;
  while ((first = first_appointment(bench)) && first->at <= bench_now(bench)) {
    event_t event = first->event;
    first->event = 0;
    event(bench);
  }
  set_alarm(bench);
  return 0; /* a time given back would ring this very alarm again */
}

void bench_cancel(bench_t *bench, event_t event) {
  for (size_t i = 0; i < sizeof bench->diary / sizeof *bench->diary; i++) {
    if (bench->diary[i].event == event) bench->diary[i].event = 0;
  }
}

void bench_at(bench_t *bench, uint64_t at, event_t event) {
  bench_cancel(bench, event);
  for (size_t i = 0; i < sizeof bench->diary / sizeof *bench->diary; i++) {
    if (!bench->diary[i].event) {
      bench->diary[i] = (appointment_t){at, event};
      set_alarm(bench);
      return;
    }
  }
  fprintf(stderr, "the diary is full\n");
  exit(70);
}

/* ---- pins ---- */

void bench_drive(bench_t *bench, char port, int pin, bool high) {
  uint8_t bit = (uint8_t)(1 << pin);
  uint8_t *mask = &bench->external_mask[(int)port], *value = &bench->external_value[(int)port];
  *mask |= bit;
  *value = (uint8_t)(high ? *value | bit : *value & ~bit);
  /* Without this the library lets a pull-up win over what drives the pin from outside. */
  avr_ioport_external_t external = {.name = (unsigned long)port, .mask = *mask, .value = *value};
  avr_ioctl(bench->avr, AVR_IOCTL_IOPORT_SET_EXTERNAL(port), &external);
  avr_raise_irq(avr_io_getirq(bench->avr, AVR_IOCTL_IOPORT_GETIRQ(port), pin), high);
}

void bench_redrive(bench_t *bench) {
  for (int port = 'B'; port <= 'D'; port++) {
    for (int pin = 0; pin < 8; pin++) {
      bool high = bench->external_value[port] >> pin & 1;
      if (!(bench->external_mask[port] >> pin & 1)) continue;
      /* A reset clears the pin register, and a level that did not change is not told again. */
      bench_drive(bench, (char)port, pin, !high);
      bench_drive(bench, (char)port, pin, high);
    }
  }
}

void bench_on_pin(bench_t *bench, char port, int pin, avr_irq_notify_t notify) {
  avr_irq_t *irq = avr_io_getirq(bench->avr, AVR_IOCTL_IOPORT_GETIRQ(port), pin);
  avr_irq_register_notify(irq, notify, bench);
}

/* ---- what happens to the head ---- */

static void poke(bench_t *bench, uint32_t address, uint32_t value, int bytes) {
  for (int i = 0; i < bytes; i++) bench->avr->data[address + (uint32_t)i] = (uint8_t)(value >> 8 * i);
}

/* Before the firmware has looked at its clock: a jump later on would confuse it, and rightly. */
static void set_clock_forward(bench_t *bench) {
  if (bench->options.time_wraps_at < 0) return;
  double overflows = bench->options.time_wraps_at * 1e6 / 32768;
  poke(bench, bench->overflows_address, (uint32_t)(131072 - (long)overflows), 4);
}

static void set_count_forward(bench_t *bench) {
  poke(bench, bench->seq_address, (uint32_t)bench->options.seq_from, 2);
}

/* Not from within one of the library's own timers. */
static void restart(bench_t *bench) { bench->restart_due = true; }

/* The main loop hangs at whatever it was doing, interrupts go on: a jump to itself stands there. */
static void hang(bench_t *bench) {
  uint8_t *flash = bench->avr->flash + bench->avr->pc;
  bench->hung = true;
  bench->hung_at_pc = bench->avr->pc;
  bench->hung_word = (uint16_t)(flash[0] | flash[1] << 8);
  flash[0] = 0xFF;
  flash[1] = 0xCF;
}

static void say_next(bench_t *bench) {
  const char *text = bench->says[bench->said++].text;
  line_type(bench, text, strlen(text));
  line_type(bench, "\n", 1);
  if (bench->said < bench->say_count) {
    bench_at(bench, (uint64_t)(bench->says[bench->said].at_s * CYCLES_PER_SECOND), say_next);
  }
}

static void end(bench_t *bench) { bench->over = true; }

static void hang_up(bench_t *bench) {
  close(bench->line.slave);
  close(bench->line.master);
  bench->line.master = bench->line.slave = -1;
}

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
  if (bench->hung && bench->resets) {
    bench->avr->flash[bench->hung_at_pc] = (uint8_t)bench->hung_word;
    bench->avr->flash[bench->hung_at_pc + 1] = (uint8_t)(bench->hung_word >> 8);
    bench->hung = false;
  }
  line_serve(bench);
  keep_pace(bench);
  bench_at(bench, bench_now(bench) + SERVE_EACH, serve);
}

/* ---- start and end ---- */

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

static void make_appointments(bench_t *bench) {
  const options_t *options = &bench->options;
  bench_at(bench, (uint64_t)(options->seconds * CYCLES_PER_SECOND), end);
  bench_at(bench, SERVE_EACH, serve);
  if (options->seq_from >= 0) bench_at(bench, CYCLES_PER_SECOND / 1000, set_count_forward);
  if (options->restart_at >= 0) {
    bench_at(bench, (uint64_t)(options->restart_at * CYCLES_PER_SECOND), restart);
  }
  if (options->hang_at >= 0) bench_at(bench, (uint64_t)(options->hang_at * CYCLES_PER_SECOND), hang);
  if (options->hang_up_at >= 0 && options->pty) {
    bench_at(bench, (uint64_t)(options->hang_up_at * CYCLES_PER_SECOND), hang_up);
  }
  if (bench->say_count) {
    bench_at(bench, (uint64_t)(bench->says[0].at_s * CYCLES_PER_SECOND), say_next);
  }
}

/* Until the firmware sets its timer going; from then on the phase of its overflow is known. */
static void watch_timer(bench_t *bench) {
  if (!(bench->avr->data[TCCR1B_ADDRESS] & 7)) return;
  bench->timer_started = bench_now(bench);
  set_clock_forward(bench);
  if (bench->options.sweep) converter_sweep(bench);
}

static void after_reset(bench_t *bench, uint64_t cycle_before) {
  if (bench->avr->cycle < cycle_before) bench->before_reset += cycle_before - bench->avr->cycle;
  converter_head_was_reset(bench);
  gauge_head_was_reset(bench);
  bench_redrive(bench);
  set_alarm(bench);
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
  trace(&bench, &vcd);
  line_connect(&bench);
  converter_begin(&bench);
  gauge_begin(&bench);
  make_appointments(&bench);
  if (!run(&bench)) return 1;
  if (bench.options.vcd) avr_vcd_close(&vcd);
  line_end(&bench);
  report(&bench);
  return 0;
}
