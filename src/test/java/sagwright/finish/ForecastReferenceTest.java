package sagwright.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Forecasts against forecast_reference.py, which works the same shafts out another way: quadrature
 * in 30 digits, exact fractions for the cut, shooting for the frequency. Its first case is the
 * example of docs/contract.md, section 5.
 */
class ForecastReferenceTest {
  static List<ForecastCase> cases() {
    return ForecastCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void stiffnessAndItsUncertaintyAgree(ForecastCase shaft) {
    Forecast forecast = shaft.forecast();
    for (int i = 0; i < shaft.setUps().size(); i++) {
      JsonNode expected = shaft.expected().get("asks").get(i);
      AskedStiffness asked = forecast.stiffnesses().get(i);
      agree(expected, "stiffnessNPerMm", asked.stiffnessNPerMm(), 1e-12);
      agree(
          expected, "stiffnessStdUncertaintyNPerMm", asked.estimate().standardUncertainty(), 1e-9);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void massAndBalanceAgree(ForecastCase shaft) {
    Forecast forecast = shaft.forecast();
    agree(shaft.expected(), "massG", forecast.massG(), 1e-12);
    agree(shaft.expected(), "balanceFromButtMm", forecast.balanceFromButtMm(), 1e-12);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void frequencyAgrees(ForecastCase shaft) {
    agree(shaft.expected(), "firstBendingHz", shaft.forecast().firstBendingHz(), 5e-8);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void cutAndSpareAgree(ForecastCase shaft) {
    Cut cut = shaft.forecast().cut();
    assertEquals(shaft.expected().get("cutFromMm").asDouble(), cut.fromMm(), 1e-9);
    assertEquals(shaft.expected().get("leastSpareMm").asDouble(), cut.leastSpareMm(), 1e-11);
    assertEquals(shaft.expected().get("leastSpareAtMm").asDouble(), cut.leastSpareAtMm(), 1e-9);
  }

  private static void agree(JsonNode expected, String key, double got, double relative) {
    double value = expected.get(key).asDouble();
    assertEquals(value, got, relative * Math.abs(value), key);
  }
}
