/* Faults of the parts, each from one second to another. */
#include "bench.h"

#include <math.h>
#include <string.h>

static const char *const NAMES[FAULT_KINDS] = {
    [FAULT_CONVERTER_MISSING] = "converter-missing", [FAULT_CONVERTER_SHORT] = "converter-short",
    [FAULT_END_STOP_HIGH] = "end-stop-high",         [FAULT_END_STOP_LOW] = "end-stop-low",
    [FAULT_GAUGE_SILENT] = "gauge-silent",           [FAULT_GAUGE_SHORT] = "gauge-short",
    [FAULT_GAUGE_LONG] = "gauge-long",               [FAULT_GAUGE_INCH] = "gauge-inch",
    [FAULT_GAUGE_FLIP] = "gauge-flip"};

bool fault_add(bench_t *bench, const char *text) {
  char name[32], rest;
  double from_s = 0, to_s = INFINITY;
  int parts = sscanf(text, "%31[a-z-]:%lf:%lf%c", name, &from_s, &to_s, &rest);
  for (int kind = 0; kind < FAULT_KINDS; kind++) {
    if (parts >= 1 && parts <= 3 && strcmp(name, NAMES[kind]) == 0 && bench->fault_count < 32) {
      int i = bench->fault_count++;
      bench->faults[i].kind = (fault_t)kind;
      bench->faults[i].from_s = from_s;
      bench->faults[i].to_s = to_s;
      return true;
    }
  }
  fprintf(stderr, "--fault %s: not KIND[:FROM[:TO]], KIND one of", text);
  for (int kind = 0; kind < FAULT_KINDS; kind++) fprintf(stderr, " %s", NAMES[kind]);
  fprintf(stderr, "\n");
  return false;
}

bool fault_now(const bench_t *bench, fault_t fault) {
  double now_s = bench_seconds(bench);
  for (int i = 0; i < bench->fault_count; i++) {
    if (bench->faults[i].kind == fault && now_s >= bench->faults[i].from_s &&
        now_s < bench->faults[i].to_s) {
      return true;
    }
  }
  return false;
}
