package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.OrderRemarks;

/** Writes orders so that {@link OrderReader} reads the same back. */
public final class OrderWriter {
  private OrderWriter() {}

  /** The order's text on one line. */
  public static String write(Order order) {
    JsonLine json = new JsonLine().put("format", OrderReader.FORMAT);
    putText(json, "order", order.number());
    putText(json, "species", order.species());
    putText(
        json, "promisedFor", order.promisedFor() == null ? null : order.promisedFor().toString());
    putText(json, "notes", order.notes());
    List<JsonLine> asks = new ArrayList<>();
    for (Ask ask : order.asks()) {
      JsonLine line = ask(ask);
      putText(line, Remarks.ASKED_AS, emptyToNull(order.remarks().askedAs(asks.size())));
      asks.add(line);
    }
    json.put("finish", finish(order.finish(), order.remarks())).put("ask", asks.get(0));
    if (!order.alsoAsked().isEmpty()) {
      json.putObjects("alsoAsked", asks.subList(1, asks.size()));
    }
    return json.toString();
  }

  /**
   * A newer version of an order, which carries along what else the former one says.
   *
   * @param former the former version's document
   */
  public static String write(Order order, String former) throws BadDocumentException {
    return CarriedKeys.carry(former, write(order));
  }

  private static String emptyToNull(String text) {
    return text.isEmpty() ? null : text;
  }

  private static JsonLine finish(FinishPlan plan, OrderRemarks remarks) {
    JsonLine json =
        TaperText.line(plan.taper()).put("diameterUncertaintyMm", plan.diameterUncertaintyMm());
    if (plan.cutFromMm() != null) {
      json.put("cutFromMm", plan.cutFromMm());
    }
    Ferrule ferrule = plan.ferrule();
    if (ferrule != null) {
      json.put(
          "ferrule",
          new JsonLine()
              .put("lengthMm", ferrule.lengthMm())
              .put("boreMm", ferrule.boreMm())
              .put("densityKgM3", ferrule.densityKgM3()));
    }
    Splice splice = plan.splice();
    if (splice != null) {
      JsonLine line = SheetWriter.spliceLine(splice);
      putText(line, Remarks.SPLICE_WOOD, remarks.spliceWood());
      json.put("splice", line);
    }
    if (!plan.weights().isEmpty()) {
      json.putObjects("weights", plan.weights().stream().map(OrderWriter::weight).toList());
    }
    if (!plan.extras().isEmpty()) {
      json.putObjects("extras", plan.extras().stream().map(OrderWriter::extra).toList());
    }
    if (remarks.buttFlatMm() != null) {
      json.put(Remarks.BUTT_FLAT, remarks.buttFlatMm());
    }
    return json;
  }

  private static JsonLine weight(Weight weight) {
    return new JsonLine()
        .put("fromMm", weight.fromMm())
        .put("toMm", weight.toMm())
        .put("diameterMm", weight.diameterMm())
        .put("densityKgM3", weight.densityKgM3());
  }

  private static JsonLine extra(Extra extra) {
    JsonLine json = new JsonLine();
    putText(json, "name", extra.name());
    return json.put("xMm", extra.xMm()).put("massG", extra.massG());
  }

  private static JsonLine ask(Ask ask) {
    SetUp setUp = ask.setUp();
    JsonLine json =
        new JsonLine()
            .put(
                "setup",
                new JsonLine()
                    .put("supportAMm", setUp.supportAMm())
                    .put("supportBMm", setUp.supportBMm())
                    .put("loadMm", setUp.loadMm())
                    .put("gaugeMm", setUp.gaugeMm()))
            .put("stiffnessNPerMm", ask.stiffnessNPerMm())
            .put("tolerancePercent", ask.tolerancePercent());
    putAim(json, ask.massG(), "massG", "massToleranceG");
    putAim(json, ask.balanceFromButtMm(), "balanceFromButtMm", "balanceToleranceMm");
    return json;
  }

  private static void putAim(JsonLine json, Aim aim, String key, String toleranceKey) {
    if (aim == null) {
      return;
    }
    json.put(key, aim.value());
    if (aim.tolerance() != null) {
      json.put(toleranceKey, aim.tolerance());
    }
  }

  private static void putText(JsonLine json, String key, String text) {
    if (text != null) {
      json.put(key, text);
    }
  }
}
