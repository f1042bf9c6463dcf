#include "frames.h"

#include <stdlib.h>
#include <string.h>

frame_t frame_of_nibbles(const uint8_t nibbles[13], uint32_t first_us) {
  frame_t frame;
  memset(&frame, 0xEE, sizeof frame);
  frame_clear(&frame);
  for (uint32_t i = 0; i < 52; i++) {
    frame_bit(&frame, nibbles[i / 4] >> i % 4 & 1, first_us + 240 * i);
  }
  return frame;
}

frame_t frame_of_um(int32_t micrometres, uint32_t first_us) {
  uint8_t nibbles[13] = {15, 15, 15, 15, micrometres < 0 ? 8 : 0, 0, 0, 0, 0, 0, 0, 3, 0};
  int32_t rest = abs(micrometres);
  for (int i = 10; i >= 5; i--, rest /= 10) nibbles[i] = (uint8_t)(rest % 10);
  return frame_of_nibbles(nibbles, first_us);
}

frame_t frame_of_24(uint32_t bits, uint32_t first_us) {
  frame_t frame;
  frame_clear(&frame);
  for (uint32_t i = 0; i < 24; i++) frame_bit(&frame, bits >> i & 1, first_us + 400 * i);
  return frame;
}
