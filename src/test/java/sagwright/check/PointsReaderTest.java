package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.check.CalibrationPoint.Direction;

class PointsReaderTest {
  private static final LocalGravity GRAVITY = new LocalGravity(9.81);

  @Test
  void readsMassesAsTheLoadsThatTheyMake() throws BadPointsException {
    List<CalibrationPoint> points =
        PointsReader.ofMasses(GRAVITY)
            .read("massG,counts,direction\n0,-120,up\n500.5,19600.25,up\n\n0,-118,down\n");
    assertEquals(
        List.of(
            new CalibrationPoint(0, -120, Direction.UP),
            new CalibrationPoint(GRAVITY.loadN(500.5), 19600.25, Direction.UP),
            new CalibrationPoint(0, -118, Direction.DOWN)),
        points);
  }

  @Test
  void readsBlocksWithCommentsSpacesAndColumnsInAnotherOrder() throws BadPointsException {
    List<CalibrationPoint> points =
        PointsReader.ofBlocks()
            .read("# set of blocks\r\ndirection, steps , lengthMm\r\ndown, 1e3 ,1.0\r\n");
    assertEquals(List.of(new CalibrationPoint(1, 1000, Direction.DOWN)), points);
  }

  @Test
  void aHeaderAloneHasNoPoints() throws BadPointsException {
    assertEquals(List.of(), PointsReader.ofBlocks().read("lengthMm,steps,direction"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "``|line 1: the header massG,counts,direction is missing",
        "# nothing|line 1: the header massG,counts,direction is missing",
        "mass,counts,direction|line 1: the header must be massG,counts,direction",
        "lengthMm,steps,direction|line 1: the header must be massG,counts,direction",
        "massG,massG,direction|line 1: the header must be massG,counts,direction",
        "massG,counts|line 1: the header must be massG,counts,direction",
        "0,1,up|line 1: the header must be massG,counts,direction",
        "H/0,1,up/x,2,up|line 3: massG is \"x\", must be a number with a decimal point",
        "H/0,1,up/ ,2,up|line 3: massG is empty, must be a number with a decimal point",
        "H/-1,2,up|line 2: massG is -1, must be 0 or above",
        "H/NaN,2,up|line 2: massG is \"NaN\", must be a number with a decimal point",
        "H/1e999,2,up|line 2: massG is \"1e999\", must be a number with a decimal point",
        "H/1,0x10,up|line 2: counts is \"0x10\", must be a number with a decimal point",
        "H/1,2,sideways|line 2: direction is \"sideways\", must be up or down",
        "H/1,2,|line 2: direction is empty, must be up or down",
        "H//# two/1,2,up/3,4|line 5: has 2 values, must have 3",
        "H/1,2,up,4|line 2: has 4 values, must have 3",
        "H/1,5,2,up|line 2: has 4 values, must have 3",
        "H/1;2;up|line 2: has 1 values, must have 3",
        "H/1,2,up/\"1\"x,2,up|line 2: this or the next line is no CSV (a stray quote?)",
      })
  void namesTheLineAndTheFault(String csv, String said) {
    String text = csv.replace("/", "\n").replace("H", "massG,counts,direction");
    BadPointsException refused =
        assertThrows(BadPointsException.class, () -> PointsReader.ofMasses(GRAVITY).read(text));
    assertEquals(said, refused.getMessage());
  }
}
