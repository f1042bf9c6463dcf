/* Frames as an indicator sends them, made apart from the code that reads them. */
#ifndef SAGWRIGHT_FRAMES_H
#define SAGWRIGHT_FRAMES_H

#include <stdint.h>

#include "../core/gauge.h"

/* digits: the thirteen nibbles in the order they are sent. */
frame_t frame_of_nibbles(const uint8_t nibbles[13], uint32_t first_us);
/* A 52-bit frame with three places. */
frame_t frame_of_um(int32_t micrometres, uint32_t first_us);
frame_t frame_of_24(uint32_t bits, uint32_t first_us);

#endif
