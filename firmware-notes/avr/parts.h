/* The three devices on the head, each in a file of its own, and the clock they share. */
#ifndef SAGWRIGHT_PARTS_H
#define SAGWRIGHT_PARTS_H

#include <stdbool.h>
#include <stdint.h>

#include "../core/command.h"
#include "../core/gauge.h"

/* Set by an interrupt that the main loop has work from; a character sent is none. */
extern volatile bool something_came;

void clock_begin(void);
uint32_t clock_now_us(void);

/* The same, where interrupts are off already (in an interrupt): ticks is what the timer showed. */
uint32_t clock_at_us(uint16_t ticks);

void converter_begin(void);
void converter_set_rate(bool fast);

/* A conversion, if one is ready: its 24 bits and the moment it became so. */
bool converter_take(uint32_t *bits, uint32_t *ready_us);

gauge_kind_t indicator_begin(void);

/* A frame that came to its end whole. Also asks for the next one. */
bool indicator_take(frame_t *frame);

void line_begin(void);
uint16_t line_room(void);
void line_put(const char *text, uint8_t length);

/* The next character that came in, without taking it; false where there is none. */
bool line_peek(char *c);
void line_skip(void);

/* A fault on the way in since the last call, or ERROR_NONE. */
error_t line_fault(void);

#endif
