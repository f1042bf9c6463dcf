/*
 * The bench head: conversions, gauge frames, time and commands in, lines out. It knows no register;
 * who drives it (the ATmega328P's main loop, or a test on the desk) hands it what has happened.
 */
#ifndef SAGWRIGHT_HEAD_H
#define SAGWRIGHT_HEAD_H

#include "command.h"
#include "gauge.h"
#include "pairing.h"
#include "wire.h"

#define HEAD_FIRMWARE "1.0.0"
#define HEAD_MODEL "BH-328"

enum {
  RATE_FAST_HZ = 80,
  RATE_SLOW_HZ = 10,
  SETTLING_PERIODS = 4, /* after a start and a change of rate; what is ready before is thrown away */
  SILENT_PERIODS = 5,       /* without a conversion for this long the converter is silent */
  /*
   * The converter settles in four conversions, so a value is the mean of about four periods and its
   * moment lies two periods before it is ready (from memory of commonly published values).
   */
  LOAD_AGE_PERIODS = 2,
  REPLY_MOST = 48,
  COMMAND_MOST = 63
};

/* How far before its first clock edge the gauge takes its value; docs/bench/wiring.md measures it. */
#ifndef GAUGE_AGE_US
#define GAUGE_AGE_US 0
#endif

typedef struct {
  uint16_t seq; /* first, so that the simulation finds it */
  const char *serial;
  gauge_kind_t gauge_kind;
  pairing_t pairing;
  error_queue_t errors;
  believe_t believe;
  bool running;
  uint8_t rate_hz;
  bool settling;
  uint32_t settled_us;
  bool converter_silent, gauge_seen;
  uint32_t next_tick_us; /* when the next conversion must have come, or the next tick is due */
  uint32_t gauge_us;     /* moment of the last good gauge value */
  char reply[REPLY_MOST];
  uint8_t reply_length;
  char command[COMMAND_MOST + 1];
  uint8_t command_length;
  bool command_overrun;
} head_t;

/* by_watchdog: this start was forced by the watchdog; SYST:ERR? tells it. */
void head_start(head_t *head, const char *serial, gauge_kind_t kind, bool by_watchdog,
                uint32_t now_us);

/* Conversions a second that the converter is to be set to, RATE_FAST_HZ or RATE_SLOW_HZ. */
static inline uint8_t head_rate_hz(const head_t *head) { return head->rate_hz; }

/* A conversion was read: its 24 bits, and when it became ready. */
void head_conversion(head_t *head, uint32_t bits, uint32_t ready_us);

/* A frame of the gauge has come to its end whole. */
void head_frame(head_t *head, const frame_t *frame);

/* To be called at least once a millisecond: finds out what has gone silent. */
void head_time(head_t *head, uint32_t now_us);

/*
 * Takes a character off the line. False where it must wait (a reply has not gone out yet, or the
 * readings before an ABOR have not): offer it again later.
 */
bool head_character(head_t *head, char c, uint32_t now_us);

/* The line driver saw a broken character, or lost one. */
void head_line_fault(head_t *head, error_t error);

/*
 * The next line that is due, if it fits into room characters; returns its length or 0. Replies go
 * before readings. line: LINE_MOST characters.
 */
uint8_t head_line(head_t *head, uint32_t now_us, uint16_t room, char *line);

#endif
