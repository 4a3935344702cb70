package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.UnitSystem;

class AmountsTest {
  private static String text(UnitSystem units, Mass mass) {
    Plan plan =
        new Plan(
            new PlanInfo("t", "T", "", "", "", "", units, "USD"),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Attributes.NONE,
            Map.of());
    Derived<Mass> amount = Derived.by("said", Source.commonPractice("said")).gives(mass);
    return Amounts.cell(plan, amount).value().orElseThrow().toString();
  }

  /** 0.24 lb of nitrogen on a few beds is not nothing. */
  @Test
  void smallMass_isShownToTheHundredth_aLoadToTheUnit() {
    assertEquals("0.24\u00a0lb", text(UnitSystem.US, Mass.pounds(0.24)));
    assertEquals("0.11\u00a0kg", text(UnitSystem.METRIC, Mass.pounds(0.24)));
    assertEquals("12\u00a0lb", text(UnitSystem.US, Mass.pounds(12.3)));
  }

  private static String shown(Object value) {
    Plan plan =
        new Plan(
            new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Attributes.NONE,
            Map.of());
    Derived<?> amount = Derived.by("said", Source.commonPractice("said")).gives(value);
    Cell cell = Amounts.cell(plan, amount);
    assertEquals(Optional.of(amount), cell.why());
    return cell.value().orElseThrow().toString();
  }

  @Test
  void amounts_haveTheDecimalsOfTheirKind() {
    assertEquals("10\u00a0lb", shown(Mass.pounds(10)), "ten pounds are no small mass");
    assertEquals("9.96\u00a0lb", shown(Mass.pounds(9.96)));
    assertEquals("3.3", shown(3.26));
    assertEquals("17", shown(17));
    assertEquals("six", shown("six"));
    assertEquals("12.3\u00a0ft", shown(Length.feet(12.34)));
    assertEquals("9\u00a0sq ft", shown(Area.squareMetres(9.3 * 0.09290304)));
  }
}
