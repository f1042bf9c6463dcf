package sagwright.survey;

import org.apache.commons.math3.linear.MatrixUtils;
import sagwright.beam.FlexibilityGradient;
import sagwright.beam.SetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Shaft;

/**
 * What out-of-round makes of a shaft's stiffness as it is turned, by the calipers: its flexibility
 * is (J₀ + J₉₀)/2 + (J₀ − J₉₀)/2·cos 2φ (docs/contract.md, section 2), so that the stiffer way is
 * 0° or 90°.
 */
final class ShapeEffect {
  private ShapeEffect() {}

  static TurnEffect of(BendTest test) {
    Shaft shaft = test.shaft();
    SetUp setUp = test.setUp().positions();
    double r = test.ratio().value();
    FlexibilityGradient at0 = FlexibilityGradient.of(shaft.taper(), setUp.turnedBy(0));
    FlexibilityGradient at90 = FlexibilityGradient.of(shaft.taper(), setUp.turnedBy(90));
    double j0 = at0.flexibility().perMm(r);
    double j90 = at90.flexibility().perMm(r);
    double common = 0;
    double own = 0;
    for (int i = 0; i < shaft.taper().stationCount(); i++) {
      double depth = at90.byDepth(i, r) / j90 - at0.byDepth(i, r) / j0;
      double width = at90.byWidth(i, r) / j90 - at0.byWidth(i, r) / j0;
      common += depth + width;
      own +=
          shaft.widthMeasured()[i]
              ? depth * depth + width * width
              : (depth + width) * (depth + width);
    }
    double u = shaft.diameterUncertaintyMm() / 2;
    double share = shaft.diameterCommonShare();
    double variance = u * u * ((1 - share) * own + share * common * common);
    return TurnEffect.of(
        (j90 - j0) / (j90 + j0),
        0,
        MatrixUtils.createRealMatrix(new double[][] {{variance, 0}, {0, variance}}));
  }
}
