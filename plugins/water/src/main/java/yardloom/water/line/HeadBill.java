package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.HeadPart;
import yardloom.water.head.Supply;
import yardloom.water.line.LineBill.Item;

/**
 * What is bought for the head assembly: its parts, and what joins them to each other and to tube.
 */
final class HeadBill {
  private static final Source ASSEMBLY =
      Source.read(
          "Drip irrigation basics: shut-off, backflow preventer, filter, regulator",
          "Arizona Municipal Water Users Association",
          0,
          "");

  private static final Source JOINTS =
      Source.commonPractice("threads end at the head: an adapter leads each zone on into its tube");

  private static final String ONE_AT_THE_HEAD = "one at the head";

  private final Plan plan;
  private final boolean isTank;
  private final List<ZoneLine> zones;
  private final List<Item> items = new ArrayList<>();

  private HeadBill(Plan plan, List<ZoneLine> zones) {
    this.plan = plan;
    this.zones = zones;
    isTank = Supply.isTank(plan);
  }

  /**
   * Its lines.
   *
   * @param isFirst whether the head is set up now; else zones are joined to one that stands
   * @param zones those that begin now
   */
  static List<Item> of(Plan plan, boolean isFirst, List<ZoneLine> zones) {
    HeadBill bill = new HeadBill(plan, zones);
    bill.parts(isFirst);
    if (zones.stream().anyMatch(zone -> !zone.runs().isEmpty())) {
      bill.joints("threaded tees between the zone valves", zones.size() - (isFirst ? 1 : 0));
      bill.joints("threaded adapters for tube", zones.size());
    }
    return List.copyOf(bill.items);
  }

  private void parts(boolean isFirst) {
    Derived<Integer> one = Derived.by("one at the tap that feeds the dripline", ASSEMBLY).gives(1);
    for (HeadPart part : HeadAssembly.of(plan).parts(isTank)) {
      boolean isInEachZone = part.isInEachZone();
      if (isInEachZone ? zones.isEmpty() : !isFirst) {
        continue;
      }
      Derived<Integer> count = isInEachZone ? inEach() : one;
      line(Optional.of(WorkTask.ASSEMBLE_HEAD), item(part), count, allowance(part));
    }
  }

  private Derived<Integer> inEach() {
    return Derived.by("zones", ASSEMBLY).from("zones", zones.size()).gives(zones.size());
  }

  private void joints(String item, int pieces) {
    if (pieces > 0) {
      Derived<Integer> count =
          Derived.by("zones − those that need none", JOINTS)
              .from("zones", zones.size())
              .from("those that need none", zones.size() - pieces)
              .gives(pieces);
      line(Optional.empty(), item, count, LineBill.NO_SPARES);
    }
  }

  private String item(HeadPart part) {
    if (part.isOwn()) {
      return part.name();
    }
    Pressure set = HeadAssembly.of(plan).regulator();
    return switch (part.kind()) {
      case REGULATOR ->
          "pressure regulator, " + Say.of(Measure.SET_PRESSURE, set, plan.info().units());
      case BACKFLOW -> "backflow preventer";
      case ZONE_VALVE -> "zone valves";
      default -> part.name();
    };
  }

  private String allowance(HeadPart part) {
    if (part.isOwn()) {
      return LineBill.NO_SPARES;
    }
    return switch (part.kind()) {
      case BACKFLOW -> part.name() + ", as local code asks";
      case ZONE_VALVE -> isTank ? "ball valves, full bore: others stay shut" : LineBill.NO_SPARES;
      case TIMER -> isTank ? "of the kind that turns ball valves" : ONE_AT_THE_HEAD;
      case REGULATOR -> "its range must hold " + flows();
      default -> part.isInEachZone() ? LineBill.NO_SPARES : ONE_AT_THE_HEAD;
    };
  }

  /** A regulator holds its pressure within a range of flows only, which small zones fall below. */
  private String flows() {
    TableFormat format = TableFormat.of(plan.info());
    List<Flow> flows = zones.stream().map(z -> z.flow().value()).sorted().toList();
    String least = format.withUnit(Measure.FLOW, flows.get(0));
    String most = format.withUnit(Measure.FLOW, flows.get(flows.size() - 1));
    return least.equals(most) ? least : least + " to " + most;
  }

  private void line(
      Optional<WorkTask> task, String item, Derived<Integer> count, String allowance) {
    items.add(Item.of(WorkPhase.HEAD, task, item, count, count, allowance));
  }
}
