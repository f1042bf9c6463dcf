/* Microseconds from a 16-bit timer that counts half microseconds. No register in here. */
#ifndef SAGWRIGHT_CLOCK_H
#define SAGWRIGHT_CLOCK_H

#include <stdbool.h>
#include <stdint.h>

/*
 * The head's clock, 0..4294967295 us and round again (71.6 minutes).
 *
 * overflows: overflows counted so far; ticks: the timer (or its capture register), 0.5 us each;
 * pending: an overflow has happened that is not counted yet. It belongs to this moment only where
 * the timer has already started anew, that is, stands in its lower half.
 */
static inline uint32_t clock_microseconds(uint32_t overflows, uint16_t ticks, bool pending) {
  if (pending && ticks < 0x8000u) overflows++;
  return (overflows << 15) + (ticks >> 1);
}

/* Signed distance a - b on the round clock; right while they lie less than 35 minutes apart. */
static inline int32_t clock_apart(uint32_t a, uint32_t b) { return (int32_t)(a - b); }

#endif
