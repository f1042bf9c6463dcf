package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishProblem;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.OrderCheck;

/**
 * Reads orders, {@code sagwright-order/1}, by the rules of docs/contract.md, section 5. What a
 * finish plan cannot be is said by {@link FinishCheck} and {@link OrderCheck}; here, what is no
 * order at all.
 */
public final class OrderReader {
  public static final String FORMAT = "sagwright-order/1";

  private OrderReader() {}

  public static Order readFile(Path file) throws BadDocumentException {
    return read(DocumentText.ofFile(file));
  }

  public static Order read(String text) throws BadDocumentException {
    return readDocument(text).order();
  }

  public static OrderDocument readDocument(String text) throws BadDocumentException {
    JsonNode root = JsonDocument.parse(text);
    new JsonFormat(root).require(FORMAT);
    JsonObject json =
        new JsonObject(
            root,
            "",
            "format",
            "order",
            "species",
            "promisedFor",
            "notes",
            "finish",
            "ask",
            "alsoAsked");
    FinishPlan finish = FinishReader.readFrom(json);
    Order order =
        new Order(
            json.textOrNull("order"),
            json.textOrNull("species"),
            promisedFor(json),
            json.textOrNull("notes"),
            finish,
            ask(json, finish.lengthMm()),
            alsoAsked(json, finish.lengthMm()),
            Remarks.of(root));
    List<FinishProblem> problems = OrderCheck.problemsOf(order);
    if (!problems.isEmpty()) {
      throw new BadDocumentException(problems.get(0).key(), problems.get(0).whatIsWrong());
    }
    return new OrderDocument(order, DocumentText.onOneLine(text));
  }

  private static LocalDate promisedFor(JsonObject json) throws BadDocumentException {
    String day = json.textOrNull("promisedFor");
    if (day != null && !Moments.isDate(day)) {
      throw json.bad(
          "promisedFor", "is " + json.shown("promisedFor") + ", must be a day as 2026-06-30");
    }
    return day == null ? null : LocalDate.parse(day);
  }

  private static Ask ask(JsonObject order, double lengthMm) throws BadDocumentException {
    JsonObject json =
        order.object(
            "ask",
            "setup",
            "stiffnessNPerMm",
            "tolerancePercent",
            "massG",
            "massToleranceG",
            "balanceFromButtMm",
            "balanceToleranceMm");
    Ask stiffness = stiffness(json, lengthMm);
    return new Ask(
        stiffness.setUp(),
        stiffness.stiffnessNPerMm(),
        stiffness.tolerancePercent(),
        aim(json, "massG", "massToleranceG"),
        aim(json, "balanceFromButtMm", "balanceToleranceMm"));
  }

  private static List<Ask> alsoAsked(JsonObject order, double lengthMm)
      throws BadDocumentException {
    List<Ask> asks = new ArrayList<>();
    if (order.has("alsoAsked")) {
      for (JsonObject json :
          order.objects("alsoAsked", "setup", "stiffnessNPerMm", "tolerancePercent")) {
        asks.add(stiffness(json, lengthMm));
      }
    }
    return asks;
  }

  private static Ask stiffness(JsonObject json, double lengthMm) throws BadDocumentException {
    SetUp setUp =
        PositionsReader.read(
            json.object("setup", "supportAMm", "supportBMm", "loadMm", "gaugeMm"), lengthMm, 0);
    return Ask.ofStiffness(
        setUp,
        json.number("stiffnessNPerMm", NumberRange.ABOVE_ZERO),
        json.number("tolerancePercent", NumberRange.NOT_NEGATIVE));
  }

  private static Aim aim(JsonObject json, String key, String toleranceKey)
      throws BadDocumentException {
    Double value = json.numberOrNull(key, NumberRange.ANY);
    Double tolerance = json.numberOrNull(toleranceKey, NumberRange.NOT_NEGATIVE);
    return value == null ? null : new Aim(value, tolerance);
  }
}
