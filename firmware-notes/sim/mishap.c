/* What befalls the head: restarts, a main loop that hangs, counters near their wrap, a pulled plug, commands. */
#include "bench.h"

#include <string.h>
#include <unistd.h>

static void poke(bench_t *bench, uint32_t address, uint32_t value, int bytes) {
  for (int i = 0; i < bytes; i++) bench->avr->data[address + (uint32_t)i] = (uint8_t)(value >> 8 * i);
}

static uint64_t cycles(double seconds) { return (uint64_t)(seconds * CYCLES_PER_SECOND); }

void mishap_clock_forward(bench_t *bench) {
  if (bench->options.time_wraps_at < 0) return;
  double overflows = bench->options.time_wraps_at * 1e6 / 32768;
  poke(bench, bench->overflows_address, (uint32_t)(131072 - (long)overflows), 4);
}

static void set_count_forward(bench_t *bench) {
  poke(bench, bench->seq_address, (uint32_t)bench->options.seq_from, 2);
}

/* Not from within one of the library's own timers. */
static void restart(bench_t *bench) { bench->restart_due = true; }

/* The main loop hangs at whatever it was doing, interrupts go on: a jump to itself stands there. */
static void hang(bench_t *bench) {
  uint8_t *flash = bench->avr->flash + bench->avr->pc;
  bench->hung_in_life = bench->resets + 1;
  bench->hung_at_pc = bench->avr->pc;
  bench->hung_word = (uint16_t)(flash[0] | flash[1] << 8);
  flash[0] = 0xFF;
  flash[1] = 0xCF;
}

/* The watchdog has restarted it: what stood there stands there again. */
void mishap_recover(bench_t *bench) {
  if (!bench->hung_in_life || bench->resets < bench->hung_in_life) return;
  bench->avr->flash[bench->hung_at_pc] = (uint8_t)bench->hung_word;
  bench->avr->flash[bench->hung_at_pc + 1] = (uint8_t)(bench->hung_word >> 8);
  bench->hung_in_life = 0;
}

static void say_next(bench_t *bench) {
  const char *text = bench->says[bench->said++].text;
  line_type(bench, text, strlen(text));
  line_type(bench, "\n", 1);
  if (bench->said < bench->say_count) {
    bench_at(bench, cycles(bench->says[bench->said].at_s), say_next);
  }
}

static void hang_up(bench_t *bench) {
  close(bench->line.slave);
  close(bench->line.master);
  bench->line.master = bench->line.slave = -1;
}

void mishaps_begin(bench_t *bench) {
  const options_t *options = &bench->options;
  if (options->seq_from >= 0) bench_at(bench, cycles(0.001), set_count_forward);
  if (options->restart_at >= 0) bench_at(bench, cycles(options->restart_at), restart);
  if (options->hang_at >= 0) bench_at(bench, cycles(options->hang_at), hang);
  if (options->hang_up_at >= 0 && options->pty) bench_at(bench, cycles(options->hang_up_at), hang_up);
  if (bench->say_count) bench_at(bench, cycles(bench->says[0].at_s), say_next);
}
