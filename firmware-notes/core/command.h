/* Commands in the manner of IEEE 488.2 and SCPI: one at a time, each query answers by one line. */
#ifndef SAGWRIGHT_COMMAND_H
#define SAGWRIGHT_COMMAND_H

#include <stdbool.h>
#include <stdint.h>

typedef enum {
  COMMAND_NONE, /* nothing but blanks */
  COMMAND_IDENTITY,
  COMMAND_CLEAR,
  COMMAND_RESET,
  COMMAND_INIT,
  COMMAND_ABORT,
  COMMAND_RATE,
  COMMAND_RATE_QUERY,
  COMMAND_ERROR_QUERY,
  COMMAND_UNKNOWN
} command_t;

/* The numbers and texts of SCPI-1999, volume 2, chapter 21 (from memory). */
typedef enum {
  ERROR_NONE = 0,
  ERROR_DATA_TYPE = -104,
  ERROR_PARAMETER_NOT_ALLOWED = -108,
  ERROR_MISSING_PARAMETER = -109,
  ERROR_UNDEFINED_HEADER = -113,
  ERROR_INIT_IGNORED = -213,
  ERROR_OUT_OF_RANGE = -222,
  ERROR_SYSTEM = -310,
  ERROR_QUEUE_OVERFLOW = -350,
  ERROR_FRAMING = -362,
  ERROR_INPUT_OVERRUN = -363
} error_t;

enum { ERRORS_HELD = 8, ERROR_REPLY_MOST = 40 };

typedef struct {
  int16_t errors[ERRORS_HELD];
  uint8_t first, count;
} error_queue_t;

/* Where the queue is full its last entry becomes "queue overflow": the oldest errors stay. */
void error_push(error_queue_t *queue, error_t error);
void error_clear(error_queue_t *queue);

/* Takes the oldest error, writes its number and text with LF, at most ERROR_REPLY_MOST characters. */
uint8_t error_reply(error_queue_t *queue, char *reply);

/*
 * Reads one command. Headers in either case, short or long, with a colon before them or not.
 * parameter: set to the text behind the header ("" where there is none).
 */
command_t command_read(const char *text, const char **parameter);

/*
 * A decimal number with an optional point and exponent, blanks around it, as digits times ten to a
 * power with no zeros at the end: 80, 80.0 and 8e1 are all {8, 1}. False where it is no number.
 * What is beyond nine digits makes it another number than any that the head knows.
 */
typedef struct {
  bool negative;
  uint32_t digits;
  int8_t power;
} decimal_t;

bool decimal_read(const char *text, decimal_t *decimal);

#endif
