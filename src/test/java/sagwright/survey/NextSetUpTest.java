package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.run.PoorRunException;

class NextSetUpTest {
  @Test
  void eachRunOfThePlanTeachesAndLessThanTheOneBefore() throws PoorRunException {
    List<SurveyRun> one = new InventedShaft(1).test(InventedShaft.EIGHT.subList(0, 1));
    List<NextSetUp> plan = NextSetUp.plan(one, 4);
    double gain = Double.MAX_VALUE;
    for (int i = 0; i < plan.size(); i++) {
      NextSetUp next = plan.get(i);
      double here = next.uncertaintyBeforePercent() - next.uncertaintyAfterPercent();
      assertTrue(here > 0 && here < gain, next.toString());
      gain = here;
      if (i > 0) {
        assertEquals(
            plan.get(i - 1).uncertaintyAfterPercent(), next.uncertaintyBeforePercent(), 1e-12);
      }
    }
  }

  @Test
  void whatWasNotListenedToIsWhereToListenNext() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(1);
    List<SurveyRun> buttOnly = shaft.test(Collections.nCopies(3, InventedShaft.middle(700, 1450)));
    List<SurveyRun> tipOnly = shaft.test(Collections.nCopies(3, InventedShaft.middle(50, 850)));
    SetUpListening afterButt = listening(buttOnly);
    SetUpListening afterTip = listening(tipOnly);
    assertTrue(afterButt.middleMm() < 700, afterButt.toString());
    assertTrue(afterTip.middleMm() > afterButt.middleMm(), afterTip.toString());
  }

  private static SetUpListening listening(List<SurveyRun> runs) {
    RunObservation any = new RunObservation(runs.get(0));
    return SetUpListening.of(any.taper(), NextSetUp.plan(runs, 1).get(0).setUp(), any.ratio());
  }

  /** The shaft must not tip off. */
  @Test
  void theCentreOfMassLiesBetweenTheSupports() throws PoorRunException {
    List<SurveyRun> one = new InventedShaft(1).test(InventedShaft.EIGHT.subList(0, 1));
    double centre = one.get(0).test().shaft().taper().centreOfMassMm();
    for (NextSetUp next : NextSetUp.plan(one, 6)) {
      assertTrue(next.setUp().supportAMm() < centre && centre < next.setUp().supportBMm());
    }
  }
}
