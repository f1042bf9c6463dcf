package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sagwright.beam.SetUp;
import sagwright.uncertainty.Estimate;

class CheckRodTest {
  private static final SetUp MIDDLE = new SetUp(50, 1050, 550, 550, 0);
  private static final CheckRod ROD =
      new CheckRod(1100, new Estimate(12, 0.003), new Estimate(206_000, 3000), 0.29);

  /** Reference formulas, 3.1: steel, 12 mm, 1000 mm between supports. */
  @Test
  void givesTheStiffnessOfTheWorkedExample() {
    assertEquals(10.0616429987451, ROD.stiffnessNPerMm(MIDDLE).value(), 1e-11);
  }

  /** Against central differences of the closed form 1/(L³/48EI + κL/4GA). */
  @Test
  void carriesTheUncertaintyOfSteelAndDiameter() {
    double byModulus = (closedForm(12, 206_001) - closedForm(12, 205_999)) / 2 * 3000;
    double byDiameter = (closedForm(12.001, 206_000) - closedForm(11.999, 206_000)) / 0.002 * 0.003;
    assertEquals(
        Math.hypot(byModulus, byDiameter), ROD.stiffnessNPerMm(MIDDLE).standardUncertainty(), 1e-7);
    assertEquals(byModulus, ROD.budget(MIDDLE).contributions().get(0).standardUncertainty(), 1e-7);
  }

  @Test
  void saysWhetherTheBenchAgreesWithTheRod() {
    CheckRod.Comparison near = ROD.compare(MIDDLE, new Estimate(10.2, 0.02));
    assertTrue(near.agrees());
    assertEquals(1.375, near.differencePercent(), 1e-3);
    assertFalse(ROD.compare(MIDDLE, new Estimate(10.6, 0.02)).agrees());
    assertFalse(ROD.compare(MIDDLE, new Estimate(9.5, 0.02)).agrees());
  }

  private static double closedForm(double diameter, double modulus) {
    double second = Math.PI * Math.pow(diameter, 4) / 64;
    double area = Math.PI * diameter * diameter / 4;
    double shear = modulus / 2.58;
    return 1 / (1e9 / (48 * modulus * second) + 10.0 / 9 * 1000 / (4 * shear * area));
  }
}
