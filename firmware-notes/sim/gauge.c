/*
 * The indicator. 52 bits: asked by its request line, waits, then clocks its frame out; a request
 * that comes while a frame is going out is not seen. 24 bits: unasked, through two transistors
 * that turn clock and data round. Both from memory, as widely published.
 */
#include "bench.h"

#include <math.h>
#include <stdlib.h>

enum { CLOCK = 2, DATA = 4, REQUEST = 5, LINK = 6 };

static bool turned(const bench_t *bench) { return bench->options.gauge_bits == 24; }

static void set_clock(bench_t *bench, bool high) {
  bench_drive(bench, 'D', CLOCK, high != turned(bench));
}

static void set_data(bench_t *bench, bool high) {
  bench_drive(bench, 'D', DATA, high != turned(bench));
}

static uint64_t microseconds(double us) { return (uint64_t)llround(us * CYCLES_PER_US); }

static void put_nibble(gauge_t *gauge, unsigned value) {
  gauge->bits |= (uint64_t)(value & 0xF) << gauge->length;
  gauge->length += 4;
}

static void take_value(bench_t *bench) {
  gauge_t *g = &bench->gauge;
  bool inch = fault_now(bench, FAULT_GAUGE_INCH);
  double um = signal_gauge_um(&bench->signal,
                              bench_seconds(bench) - bench->options.gauge_age_us * 1e-6);
  if (bench->options.noise_um > 0) um += bench->options.noise_um * noise_gauss(&bench->random);
  g->bits = 0;
  g->length = 0;
  if (bench->options.gauge_bits == 24) {
    long steps = lround(inch ? um / 12.7 : um / 10);
    g->bits = ((uint64_t)labs(steps) & 0xFFFFF) | (uint64_t)(steps < 0) << 20 | (uint64_t)inch << 23;
    g->length = 24;
  } else {
    int places = bench->options.gauge_places;
    long steps = lround(um / 1000 / (inch ? 25.4 : 1) * pow(10, places));
    long rest = labs(steps) % 1000000;
    for (int i = 0; i < 4; i++) put_nibble(g, 15);
    put_nibble(g, steps < 0 ? 8 : 0);
    for (long power = 100000; power; power /= 10) put_nibble(g, (unsigned)(rest / power % 10));
    put_nibble(g, (unsigned)places);
    put_nibble(g, inch);
  }
  if (fault_now(bench, FAULT_GAUGE_SHORT)) g->length = g->length * 10 / 13;
  if (fault_now(bench, FAULT_GAUGE_LONG)) g->length++;
  if (fault_now(bench, FAULT_GAUGE_FLIP) && noise_bits(&bench->random) % 5 == 0) {
    g->bits ^= UINT64_C(1) << noise_bits(&bench->random) % (unsigned)g->length;
  }
}

static void next_bit(bench_t *bench);
static void begin_frame(bench_t *bench);

static void end_bit(bench_t *bench) {
  gauge_t *g = &bench->gauge;
  set_clock(bench, true);
  g->bit++;
  if (g->bit < g->length) {
    bench_at(bench, bench_now(bench) + microseconds(bench->options.gauge_bit_us / 2), next_bit);
    return;
  }
  g->frames++;
  g->busy = false;
  set_data(bench, true);
}

static void clock_falls(bench_t *bench) {
  set_clock(bench, false);
  bench_at(bench, bench_now(bench) + microseconds(bench->options.gauge_bit_us / 4), end_bit);
}

static void next_bit(bench_t *bench) {
  set_data(bench, bench->gauge.bits >> bench->gauge.bit & 1);
  bench_at(bench, bench_now(bench) + microseconds(bench->options.gauge_bit_us / 4), clock_falls);
}

static void first_clock(bench_t *bench) {
  take_value(bench);
  bench->gauge.bit = 0;
  set_data(bench, bench->gauge.bits & 1);
  clock_falls(bench);
}

static void begin_frame(bench_t *bench) {
  if (bench->options.gauge_bits == 24) {
    double period_s = 1 / bench->options.gauge_hz;
    bench_at(bench, bench_now(bench) + (uint64_t)llround(period_s * CYCLES_PER_SECOND), begin_frame);
  }
  if (fault_now(bench, FAULT_GAUGE_SILENT)) {
    bench->gauge.busy = false;
    return;
  }
  bench->gauge.busy = true;
  first_clock(bench);
}

static void request_changed(struct avr_irq_t *irq, uint32_t level, void *param) {
  bench_t *bench = param;
  gauge_t *g = &bench->gauge;
  bool requested = level & 1; /* high turns the transistor on, the line goes low */
  (void)irq;
  if (requested == g->requested) return;
  g->requested = requested;
  if (!requested || bench->options.gauge_bits != 52) return;
  g->requests++;
  if (g->busy || fault_now(bench, FAULT_GAUGE_SILENT)) return;
  g->busy = true;
  bench_at(bench, bench_now(bench) + microseconds(bench->options.gauge_wait_ms * 1000), begin_frame);
}

void gauge_begin(bench_t *bench) {
  bench_on_pin(bench, 'D', REQUEST, request_changed);
  set_clock(bench, true);
  set_data(bench, true);
  bench_drive(bench, 'D', LINK, bench->options.gauge_bits != 24);
  if (bench->options.gauge_bits == 24) {
    /* Begins in the middle of a frame as often as not: the head must find the next one's start. */
    bench_at(bench, bench_now(bench) + noise_bits(&bench->random) % (CYCLES_PER_SECOND / 10),
             begin_frame);
  }
}

void gauge_head_was_reset(bench_t *bench) { bench->gauge.requested = false; }
