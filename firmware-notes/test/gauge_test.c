#include <string.h>

#include "check.h"
#include "frames.h"

enum { NEVER = -77777777 };

static int32_t value(frame_t frame, gauge_kind_t kind) {
  int32_t um = NEVER;
  return frame_value(&frame, kind, &um) ? um : NEVER;
}

static int32_t value_of(const uint8_t nibbles[13]) {
  return value(frame_of_nibbles(nibbles, 0), GAUGE_52_BITS);
}

static void a_52_bit_frame_is_read_with_its_sign_and_places(void) {
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 0, 1, 2, 3, 4, 5, 3, 0}) == 12345);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 8, 0, 1, 2, 3, 4, 5, 3, 0}) == -12345);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 0, 0, 1, 2, 3, 4, 2, 0}) == 12340);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 1, 2, 3, 4, 5, 5, 4, 0}) == 12346);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 8, 1, 2, 3, 4, 5, 4, 4, 0}) == -12345);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 1, 2, 3, 4, 5, 0, 5, 0}) == 1235);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 0, 0, 0, 0, 1, 2, 0, 0}) == 12000);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 8, 0, 0, 0, 0, 0, 0, 3, 0}) == 0); /* minus nought */
}

static void a_52_bit_frame_that_cannot_be_right_is_refused(void) {
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 0, 1, 2, 3, 4, 5, 3, 1}) == NEVER); /* inches */
  CHECK(value_of((uint8_t[13]){15, 15, 15, 7, 0, 0, 1, 2, 3, 4, 5, 3, 0}) == NEVER);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 1, 0, 1, 2, 3, 4, 5, 3, 0}) == NEVER);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 0, 1, 10, 3, 4, 5, 3, 0}) == NEVER);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 0, 1, 2, 3, 4, 5, 6, 0}) == NEVER);
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 9, 9, 9, 9, 9, 9, 2, 0}) == NEVER); /* 10 m */
  CHECK(value_of((uint8_t[13]){15, 15, 15, 15, 0, 9, 9, 9, 9, 9, 9, 0, 0}) == NEVER);
}

static void every_value_of_six_digits_comes_back(void) {
  unsigned wrong = 0;
  for (int32_t um = -999999; um <= 999999; um += 37) {
    wrong += value(frame_of_um(um, 0), GAUGE_52_BITS) != um;
  }
  CHECK(wrong == 0);
}

/* What a check sum would catch, here only the shape of a frame does: count what slips through. */
static void a_flipped_bit_is_refused_or_makes_another_digit_never_the_same(void) {
  unsigned refused = 0, other = 0;
  for (int i = 0; i < 52; i++) {
    frame_t frame = frame_of_um(12345, 0);
    frame.bits[i / 8] ^= (uint8_t)(1 << i % 8);
    int32_t um = value(frame, GAUGE_52_BITS);
    if (um == NEVER) refused++;
    if (um != NEVER && um != 12345) other++;
  }
  CHECK(refused + other == 52);
  CHECK(refused >= 30);
}

static void a_24_bit_frame_is_read(void) {
  CHECK(value(frame_of_24(1234, 0), GAUGE_24_BITS) == 12340);
  CHECK(value(frame_of_24(1234 | 1u << 20, 0), GAUGE_24_BITS) == -12340);
  CHECK(value(frame_of_24(1u << 20, 0), GAUGE_24_BITS) == 0);
  CHECK(value(frame_of_24(1234 | 1u << 23, 0), GAUGE_24_BITS) == NEVER); /* inches */
  CHECK(value(frame_of_24(0xFFFFF, 0), GAUGE_24_BITS) == NEVER);         /* 10 m */
}

static void a_frame_ends_by_silence_and_counts_its_bits(void) {
  frame_t frame = frame_of_um(5, 1000);
  uint32_t last_us = 1000 + 51 * 240;
  CHECK(frame.first_us == 1000 && frame.last_us == last_us);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, last_us + 1000) == FRAME_NONE);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, last_us + 1500) == FRAME_WHOLE);
  CHECK(frame_ended(&frame, GAUGE_24_BITS, last_us + 5000) == FRAME_BROKEN);
  frame_bit(&frame, true, last_us + 240);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, last_us + 2000) == FRAME_NONE);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, last_us + 5240) == FRAME_BROKEN);
  frame_clear(&frame);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, last_us + 9999) == FRAME_NONE);
  for (uint32_t i = 0; i < 40; i++) frame_bit(&frame, true, i * 240);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, 39 * 240 + 4999) == FRAME_NONE);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, 39 * 240 + 5000) == FRAME_BROKEN);
}

static void a_clock_that_never_stops_writes_nowhere_else(void) {
  struct {
    frame_t frame;
    uint8_t guard[8];
  } guarded;
  memset(&guarded, 0x5A, sizeof guarded);
  frame_clear(&guarded.frame);
  for (uint32_t i = 0; i < 1000; i++) frame_bit(&guarded.frame, true, i);
  CHECK(guarded.guard[0] == 0x5A);
  CHECK(frame_ended(&guarded.frame, GAUGE_52_BITS, 999999) == FRAME_BROKEN);
  CHECK(guarded.frame.count == 57);
}

static void the_silence_is_measured_across_the_round_of_the_clock(void) {
  frame_t frame = frame_of_um(5, 4294967000u);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, frame.last_us + 1499) == FRAME_NONE);
  CHECK(frame_ended(&frame, GAUGE_52_BITS, frame.last_us + 1500) == FRAME_WHOLE);
}

static void a_gauge_is_asked_again_only_after_its_frame_has_ended(void) {
  ask_t ask;
  ask_start(&ask, 0);
  CHECK(!ask_step(&ask, false, 1000));
  CHECK(ask_step(&ask, false, 2000));
  CHECK(ask_step(&ask, false, 30000));  /* it takes its time */
  CHECK(!ask_step(&ask, true, 32000));  /* first clock: let go */
  CHECK(!ask_step(&ask, true, 44000));
  CHECK(!ask_step(&ask, false, 46000)); /* over */
  CHECK(!ask_step(&ask, false, 47999));
  CHECK(ask_step(&ask, false, 48000));
}

static void a_gauge_that_does_not_answer_is_asked_anew(void) {
  ask_t ask;
  ask_start(&ask, 0);
  CHECK(ask_step(&ask, false, 2000));
  CHECK(ask_step(&ask, false, 251999));
  CHECK(!ask_step(&ask, false, 252000));
  CHECK(ask_step(&ask, false, 254000));
}

static void a_frame_nobody_asked_for_keeps_the_request_back(void) {
  ask_t ask;
  ask_start(&ask, 0);
  CHECK(!ask_step(&ask, true, 1999));
  CHECK(!ask_step(&ask, true, 90000));
}

static void a_leap_is_believed_when_the_next_frame_agrees(void) {
  believe_t believe = {0};
  CHECK(believe_value(&believe, 5000, 0));
  CHECK(believe_value(&believe, 5400, 43000));
  CHECK(!believe_value(&believe, 85400, 86000)); /* a flipped digit */
  CHECK(believe_value(&believe, 5500, 129000));  /* and back: nothing happened */
  CHECK(!believe_value(&believe, 15500, 172000)); /* a dropped plunger */
  CHECK(believe_value(&believe, 15600, 215000));
  CHECK(believe_value(&believe, 15700, 258000));
}

static void two_unlike_leaps_are_not_believed(void) {
  believe_t believe = {0};
  CHECK(believe_value(&believe, 0, 0));
  CHECK(!believe_value(&believe, 80000, 43000));
  CHECK(!believe_value(&believe, -40000, 86000));
  CHECK(believe_value(&believe, 0, 129000));
}

static void after_a_silence_any_value_is_believed(void) {
  believe_t believe = {0};
  CHECK(believe_value(&believe, 0, 4294900000u));
  CHECK(believe_value(&believe, 500000, 4294900000u + 500001u));
}

void test_gauge(void) {
  a_52_bit_frame_is_read_with_its_sign_and_places();
  a_52_bit_frame_that_cannot_be_right_is_refused();
  every_value_of_six_digits_comes_back();
  a_flipped_bit_is_refused_or_makes_another_digit_never_the_same();
  a_24_bit_frame_is_read();
  a_frame_ends_by_silence_and_counts_its_bits();
  a_clock_that_never_stops_writes_nowhere_else();
  the_silence_is_measured_across_the_round_of_the_clock();
  a_gauge_is_asked_again_only_after_its_frame_has_ended();
  a_gauge_that_does_not_answer_is_asked_anew();
  a_frame_nobody_asked_for_keeps_the_request_back();
  a_leap_is_believed_when_the_next_frame_agrees();
  two_unlike_leaps_are_not_believed();
  after_a_silence_any_value_is_believed();
}
