package sagwright.survey;

/** A shape that the modulus may take along the shaft, with its parameters (MPa; r without unit). */
interface AlongModel {
  int parameterCount();

  /** Where to start the fit from, given one modulus for the whole shaft and the assumed r. */
  double[] start(double modulusMPa, double ratio);

  /**
   * The moduli that the runs would show, and how they change with the parameters.
   *
   * @param shownMPa one for each run, filled in
   * @param change a row for each run, a column for each parameter, filled in
   */
  void show(double[] parameters, double[] shownMPa, double[][] change);
}
