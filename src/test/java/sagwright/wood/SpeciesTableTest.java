package sagwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class SpeciesTableTest {
  private final SpeciesTable table = SpeciesTable.published();

  @Test
  void knowsEveryWoodOfTheReferenceTableAndNoOther() throws IOException {
    String reference = resource("/reference/species.csv");
    long rows =
        reference.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).count()
            - 1; // less header
    assertEquals(24, rows);
    assertEquals(rows, table.all().size());
    assertEquals(reference, resource("/sagwright/wood/species.csv"));
  }

  @Test
  void readsARowWithItsPublishedValues() {
    Species ash = table.find("European ash").orElseThrow();
    assertEquals("Fraxinus excelsior", ash.latin());
    assertEquals(702.0, ash.density12KgM3());
    assertEquals(13400.0, ash.modulus12MPa());
    assertEquals(120.0, ash.bendingStrength12MPa());
    assertEquals(10.9, ash.modulusToShearRatio());
    assertEquals(1.212, ash.ratio12ToGreen());
    assertEquals(25, ash.intersectionMoisturePercent());
    assertEquals("ratio as white ash; 12 to green as white ash", ash.basis());
  }

  @Test
  void matchesANameButForCaseAndNothingElse() {
    assertEquals("sugar maple", table.find("SUGAR Maple").orElseThrow().name());
    assertTrue(table.find("maple").isEmpty());
    assertTrue(table.find("sugar  maple").isEmpty());
    assertTrue(table.find("").isEmpty());
    assertTrue(table.find(null).isEmpty());
  }

  @Test
  void matchesAlikeUnderATurkishLocale() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("tr"));
    try {
      assertEquals("pignut hickory", table.find("PIGNUT HICKORY").orElseThrow().name());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void leavesUnpublishedValuesEmpty() {
    Species ebony = table.find("ebony East Indian").orElseThrow();
    assertNull(ebony.density12KgM3());
    assertNull(ebony.modulus12MPa());
    assertNull(ebony.bendingStrength12MPa());
    assertEquals(14, ebony.modulusToShearRatio());
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = SpeciesTableTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
