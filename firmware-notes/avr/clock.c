/* Timer 1 counts half microseconds, and its overflows are counted here. */
#include "../core/clock.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "parts.h"

static volatile uint32_t clock_overflows;
volatile bool something_came;

ISR(TIMER1_OVF_vect) { clock_overflows++; }

/* Once a millisecond the main loop is woken, to notice what has gone silent. */
ISR(TIMER0_COMPA_vect) { something_came = true; }

void clock_begin(void) {
  TCCR1A = 0;
  TCCR1B = _BV(CS11); /* a count each 8 cycles, capture on the falling edge */
  TIMSK1 = _BV(TOIE1);
  TCCR0A = _BV(WGM01);
  OCR0A = 249;
  TCCR0B = _BV(CS01) | _BV(CS00); /* 16 MHz / 64 / 250 */
  TIMSK0 = _BV(OCIE0A);
}

uint32_t clock_at_us(uint16_t ticks) {
  /* Read after ticks was taken: an overflow that came between shows ticks in the upper half. */
  bool pending = TIFR1 & _BV(TOV1);
  return clock_microseconds(clock_overflows, ticks, pending);
}

uint32_t clock_now_us(void) {
  uint32_t now_us;
  ATOMIC_BLOCK(ATOMIC_RESTORESTATE) { now_us = clock_at_us(TCNT1); }
  return now_us;
}
