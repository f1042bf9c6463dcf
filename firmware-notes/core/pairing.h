/*
 * Gives each gauge value to the load reading of its own moment.
 *
 * A frame is whole only some 15 ms after the gauge took its value, and a conversion is some 25 ms
 * old when it is ready. Paired with whatever came last, the two are of different moments: a shaft
 * that is loaded and unloaded then shows a hysteresis that it does not have (above 1 % of the
 * deflection at 2.7 mm/s). So readings are held back until every frame of their moment must have
 * come, and a value goes to the nearest reading or to none. No value is made up.
 */
#ifndef SAGWRIGHT_PAIRING_H
#define SAGWRIGHT_PAIRING_H

#include "wire.h"

enum { READINGS_HELD = 12, FRAMES_HELD = 12 };

/* A frame is whole this long after its first clock at the latest. */
#define FRAME_LATEST_US INT32_C(50000)

typedef struct {
  int32_t micrometres;
  uint32_t moment_us;
} gauge_value_t;

typedef struct {
  reading_t readings[READINGS_HELD]; /* oldest first, a ring */
  uint8_t first, count;
  gauge_value_t values[FRAMES_HELD]; /* in no order */
  uint8_t values_count;
  uint32_t period_us; /* of the converter, nominal */
  bool dropped;       /* a reading was lost since the last one handed out */
  bool flush;         /* hand out all that is held without waiting */
} pairing_t;

void pairing_start(pairing_t *pairing, uint32_t period_us);

/* Takes a reading; where the line is too slow for what is held, the oldest one is lost. */
void pairing_reading(pairing_t *pairing, const reading_t *reading);

void pairing_value(pairing_t *pairing, int32_t micrometres, uint32_t moment_us);

/* Whether a reading may go out now: when its frames must have come, or no more can be held. */
bool pairing_due(const pairing_t *pairing, uint32_t now_us);

/* Takes the oldest reading out, with its gauge value if there is one and FLAG_DROPPED if due. */
void pairing_take(pairing_t *pairing, reading_t *reading);

#endif
