package sagwright.grade;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishProblem;

/** What an order cannot be (docs/contract.md, section 5), each thing with its key. */
public final class OrderCheck {
  private final double lengthMm;
  private final List<FinishProblem> problems = new ArrayList<>();

  private OrderCheck(double lengthMm) {
    this.lengthMm = lengthMm;
  }

  /** What is wrong with an order, its finish plan first; empty where nothing is. */
  public static List<FinishProblem> problemsOf(Order order) {
    OrderCheck check = new OrderCheck(order.finish().lengthMm());
    check.problems.addAll(FinishCheck.problemsOf(order.finish()));
    check.ask("ask", order.ask());
    for (int i = 0; i < order.alsoAsked().size(); i++) {
      check.ask("alsoAsked[" + i + "]", order.alsoAsked().get(i));
    }
    return List.copyOf(check.problems);
  }

  private void ask(String key, Ask ask) {
    SetUp setUp = ask.setUp();
    onShaft(key + ".setup.supportAMm", setUp.supportAMm());
    onShaft(key + ".setup.supportBMm", setUp.supportBMm());
    onShaft(key + ".setup.loadMm", setUp.loadMm());
    onShaft(key + ".setup.gaugeMm", setUp.gaugeMm());
    if (!(ask.stiffnessNPerMm() > 0)) {
      add(key + ".stiffnessNPerMm", "must be above 0, not " + ask.stiffnessNPerMm());
    }
    notBelowZero(key + ".tolerancePercent", ask.tolerancePercent());
    if (ask.massG() != null) {
      notBelowZero(key + ".massG", ask.massG().value());
      tolerance(key + ".massToleranceG", ask.massG());
    }
    if (ask.balanceFromButtMm() != null) {
      tolerance(key + ".balanceToleranceMm", ask.balanceFromButtMm());
    }
  }

  private void tolerance(String key, Aim aim) {
    if (aim.tolerance() != null) {
      notBelowZero(key, aim.tolerance());
    }
  }

  private void onShaft(String key, double xMm) {
    if (!(xMm >= 0 && xMm <= lengthMm)) {
      add(key, xMm + " lies off the finished shaft, which is " + lengthMm + " mm long");
    }
  }

  private void notBelowZero(String key, double value) {
    if (!(value >= 0)) {
      add(key, "cannot be below 0: " + value);
    }
  }

  private void add(String key, String whatIsWrong) {
    problems.add(new FinishProblem(key, whatIsWrong));
  }
}
