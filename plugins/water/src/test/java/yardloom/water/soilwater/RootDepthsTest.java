package yardloom.water.soilwater;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.facts.Stand;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/** How deep plants draw where their crop's depth is not known, against two towns' pages. */
class RootDepthsTest {
  private static final Source SAYS = Source.commonPractice("told by the test");

  private static Stand stand(ElementKind kind, WorkPhase phase, Optional<Stand.Roots> roots) {
    return new Stand(
        new ElementId(kind, "it"),
        SourceRef.NONE,
        new Stand.Kind("it", "", Length.metres(1)),
        new Stand.Placed(List.of(Point.metres(3, 2)), Area.squareMetres(1), Optional.empty()),
        new Stand.Thirst(Collections.nCopies(12, 0.9), SAYS, roots),
        new Stand.Planted(false, phase, Optional.empty()));
  }

  /** Half of it is drawn easily: FAO-56 chapter 8, for many crops (from memory). */
  @ParameterizedTest
  @CsvFileSource(resources = "published-root-depths.csv", numLinesToSkip = 1)
  void depthOfAClass_isThePublishedOne(
      ElementKind kind, WorkPhase phase, double feet, String plants, String source, String mark) {
    Stand.Roots roots = RootDepths.of(stand(kind, phase, Optional.empty()));
    assertEquals(feet, roots.depth().feet(), 1e-9, plants);
    assertEquals(0.5, roots.easyShare(), 1e-12);
  }

  @Test
  void depthOfACrop_goesBeforeItsClass() {
    Stand.Roots own = new Stand.Roots(Length.metres(0.7), 0.4, SAYS, true);
    assertEquals(own, RootDepths.of(stand(ElementKind.BED, WorkPhase.PLANT, Optional.of(own))));
  }
}
