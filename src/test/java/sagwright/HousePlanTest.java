package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the code to the arrows of {@link HousePlan}. */
class HousePlanTest {
  /** What DEVELOPERS.md names lies below one of them. */
  private static final List<Path> PLACES =
      List.of(Path.of(""), Path.of("src/main/java/sagwright"), Path.of("src/test/java/sagwright"));

  private static JavaClasses classes;

  @BeforeAll
  static void readTheProgram() {
    String tests =
        HousePlanTest.class.getProtectionDomain().getCodeSource().getLocation().toString();
    classes =
        new ClassFileImporter()
            .withImportOption(location -> !location.asURI().toString().startsWith(tests))
            .importPackages("sagwright");
    assertTrue(classes.size() > 1, "the program's classes must have been found");
  }

  @Test
  void everyPackageIsARoomOfThePlan() {
    Set<String> unknown = new TreeSet<>();
    for (JavaClass c : classes) {
      String room = HousePlan.roomOf(c.getPackageName());
      if (!room.isEmpty() && !HousePlan.rooms().containsKey(room)) {
        unknown.add(c.getPackageName());
      }
    }
    assertEquals(Set.of(), unknown);
  }

  @Test
  void arrowsGoOneWay() {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass c : classes) {
      String from = HousePlan.roomOf(c.getPackageName());
      if (from.isEmpty()) {
        continue; // the root wires everything
      }
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        JavaClass target = d.getTargetClass().getBaseComponentType();
        if (!target.getPackageName().startsWith("sagwright")) {
          continue;
        }
        String to = HousePlan.roomOf(target.getPackageName());
        if (!to.equals(from) && !HousePlan.rooms().get(from).contains(to)) {
          wrong.add(
              from + " must not use " + (to.isEmpty() ? "the root" : to) + ": " + c.getName());
        }
      }
    }
    assertEquals(Set.of(), wrong);
  }

  @Test
  void aLibraryHasOneUser() {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass c : classes) {
      String from = HousePlan.roomOf(c.getPackageName());
      if (from.isEmpty()) {
        continue;
      }
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        String used = d.getTargetClass().getBaseComponentType().getPackageName();
        for (Map.Entry<String, Set<String>> sole : HousePlan.soleUsers().entrySet()) {
          boolean ofLibrary = used.equals(sole.getKey()) || used.startsWith(sole.getKey() + ".");
          if (ofLibrary && !sole.getValue().contains(from)) {
            wrong.add(from + " must not use " + sole.getKey() + ": " + c.getName());
          }
        }
      }
    }
    assertEquals(Set.of(), wrong);
  }

  @Test
  void nothingStaticCanChange() {
    List<String> wrong =
        classes.stream()
            .flatMap(c -> c.getFields().stream())
            .filter(
                f ->
                    f.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.STATIC))
            .filter(
                f ->
                    !f.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.FINAL))
            .map(f -> f.getFullName())
            .sorted()
            .toList();
    assertEquals(List.of(), wrong);
  }

  @Test
  void developersReadTheSameTable() throws IOException {
    String physics = "uncertainty beam wood run modulus survey finish";
    Map<String, Set<String>> shown = new LinkedHashMap<>();
    Pattern row = Pattern.compile("\\| `([a-z.]+)` \\| [^|]+ \\| ([^|]+) \\|.*");
    for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
      Matcher matcher = row.matcher(line);
      if (matcher.matches()) {
        String uses = matcher.group(2).trim().replace("*physics*", physics);
        shown.put(matcher.group(1), uses.equals("–") ? Set.of() : Set.of(uses.split(" ")));
      }
    }
    assertEquals(HousePlan.rooms(), shown);
  }

  @Test
  void whatDevelopersAreToOpenIsThere() throws IOException {
    Set<String> gone = new TreeSet<>();
    Pattern place = Pattern.compile("`([A-Za-z0-9./-]*(?:\\.(?:java|md)|/))`");
    for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
      place
          .matcher(line)
          .results()
          .map(found -> found.group(1))
          .filter(named -> PLACES.stream().noneMatch(root -> Files.exists(root.resolve(named))))
          .forEach(gone::add);
    }
    assertEquals(Set.of(), gone);
  }
}
