/* The indicator's frames, a bit at each clock, and the request that makes it send one. */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "board.h"
#include "parts.h"

static gauge_kind_t kind;
static frame_t incoming;
static ask_t ask;

ISR(INT0_vect) {
  uint16_t ticks = TCNT1;
  bool bit = PIND & _BV(GAUGE_DATA);
  frame_bit(&incoming, kind == GAUGE_24_BITS ? !bit : bit, clock_at_us(ticks));
}

gauge_kind_t indicator_begin(void) {
  /* The request is let go before its pin becomes an output: no gauge is asked by mistake. */
  PORTD &= (uint8_t)~_BV(GAUGE_REQUEST);
  DDRD |= _BV(GAUGE_REQUEST);
  PORTD |= _BV(GAUGE_CLOCK) | _BV(GAUGE_DATA) | _BV(GAUGE_24_BITS_LINK);
  __builtin_avr_delay_cycles(160); /* until the pull-ups have done their work */
  kind = PIND & _BV(GAUGE_24_BITS_LINK) ? GAUGE_52_BITS : GAUGE_24_BITS;
  /* The bit is good at the gauge's falling clock; the transistors of a 24-bit one turn it round. */
  EICRA = kind == GAUGE_52_BITS ? _BV(ISC01) : _BV(ISC01) | _BV(ISC00);
  EIFR = _BV(INTF0);
  EIMSK = _BV(INT0);
  ask_start(&ask, clock_now_us());
  return kind;
}

bool indicator_take(frame_t *frame) {
  frame_end_t end;
  bool coming;
  ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
    end = frame_ended(&incoming, kind, clock_at_us(TCNT1));
    if (end == FRAME_WHOLE) *frame = incoming;
    if (end != FRAME_NONE) frame_clear(&incoming);
    coming = incoming.count > 0;
  }
  if (ask_step(&ask, coming, clock_now_us())) {
    PORTD |= _BV(GAUGE_REQUEST);
  } else {
    PORTD &= (uint8_t)~_BV(GAUGE_REQUEST);
  }
  return end == FRAME_WHOLE;
}
