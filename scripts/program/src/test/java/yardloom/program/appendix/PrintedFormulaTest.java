package yardloom.program.appendix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The evaluator against sums done by hand. */
class PrintedFormulaTest {
  private static double value(String formula, String... inputs) {
    List<PrintedEntry.Input> given =
        List.of(inputs).stream()
            .map(i -> new PrintedEntry.Input(i.split(" = ")[0], i.split(" = ")[1]))
            .toList();
    Interval value = PrintedFormula.value(new PrintedEntry("", "", formula, given));
    return (value.low() + value.high()) / 2;
  }

  @Test
  void signs_inTheirUsualOrder_bindAsWritten() {
    // 2 + 3 × 4 = 14; (2 + 3) × 4 = 20; 7 / 2^(3 − 1) = 1.75.
    assertEquals(14, value("two + three × 4", "two = 2", "three = 3"), 1e-12);
    assertEquals(20, value("(two + three) × 4", "two = 2", "three = 3"), 1e-12);
    assertEquals(1.75, value("7 / 2^(three − 1)", "three = 3"), 1e-12);
  }

  @Test
  void quantities_areReckonedInSi() {
    // 10 ft × 6 in: 3.048 m × 0.1524 m; 50 °F is 10 °C; 200 sq ft at 0.01 h a square foot are 2 h.
    assertEquals(3.048 * 0.1524, value("a × b", "a = 10.00 ft", "b = 6.00 in"), 1e-5);
    assertEquals(10, value("t in °C", "t = 50.00 °F"), 1e-9);
    assertEquals(7200, value("hours = a in sq ft × p", "a = 200.00 sq ft", "p = 0.0100000"), 1e-6);
  }

  @Test
  void sums_overInputsOfOneName_takeThemInPairs() {
    // 1 × 10 + 2 × 20 = 50, and all of them together 33.
    String[] inputs = {"Kc kale = 1", "area kale = 10", "Kc rue = 2", "area rue = 20"};
    assertEquals(50, value("sum over plants of Kc × area", inputs), 1e-12);
    assertEquals(33, value("sum over plants", inputs), 1e-12);
    assertEquals(0, value("sum over trees of ground × f", "f = 2"), 1e-12);
  }

  @Test
  void steps_behindACommaOrInBrackets_areWhole() {
    // 2.1 up is 3; 2.1 up to the next 0.5 is 2.5; 19.21 ft down to a quarter inch is 230.5 in.
    assertEquals(3, value("a, rounded up", "a = 2.10000"), 1e-4);
    assertEquals(
        2.5, value("a, up to the next step, at least 1", "a = 2.10000", "step = 0.5"), 0.3);
    assertEquals(230.5 * 0.0254, value("d, down to the next 0.25 in", "d = 19.2100 ft"), 1e-6);
    assertEquals(4, value("max(1, up(a)) × 2", "a = 1.50000"), 1e-9);
  }

  @Test
  void secondPart_holdsBeyondItsBound() {
    // CROPWAT: 100 mm × (125 − 20) / 125 = 84 mm; 300 mm: 125 + 30 = 155 mm.
    String rule = "rain × (125 mm − 0.2 × rain) / 125 mm; over 250 mm: 125 mm + 0.1 × rain";
    assertEquals(0.084, value(rule, "rain = 100.00 mm"), 1e-9);
    assertEquals(0.155, value(rule, "rain = 300.00 mm"), 1e-9);
  }

  @Test
  void corners_giveAreaAndLength() {
    // A right triangle with legs of 3 and 4: area 6, and 3 + 4 along its legs.
    String corners = "c = (0.000, 0.000) (3.000, 0.000) (3.000, 4.000) m";
    assertEquals(6, value("area = ½ |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)|", corners), 1e-2);
    assertEquals(7, value("way = Σ √((xᵢ₊₁ − xᵢ)² + (yᵢ₊₁ − yᵢ)²)", corners), 1e-2);
  }

  @Test
  void prose_isNoFormula() {
    assertThrows(IllegalArgumentException.class, () -> value("about twice a", "a = 2"));
    assertThrows(IllegalArgumentException.class, () -> value("a × b, or so", "a = 2", "b = 3"));
  }

  @Test
  void printedNumbers_standForWhatRoundsToThem() {
    Interval feet = PrintedNumber.read("1,204.50 ft").orElseThrow();
    assertEquals(1204.495 * 0.3048, feet.low(), 1e-9);
    assertEquals(1204.505 * 0.3048, feet.high(), 1e-9);
    // 25 April is the 115th day: 31 + 28 + 31 + 25.
    assertEquals(115, PrintedNumber.read("25 Apr").orElseThrow().low());
    // 12 ft 7 3/4 in are 151.75 in.
    assertEquals(151.75 * 0.0254, PrintedNumber.read("12'-7¾\" *").orElseThrow().low(), 1e-9);
    assertEquals(true, PrintedNumber.read("bed \"a\"").isEmpty());
  }
}
