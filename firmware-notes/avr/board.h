/*
 * What hangs on which pin of the ATmega328P; in brackets the number printed on the common boards.
 * docs/bench/wiring.md says how each is wired.
 */
#ifndef SAGWRIGHT_BOARD_H
#define SAGWRIGHT_BOARD_H

#include <avr/io.h>

#ifndef BAUD
#define BAUD 115200ul
#endif

/* Bridge converter. Its data line lies on the timer's capture pin: stamped by the hardware. */
#define CONVERTER_DATA PB0  /* [8], ICP1, pulled up: a pulled plug reads as "never ready" */
#define CONVERTER_CLOCK PB1 /* [9] */
#define CONVERTER_RATE PB2  /* [10], high for 80 a second */

/* Indicator. */
#define GAUGE_CLOCK PD2   /* [2], INT0 */
#define GAUGE_DATA PD4    /* [4] */
#define GAUGE_REQUEST PD5 /* [5], high turns on the transistor that pulls the request line low */
#define GAUGE_24_BITS_LINK PD6 /* [6], wired to ground: 24-bit frames, both lines turned round */

#endif
