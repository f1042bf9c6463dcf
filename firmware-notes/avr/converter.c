/*
 * The 24-bit bridge converter by its two wires: data falls when a conversion is ready, then 24
 * clock pulses bring its bits, greatest first, and a 25th asks for the next one at gain 128.
 */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "../core/clock.h"
#include "board.h"
#include "parts.h"

enum { MISSED_EDGE_US = 2000 };

static volatile bool edge_seen;
static volatile uint32_t edge_us;
static bool low_unexplained;
static uint32_t low_since_us;

ISR(TIMER1_CAPT_vect) {
  edge_us = clock_at_us(ICR1);
  edge_seen = something_came = true;
  TIMSK1 &= (uint8_t)~_BV(ICIE1); /* the bits themselves make edges as well */
}

static void wait_for_edge(void) {
  edge_seen = false;
  TIFR1 = _BV(ICF1);
  TIMSK1 |= _BV(ICIE1);
}

void converter_begin(void) {
  PORTB |= _BV(CONVERTER_DATA);
  PORTB &= (uint8_t)~_BV(CONVERTER_CLOCK);
  DDRB |= _BV(CONVERTER_CLOCK) | _BV(CONVERTER_RATE);
  converter_set_rate(true);
  wait_for_edge();
}

void converter_set_rate(bool fast) {
  if (fast) {
    PORTB |= _BV(CONVERTER_RATE);
  } else {
    PORTB &= (uint8_t)~_BV(CONVERTER_RATE);
  }
}

static bool data_is_high(void) { return PINB & _BV(CONVERTER_DATA); }

/*
 * One clock pulse, 0.38 us. An interrupt while the clock is high could make it longer than the
 * 60 us after which the converter goes to sleep, so there is none; between pulses any may come.
 */
static void pulse(void) {
  ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
    PORTB |= _BV(CONVERTER_CLOCK);
    __builtin_avr_delay_cycles(4);
    PORTB &= (uint8_t)~_BV(CONVERTER_CLOCK);
  }
}

/* False where the line stays low behind the last pulse: no converter does that, a short does. */
static bool shift_in(uint32_t *bits) {
  uint32_t shifted = 0;
  for (uint8_t i = 0; i < 24; i++) {
    pulse();
    shifted = shifted << 1 | (data_is_high() ? 1u : 0u);
  }
  pulse();
  *bits = shifted;
  return data_is_high();
}

/*
 * Ready with its edge missed, as at a start: the moment is unknown, so the conversion is read only
 * to free the converter. Not at first sight: the capture unit sees an edge a few cycles late.
 */
static void free_if_edge_was_missed(void) {
  if (data_is_high()) {
    low_unexplained = false;
    return;
  }
  uint32_t now_us = clock_now_us();
  if (!low_unexplained) {
    low_unexplained = true;
    low_since_us = now_us;
  } else if (clock_apart(now_us, low_since_us) > MISSED_EDGE_US && !edge_seen) {
    uint32_t lost;
    low_unexplained = false;
    TIMSK1 &= (uint8_t)~_BV(ICIE1);
    (void)shift_in(&lost);
    wait_for_edge();
  }
}

bool converter_take(uint32_t *bits, uint32_t *ready_us) {
  if (!edge_seen) {
    free_if_edge_was_missed();
    return false;
  }
  low_unexplained = false;
  *ready_us = edge_us; /* the capture is off: nobody else writes it now */
  bool good = shift_in(bits);
  wait_for_edge();
  return good;
}
