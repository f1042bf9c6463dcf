package sagwright.bench;

import sagwright.uncertainty.Warning;

/** What the bench finds amiss while a test runs. */
public enum BenchWarning implements Warning {
  NEAR_SAFE_LOAD("the load nears what this shaft and the load cell may safely take"),
  OVER_SAFE_LOAD("the load is over what this shaft and the load cell may safely take: let off"),
  LOAD_AT_END_STOP("the load converter is at its end stop: is a wire of the load cell broken?"),
  LOAD_MISSING("the load cell is missing or silent"),
  LOAD_BACKWARD(
      "the load falls below its rest: the calibration has the wrong sign, or load lay on at the"
          + " start"),
  GAUGE_SILENT("the gauge is missing or silent"),
  GAUGE_BEYOND_TRAVEL("the gauge is beyond the travel that it was calibrated for"),
  HEAD_DROPPED("the head has dropped readings: it sends faster than the line carries");

  private final String inWords;

  BenchWarning(String inWords) {
    this.inWords = inWords;
  }

  @Override
  public String inWords() {
    return inWords;
  }
}
