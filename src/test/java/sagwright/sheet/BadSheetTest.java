package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.wood.SpeciesTable;

class BadSheetTest {
  private final SheetReader reader = new SheetReader(SpeciesTable.published());

  @Test
  void aFileThatNeverEndsIsTooLong() {
    Path endless = Path.of("/dev/zero");
    Assumptions.assumeTrue(Files.exists(endless), "no such device here");
    BadDocumentException bad =
        assertThrows(BadDocumentException.class, () -> reader.readFile(endless));
    assertTrue(bad.getMessage().startsWith("is longer than"), bad.getMessage());
  }

  @ParameterizedTest(name = "{0} := {1}")
  @CsvFileSource(resources = "bad-sheets.csv", delimiter = '|', quoteCharacter = '\0')
  void theKeyOfTheFaultIsNamedInOneLine(String pointer, String value, String key) {
    refuses(MutatedJson.of(DocumentTexts.WHOLE, pointer, value), key);
  }

  @ParameterizedTest(name = "{0} := {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "/handRead/loadN | [0, 5] | handRead.deflectionMm",
        "/handRead/loadN | null | handRead.loadN",
        "/handRead/loadN | REMOVE | handRead.loadN",
        "/handRead/deflectionMm/1 | 1e999 | handRead.deflectionMm[1]",
        "/handRead/deflectionMm | REMOVE | handRead.deflectionMm",
        "/handRead/timeS | [0, 1, 2] | handRead.timeS",
        "/handRead | [] | handRead",
        "/handRead | REMOVE | run"
      })
  void faultsOfAHandReadRunAreNamed(String pointer, String value, String key) {
    refuses(MutatedJson.of(DocumentTexts.LEAST, pointer, value), key);
  }

  @ParameterizedTest(name = "{0} := {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "/shaft/splice/fromMm | 1490.1 | shaft.splice.fromMm",
        "/shaft/splice/fromMm | -1 | shaft.splice.fromMm",
        "/shaft/splice/fromMm | REMOVE | shaft.splice.fromMm",
        "/shaft/splice/coreHalfAtButtMm | 15.6 | shaft.splice.coreHalfAtButtMm",
        "/shaft/splice/coreHalfAtButtMm | -1 | shaft.splice.coreHalfAtButtMm",
        "/shaft/splice/densityKgM3 | -1 | shaft.splice.densityKgM3",
        "/shaft/splice/modulusMPa | 0 | shaft.splice.modulusMPa",
        "/shaft/splice/modulusMPa | REMOVE | shaft.splice.modulusMPa",
        "/shaft/splice/modulusUncertaintyPercent | -1 | shaft.splice.modulusUncertaintyPercent",
        "/shaft/splice/lengthMm | 400 | shaft.splice.lengthMm",
        "/instrument/gaugeSpringNPerMm | 0.1 | instrument.gaugeSpringNPerMm"
      })
  void faultsOfASpliceAreNamed(String pointer, String value, String key) {
    refuses(MutatedJson.of(DocumentTexts.SPLICED, pointer, value), key);
  }

  @Test
  void aKeyThatStandsTwiceIsNamed() {
    refuses(with("\"massG\": 405.0", "\"massG\": 405.0, \"massG\": 405.0"), "shaft.massG");
    refuses(
        with("\"depthMm\": 20.0", "\"depthMm\": 20.0, \"depthMm\": 20"),
        "shaft.stations[1].depthMm");
    refuses(with("\"modulusToShearRatio\": 14", "\"setup\": {}"), "setup");
  }

  @Test
  void whatIsNotANumberIsNamed() {
    refuses(with("\"massG\": 405.0", "\"massG\": NaN"), "shaft.massG");
    refuses(with("\"massG\": 405.0", "\"massG\": -Infinity"), "shaft.massG");
    refuses(with("[0.0, 0.05, 0.1]", "[0.0, 0.05, NaN]"), "run.loadN[2]");
    refuses(with("\"loadMm\": 600", "\"loadMm\": 6OO"), "setup.loadMm");
    refuses(with("\"loadMm\": 600", "\"loadMm\": 600,0"), "setup.loadMm");
    refuses(with("\"loadMm\": 600", "\"loadMm\": " + "1".repeat(2000)), "setup.loadMm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {"{", "[]", "null", "17", "\"sheet\"", "{} {}", "not JSON", "{\"format\"}", "<xml/>"})
  void whatIsNoJsonObjectIsRefusedInOneLine(String text) {
    oneLine(assertThrows(BadDocumentException.class, () -> reader.read(text)));
  }

  @Test
  void anEmptyDocumentAndOneWithMoreBehindAreRefused() {
    assertEquals("is empty", refuses("", ""));
    assertEquals("is empty", refuses(" \n\t", ""));
    assertEquals("holds more than one JSON document", refuses(DocumentTexts.WHOLE + "{}", ""));
    assertEquals("holds more than one JSON document", refuses(DocumentTexts.WHOLE + "1", ""));
  }

  @Test
  void aDocumentThatIsCutOffSaysSoWhereverItIsCut() {
    String whole = DocumentTexts.WHOLE.strip();
    for (int end = 1; end < whole.length(); end++) {
      String cut = whole.substring(0, end);
      oneLine(assertThrows(BadDocumentException.class, () -> reader.read(cut), cut));
    }
  }

  @Test
  void aNestOfBracketsIsRefusedWithoutATrace() {
    String text = with("\"massG\": 405.0", "\"x-n\": " + "[".repeat(5000) + "]".repeat(5000));
    oneLine(assertThrows(BadDocumentException.class, () -> reader.read(text)));
  }

  @Test
  void aNameWithLineBreaksStaysOnOneLine() {
    BadDocumentException bad =
        assertThrows(
            BadDocumentException.class,
            () -> reader.read(with("\"massG\"", "\"mass\\u2028\\n\\rG\"")));
    oneLine(bad);
    assertTrue(bad.key().startsWith("shaft.mass"), bad.key());
  }

  @Test
  void aSlipOfTheFingerIsToldWhatWasMeant() {
    assertTrue(refuses(with("\"massG\"", "\"masG\""), "shaft.masG").contains("massG"));
    assertTrue(refuses(with("\"loadMm\"", "\"load_mm\""), "setup.load_mm").contains("loadMm"));
    assertTrue(refuses(with("\"timeS\"", "\"tmieS\""), "run.tmieS").contains("timeS"));
  }

  @Test
  void filesThatCannotBeReadAsTextAreRefused(@TempDir Path folder) throws Exception {
    refusesFile(folder.resolve("none.json"), "there is no such file");
    refusesFile(folder, "is a folder, not a document");
    Path latin = folder.resolve("latin.json");
    Files.write(latin, with("near size", "gedämpft").getBytes(StandardCharsets.ISO_8859_1));
    refusesFile(latin, "is not UTF-8 text");
    Path utf16 = folder.resolve("utf16.json");
    Files.write(utf16, DocumentTexts.WHOLE.getBytes(StandardCharsets.UTF_16));
    refusesFile(utf16, "is not UTF-8 text");
    Path empty = Files.createFile(folder.resolve("empty.json"));
    refusesFile(empty, "is empty");
    Path huge = folder.resolve("huge.json");
    try (var file = new java.io.RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(DocumentText.GREATEST_BYTES + 1L);
    }
    refusesFile(huge, "is longer than 64 MB");
  }

  private static String with(String found, String put) {
    assertTrue(DocumentTexts.WHOLE.contains(found), found);
    return DocumentTexts.WHOLE.replace(found, put);
  }

  private void refusesFile(Path file, String problem) {
    BadDocumentException bad =
        assertThrows(BadDocumentException.class, () -> reader.readFile(file));
    assertEquals(problem, bad.getMessage());
  }

  private String refuses(String text, String key) {
    BadDocumentException bad =
        assertThrows(BadDocumentException.class, () -> reader.read(text).requireRun());
    oneLine(bad);
    assertEquals(key, bad.key(), bad.getMessage());
    return bad.problem();
  }

  private static void oneLine(BadDocumentException bad) {
    assertFalse(bad.getMessage().isBlank());
    assertFalse(bad.getMessage().matches("(?s).*[\\r\\n\\u2028].*"), bad.getMessage());
    assertTrue(bad.getMessage().length() < 300, bad.getMessage());
  }
}
