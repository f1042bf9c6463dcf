package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The building notes: what they point at is there, what they add up is right. */
class BuildingNotesTest {
  private static final Path NOTES = Path.of("docs", "bench");

  static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(Path.of("firmware-notes", "README.md")));
    try (Stream<Path> notes = Files.list(NOTES)) {
      notes.filter(path -> path.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    return pages;
  }

  static List<Path> drawings() throws IOException {
    try (Stream<Path> notes = Files.list(NOTES)) {
      return notes.filter(path -> path.toString().endsWith(".svg")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyLinkLeadsSomewhere(Path page) throws IOException {
    for (MatchResult link : matches("\\]\\(([^)#:]+)\\)", Files.readString(page))) {
      Path target = page.resolveSibling(link.group(1)).normalize();
      assertTrue(Files.exists(target), page + " points at " + target);
    }
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyDrawingCanBeReadAndIsShownOnAPage(Path drawing) throws Exception {
    DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(drawing.toFile());
    String all = "";
    for (Path page : pages()) {
      all += Files.readString(page);
    }
    assertTrue(all.contains("](" + drawing.getFileName() + ")"), drawing + " is shown nowhere");
  }

  @Test
  void theBenchForOnePersonCostsTheSumOfItsParts() throws IOException {
    String page = Files.readString(NOTES.resolve("building.md"));
    String table = page.substring(page.indexOf("### A bench for one person"));
    table = table.substring(0, table.indexOf("**together**"));
    int sum = 0;
    for (MatchResult price : matches("\\| (\\d+) (?=\\|)", table)) {
      sum += Integer.parseInt(price.group(1));
    }
    List<MatchResult> together = matches("\\*\\*together\\*\\* .*\\*\\*(\\d+)\\*\\*", page);
    assertEquals(sum, Integer.parseInt(together.get(0).group(1)));
    assertTrue(sum < 200, "it says under 200");
  }

  @Test
  void theEveningsStepsAddUpToFiveHours() throws IOException {
    int minutes = 0;
    String page = Files.readString(NOTES.resolve("building.md"));
    for (MatchResult step : matches("(?m)^\\| \\d+ \\| (\\d+) \\|", page)) {
      minutes += Integer.parseInt(step.group(1));
    }
    assertEquals(300, minutes, 15);
  }

  /** A message that is quoted for the maker to look up must be one that the program can show. */
  @Test
  void theMessagesThatAreExplainedAreTheProgramsOwn() throws IOException {
    String words = words();
    for (MatchResult quoted :
        matches("\"([^\"]{12,})\"", Files.readString(NOTES.resolve("faults.md")))) {
      for (String piece : quoted.group(1).split("…|\\d+(\\.\\d)? Hz", -1)) {
        String text = piece.replaceAll("^[:,;\\s]+|[:,;\\s]+$", "");
        assertTrue(words.contains(text), "nothing in the program says: " + text);
      }
    }
  }

  /** All texts of the program, those that are put together from several lines as one. */
  private static String words() throws IOException {
    StringBuilder words = new StringBuilder();
    try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
      for (Path source : sources.filter(path -> path.toString().endsWith(".java")).toList()) {
        words.append(Files.readString(source).replaceAll("\"\\s*\\+\\s*\"", ""));
      }
    }
    return words.toString();
  }

  private static List<MatchResult> matches(String pattern, String text) {
    return Pattern.compile(pattern).matcher(text).results().toList();
  }
}
