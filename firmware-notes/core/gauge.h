/*
 * The digital indicator: its two kinds of frame, when to ask it, and which value to believe.
 * Both frame layouts are from memory, as widely published: check them on the indicator you have.
 */
#ifndef SAGWRIGHT_GAUGE_H
#define SAGWRIGHT_GAUGE_H

#include <stdbool.h>
#include <stdint.h>

typedef enum {
  GAUGE_52_BITS, /* 13 nibbles, sent when the request line is pulled low */
  GAUGE_24_BITS  /* sent unasked, 3 to 8 times a second */
} gauge_kind_t;

/* Not enumerators: an int has 16 bits on this part, and these are compared with signed distances. */
#define GAUGE_TIMEOUT_US INT32_C(500000) /* without a good frame for this long the gauge is silent */
#define GAUGE_MOST_UM INT32_C(999999)    /* nothing on a bench travels a metre */
#define FRAME_SILENCE_US INT32_C(5000)   /* no clock for this long ends a frame that is not full */
#define FRAME_SETTLE_US INT32_C(1500)    /* and this long one that is full: a bit too many shows */
#define ASK_TIMEOUT_US INT32_C(250000)   /* a gauge that has not begun by then is asked again */
#define ASK_PAUSE_US INT32_C(2000)       /* between the end of a frame and the next request */

/* A frame as it comes in, a bit a clock. */
typedef struct {
  uint8_t bits[7];
  uint8_t count; /* stays at 57 when more come: too many is as wrong as too few */
  uint32_t first_us, last_us;
} frame_t;

typedef enum { FRAME_NONE, FRAME_WHOLE, FRAME_BROKEN } frame_end_t;

void frame_clear(frame_t *frame);
void frame_bit(frame_t *frame, bool bit, uint32_t now_us);

/* Whether the frame has ended, and with as many bits as its kind has. */
frame_end_t frame_ended(const frame_t *frame, gauge_kind_t kind, uint32_t now_us);

/*
 * The value of a whole frame in steps of 0.001 mm, whatever the places it is shown with: a gauge
 * that is switched from 0.001 to 0.01 mm keeps its calibration. False where the frame cannot be
 * right or is in inches (a gauge switched to inches by mistake must not pass for millimetres).
 */
bool frame_value(const frame_t *frame, gauge_kind_t kind, int32_t *micrometres);

/* Asks for frames: the request is pulled low until the gauge's first clock, then let go. */
typedef struct {
  enum { ASK_RESTING, ASK_PULLING, ASK_RECEIVING } state;
  uint32_t since_us;
} ask_t;

void ask_start(ask_t *ask, uint32_t now_us);

/* coming: a frame is on its way in. Returns whether the request line is to be low now. */
bool ask_step(ask_t *ask, bool coming, uint32_t now_us);

/*
 * The 52-bit frame has no check sum, so a flipped bit can make another digit. A step that is
 * larger than a plunger moves between two frames counts only when the next frame agrees with it.
 */
typedef struct {
  bool has_last, has_doubtful;
  int32_t last, doubtful;
  uint32_t last_us, doubtful_us;
} believe_t;

bool believe_value(believe_t *believe, int32_t micrometres, uint32_t moment_us);

#endif
