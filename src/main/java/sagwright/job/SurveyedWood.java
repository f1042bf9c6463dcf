package sagwright.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import sagwright.modulus.ModulusAlong;
import sagwright.sheet.JsonLine;
import sagwright.uncertainty.Warning;

/** What a survey has found of a blank's wood, as it is kept on the record. */
final class SurveyedWood {
  private SurveyedWood() {}

  static String write(KnownWood wood) {
    ModulusAlong along = wood.modulusMPa();
    return new JsonLine()
        .put("straight", along.isStraightBetweenKnots())
        .putNumbers("placesMm", along.breaksMm())
        .putNumbers("moduliMPa", along.moduliMPa())
        .putNumbers(
            "covarianceMPa2",
            Arrays.stream(along.covarianceMPa2()).flatMapToDouble(DoubleStream::of).toArray())
        .put("ratio", wood.ratio())
        .putNumbers("runs", wood.runIds().stream().mapToDouble(id -> id).toArray())
        .putTexts("assumed", wood.assumed())
        .putTexts("warnings", wood.warnings().stream().map(Warning::inWords).toList())
        .toString();
  }

  static KnownWood read(String document) {
    JsonLine json = JsonLine.parse(document);
    double[] moduli = json.numbers("moduliMPa");
    double[][] covariance = square(json.numbers("covarianceMPa2"), moduli.length);
    double[] places = json.numbers("placesMm");
    List<Warning> warnings = new ArrayList<>();
    json.texts("warnings").forEach(words -> warnings.add(new KeptWarning(words)));
    return new KnownWood(
        json.flag("straight")
            ? ModulusAlong.straight(places, moduli, covariance)
            : ModulusAlong.pieces(places, moduli, covariance),
        json.number("ratio"),
        DoubleStream.of(json.numbers("runs")).mapToObj(id -> (long) id).toList(),
        json.texts("assumed"),
        warnings);
  }

  private static double[][] square(double[] values, int side) {
    return IntStream.range(0, side)
        .mapToObj(row -> Arrays.copyOfRange(values, row * side, (row + 1) * side))
        .toArray(double[][]::new);
  }
}
