package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;

/** What is priced and has hours is told to the crew in a step of its phase. */
class TaskStepsTest {

  @ParameterizedTest
  @CsvSource({
    "mark, meet_marker, wait for the marks",
    "mow, mow, Mow round flags",
    "stake, stake_out, Set out the corners",
    "earth, dig_earth, Dig swales and cuts",
    "earth, fill_earth, Fill in layers",
    "earth, dig_trench, Dig the trench of each overflow pipe",
    "earth, lay_pipe, Lay the overflow pipe",
    "build, build_wall, Dig the trench of each wall",
    "build, place_rock, Wheel rock and gravel",
    "build, set_steps, Set steps from the foot up",
    "build, grade_base, compact the base",
    "build, lay_pavers, lay the paving",
    "build, pour_slab, order the concrete",
    "build, set_posts, set the posts",
    "build, mix_concrete, Pour concrete",
    "build, hang_fence, Hang rails",
    "build, hang_gate, Hang gates",
    "build, set_up, Level the base",
    "edge, cut_edge, Spade the edges",
    "edge, set_edging, Set edging",
    "edge, dig_trench, Dig trenches by hand",
    "edge, lay_pipe, Lay pipe and fittings",
    "edge, build_frames, Saw and screw the frames",
    "edge, set_posts, Set posts plumb",
    "edge, stretch_wire, Stretch the wires",
    "trees, plant_tree, Dig holes",
    "trees, plant_shrub, Dig holes",
    "trees, water_in, Water in",
    "trees, spread, Give each shrub its compost",
    "head, set_tank, Level and tamp the base of the tank",
    "head, assemble_head, Assemble the head",
    "soak, spread_amendment, Spread half of the lime",
    "soak, soak, Soak the ground",
    "sheet, lay_cardboard, Lay cardboard",
    "sheet, fill_frames, Fill frames",
    "sheet, spread, paths with all their chips",
    "plant, plant_pot, Set the plants out",
    "plant, sow, Sow drills",
    "plant, water_in, Water in",
    "drip, lay_dripline, Lay and pin the dripline",
    "drip, close_ends, Flush before the ends are closed",
    "finish, spread, Spread the chips",
    "finish, clean_up, Rake paths level",
    "later, spread, Spread the chips",
    "establish, visit, Pull what comes"
  })
  void task_hasAStepInItsPhase(String phase, String task, String step) {
    WorkPhase id = WorkPhase.valueOf(phase.toUpperCase(java.util.Locale.ROOT));
    WorkTask done = WorkTask.valueOf(task.toUpperCase(java.util.Locale.ROOT));
    Phase steps = PhaseData.phases().stream().filter(p -> p.id() == id).findFirst().orElseThrow();
    String told = String.join(" ", steps.doing(Set.of(done), Set.of(done), Set.of()).steps());
    assertTrue(told.contains(step), told);
  }

  /** The rest is told with others, is no step of its own, or brings its own words. */
  @Test
  void tasks_areAllOfThem() throws NoSuchMethodException {
    CsvSource rows =
        TaskStepsTest.class
            .getDeclaredMethod("task_hasAStepInItsPhase", String.class, String.class, String.class)
            .getAnnotation(CsvSource.class);
    Set<WorkTask> left = EnumSet.allOf(WorkTask.class);
    for (String row : rows.value()) {
      left.remove(WorkTask.valueOf(row.split(", ")[1].toUpperCase(java.util.Locale.ROOT)));
    }
    assertEquals(
        EnumSet.of(
            WorkTask.SET_FITTING,
            WorkTask.WALK,
            WorkTask.PLANT_CROWN,
            WorkTask.PLANT_PLUG,
            WorkTask.SET_BULBS,
            WorkTask.OWN),
        left);
  }
}
