package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** As drawn from below, so worked: what the printed tables of every sample say of one yard. */
class OrderOfWorkTest {
  static List<String> plans() {
    return Samples.plans();
  }

  private static List<DataRow> table(String plan, String name) {
    String csv = Samples.drawn(plan).get("tables/" + name + ".csv");
    return csv == null ? List.of() : DataTable.parse(name, csv).rows();
  }

  private static List<String> phases(String plan) {
    return table(plan, "materials-phases").stream().map(r -> r.text("phase")).toList();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void printedPhases_followThePrintedLayers(String plan) {
    List<String> phases = phases(plan);
    Map<String, List<String>> stacks = new TreeMap<>();
    table(plan, "materials-stacks")
        .forEach(
            r ->
                stacks
                    .computeIfAbsent(r.text("stack"), k -> new ArrayList<>())
                    .add(r.text("phase")));
    assertFalse(stacks.isEmpty());
    stacks.forEach(
        (stack, laid) -> {
          for (int i = 0; i < laid.size(); i++) {
            assertTrue(phases.contains(laid.get(i)), laid.get(i) + " in " + phases);
            if (i > 0) {
              assertTrue(
                  phases.indexOf(laid.get(i - 1)) <= phases.indexOf(laid.get(i)),
                  stack + ": " + laid + " but " + phases);
            }
          }
        });
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyPhase_hasHoursAndTools_everyOrderAndTaskHasAPhase(String plan) {
    List<String> phases = phases(plan);
    List<String> worked =
        table(plan, "materials-labour").stream()
            .map(r -> r.text("phase"))
            .filter(p -> !p.isEmpty())
            .toList();
    for (String phase : phases) {
      assertTrue(worked.contains(phase), phase + " has no task in " + worked);
    }
    for (String phase : worked) {
      assertTrue(phases.contains(phase), "no phase " + phase);
    }
    table(plan, "materials-orders-by-phase")
        .forEach(r -> assertTrue(phases.contains(r.text("phase")), r.text("phase")));
    table(plan, "materials-phases")
        .forEach(r -> assertTrue(r.number("hours_h") > 0, r.text("phase")));
  }
}
