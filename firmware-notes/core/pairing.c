#include "pairing.h"

#include "clock.h"

void pairing_start(pairing_t *pairing, uint32_t period_us) {
  *pairing = (pairing_t){.period_us = period_us};
}

static reading_t *held(pairing_t *pairing, uint8_t index) {
  uint8_t at = (uint8_t)(pairing->first + index);
  return &pairing->readings[at < READINGS_HELD ? at : at - READINGS_HELD];
}

static void forget_oldest(pairing_t *pairing) {
  pairing->first = (uint8_t)(pairing->first + 1 == READINGS_HELD ? 0 : pairing->first + 1);
  pairing->count--;
}

void pairing_reading(pairing_t *pairing, const reading_t *reading) {
  if (pairing->count == READINGS_HELD) {
    forget_oldest(pairing);
    pairing->dropped = true;
  }
  *held(pairing, pairing->count) = *reading;
  pairing->count++;
}

static void forget_value(pairing_t *pairing, uint8_t index) {
  pairing->values[index] = pairing->values[--pairing->values_count];
}

void pairing_value(pairing_t *pairing, int32_t micrometres, uint32_t moment_us) {
  if (pairing->values_count == FRAMES_HELD) {
    uint8_t oldest = 0;
    for (uint8_t i = 1; i < FRAMES_HELD; i++) {
      if (clock_apart(pairing->values[i].moment_us, pairing->values[oldest].moment_us) < 0) {
        oldest = i;
      }
    }
    forget_value(pairing, oldest);
  }
  pairing->values[pairing->values_count++] = (gauge_value_t){micrometres, moment_us};
}

bool pairing_due(const pairing_t *pairing, uint32_t now_us) {
  if (pairing->count == 0) return false;
  uint32_t moment_us = pairing->readings[pairing->first].moment_us;
  int32_t wait_us = (int32_t)(pairing->period_us / 2) + FRAME_LATEST_US;
  return pairing->flush || pairing->count == READINGS_HELD ||
         clock_apart(now_us, moment_us) >= wait_us;
}

void pairing_take(pairing_t *pairing, reading_t *reading) {
  *reading = *held(pairing, 0);
  int32_t nearest_us = (int32_t)(pairing->period_us / 8 * 5);
  /* How far behind this reading a value may lie before it belongs to the next one. */
  int32_t border_us =
      pairing->count > 1 ? clock_apart(held(pairing, 1)->moment_us, reading->moment_us) / 2
                         : (int32_t)(pairing->period_us / 2);
  for (uint8_t i = 0; i < pairing->values_count;) {
    int32_t apart_us = clock_apart(pairing->values[i].moment_us, reading->moment_us);
    if (apart_us > border_us) {
      i++;
      continue;
    }
    int32_t distance_us = apart_us < 0 ? -apart_us : apart_us;
    if (distance_us <= nearest_us) {
      nearest_us = distance_us;
      reading->has_gauge = true;
      reading->gauge = pairing->values[i].micrometres;
    }
    forget_value(pairing, i);
  }
  if (pairing->dropped) reading->flags |= FLAG_DROPPED;
  pairing->dropped = false;
  forget_oldest(pairing);
  if (pairing->count == 0) pairing->flush = false;
}
