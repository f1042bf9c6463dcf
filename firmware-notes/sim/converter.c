/*
 * The bridge converter: ready at its rate, 24 bits out at the clock, to sleep when the clock stays
 * high for 60 us. Behaviour from memory of commonly published values.
 */
#include "bench.h"

#include <math.h>

enum { SLEEP_AFTER = 60 * CYCLES_PER_US, SETTLING = 4 };

static void set_data(bench_t *bench, bool high) {
  converter_t *c = &bench->converter;
  c->data_high = high;
  bool missing = fault_now(bench, FAULT_CONVERTER_MISSING);
  bool shorted = fault_now(bench, FAULT_CONVERTER_SHORT);
  bench_drive(bench, 'B', 0, !shorted && (missing || high));
}

static uint64_t period(const bench_t *bench) {
  if (bench->options.period) return bench->options.period;
  double hz = (bench->converter.fast ? 80.0 : 10.0) * (1 + bench->options.rate_ppm * 1e-6);
  return (uint64_t)llround((double)CYCLES_PER_SECOND / hz);
}

static int32_t value(bench_t *bench) {
  double now_s = bench_seconds(bench);
  double window_s =
      (double)(period(bench) * (uint64_t)bench->options.load_window) / (double)CYCLES_PER_SECOND;
  double counts = signal_mean_counts(&bench->signal, now_s - window_s, now_s);
  if (bench->options.noise_counts > 0) {
    counts += bench->options.noise_counts * noise_gauss(&bench->random);
  }
  if (fault_now(bench, FAULT_END_STOP_HIGH)) return 8388607;
  if (fault_now(bench, FAULT_END_STOP_LOW)) return -8388608;
  return (int32_t)lround(fmax(-8388608, fmin(8388607, counts)));
}

static void ready(bench_t *bench) {
  converter_t *c = &bench->converter;
  if (c->asleep) return;
  if (c->conversions > 0) {
    if (c->pulses == 0) {
      c->unread++;
    } else if (c->pulses != 25) {
      c->wrong_pulses++;
    }
  }
  c->conversions++;
  c->pulses = 0;
  c->shift = (uint32_t)value(bench) & 0xFFFFFF;
  set_data(bench, false);
  c->next_at += period(bench);
  bench_at(bench, c->next_at, ready);
}

static void settle(bench_t *bench) {
  converter_t *c = &bench->converter;
  c->next_at = bench_now(bench) + SETTLING * period(bench);
  bench_at(bench, c->next_at, ready);
}

static void fall_asleep(bench_t *bench) {
  bench->converter.asleep = true;
  bench->converter.power_downs++;
  bench_cancel(bench, ready);
  set_data(bench, true);
}

static void clock_changed(struct avr_irq_t *irq, uint32_t level, void *param) {
  bench_t *bench = param;
  converter_t *c = &bench->converter;
  (void)irq;
  if (c->clock_high == (level & 1)) return;
  c->clock_high = level & 1;
  if (c->clock_high) {
    c->high_from = bench_now(bench);
    bench_at(bench, c->high_from + SLEEP_AFTER, fall_asleep);
    if (c->asleep || fault_now(bench, FAULT_CONVERTER_MISSING)) return;
    c->pulses++;
    set_data(bench, c->pulses > 24 || (c->shift >> (24 - c->pulses) & 1));
    return;
  }
  uint64_t high = bench_now(bench) - c->high_from;
  if (high > c->longest_high) c->longest_high = high;
  if (c->shortest_high == 0 || high < c->shortest_high) c->shortest_high = high;
  bench_cancel(bench, fall_asleep);
  if (c->asleep) {
    c->asleep = false;
    settle(bench);
  }
}

static void rate_changed(struct avr_irq_t *irq, uint32_t level, void *param) {
  bench_t *bench = param;
  (void)irq;
  if (bench->converter.fast == (level & 1)) return;
  bench->converter.fast = level & 1;
  if (!bench->options.period) settle(bench);
}

/* A fault of the wire shows at once, not only with the next bit. */
static void look_at_wire(bench_t *bench) {
  set_data(bench, bench->converter.data_high);
  bench_at(bench, bench_now(bench) + CYCLES_PER_SECOND / 1000, look_at_wire);
}

void converter_begin(bench_t *bench) {
  set_data(bench, true);
  bench_on_pin(bench, 'B', 1, clock_changed);
  bench_on_pin(bench, 'B', 2, rate_changed);
  settle(bench);
  if (bench->fault_count) look_at_wire(bench);
}

/* The head's outputs have gone to inputs, which the pull-downs on the board hold low. */
void converter_head_was_reset(bench_t *bench) {
  bench->converter.clock_high = bench->converter.fast = false;
  bench_cancel(bench, fall_asleep);
}

void converter_sweep(bench_t *bench) {
  int64_t overflow = (int64_t)bench->timer_started + 65536 * 8;
  bench->converter.next_at = (uint64_t)(overflow + bench->options.sweep_from);
  bench_at(bench, bench->converter.next_at, ready);
}
