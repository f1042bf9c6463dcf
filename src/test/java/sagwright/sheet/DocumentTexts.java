package sagwright.sheet;

/** Good documents that the tests start from; their figures are the contract's examples. */
final class DocumentTexts {
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

  static final String ORDER =
      """
      { "format": "sagwright-order/1",
        "order": "R-0007", "species": "European ash", "promisedFor": "2026-06-30", "notes": "slim",
        "finish": {
          "lengthMm": 1473.0, "diameterUncertaintyMm": 0.05,
          "taper": [ {"xMm": 0, "diameterMm": 9.5}, {"xMm": 1473, "diameterMm": 29.0} ],
          "cutFromMm": 8.0,
          "ferrule": { "lengthMm": 9.5, "boreMm": 8.0, "densityKgM3": 8500 },
          "splice":  { "fromMm": 1030.0, "coreHalfAtButtMm": 4.0, "densityKgM3": 1120,
                       "modulusMPa": 15500, "modulusUncertaintyPercent": 0 },
          "weights": [ {"fromMm": 1400, "toMm": 1450, "diameterMm": 12, "densityKgM3": 11340} ],
          "extras":  [ {"name": "joint", "xMm": 740, "massG": 38} ]
        },
        "ask": { "setup": { "supportAMm": 100, "supportBMm": 1100, "loadMm": 600, "gaugeMm": 600 },
                 "stiffnessNPerMm": 2.25, "tolerancePercent": 5.0,
                 "massG": 470, "massToleranceG": 15,
                 "balanceFromButtMm": 450, "balanceToleranceMm": 15 },
        "alsoAsked": [ { "setup": { "supportAMm": 700, "supportBMm": 1450, "loadMm": 1075,
                                    "gaugeMm": 1075 },
                         "stiffnessNPerMm": 21.5, "tolerancePercent": 8 } ] }
      """;

  static final String LEAST_ORDER =
      """
      { "format": "sagwright-order/1",
        "finish": { "lengthMm": 1473,
                    "taper": [{"xMm": 0, "diameterMm": 9.5}, {"xMm": 1473, "diameterMm": 29}] },
        "ask": { "setup": { "supportAMm": 100, "supportBMm": 1100, "loadMm": 600, "gaugeMm": 600 },
                 "stiffnessNPerMm": 2.25, "tolerancePercent": 5 } }
      """;

  private DocumentTexts() {}
}
