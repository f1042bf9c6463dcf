#include "gauge.h"

#include "clock.h"

enum { BITS_STORED = 56 };

/* A plunger followed by hand moves far slower; a dropped one needs a second frame to be believed. */
#define SPEED_MOST_UM_PER_MS INT32_C(50)
#define STEP_ALLOWED_UM INT32_C(100)

void frame_clear(frame_t *frame) {
  for (uint8_t i = 0; i < sizeof frame->bits; i++) frame->bits[i] = 0;
  frame->count = 0;
}

void frame_bit(frame_t *frame, bool bit, uint32_t now_us) {
  if (frame->count == 0) frame->first_us = now_us;
  frame->last_us = now_us;
  if (frame->count < BITS_STORED) {
    if (bit) frame->bits[frame->count >> 3] |= (uint8_t)(1u << (frame->count & 7));
    frame->count++;
  } else {
    frame->count = BITS_STORED + 1;
  }
}

frame_end_t frame_ended(const frame_t *frame, gauge_kind_t kind, uint32_t now_us) {
  if (frame->count == 0) return FRAME_NONE;
  uint8_t full = kind == GAUGE_52_BITS ? 52 : 24;
  int32_t quiet = clock_apart(now_us, frame->last_us);
  if (frame->count == full) return quiet >= FRAME_SETTLE_US ? FRAME_WHOLE : FRAME_NONE;
  return quiet >= FRAME_SILENCE_US ? FRAME_BROKEN : FRAME_NONE;
}

static uint8_t nibble(const frame_t *frame, uint8_t index) {
  uint8_t both = frame->bits[index >> 1];
  return index & 1 ? both >> 4 : both & 0xF;
}

static bool value_of_52(const frame_t *frame, int32_t *micrometres) {
  for (uint8_t i = 0; i < 4; i++) {
    if (nibble(frame, i) != 0xF) return false;
  }
  uint8_t sign = nibble(frame, 4), places = nibble(frame, 11), unit = nibble(frame, 12);
  if ((sign != 0 && sign != 8) || places > 5 || unit != 0) return false;
  int32_t value = 0;
  for (uint8_t i = 5; i < 11; i++) {
    uint8_t digit = nibble(frame, i);
    if (digit > 9) return false;
    value = value * 10 + digit;
  }
  for (; places < 3; places++) {
    if (value > GAUGE_MOST_UM) return false;
    value *= 10;
  }
  if (places == 4) value = (value + 5) / 10;
  if (places == 5) value = (value + 50) / 100;
  if (value > GAUGE_MOST_UM) return false;
  *micrometres = sign ? -value : value;
  return true;
}

static bool value_of_24(const frame_t *frame, int32_t *micrometres) {
  if (frame->bits[2] & 0x80) return false;
  int32_t value = 10 * ((int32_t)frame->bits[0] | (int32_t)frame->bits[1] << 8 |
                        (int32_t)(frame->bits[2] & 0x0F) << 16);
  if (value > GAUGE_MOST_UM) return false;
  *micrometres = frame->bits[2] & 0x10 ? -value : value;
  return true;
}

bool frame_value(const frame_t *frame, gauge_kind_t kind, int32_t *micrometres) {
  return kind == GAUGE_52_BITS ? value_of_52(frame, micrometres) : value_of_24(frame, micrometres);
}

static bool ask_enter(ask_t *ask, uint8_t state, uint32_t now_us) {
  ask->state = state;
  ask->since_us = now_us;
  return state == ASK_PULLING;
}

void ask_start(ask_t *ask, uint32_t now_us) { (void)ask_enter(ask, ASK_RESTING, now_us); }

bool ask_step(ask_t *ask, bool coming, uint32_t now_us) {
  int32_t elapsed = clock_apart(now_us, ask->since_us);
  switch (ask->state) {
    case ASK_RESTING:
      if (coming) return ask_enter(ask, ASK_RECEIVING, now_us);
      return elapsed >= ASK_PAUSE_US ? ask_enter(ask, ASK_PULLING, now_us) : false;
    case ASK_PULLING:
      if (coming) return ask_enter(ask, ASK_RECEIVING, now_us);
      return elapsed >= ASK_TIMEOUT_US ? ask_enter(ask, ASK_RESTING, now_us) : true;
    case ASK_RECEIVING:
    default:
      if (!coming) return ask_enter(ask, ASK_RESTING, now_us);
      return false;
  }
}

static bool within_reach(int32_t from, uint32_t from_us, int32_t to, uint32_t to_us) {
  int32_t elapsed_ms = clock_apart(to_us, from_us) / 1000;
  int32_t step = to > from ? to - from : from - to;
  return step <= STEP_ALLOWED_UM + SPEED_MOST_UM_PER_MS * elapsed_ms;
}

bool believe_value(believe_t *believe, int32_t micrometres, uint32_t moment_us) {
  bool fresh = !believe->has_last ||
               (uint32_t)(moment_us - believe->last_us) > (uint32_t)GAUGE_TIMEOUT_US;
  bool good = fresh || within_reach(believe->last, believe->last_us, micrometres, moment_us) ||
              (believe->has_doubtful && within_reach(believe->doubtful, believe->doubtful_us,
                                                     micrometres, moment_us));
  believe->has_doubtful = !good;
  if (good) {
    believe->has_last = true;
    believe->last = micrometres;
    believe->last_us = moment_us;
  } else {
    believe->doubtful = micrometres;
    believe->doubtful_us = moment_us;
  }
  return good;
}
