package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.LineStatistics;
import sagwright.bench.LinkState;
import sagwright.bench.TestSnapshot;
import sagwright.drawing.TurnedRun;
import sagwright.grade.WordScale;
import sagwright.job.BenchShop;
import sagwright.job.BowWarning;
import sagwright.job.LaidBlank;
import sagwright.job.LikelyShaft;
import sagwright.job.RunsTogether;
import sagwright.job.SecondOpinion;
import sagwright.job.TestedRun;
import sagwright.modulus.Shaft;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.survey.SurveyWarning;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;
import sagwright.wood.SafeStress;

/** Makes the view of the bench screen from its state and the head's newest snapshot. */
final class BenchViews {
  /** What keeps people safe while nothing lies there. */
  static final String SAFETY_OF_ALL_SHAFTS =
      "A bent shaft can snap.  Stand aside of it.  Eye protection on.";

  private final BenchShop shop;
  private final BehindViews behind;
  private volatile Answered answered; // of the newest state; either thread may renew it

  BenchViews(BenchShop shop) {
    this.shop = shop;
    this.behind = new BehindViews(shop);
  }

  BenchView of(BenchState state, BenchSnapshot snapshot, ShopUnits units) {
    LaidBlank laid = state.laid();
    TestSnapshot test = state.isTesting() ? snapshot.test() : null;
    Phase phase = StageViews.phase(state, snapshot, test);
    return new BenchView(
        laid == null ? null : laid(laid, units),
        state.tried() == null ? null : tried(state),
        phase,
        StageViews.detail(phase, state, snapshot),
        StageViews.reading(state, test),
        CurveViews.of(state, test),
        state.shown() == null || state.together() == null ? null : answer(state),
        state.finished() == null ? null : ForecastViews.of(state.finished(), units),
        words(state),
        turns(state),
        safety(laid),
        line(snapshot),
        state.question(),
        warnings(state, test),
        null); // what the hand said lies over this: Guessing
  }

  private static BenchView.Laid laid(LaidBlank laid, ShopUnits units) {
    Shaft shaft = laid.shaft();
    List<String> details = new ArrayList<>();
    if (shaft.species() != null) {
      details.add(shaft.species());
    }
    if (laid.stage() != null) {
      details.add(laid.stage());
    }
    if (shaft.massG() != null) {
      details.add(units.massText(shaft.massG()));
    }
    if (shaft.moisturePercent() != null) {
      details.add(Figures.rounded(shaft.moisturePercent(), 1) + " % moist");
    }
    if (laid.bowMm() != null) {
      details.add("bow " + Figures.rounded(laid.bowMm(), 2) + " mm");
    }
    return new BenchView.Laid(
        laid.blank().tag(),
        String.join(", ", details),
        shaft.taper(),
        laid.setUp().positions(),
        laid.modulusToShearRatio(),
        CurveViews.greatestMm(laid),
        laid.limits().safeN());
  }

  private static BenchView.Tried tried(BenchState state) {
    return new BenchView.Tried(state.tried().stored().number(), state.tried().order().ask());
  }

  /** What was worked out for a state once, while nothing that it rests on has changed. */
  private record Answered(
      TestedRun shown, RunsTogether together, SecondOpinion opinion, BenchView.Answer answer) {
    boolean holdsFor(BenchState state) {
      return shown.equals(state.shown())
          && together.equals(state.together())
          && Objects.equals(opinion, state.opinion());
    }
  }

  private BenchView.Answer answer(BenchState state) {
    Answered known = answered;
    if (known == null || !known.holdsFor(state)) {
      known = new Answered(state.shown(), state.together(), state.opinion(), workedOut(state));
      answered = known;
    }
    return known.answer();
  }

  private BenchView.Answer workedOut(BenchState state) {
    RunsTogether together = state.together();
    Estimate modulusMPa = together.modulusMPa();
    Double at12MPa = shop.wood(together).modulusAt12MPa();
    return new BenchView.Answer(
        "So far, from " + RunWords.of(together),
        together.stiffnessNPerMm(),
        modulusMPa,
        at12MPa == null
            ? null
            : new Estimate(
                at12MPa, modulusMPa.standardUncertainty() * at12MPa / modulusMPa.value()),
        behind.of(together, state.shown(), state.opinion()),
        SurveyViews.of(together));
  }

  /** The shop's words, where the ask stands at the set-up that they are for. */
  private WordScale words(BenchState state) {
    WordScale scale = shop.wordScale();
    boolean holds =
        state.tried() != null && state.tried().order().ask().setUp().equals(scale.usual());
    return holds ? scale : null;
  }

  private static BenchView.Turns turns(BenchState state) {
    if (state.laid() == null) {
      return new BenchView.Turns(0, List.of(), "");
    }
    double now = state.laid().setUp().positions().turnDegrees();
    List<TurnedRun> turned = new ArrayList<>();
    RunsTogether together = state.together();
    if (together != null) {
      for (TestedRun run : together.repeats()) {
        turned.add(
            new TurnedRun(
                together.runs().indexOf(run) + 1,
                Figures.rounded(run.evaluation().shaftStiffnessNPerMm(), 3),
                run.setUp().turnDegrees()));
      }
    }
    if (state.isTesting()) {
      turned.add(new TurnedRun(together == null ? 1 : together.runs().size() + 1, "", now));
    }
    return new BenchView.Turns(now, turned, TurnWords.of(together));
  }

  private String safety(LaidBlank laid) {
    if (laid == null) {
      return SAFETY_OF_ALL_SHAFTS;
    }
    SafeStress safe = shop.safeStress(laid.shaft());
    String load = "Safe load " + Figures.rounded(Math.floor(laid.limits().safeN()), 0) + " N";
    return load
        + (safe.isGuess() ? " (wood not known)" : "")
        + ".  Stand aside of the shaft.  Eye protection on.";
  }

  private String line(BenchSnapshot snapshot) {
    LineStatistics line = snapshot.line();
    String lost =
        line.missing() == 0 && line.refused() == 0
            ? "none lost"
            : line.missing() + " missing, " + line.refused() + " refused";
    String readings =
        snapshot.link() == LinkState.READING
            ? Figures.rounded(snapshot.readingsPerSecond(), 0) + " readings a second, " + lost
            : snapshot.linkInWords();
    return readings + ".  " + shop.calibrationInWords();
  }

  private static List<String> warnings(BenchState state, TestSnapshot test) {
    List<String> warnings = new ArrayList<>();
    if (test != null) {
      test.warnings().forEach(w -> warnings.add(w.inWords()));
      return warnings;
    }
    if (state.laid() != null) {
      if (state.laid().endedWhy() != null) {
        warnings.add(
            state.laid().blank().tag()
                + " was ended: "
                + state.laid().endedWhy()
                + ". Is this the one?");
      }
      LikelyShaft.doubt(state.laid().shaft(), state.laid().stage()).ifPresent(warnings::add);
    }
    if (state.together() != null) {
      state.together().ofBench().stream().map(Warning::inWords).forEach(warnings::add);
    }
    if (state.shown() != null) {
      state.shown().evaluation().warnings().stream().map(Warning::inWords).forEach(warnings::add);
    }
    if (state.together() != null) {
      state.together().warnings().stream()
          .filter(w -> !(w instanceof SurveyWarning)) // said on its own page
          .map(Warning::inWords)
          .forEach(warnings::add);
    }
    if (state.finished() != null) {
      BowWarning.beside(state.finished().planned().graded(), state.laid().bowMm())
          .warnings()
          .stream()
          .map(Warning::inWords)
          .forEach(warnings::add);
      ForecastViews.changed(state.finished()).ifPresent(warnings::add);
    }
    return warnings.stream().distinct().toList();
  }
}
