package sagwright.finish;

/** Works out a {@link Forecast}: docs/contract.md, section 5. */
public final class Forecaster {
  private Forecaster() {}

  /** The forecast for a request; for many blanks of one plan see {@link PlanForecaster}. */
  public static Forecast forecast(ForecastRequest request) {
    return new PlanForecaster(request.plan(), request.setUps(), request.wantedNPerMm())
        .forecast(request.blank());
  }
}
