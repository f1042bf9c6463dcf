/*
 * A bench around the simulated head: converter, indicator, serial line and what the shaft does.
 * Times are cycles of the 16 MHz part since its first start; a reset does not set them back.
 */
#ifndef SAGWRIGHT_SIM_BENCH_H
#define SAGWRIGHT_SIM_BENCH_H

#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>

#include <simavr/sim_avr.h>

enum { CYCLES_PER_US = 16 };
#define CYCLES_PER_SECOND UINT64_C(16000000)

typedef struct bench bench_t;
typedef void (*event_t)(bench_t *bench);

/* ---- what is being measured: signal.c ---- */

typedef struct {
  double time_s, counts, gauge_um;
} point_t;

typedef struct {
  point_t *points;
  int count;
  double repeat_s; /* 0: the last point holds on */
} signal_t;

/* Points from a CSV with the header timeS,counts,gaugeUm. False with a message where it is bad. */
bool signal_read(signal_t *signal, const char *path);
/* One bend test: rest 1 s, loading 4 s, unloading 4 s, rest 1.5 s. */
void signal_bend(signal_t *signal, double counts, double gauge_um);
double signal_gauge_um(const signal_t *signal, double time_s);
/* The mean load between two times: what a converter that averages makes of it. */
double signal_mean_counts(const signal_t *signal, double from_s, double to_s);

/* A seeded generator of our own, so that the same seed gives the same bytes everywhere. */
uint64_t noise_bits(uint64_t *state);
double noise_gauss(uint64_t *state);

/* ---- faults: fault.c ---- */

typedef enum {
  FAULT_CONVERTER_MISSING, /* nothing drives its data line */
  FAULT_CONVERTER_SHORT,   /* its data line lies on ground */
  FAULT_END_STOP_HIGH,
  FAULT_END_STOP_LOW,
  FAULT_GAUGE_SILENT,
  FAULT_GAUGE_SHORT,   /* frames of 40 (of 24: 20) bits */
  FAULT_GAUGE_LONG,    /* one bit too many */
  FAULT_GAUGE_INCH,    /* switched to inches */
  FAULT_GAUGE_FLIP,    /* a random bit of each fifth frame turned over */
  FAULT_KINDS
} fault_t;

/* KIND or KIND:FROM or KIND:FROM:TO, seconds. */
bool fault_add(bench_t *bench, const char *text);
bool fault_now(const bench_t *bench, fault_t fault);

/* ---- the parts ---- */

typedef struct {
  uint64_t next_at;   /* when the next conversion is ready */
  uint64_t window;    /* cycles that one value is the mean of */
  uint64_t high_from; /* when the clock rose */
  bool clock_high, fast, asleep, data_high;
  int pulses; /* since the conversion became ready */
  uint32_t shift;
  /* for the report */
  uint64_t longest_high, shortest_high;
  unsigned conversions, unread, power_downs, wrong_pulses;
} converter_t;

typedef struct {
  bool requested, busy;
  uint64_t bits;
  int bit, length;
  unsigned requests, frames;
} gauge_t;

typedef struct {
  int master, slave; /* -1 without a pseudo-terminal */
  FILE *file;
  char out[65536];
  unsigned out_from, out_to;
  char in[4096];
  unsigned in_from, in_to;
  bool xon, listening, heard;
  unsigned lost;
} line_t;

typedef struct {
  uint64_t at;
  event_t event;
} appointment_t;

typedef struct {
  double seconds, speed;
  long long garble; /* one character in so many is spoiled on its way; 0: none */
  uint64_t seed;
  double noise_counts, noise_um;
  double rate_ppm;
  uint64_t period;         /* cycles between conversions; 0: as the rate pin says */
  bool sweep;              /* the first conversion lies at sweep_from of a timer overflow */
  int64_t sweep_from;
  int load_window;         /* conversions that one value is the mean of */
  double gauge_age_us;     /* how long before its first clock the gauge takes its value */
  double gauge_wait_ms, gauge_bit_us, gauge_hz;
  int gauge_bits, gauge_places;
  bool pty, wait;
  double hang_up_at, restart_at, hang_at, time_wraps_at;
  long seq_from;
  const char *elf, *vcd;
} options_t;

struct bench {
  options_t options;
  avr_t *avr;
  uint64_t before_reset; /* cycles of the lives before this one */
  unsigned resets;
  appointment_t diary[16];
  uint64_t random, line_random;
  signal_t signal;
  struct {
    fault_t kind;
    double from_s, to_s;
  } faults[32];
  int fault_count;
  uint8_t external_mask[128], external_value[128];
  struct {
    double at_s;
    const char *text;
  } says[64];
  int say_count, said;
  converter_t converter;
  gauge_t gauge;
  line_t line;
  uint64_t timer_started; /* when the firmware set timer 1 going; 0: not yet */
  uint32_t overflows_address, seq_address, ram_end_address;
  bool restart_due;
  unsigned hung_in_life; /* 0: it does not hang */
  uint16_t hung_word;
  uint32_t hung_at_pc;
  bool over;      /* the simulated time is */
  bool abandoned; /* who started us has gone */
};

/* Cycles, seconds since the first start. */
uint64_t bench_now(const bench_t *bench);
double bench_seconds(const bench_t *bench);
/* One appointment an event: a new one takes the old one's place. */
void bench_at(bench_t *bench, uint64_t at, event_t event);
void bench_cancel(bench_t *bench, event_t event);
/* After a reset of the head, which has thrown the library's timers away. */
void bench_set_alarm(bench_t *bench);
void bench_drive(bench_t *bench, char port, int pin, bool high);
void bench_on_pin(bench_t *bench, char port, int pin, avr_irq_notify_t notify);
/* Tells the head's pins anew what drives them, as after a reset. */
void bench_redrive(bench_t *bench);

void converter_begin(bench_t *bench);
void converter_head_was_reset(bench_t *bench);
/* The first conversion at its place near an overflow of the head's timer. */
void converter_sweep(bench_t *bench);
void gauge_begin(bench_t *bench);
void gauge_head_was_reset(bench_t *bench);

void mishaps_begin(bench_t *bench);
/* Before the firmware has looked at its clock: a jump later on would confuse it, and rightly. */
void mishap_clock_forward(bench_t *bench);
void mishap_recover(bench_t *bench);

bool line_begin(bench_t *bench, const char *out_path);
void line_connect(bench_t *bench);
void line_type(bench_t *bench, const char *text, size_t length);
void line_serve(bench_t *bench);
void line_end(bench_t *bench);

#endif
