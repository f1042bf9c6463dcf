package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.grade.Order;
import sagwright.grade.OrderRemarks;

class OrderWriterTest {
  @Test
  void whatIsWrittenReadsBackTheSame() throws Exception {
    Order read = OrderReader.read(DocumentTexts.ORDER);
    OrderRemarks remarks = new OrderRemarks(80.0, "ebony", List.of("", "as 25-020 + 10 %"));
    Order order =
        new Order(
            read.number(),
            read.species(),
            read.promisedFor(),
            read.notes(),
            read.finish(),
            read.ask(),
            read.alsoAsked(),
            remarks);
    Order back = OrderReader.read(OrderWriter.write(order));
    assertEquals(remarks, back.remarks());
    assertEquals(order.finish().weights(), back.finish().weights());
    assertEquals(order.finish().splice(), back.finish().splice());
    assertEquals(order.asks(), back.asks());
    assertEquals(OrderWriter.write(order), OrderWriter.write(back));
  }

  @Test
  void whatOthersHaveWrittenIsCarriedToTheObjectsThatStay() throws Exception {
    String former = DocumentTexts.ORDER;
    for (String[] put :
        new String[][] {
          {"/x-shelf", "[1, {\"a\": null}]"},
          {"/finish/x-colour", "\"honey\""},
          {"/finish/taper/1/x-seen", "true"},
          {"/finish/ferrule/x-from", "\"stock\""},
          {"/finish/extras/0/x-thread", "\"brass\""},
          {"/ask/setup/x-bench", "2"},
          {"/alsoAsked/0/x-why", "\"break shots\""},
          {"/finish/x-buttFlatMm", "80"},
        }) {
      former = MutatedJson.of(former, put[0], put[1]);
    }
    // a knot more, the splice's flat and the ferrule gone, the ask changed
    String changed = MutatedJson.of(former, "/finish/ferrule", "REMOVE");
    changed = MutatedJson.of(changed, "/finish/x-buttFlatMm", "REMOVE");
    changed = MutatedJson.of(changed, "/ask/stiffnessNPerMm", "2.4");
    changed =
        MutatedJson.of(
            changed,
            "/finish/taper",
            "[{\"xMm\":0,\"diameterMm\":9.5},{\"xMm\":700,\"diameterMm\":18},"
                + "{\"xMm\":1473,\"diameterMm\":29}]");
    JsonNode next = JsonDocument.parse(OrderWriter.write(OrderReader.read(changed), former));
    assertEquals("[1,{\"a\":null}]", next.path("x-shelf").toString());
    assertEquals("honey", next.at("/finish/x-colour").textValue());
    assertEquals(true, next.at("/finish/taper/2/x-seen").booleanValue());
    assertEquals("brass", next.at("/finish/extras/0/x-thread").textValue());
    assertEquals(2, next.at("/ask/setup/x-bench").intValue());
    assertEquals("break shots", next.at("/alsoAsked/0/x-why").textValue());
    assertEquals(true, next.at("/finish/ferrule").isMissingNode());
    assertEquals(true, next.at("/finish/x-buttFlatMm").isMissingNode());
  }

  @Test
  void anotherProgramsKeysAreNoRemarksAndNoFault() throws Exception {
    String text = MutatedJson.of(DocumentTexts.ORDER, "/finish/x-buttFlatMm", "\"long\"");
    text = MutatedJson.of(text, "/ask/x-askedAs", "{}");
    text = MutatedJson.of(text, "/finish/splice/x-wood", "7");
    Order order = OrderReader.read(text);
    assertNull(order.remarks().buttFlatMm());
    assertNull(order.remarks().spliceWood());
    assertEquals("", order.remarks().askedAs(0));
  }
}
