/* The serial line: to a file, or through a pseudo-terminal to a program that takes us for a head. */
#define _GNU_SOURCE
#include "bench.h"

#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdlib.h>
#include <string.h>
#include <termios.h>
#include <time.h>
#include <unistd.h>

#include <simavr/avr_uart.h>

enum { RXEN0_BIT = 1 << 4, UCSR0B_ADDRESS = 0xC1 };

static bool open_terminal(line_t *line) {
  struct termios raw;
  char path[64];
  line->master = posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK);
  if (line->master < 0 || grantpt(line->master) || unlockpt(line->master) ||
      ptsname_r(line->master, path, sizeof path)) {
    perror("pseudo-terminal");
    return false;
  }
  /* Held open, so that nobody having it open yet is no hang-up; raw, so that nothing is echoed. */
  line->slave = open(path, O_RDWR | O_NOCTTY);
  tcgetattr(line->slave, &raw);
  cfmakeraw(&raw);
  tcsetattr(line->slave, TCSANOW, &raw);
  printf("port %s\n", path);
  fflush(stdout);
  return true;
}

bool line_begin(bench_t *bench, const char *out_path) {
  line_t *line = &bench->line;
  line->master = line->slave = -1;
  line->xon = true;
  if (out_path) {
    line->file = strcmp(out_path, "-") ? fopen(out_path, "wb") : stdout;
    if (!line->file) {
      perror(out_path);
      return false;
    }
  }
  return !bench->options.pty || open_terminal(line);
}

/* Interference: a bit of a character in so many, by chance, turned over. */
static uint32_t spoiled(bench_t *bench, uint32_t c) {
  if (bench->options.garble <= 0) return c;
  uint64_t chance = noise_bits(&bench->line_random);
  return chance % (uint64_t)bench->options.garble ? c : c ^ 1u << (chance >> 61);
}

static void sent(struct avr_irq_t *irq, uint32_t value, void *param) {
  line_t *line = &((bench_t *)param)->line;
  (void)irq;
  value = spoiled((bench_t *)param, value & 0xFF);
  if (line->file) fputc((int)value, line->file);
  if (line->master < 0) return;
  if (line->out_to == sizeof line->out) {
    line->lost++;
    return;
  }
  line->out[line->out_to++] = (char)value;
}

static void hand_over(bench_t *bench) {
  line_t *line = &bench->line;
  bool on = bench->avr->data[UCSR0B_ADDRESS] & RXEN0_BIT;
  while (on && line->xon && line->in_from < line->in_to) {
    uint8_t c = (uint8_t)line->in[line->in_from++];
    avr_raise_irq(avr_io_getirq(bench->avr, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_INPUT), c);
  }
  if (line->in_from == line->in_to) line->in_from = line->in_to = 0;
}

static void may_send(struct avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq;
  (void)value;
  ((bench_t *)param)->line.xon = true;
}

static void must_wait(struct avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq;
  (void)value;
  ((bench_t *)param)->line.xon = false;
}

void line_connect(bench_t *bench) {
  avr_t *avr = bench->avr;
  uint32_t flags = 0;
  avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS('0'), &flags);
  uint32_t uart = AVR_IOCTL_UART_GETIRQ('0');
  avr_irq_register_notify(avr_io_getirq(avr, uart, UART_IRQ_OUTPUT), sent, bench);
  avr_irq_register_notify(avr_io_getirq(avr, uart, UART_IRQ_OUT_XON), may_send, bench);
  avr_irq_register_notify(avr_io_getirq(avr, uart, UART_IRQ_OUT_XOFF), must_wait, bench);
}

void line_type(bench_t *bench, const char *text, size_t length) {
  line_t *line = &bench->line;
  if (length > sizeof line->in - line->in_to) {
    line->lost += (unsigned)length;
    return;
  }
  memcpy(line->in + line->in_to, text, length);
  line->in_to += (unsigned)length;
}

static void read_terminal(bench_t *bench) {
  line_t *line = &bench->line;
  char text[256];
  ssize_t n = 0;
  /* What lies in the terminal before the firmware listens would be lost: it stays there. */
  if (!(bench->avr->data[UCSR0B_ADDRESS] & RXEN0_BIT) && !bench->options.wait) return;
  if (sizeof line->in - line->in_to < sizeof text) return;
  n = read(line->master, text, sizeof text);
  if (n > 0) {
    line->heard = true;
    line_type(bench, text, (size_t)n);
  }
}

/* Whether the one who started us has closed our standard input. */
static bool left_alone(int wait_ms) {
  struct pollfd input = {.fd = 0, .events = POLLIN};
  char byte;
  if (poll(&input, 1, wait_ms) <= 0) return false;
  return read(0, &byte, 1) <= 0;
}

static void write_terminal(bench_t *bench) {
  line_t *line = &bench->line;
  while (line->out_from < line->out_to) {
    ssize_t n = write(line->master, line->out + line->out_from, line->out_to - line->out_from);
    if (n > 0) {
      line->out_from += (unsigned)n;
    } else if (errno == EAGAIN && bench->options.speed > 0) {
      line->lost += line->out_to - line->out_from; /* a real line does not wait either */
      line->out_from = line->out_to;
    } else if (errno == EAGAIN) {
      if (left_alone(1)) bench->abandoned = true;
      if (bench->abandoned) return;
    } else {
      return;
    }
  }
  line->out_from = line->out_to = 0;
}

void line_serve(bench_t *bench) {
  line_t *line = &bench->line;
  if (line->master >= 0) {
    write_terminal(bench);
    read_terminal(bench);
    while (bench->options.wait && !line->heard && !bench->abandoned) {
      if (left_alone(1)) bench->abandoned = true;
      read_terminal(bench);
    }
  }
  hand_over(bench);
}

void line_end(bench_t *bench) {
  line_t *line = &bench->line;
  if (line->file) fclose(line->file);
  if (line->master < 0) return;
  write_terminal(bench);
  printf("end\n");
  fflush(stdout);
  /* Closing the master throws away what was not read yet: the reader says when it is done. */
  while (!bench->abandoned && !left_alone(1000)) {}
  close(line->slave);
  close(line->master);
}
