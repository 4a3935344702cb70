package yardloom.water.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Which sizes of pipe a plan may use. */
class PipeSizeTest {
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));

  private PlanScope in(String file, int line) {
    return new PlanScope(draft, new SourceRef(file, line, 1));
  }

  private void size(PlanScope in, String name, double boreMm) {
    PipeWords.pipeSize(in, name, Length.millimetres(boreMm), null, null, null);
  }

  private List<String> names() {
    return PipeSize.all(draft.freeze()).stream().map(PipeSize::name).toList();
  }

  /** Shipped metric sizes are 13.6, 17.6, 21.8 and 28.0 mm wide. */
  @Test
  void sizes_standByTheirBore_andOneOfNearlyTheSameBoreInItsPlace() {
    size(in("yard.groovy", 1), "wide", 35.2);
    size(in("yard.groovy", 2), "between", 17.8);
    size(in("yard.groovy", 3), "as the 25", 21.85);
    assertEquals(List.of("16 mm", "20 mm", "between", "as the 25", "32 mm", "wide"), names());
    assertEquals(25, PipeSize.all(draft.freeze()).get(5).roll().metres(), 1e-9);
  }

  /** The plan stands below the region that it includes, and has the last word. */
  @Test
  void laterFile_goesBeforeAnEarlierOne() {
    PipeWords.pipeSizes(in("region.groovy", 4), "size,bore_mm\n20 mm,16.2", true, null);
    size(in("yard.groovy", 1), "20 mm", 16.9);
    assertEquals(List.of("20 mm"), names());
    assertEquals(16.9, PipeSize.all(draft.freeze()).get(0).bore().millimetres(), 1e-9);
  }

  @Test
  void limits_areThoseOfTheMessage() {
    for (double boreMm : new double[] {1.99, 110.1}) {
      assertThrows(PlanException.class, () -> size(in("yard.groovy", 1), "a", boreMm));
    }
    size(in("yard.groovy", 1), "least", 2);
    size(in("yard.groovy", 2), "most", 110);
    for (double rollM : new double[] {0.99, 501}) {
      assertThrows(
          PlanException.class,
          () ->
              PipeWords.pipeSize(
                  in("yard.groovy", 3),
                  "b",
                  Length.millimetres(50),
                  Length.metres(rollM),
                  null,
                  null));
    }
  }
}
