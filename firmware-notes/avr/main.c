/* The bench head on an ATmega328P at 16 MHz: hands the core what the parts bring, and sleeps. */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

#include "../core/head.h"
#include "board.h"
#include "parts.h"

#ifndef SERIAL
#define SERIAL "0"
#endif

static uint8_t reset_cause __attribute__((section(".noinit")));
head_t head;

/* After a reset by the watchdog it runs on at its shortest: stopped before anything else. */
void keep_reset_cause(void) __attribute__((naked, used, section(".init3")));
void keep_reset_cause(void) {
  reset_cause = MCUSR;
  MCUSR = 0;
  wdt_disable();
}

static void take_commands(void) {
  char c;
  error_t fault = line_fault();
  if (fault != ERROR_NONE) head_line_fault(&head, fault);
  while (line_peek(&c) && head_character(&head, c, clock_now_us())) line_skip();
  converter_set_rate(head_rate_hz(&head) == RATE_FAST_HZ);
}

static void send_lines(void) {
  char line[LINE_MOST];
  uint8_t length;
  while ((length = head_line(&head, clock_now_us(), line_room(), line)) > 0) line_put(line, length);
}

int main(void) {
  clock_begin();
  converter_begin();
  gauge_kind_t kind = indicator_begin();
  head_start(&head, SERIAL, kind, reset_cause & _BV(WDRF), clock_now_us());
  line_begin();
  set_sleep_mode(SLEEP_MODE_IDLE);
  wdt_enable(WDTO_250MS);
  sei();
  for (;;) {
    uint32_t bits, ready_us;
    frame_t frame;
    something_came = false;
    wdt_reset();
    if (converter_take(&bits, &ready_us)) head_conversion(&head, bits, ready_us);
    if (indicator_take(&frame)) head_frame(&head, &frame);
    head_time(&head, clock_now_us());
    take_commands();
    send_lines();
    while (!something_came) sleep_mode(); /* the millisecond ends it at the latest */
  }
}
