#include "head.h"

#include "clock.h"

static uint32_t period_us(const head_t *head) { return 1000000ul / head->rate_hz; }

static void set_rate(head_t *head, uint8_t rate_hz, uint32_t now_us) {
  head->rate_hz = rate_hz;
  head->settling = true;
  head->settled_us = now_us + SETTLING_PERIODS * period_us(head);
  head->pairing.period_us = period_us(head);
  head->next_tick_us = now_us + SILENT_PERIODS * period_us(head);
}

void head_start(head_t *head, const char *serial, gauge_kind_t kind, bool by_watchdog,
                uint32_t now_us) {
  *head = (head_t){.serial = serial, .gauge_kind = kind};
  set_rate(head, RATE_FAST_HZ, now_us);
  if (by_watchdog) error_push(&head->errors, ERROR_SYSTEM);
}

/* Every reading that is taken counts, also one that will be dropped: the gap then shows it. */
static void take_reading(head_t *head, reading_t reading, uint32_t taken_us) {
  if (!head->running) return;
  reading.seq = head->seq++;
  reading.moment_us = taken_us - LOAD_AGE_PERIODS * period_us(head);
  pairing_reading(&head->pairing, &reading);
}

void head_conversion(head_t *head, uint32_t bits, uint32_t ready_us) {
  head->converter_silent = false;
  head->next_tick_us = ready_us + SILENT_PERIODS * period_us(head);
  if (head->settling && clock_apart(ready_us, head->settled_us) < 0) return;
  reading_t reading = {.load = wire_sign24(bits)};
  if (reading.load == LOAD_LEAST || reading.load == LOAD_MOST) reading.flags = FLAG_END_STOP;
  take_reading(head, reading, ready_us);
}

void head_frame(head_t *head, const frame_t *frame) {
  int32_t micrometres;
  uint32_t moment_us = frame->first_us - (uint32_t)(GAUGE_AGE_US);
  if (!frame_value(frame, head->gauge_kind, &micrometres)) return;
  if (!believe_value(&head->believe, micrometres, moment_us)) return;
  head->gauge_seen = true;
  head->gauge_us = moment_us;
  pairing_value(&head->pairing, micrometres, moment_us);
}

void head_time(head_t *head, uint32_t now_us) {
  /* Remembered, not worked out anew: half a round of the clock later the difference would lie. */
  if (head->gauge_seen && clock_apart(now_us, head->gauge_us) > 2 * GAUGE_TIMEOUT_US) {
    head->gauge_seen = false;
    head->believe.has_last = false;
  }
  if (clock_apart(now_us, head->settled_us) >= 0) head->settling = false;
  /* A missing converter wakes nobody, so its readings get a tick of their own. */
  while (clock_apart(now_us, head->next_tick_us) >= 0) {
    head->converter_silent = true;
    take_reading(head, (reading_t){.flags = FLAG_CONVERTER_SILENT}, head->next_tick_us);
    head->next_tick_us += period_us(head);
  }
}

static void reply_text(head_t *head, const char *text) {
  while (*text && head->reply_length < REPLY_MOST - 1) head->reply[head->reply_length++] = *text++;
}

static void reply_identity(head_t *head) {
  reply_text(head, "SAGWRIGHT," HEAD_MODEL ",");
  reply_text(head, head->serial);
  reply_text(head, "," HEAD_FIRMWARE);
  head->reply[head->reply_length++] = '\n';
}

static void reply_rate(head_t *head) {
  head->reply_length = wire_decimal(head->rate_hz, head->reply);
  head->reply[head->reply_length++] = '\n';
}

static void change_rate(head_t *head, const char *parameter, uint32_t now_us) {
  decimal_t hz;
  if (*parameter == 0) {
    error_push(&head->errors, ERROR_MISSING_PARAMETER);
  } else if (!decimal_read(parameter, &hz)) {
    error_push(&head->errors, ERROR_DATA_TYPE);
  } else if (hz.negative || hz.power != 1 || (hz.digits != 8 && hz.digits != 1)) {
    error_push(&head->errors, ERROR_OUT_OF_RANGE); /* the chip's rate pin knows these two only */
  } else {
    uint8_t rate_hz = (uint8_t)(hz.digits * 10);
    if (rate_hz != head->rate_hz) set_rate(head, rate_hz, now_us);
  }
}

static void stop(head_t *head) {
  head->running = false;
  head->pairing.flush = head->pairing.count > 0;
}

static void execute(head_t *head, const char *text, uint32_t now_us) {
  const char *parameter;
  command_t command = command_read(text, &parameter);
  if (*parameter && command != COMMAND_RATE && command != COMMAND_UNKNOWN &&
      command != COMMAND_NONE) {
    error_push(&head->errors, ERROR_PARAMETER_NOT_ALLOWED);
    return;
  }
  switch (command) {
    case COMMAND_IDENTITY:
      reply_identity(head);
      break;
    case COMMAND_CLEAR:
      error_clear(&head->errors);
      break;
    case COMMAND_RESET:
      stop(head);
      set_rate(head, RATE_FAST_HZ, now_us);
      break;
    case COMMAND_INIT:
      if (head->running) error_push(&head->errors, ERROR_INIT_IGNORED);
      head->running = true;
      break;
    case COMMAND_ABORT:
      stop(head);
      break;
    case COMMAND_RATE:
      change_rate(head, parameter, now_us);
      break;
    case COMMAND_RATE_QUERY:
      reply_rate(head);
      break;
    case COMMAND_ERROR_QUERY:
      head->reply_length = error_reply(&head->errors, head->reply);
      break;
    case COMMAND_UNKNOWN:
      error_push(&head->errors, ERROR_UNDEFINED_HEADER);
      break;
    case COMMAND_NONE:
      break;
  }
}

bool head_character(head_t *head, char c, uint32_t now_us) {
  if (head->reply_length || head->pairing.flush) return false;
  if (c != '\n' && c != ';') {
    if (head->command_length < COMMAND_MOST) {
      head->command[head->command_length++] = c;
    } else {
      head->command_overrun = true;
    }
    return true;
  }
  head->command[head->command_length] = 0;
  head->command_length = 0;
  if (head->command_overrun) {
    head_line_fault(head, ERROR_INPUT_OVERRUN);
  } else {
    execute(head, head->command, now_us);
  }
  head->command_overrun = false;
  return true;
}

void head_line_fault(head_t *head, error_t error) { error_push(&head->errors, error); }

static bool gauge_is_silent(const head_t *head, uint32_t moment_us) {
  return !head->gauge_seen || clock_apart(moment_us, head->gauge_us) > GAUGE_TIMEOUT_US;
}

uint8_t head_line(head_t *head, uint32_t now_us, uint16_t room, char *line) {
  if (room < LINE_MOST) return 0;
  if (head->reply_length) {
    uint8_t length = head->reply_length;
    for (uint8_t i = 0; i < length; i++) line[i] = head->reply[i];
    head->reply_length = 0;
    return length;
  }
  if (!pairing_due(&head->pairing, now_us)) return 0;
  reading_t reading;
  pairing_take(&head->pairing, &reading);
  if (gauge_is_silent(head, reading.moment_us)) reading.flags |= FLAG_GAUGE_SILENT;
  return wire_line(&reading, line);
}
