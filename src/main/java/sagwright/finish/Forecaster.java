package sagwright.finish;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.uncertainty.Warning;

/** Works out a {@link Forecast}: docs/contract.md, section 5. */
public final class Forecaster {
  private Forecaster() {}

  /** The forecast for a request. */
  public static Forecast forecast(ForecastRequest request) {
    BlankWood blank = request.blank();
    FinishPlan plan = request.plan();
    Cut cut = cutOf(request);
    FinishedShaft shaft = new FinishedShaft(blank, plan, cut.fromMm());
    List<AskedStiffness> stiffnesses = new ArrayList<>();
    for (SetUp setUp : request.setUps()) {
      stiffnesses.add(shaft.asked(setUp));
    }
    MassAndBalance mass = shaft.massAndBalance();
    return new Forecast(
        cut,
        stiffnesses,
        mass == null ? null : mass.massG(),
        mass == null ? null : mass.balanceFromButtMm(),
        shaft.firstBendingHz(),
        warnings(blank, cut));
  }

  /** The cut that is given, or the one that is best. */
  public static Cut cutOf(ForecastRequest request) {
    CutFinder finder = new CutFinder(request.blank().taper(), request.plan().taper());
    if (request.plan().cutFromMm() != null) {
      return finder.at(request.plan().cutFromMm());
    }
    Cut roomiest = finder.best();
    return request.blank().modulusMPa().variesAlong() && roomiest.fits()
        ? new NearestCut(request, finder).find()
        : roomiest;
  }

  private static List<Warning> warnings(BlankWood blank, Cut cut) {
    List<Warning> warnings = new ArrayList<>();
    if (!cut.fits()) {
      warnings.add(new FinishWarning.DoesNotFit(cut));
    }
    if (blank.massG() == null) {
      warnings.add(new FinishWarning.NotWeighed());
    } else if (blank.isSpliced()) {
      warnings.add(new FinishWarning.SplicedAlready());
    }
    return warnings;
  }
}
