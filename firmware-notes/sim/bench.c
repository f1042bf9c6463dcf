/* The simulated time, the events in it, and the pins of the head. */
#include "bench.h"

#include <stdlib.h>

#include <simavr/avr_ioport.h>

uint64_t bench_now(const bench_t *bench) { return bench->before_reset + bench->avr->cycle; }

double bench_seconds(const bench_t *bench) {
  return (double)bench_now(bench) / (double)CYCLES_PER_SECOND;
}

/*
 * The diary: one cycle timer of the library for all of our events, for a reset of the head throws
 * the library's timers away.
 */

static avr_cycle_count_t alarm_rings(avr_t *avr, avr_cycle_count_t when, void *param);

static appointment_t *first_appointment(bench_t *bench) {
  appointment_t *first = 0;
  for (size_t i = 0; i < sizeof bench->diary / sizeof *bench->diary; i++) {
    appointment_t *one = &bench->diary[i];
    if (one->event && (!first || one->at < first->at)) first = one;
  }
  return first;
}

void bench_set_alarm(bench_t *bench) {
  appointment_t *first = first_appointment(bench);
  avr_cycle_timer_cancel(bench->avr, alarm_rings, bench);
  if (!first) return;
  uint64_t now = bench_now(bench);
  avr_cycle_timer_register(bench->avr, first->at > now ? first->at - now : 1, alarm_rings, bench);
}

static avr_cycle_count_t alarm_rings(avr_t *avr, avr_cycle_count_t when, void *param) {
  bench_t *bench = param;
  appointment_t *first;
  (void)avr;
  (void)when;
  while ((first = first_appointment(bench)) && first->at <= bench_now(bench)) {
    event_t event = first->event;
    first->event = 0;
    event(bench);
  }
  bench_set_alarm(bench);
  return 0; /* a time given back would ring this very alarm again */
}

void bench_cancel(bench_t *bench, event_t event) {
  for (size_t i = 0; i < sizeof bench->diary / sizeof *bench->diary; i++) {
    if (bench->diary[i].event == event) bench->diary[i].event = 0;
  }
}

void bench_at(bench_t *bench, uint64_t at, event_t event) {
  bench_cancel(bench, event);
  for (size_t i = 0; i < sizeof bench->diary / sizeof *bench->diary; i++) {
    if (!bench->diary[i].event) {
      bench->diary[i] = (appointment_t){at, event};
      bench_set_alarm(bench);
      return;
    }
  }
  fprintf(stderr, "the diary is full\n");
  exit(70);
}

void bench_drive(bench_t *bench, char port, int pin, bool high) {
  uint8_t bit = (uint8_t)(1 << pin);
  uint8_t *mask = &bench->external_mask[(int)port], *value = &bench->external_value[(int)port];
  *mask |= bit;
  *value = (uint8_t)(high ? *value | bit : *value & ~bit);
  /* Without this the library lets a pull-up win over what drives the pin from outside. */
  avr_ioport_external_t external = {.name = (unsigned long)port, .mask = *mask, .value = *value};
  avr_ioctl(bench->avr, AVR_IOCTL_IOPORT_SET_EXTERNAL(port), &external);
  avr_raise_irq(avr_io_getirq(bench->avr, AVR_IOCTL_IOPORT_GETIRQ(port), pin), high);
}

void bench_redrive(bench_t *bench) {
  for (int port = 'B'; port <= 'D'; port++) {
    for (int pin = 0; pin < 8; pin++) {
      bool high = bench->external_value[port] >> pin & 1;
      if (!(bench->external_mask[port] >> pin & 1)) continue;
      /* A reset clears the pin register, and a level that did not change is not told again. */
      bench_drive(bench, (char)port, pin, !high);
      bench_drive(bench, (char)port, pin, high);
    }
  }
}

void bench_on_pin(bench_t *bench, char port, int pin, avr_irq_notify_t notify) {
  avr_irq_t *irq = avr_io_getirq(bench->avr, AVR_IOCTL_IOPORT_GETIRQ(port), pin);
  avr_irq_register_notify(irq, notify, bench);
}
