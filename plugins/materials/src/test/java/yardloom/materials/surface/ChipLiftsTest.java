package yardloom.materials.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/** By hand: 108 sq ft, so that an inch of chips is 9 cu ft. The 2 in are common practice. */
class ChipLiftsTest {
  private static List<LaidLayer> lifts(
      SurfaceKind kind, boolean sheeted, boolean covered, double depthIn) {
    return ChipLifts.of(
        kind,
        sheeted,
        covered,
        WorkPhase.FINISH,
        Derived.given(Length.inches(depthIn), "depth", SourceRef.NONE),
        Derived.given(Volume.cubicFeet(9 * depthIn), "volume", SourceRef.NONE));
  }

  private static void assertLift(
      LaidLayer lift, WorkPhase phase, double depthIn, double cubicFeet) {
    assertEquals(phase, lift.phase());
    assertEquals(depthIn, lift.depth().orElseThrow().value().inches(), 1e-9);
    assertEquals(cubicFeet, lift.volume().orElseThrow().value().cubicFeet(), 1e-9);
  }

  /** 9 in over bare cardboard: 2 in hold it, 7 in finish; 18 and 63 of 81 cu ft. */
  @Test
  void bareCardboard_isHeldByTwoInches() {
    List<LaidLayer> lifts = lifts(SurfaceKind.PERENNIAL_BED, true, false, 9);
    assertEquals(2, lifts.size());
    assertLift(lifts.get(0), WorkPhase.SHEET, 2, 18);
    assertLift(lifts.get(1), WorkPhase.FINISH, 7, 63);
  }

  /** Of 3 in half hold it: 1.5 in and 13.5 cu ft each. */
  @Test
  void thinChips_areHalved() {
    List<LaidLayer> lifts = lifts(SurfaceKind.PERENNIAL_BED, true, false, 3);
    assertLift(lifts.get(0), WorkPhase.SHEET, 1.5, 13.5);
    assertLift(lifts.get(1), WorkPhase.FINISH, 1.5, 13.5);
  }

  @Test
  void pathsAtOnce_andBedsUnderCompostLast() {
    List<LaidLayer> path = lifts(SurfaceKind.PATH, true, false, 4);
    assertEquals(1, path.size());
    assertLift(path.get(0), WorkPhase.SHEET, 4, 36);
    for (boolean sheeted : new boolean[] {true, false}) {
      List<LaidLayer> bed = lifts(SurfaceKind.ANNUAL_BED, sheeted, true, 5);
      assertTrue(bed.size() == 1, bed.toString());
      assertLift(bed.get(0), WorkPhase.FINISH, 5, 45);
    }
  }
}
