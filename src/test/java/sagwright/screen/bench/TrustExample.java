package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.drawing.ModulusScene;
import sagwright.drawing.SeriesBars;
import sagwright.uncertainty.Estimate;

/** What stands behind the example's answer; invented. */
final class TrustExample {
  private TrustExample() {}

  static BehindView behind() {
    return new BehindView(
        "of the run shown",
        List.of(
            new SeriesBars.Bar("the diameters", 98, "70 %"),
            new SeriesBars.Bar("the place of support A", 42, "13 %"),
            new SeriesBars.Bar("the load cell's calibration", 38, "10 %"),
            new SeriesBars.Bar("the gauge's calibration", 21, "3 %"),
            new SeriesBars.Bar("the place of the gauge", 17, "2 %"),
            new SeriesBars.Bar("the scatter of the readings", 15, "2 %"),
            new SeriesBars.Bar("the ratio of modulus to shear modulus", 6, "0 %")),
        "together 117 MPa, a standard uncertainty; the 3 runs together 109 MPa: what is common to"
            + " them does not go with their number",
        "measure the diameters near 600 mm again: they are worth half of it",
        "1,240,000 random draws put 95 % between 10.95 and 11.41 GPa: the budget agrees with them"
            + " (ends 3 MPa apart, 50 are allowed; JCGM 101, section 8).",
        List.of(
            new BehindView.Wood("as tested, 11.2 %", "11.18 ± 0.23", "641"),
            new BehindView.Wood("at 12 %", "11.04 ± 0.23", "644"),
            new BehindView.Wood("dry winter, 6.2 %", "12.10 ± 0.25", ""),
            new BehindView.Wood("damp summer, 14.4 %", "10.64 ± 0.22", ""),
            new BehindView.Wood("10 °C warmer than at the test", "10.96 ± 0.23", "")),
        List.of(
            "all agree within 0.3 %",
            "out-of-round, by the calipers, makes it stiffer by 0.4 % ± 0.3 % at 90°",
            "the grain does no more than the runs scatter (0.1 % ± 0.2 %)",
            "mark the stiffer way: turned to 90°, 0° being the mark up",
            "one run repeats to 11 MPa, a standard deviation with 2 degrees of freedom",
            "no run stands out: each within the 1 % limit of its stated uncertainty (Bonferroni)"),
        AssumedWords.of(List.of("frameComplianceMmPerN", "modulusToShearRatio")));
  }

  static SurveyView survey(Taper taper) {
    List<ModulusScene.Place> along = new ArrayList<>();
    for (int x = 0; x <= 1490; x += 10) {
      double u = 90 + 220 * Math.pow((x - 640) / 900.0, 2);
      along.add(new ModulusScene.Place(x, new Estimate(10_600 + 0.9 * x, u)));
    }
    return new SurveyView(
        List.of(
            new SurveyView.RunRow(
                1, "100 to 1100, load 600", "228 to 842", "11.16 ± 0.23", "+0.4", false),
            new SurveyView.RunRow(
                2, "100 to 1100, load 600, at 60°", "228 to 842", "11.14 ± 0.23", "-0.6", false),
            new SurveyView.RunRow(
                3, "100 to 1100, load 600, at 120°", "228 to 842", "11.19 ± 0.23", "+0.3", false),
            new SurveyView.RunRow(
                4, "50 to 750, load 400", "139 to 566", "10.88 ± 0.25", "-0.2", false),
            new SurveyView.RunRow(
                5, "700 to 1450, load 1075", "796 to 1331", "11.63 ± 0.31", "+4.6", true)),
        List.of(
            new SurveyView.ModelRow("one", "11.20 ± 0.22", "21.3", "25.3", false),
            new SurveyView.ModelRow("ratio", "11.61 ± 0.35, E/G 17.1 ± 4.2", "9.8", "19.8", false),
            new SurveyView.ModelRow(
                "straight", "tip 10.60 ± 0.61, butt 11.94 ± 0.59", "2.2", "12.2", true),
            new SurveyView.ModelRow(
                "pieces", "10.92 ± 0.30 to 640 mm, 11.55 ± 0.33 to 1490 mm", "1.9", "–", false)),
        "proposed: straight, for its AICc is the least, and no simpler model comes near it",
        List.of(
            new SurveyView.Next(
                new SetUp(20, 490, 255, 255, 0),
                "supports 20 and 490, load and gauge 255 mm: ± 6 %, now ± 7 %"),
            new SurveyView.Next(
                new SetUp(890, 1470, 1180, 1180, 0),
                "supports 890 and 1470, load and gauge 1180 mm: ± 5 %, now ± 6 %")),
        new ModulusScene(
            taper,
            along,
            List.of(
                new ModulusScene.HeardRun(1, 228, 560, 842, new Estimate(11_160, 117)),
                new ModulusScene.HeardRun(2, 228, 560, 842, new Estimate(11_140, 117)),
                new ModulusScene.HeardRun(3, 228, 560, 842, new Estimate(11_190, 117)),
                new ModulusScene.HeardRun(4, 139, 366, 566, new Estimate(10_880, 127)),
                new ModulusScene.HeardRun(5, 796, 1060, 1331, new Estimate(11_630, 158)))),
        List.of("no set-up listens to the wood from 1450 to 1490 mm"));
  }
}
