package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.wood.SpeciesTable;

class OrderReaderTest {
  @Test
  void everyValueOfAnOrderArrivesAsWritten() throws Exception {
    Order order = OrderReader.read(DocumentTexts.ORDER);
    assertEquals("R-0007", order.number());
    assertEquals("European ash", order.species());
    assertEquals(LocalDate.of(2026, 6, 30), order.promisedFor());
    assertEquals("slim", order.notes());
    assertEquals(1473, order.finish().lengthMm());
    assertEquals(
        List.of(Station.round(0, 9.5), Station.round(1473, 29)), order.finish().taper().stations());
    assertEquals(0.05, order.finish().diameterUncertaintyMm());
    assertEquals(8, order.finish().cutFromMm());
    assertEquals(new Ferrule(9.5, 8, 8500), order.finish().ferrule());
    assertEquals(new Splice(1030, 4, 1120, 15500, 0), order.finish().splice());
    assertEquals(List.of(new Weight(1400, 1450, 12, 11340)), order.finish().weights());
    assertEquals(List.of(new Extra("joint", 740, 38)), order.finish().extras());
    assertEquals(
        new Ask(new SetUp(100, 1100, 600, 600, 0), 2.25, 5, new Aim(470, 15.0), new Aim(450, 15.0)),
        order.ask());
    assertEquals(
        List.of(Ask.ofStiffness(new SetUp(700, 1450, 1075, 1075, 0), 21.5, 8)), order.alsoAsked());
  }

  @Test
  void anOrderMaySayNoMoreThanItMust() throws Exception {
    Order order = OrderReader.read(DocumentTexts.LEAST_ORDER);
    assertNull(order.number());
    assertNull(order.finish().cutFromMm());
    assertNull(order.finish().splice());
    assertNull(order.ask().massG());
    assertEquals(0.05, order.finish().diameterUncertaintyMm());
    assertEquals(List.of(), order.alsoAsked());
    OrderDocument document = OrderReader.readDocument(DocumentTexts.LEAST_ORDER);
    BadDocumentException bad = assertThrows(BadDocumentException.class, document::requireNumber);
    assertEquals("order", bad.key());
  }

  @Test
  void touchingEndsAreAllowed() throws Exception {
    String text = MutatedJson.of(DocumentTexts.ORDER, "/finish/weights/0/toMm", "1473");
    assertEquals(1473, OrderReader.read(text).finish().weights().get(0).toMm());
    text = MutatedJson.of(DocumentTexts.ORDER, "/finish/splice/fromMm", "9.5");
    assertEquals(9.5, OrderReader.read(text).finish().splice().fromMm());
  }

  @ParameterizedTest(name = "{0} := {1}")
  @CsvFileSource(resources = "bad-orders.csv", delimiter = '|', quoteCharacter = '\0')
  void theKeyOfTheFaultIsNamedInOneLine(String pointer, String value, String key) {
    String text = MutatedJson.of(DocumentTexts.ORDER, pointer, value);
    BadDocumentException bad =
        assertThrows(
            BadDocumentException.class, () -> OrderReader.readDocument(text).requireNumber());
    assertEquals(key, bad.key(), bad.getMessage());
    assertFalse(bad.getMessage().contains("\n"));
  }

  @Test
  void aDocumentIsTakenForWhatItSaysItIs() throws Exception {
    DocumentReader reader = new DocumentReader(SpeciesTable.published());
    assertInstanceOf(Sheet.class, reader.read(DocumentTexts.WHOLE));
    assertInstanceOf(OrderDocument.class, reader.read(DocumentTexts.ORDER));
    for (String bad : new String[] {DocumentTexts.CALIBRATION, "{\"format\": null}", "{}"}) {
      assertEquals(
          "format", assertThrows(BadDocumentException.class, () -> reader.read(bad)).key());
    }
  }

  @Test
  void keysThatBeginWithXAreCarriedAlong() throws Exception {
    String text = MutatedJson.of(DocumentTexts.ORDER, "/finish/x-who", "\"a friend\"");
    assertEquals(true, OrderReader.readDocument(text).json().contains("\"x-who\":\"a friend\""));
  }
}
