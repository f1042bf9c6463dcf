#include "command.h"

#include "wire.h"

void error_clear(error_queue_t *queue) { queue->first = queue->count = 0; }

void error_push(error_queue_t *queue, error_t error) {
  if (queue->count == ERRORS_HELD) {
    queue->errors[(queue->first + ERRORS_HELD - 1) % ERRORS_HELD] = ERROR_QUEUE_OVERFLOW;
    return;
  }
  queue->errors[(queue->first + queue->count) % ERRORS_HELD] = (int16_t)error;
  queue->count++;
}

static const char *error_text(int16_t error) {
  switch (error) {
    case ERROR_NONE: return "No error";
    case ERROR_DATA_TYPE: return "Data type error";
    case ERROR_PARAMETER_NOT_ALLOWED: return "Parameter not allowed";
    case ERROR_MISSING_PARAMETER: return "Missing parameter";
    case ERROR_UNDEFINED_HEADER: return "Undefined header";
    case ERROR_INIT_IGNORED: return "Init ignored";
    case ERROR_OUT_OF_RANGE: return "Data out of range";
    case ERROR_SYSTEM: return "System error;watchdog";
    case ERROR_QUEUE_OVERFLOW: return "Queue overflow";
    case ERROR_FRAMING: return "Framing error";
    default: return "Input buffer overrun";
  }
}

uint8_t error_reply(error_queue_t *queue, char *reply) {
  int16_t error = ERROR_NONE;
  if (queue->count) {
    error = queue->errors[queue->first];
    queue->first = (uint8_t)((queue->first + 1) % ERRORS_HELD);
    queue->count--;
  }
  uint8_t n = wire_decimal(error, reply);
  reply[n++] = ',';
  reply[n++] = '"';
  for (const char *text = error_text(error); *text; text++) reply[n++] = *text;
  reply[n++] = '"';
  reply[n++] = '\n';
  return n;
}

static char upper(char c) { return c >= 'a' && c <= 'z' ? (char)(c - 'a' + 'A') : c; }

static bool is_small(char c) { return c >= 'a' && c <= 'z'; }

static bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\r'; }

/*
 * How much of text the pattern takes, 0 where it does not fit. Capitals must stand, small letters
 * of a word may be left out together, what is in brackets may be left out.
 */
static uint8_t header_length(const char *pattern, const char *text) {
  uint8_t n = 0;
  while (*pattern) {
    if (*pattern == '[') {
      pattern++;
      while (text[n] != ':' && *pattern != ']') pattern++;
    } else if (*pattern == ']') {
      pattern++;
    } else if (is_small(*pattern)) {
      if (upper(text[n]) == upper(*pattern)) {
        for (; is_small(*pattern); pattern++, n++) {
          if (upper(text[n]) != upper(*pattern)) return 0;
        }
      } else {
        while (is_small(*pattern)) pattern++;
      }
    } else {
      if (upper(text[n]) != *pattern) return 0;
      pattern++;
      n++;
    }
  }
  return text[n] == 0 || is_blank(text[n]) ? n : 0;
}

command_t command_read(const char *text, const char **parameter) {
  static const struct {
    const char *pattern;
    command_t command;
  } table[] = {
      {"*IDN?", COMMAND_IDENTITY},
      {"*CLS", COMMAND_CLEAR},
      {"*RST", COMMAND_RESET},
      {"INITiate[:IMMediate]", COMMAND_INIT},
      {"ABORt", COMMAND_ABORT},
      {"SAMPle:RATE", COMMAND_RATE},
      {"SAMPle:RATE?", COMMAND_RATE_QUERY},
      {"SYSTem:ERRor[:NEXT]?", COMMAND_ERROR_QUERY},
  };
  while (is_blank(*text)) text++;
  *parameter = text;
  if (*text == 0) return COMMAND_NONE;
  if (text[0] == ':' && text[1] != '*') text++;
  for (uint8_t i = 0; i < sizeof table / sizeof table[0]; i++) {
    uint8_t n = header_length(table[i].pattern, text);
    if (n) {
      text += n;
      while (is_blank(*text)) text++;
      *parameter = text;
      return table[i].command;
    }
  }
  return COMMAND_UNKNOWN;
}

static bool is_digit(char c) { return c >= '0' && c <= '9'; }

/* Takes one digit in; what no longer fits marks the number as one that the head does not know. */
static void take_digit(decimal_t *decimal, char digit) {
  if (decimal->digits > 99999999ul) {
    decimal->digits = UINT32_MAX;
  } else {
    decimal->digits = decimal->digits * 10 + (uint32_t)(digit - '0');
  }
}

bool decimal_read(const char *text, decimal_t *decimal) {
  *decimal = (decimal_t){false, 0, 0};
  int16_t power = 0;
  bool any = false;
  while (is_blank(*text)) text++;
  if (*text == '+' || *text == '-') decimal->negative = *text++ == '-';
  for (; is_digit(*text); any = true) take_digit(decimal, *text++);
  if (*text == '.') {
    for (text++; is_digit(*text); any = true, power--) take_digit(decimal, *text++);
  }
  if (!any) return false;
  if (*text == 'e' || *text == 'E') {
    text++;
    bool negative = false;
    int16_t exponent = 0;
    if (*text == '+' || *text == '-') negative = *text++ == '-';
    if (!is_digit(*text)) return false;
    for (; is_digit(*text); text++) {
      if (exponent < 1000) exponent = (int16_t)(exponent * 10 + (*text - '0'));
    }
    power = (int16_t)(negative ? power - exponent : power + exponent);
  }
  while (is_blank(*text)) text++;
  if (*text) return false;
  while (decimal->digits && decimal->digits % 10 == 0) {
    decimal->digits /= 10;
    power++;
  }
  if (decimal->digits == 0) power = 0;
  decimal->power = (int8_t)(power > 100 ? 100 : power < -100 ? -100 : power);
  return true;
}
