package sagwright.finish;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.beam.SplicedFlexibility;
import sagwright.uncertainty.Warning;

/**
 * Forecasts many blanks for one finish plan: docs/contract.md, section 5. What is the same for all
 * of them is worked out once. Any thread may ask.
 */
public final class PlanForecaster {
  private final PlannedShaft planned;
  private final List<SetUp> setUps;

  /** One a set-up, for wood of one modulus all along. */
  private final List<SplicedFlexibility> flexibilities;

  private final double wantedNPerMm;

  /**
   * @param plan without problems (FinishCheck)
   * @param setUps on the finished shaft, the foremost first; one or more
   * @param wantedNPerMm the stiffness wanted at the first of them
   */
  public PlanForecaster(FinishPlan plan, List<SetUp> setUps, double wantedNPerMm) {
    this.planned = new PlannedShaft(plan);
    this.setUps = List.copyOf(setUps);
    this.flexibilities = setUps.stream().map(planned::flexibility).toList();
    this.wantedNPerMm = wantedNPerMm;
  }

  /** The whole forecast. */
  public Forecast forecast(BlankWood blank) {
    Cut cut = cutOf(blank);
    return of(cut, blank, shaft(blank, cut).firstBendingHz());
  }

  /** The forecast without the first bending frequency, which takes longer than all the rest. */
  public Forecast withoutFrequency(BlankWood blank) {
    return of(cutOf(blank), blank, null);
  }

  /** Where the finished round lies in a blank: the cut that is given, or the one that is best. */
  public Cut cutOf(BlankWood blank) {
    CutFinder finder = new CutFinder(blank.taper(), planned.outline());
    if (planned.plan().cutFromMm() != null) {
      return finder.at(planned.plan().cutFromMm());
    }
    Cut roomiest = finder.best();
    return blank.modulusMPa().variesAlong() && roomiest.fits()
        ? new NearestCut(new ForecastRequest(blank, planned.plan(), setUps, wantedNPerMm), finder)
            .find()
        : roomiest;
  }

  /**
   * The stiffnesses alone, one a set-up, for wood of one modulus all along: where it is cut from
   * plays no part in them.
   */
  public List<AskedStiffness> stiffnesses(BlankWood ofOneModulus) {
    if (ofOneModulus.modulusMPa().variesAlong()) {
      throw new IllegalArgumentException("where the modulus varies the cut plays a part");
    }
    return asked(new FinishedShaft(ofOneModulus, planned, 0));
  }

  /** The stiffnesses alone, one a set-up, of a blank cut from a given place. */
  public List<AskedStiffness> stiffnesses(BlankWood blank, Cut cut) {
    return asked(shaft(blank, cut));
  }

  private Forecast of(Cut cut, BlankWood blank, Double firstBendingHz) {
    FinishedShaft shaft = shaft(blank, cut);
    MassAndBalance mass = shaft.massAndBalance();
    return new Forecast(
        cut,
        asked(shaft),
        mass == null ? null : mass.massG(),
        mass == null ? null : mass.balanceFromButtMm(),
        firstBendingHz,
        warnings(blank, cut));
  }

  private FinishedShaft shaft(BlankWood blank, Cut cut) {
    return new FinishedShaft(blank, planned, cut.fromMm());
  }

  private List<AskedStiffness> asked(FinishedShaft shaft) {
    List<AskedStiffness> asked = new ArrayList<>(setUps.size());
    for (int i = 0; i < setUps.size(); i++) {
      asked.add(shaft.asked(setUps.get(i), flexibilities.get(i)));
    }
    return asked;
  }

  private List<Warning> warnings(BlankWood blank, Cut cut) {
    List<Warning> warnings = new ArrayList<>();
    if (!cut.fits()) {
      warnings.add(new FinishWarning.DoesNotFit(cut));
    }
    if (!blank.isWeighed()) {
      warnings.add(new FinishWarning.NotWeighed());
    } else if (blank.isSpliced()) {
      warnings.add(new FinishWarning.SplicedAlready());
    }
    if (blank.isSpliced() && planned.plan().splice() == null) {
      warnings.add(new FinishWarning.SpliceNotPlanned());
    }
    return warnings;
  }
}
