package sagwright.sheet;

/** Good documents that the tests start from; their figures are the contract's examples. */
final class SheetTexts {
  static final String WHOLE =
      """
      {
        "format": "sagwright-sheet/1",
        "shaft": {
          "tag": "25-014", "species": "European ash", "stage": "near size", "section": "ellipse",
          "lengthMm": 1490.0, "massG": 405.0, "moisturePercent": 11.2,
          "diameterUncertaintyMm": 0.02, "diameterCommonShare": 0.5, "bowMm": 0.3,
          "stations": [ {"xMm": 0, "depthMm": 12.50, "widthMm": 12.48},
                        {"xMm": 700, "depthMm": 20.0},
                        {"xMm": 1490, "depthMm": 31.0} ]
        },
        "setup": {
          "supportAMm": 100, "supportBMm": 1100, "loadMm": 600, "gaugeMm": 610, "turnDegrees": 0,
          "positionUncertaintyMm": 0.5, "frameComplianceMmPerN": 0.0020,
          "frameComplianceUncertaintyMmPerN": 0
        },
        "modulusToShearRatio": 14, "modulusToShearRatioUncertainty": 0,
        "instrument": { "loadUncertaintyN": 0.02, "loadScaleUncertaintyPercent": 0.1,
                        "gaugeUncertaintyMm": 0.005, "gaugeScaleUncertaintyPercent": 0.05,
                        "gaugeSpringNPerMm": 0 },
        "run": { "startedAt": "2026-03-02T09:00:00Z", "timeS": [0, 0.0125, 0.025],
                 "loadN": [0.0, 0.05, 0.1], "deflectionMm": [0.0, 0.012, 0.024] }
      }
      """;

  static final String LEAST =
      """
      {"format": "sagwright-sheet/1",
       "shaft": {"stations": [{"xMm": 0, "depthMm": 12.5}, {"xMm": 1490, "depthMm": 31}]},
       "setup": {"supportAMm": 100, "supportBMm": 1100, "loadMm": 600, "gaugeMm": 600},
       "handRead": {"loadN": [0, 5, 10], "deflectionMm": [0, 1.2, 2.4]}}
      """;

  static final String SPLICED =
      MutatedJson.of(
          WHOLE,
          "/shaft/splice",
          "{\"fromMm\": 1030, \"coreHalfAtButtMm\": 4, \"densityKgM3\": 1120,"
              + " \"modulusMPa\": 15500, \"modulusUncertaintyPercent\": 2}");

  static final String CALIBRATION =
      """
      { "format": "sagwright-calibration/1", "made": "2026-03-02T09:00:00Z", "validDays": 365,
        "by": "KM",
        "load":  { "newtonPerCount": 2.5e-5, "scaleUncertaintyPercent": 0.1, "uncertaintyN": 0.02,
                   "greatestN": 50 },
        "gauge": { "mmPerStep": 0.001, "scaleUncertaintyPercent": 0.05, "uncertaintyMm": 0.005,
                   "greatestMm": 25, "springNPerMm": 0 },
        "frameComplianceMmPerN": 0.002, "frameComplianceUncertaintyMmPerN": 0 }
      """;

  private SheetTexts() {}
}
