package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.modulus.Evaluation;
import sagwright.run.StiffnessFit;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;

class AnswerWriterTest {
  @Test
  void theAnswerHasTheContractsKeysInItsOrderOnOneLine() throws Exception {
    Sheet sheet = new SheetReader(SpeciesTable.published()).read(DocumentTexts.WHOLE);
    StiffnessFit fit =
        new StiffnessFit(
            4.103408682270373,
            0.001,
            0,
            0,
            0,
            4,
            19,
            new boolean[] {true, true, false},
            1,
            null,
            20,
            List.of());
    Evaluation evaluation =
        new Evaluation(
            fit,
            0.0056,
            4.137363266973181,
            12340,
            null,
            690.2357209056094,
            6.418,
            new Budget(List.of(new Contribution("diameter", 3), new Contribution("line", 4))),
            List.of((Warning) () -> "the \"branch\" bends"));
    assertEquals(
        "{\"tag\":\"25-014\",\"stiffnessNPerMm\":4.103408682270373,"
            + "\"stiffnessStdUncertaintyNPerMm\":0.0056,\"shaftStiffnessNPerMm\":4.137363266973181,"
            + "\"modulusMPa\":12340.0,\"modulusStdUncertaintyMPa\":5.0,"
            + "\"modulusAt12PercentMPa\":null,\"densityKgM3\":690.2357209056094,"
            + "\"windowFromN\":4.0,\"windowToN\":19.0,\"samplesUsed\":2,\"samplesSetAside\":1,"
            + "\"hysteresisPercent\":null,\"peakStressMPa\":6.418,"
            + "\"uncertaintyBudget\":[{\"source\":\"diameter\",\"contributionMPa\":3.0},"
            + "{\"source\":\"line\",\"contributionMPa\":4.0}],"
            + "\"assumed\":[],\"warnings\":[\"the \\\"branch\\\" bends\"]}",
        AnswerWriter.evaluation(sheet, evaluation));
  }

  @Test
  void anErrorNamesTheFileAndWhatIsWrong() {
    assertEquals(
        "{\"file\":\"a.json\",\"error\":\"shaft: is missing\"}",
        AnswerWriter.error("a.json", "shaft: is missing"));
  }
}
