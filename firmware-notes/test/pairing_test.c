#include "../core/pairing.h"

#include "check.h"

enum { PERIOD = 12500, WAIT = PERIOD / 2 + 50000 };

static void add(pairing_t *pairing, uint16_t seq, uint32_t moment_us) {
  pairing_reading(pairing, &(reading_t){.seq = seq, .moment_us = moment_us});
}

static reading_t take(pairing_t *pairing) {
  reading_t reading;
  pairing_take(pairing, &reading);
  return reading;
}

static void a_value_goes_to_the_nearest_reading(void) {
  for (int32_t off = -6000; off <= 6000; off += 500) {
    pairing_t pairing;
    pairing_start(&pairing, PERIOD);
    for (uint16_t i = 0; i < 4; i++) add(&pairing, i, 1000000u + PERIOD * i);
    pairing_value(&pairing, 42, (uint32_t)(1000000 + 2 * PERIOD + off));
    for (uint16_t i = 0; i < 4; i++) {
      reading_t reading = take(&pairing);
      CHECK(reading.has_gauge == (i == 2));
      CHECK(i != 2 || reading.gauge == 42);
    }
  }
}

static void of_two_values_the_nearer_one_counts_and_each_only_once(void) {
  pairing_t pairing;
  pairing_start(&pairing, PERIOD);
  add(&pairing, 0, 100000);
  add(&pairing, 1, 112500);
  pairing_value(&pairing, 1, 104000);
  pairing_value(&pairing, 2, 99000);
  reading_t first = take(&pairing), second = take(&pairing);
  CHECK(first.has_gauge && first.gauge == 2);
  CHECK(!second.has_gauge);
}

static void a_value_far_from_any_reading_is_given_to_none(void) {
  pairing_t pairing;
  pairing_start(&pairing, PERIOD);
  add(&pairing, 0, 100000);
  add(&pairing, 1, 300000); /* the converter was away in between */
  pairing_value(&pairing, 1, 190000);
  pairing_value(&pairing, 2, 210000);
  CHECK(!take(&pairing).has_gauge);
  CHECK(!take(&pairing).has_gauge);
  CHECK(pairing.values_count == 0);
}

static void a_value_of_the_time_to_come_waits_for_its_reading(void) {
  pairing_t pairing;
  pairing_start(&pairing, PERIOD);
  add(&pairing, 0, 100000);
  pairing_value(&pairing, 7, 111000);
  CHECK(!take(&pairing).has_gauge);
  add(&pairing, 1, 112500);
  CHECK(take(&pairing).gauge == 7);
}

static void a_reading_waits_until_its_frames_must_have_come(void) {
  pairing_t pairing;
  pairing_start(&pairing, PERIOD);
  CHECK(!pairing_due(&pairing, 5));
  add(&pairing, 0, 4294960000u); /* across the round of the clock */
  CHECK(!pairing_due(&pairing, 4294960000u + WAIT - 1));
  CHECK(pairing_due(&pairing, 4294960000u + WAIT));
  pairing.flush = true;
  CHECK(pairing_due(&pairing, 4294960000u));
  (void)take(&pairing);
  CHECK(!pairing.flush);
  for (uint16_t i = 0; i < READINGS_HELD; i++) {
    CHECK(!pairing_due(&pairing, 50));
    add(&pairing, i, i);
  }
  CHECK(pairing_due(&pairing, 50)); /* early rather than never */
}

static void when_the_line_is_too_slow_the_oldest_go_and_the_next_says_so(void) {
  pairing_t pairing;
  pairing_start(&pairing, PERIOD);
  for (uint16_t i = 0; i < READINGS_HELD + 3; i++) add(&pairing, i, PERIOD * (uint32_t)i);
  reading_t first = take(&pairing);
  CHECK(first.seq == 3 && first.flags == FLAG_DROPPED);
  for (uint16_t i = 4; i < READINGS_HELD + 3; i++) {
    reading_t reading = take(&pairing);
    CHECK(reading.seq == i && reading.flags == 0);
  }
  CHECK(pairing.count == 0);
}

static void values_beyond_what_is_held_push_out_the_oldest(void) {
  pairing_t pairing;
  pairing_start(&pairing, PERIOD);
  for (uint32_t i = 0; i < FRAMES_HELD + 1; i++) {
    pairing_value(&pairing, (int32_t)i, 1000 + PERIOD * i);
  }
  add(&pairing, 0, 1000);
  CHECK(!take(&pairing).has_gauge);
  add(&pairing, 1, 1000 + PERIOD);
  CHECK(take(&pairing).gauge == 1);
}

void test_pairing(void) {
  a_value_goes_to_the_nearest_reading();
  of_two_values_the_nearer_one_counts_and_each_only_once();
  a_value_far_from_any_reading_is_given_to_none();
  a_value_of_the_time_to_come_waits_for_its_reading();
  a_reading_waits_until_its_frames_must_have_come();
  when_the_line_is_too_slow_the_oldest_go_and_the_next_says_so();
  values_beyond_what_is_held_push_out_the_oldest();
}
