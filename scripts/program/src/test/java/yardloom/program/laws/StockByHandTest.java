package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;

/** From plan text to what plants are bought as: schedule, hours, cost and days of planting. */
class StockByHandTest {
  private static final String YARD =
      """
      plan 'Stock by hand', units: '%s', date: '2027-03-30'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-14', source: 'by hand'
      stockForm 'tray of 50', like: 'plug', holds: 50, minutes: 0.9, price: 32.money
      stockForms('form,like,minutes,fastest,slowest,price\\nbundle of whips,bare root 4 ft,11,7,19,13')
      priceBook('item,unit,low,likely,high\\npot 2 gal,piece,20,21,22\\nbare root 4 ft,piece,30,35,40\\nbox 60 cm,piece,240,250,260')
      work crew: 2, hoursPerDay: 6, start: '%s'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 50.ft), point(0.ft, 50.ft)])
      bed('berries', rect(4.ft, 4.ft, 12.ft, 4.ft), use: 'perennial') { plant 'red currant', spacing: 4.ft, stock: 'pot 2 gal' }
      bed('salad', rect(4.ft, 20.ft, 10.ft, 8.ft), use: 'annual') { plant 'lettuce', spacing: 12.inch, stock: 'tray of 50' }
      tree('one', point(24.ft, 30.ft), crown: 8.ft, height: 9.ft) { species 'apple (dwarf)', stock: 'Box 24 in' }
      tree('two', point(40.ft, 30.ft), crown: 13.ft, height: 12.ft) { species 'apple (semi-dwarf)' }
      tree('three', point(60.ft, 30.ft), crown: 13.ft, height: 12.ft) { species 'peach', stock: 'bundle of whips' }
      """;

  private static Drawn april(String units) {
    return Drawn.of(YARD.formatted(units, "2027-04-01"));
  }

  /**
   * 12 ft hold three currants at 4 ft; 10 × 8 ft hold 80 heads at 12 in, two trays. Tree two is dug
   * in 14 to 28 days after 1 April, amid the days of bare roots, 25 March to 6 May.
   */
  @ParameterizedTest(name = "{0}: {1} × {2} {3}")
  @CsvSource({
    "RR, 3, pot, 2 gal, ''",
    "LS, 80, tray of 50, '', sold by 50",
    "MD1, 1, box, 24 in, ''",
    "MD2, 1, bare root, 4 ft, ''",
    "PP, 1, bundle of whips, '', ''",
  })
  void schedule_saysFormAndSize(String key, String count, String stock, String size, String notes) {
    Drawn drawn = april("us");
    assertEquals(count, drawn.printed("plant-schedule", key, "count"));
    assertEquals(stock, drawn.printed("plant-schedule", key, "stock"));
    assertEquals(size, drawn.printed("plant-schedule", key, "size"));
    assertEquals(notes, drawn.printed("plant-schedule", key, "notes"));
  }

  /** Plants at 30 in keep 15 in from every edge: a bed of 20 by 20 in holds none. */
  @Test
  void kindWithoutRoom_isSaidNotToBeBought() {
    Drawn drawn =
        Drawn.of(
            YARD.formatted("us", "2027-04-01")
                + "bed('strip', rect(20.ft, 4.ft, 20.inch, 20.inch), use: 'perennial') {"
                + " plant 'rhubarb', spacing: 30.inch }\n");
    assertEquals("0", drawn.printed("plant-schedule", "RH", "count"));
    assertEquals(
        "no room in strip: none to get for it", drawn.printed("plant-schedule", "RH", "notes"));
  }

  /**
   * Currants: 3 × 8 minutes of the table are 24, 0.4 h. Lettuce: 80 × 0.9 minutes are 72, 1.2 h. A
   * box takes two people an hour, 2 h; a bare tree 25 minutes, 0.417 h; the whips 11 minutes.
   */
  @ParameterizedTest(name = "{0}: {1} h")
  @CsvSource({
    "plant shrubs and vines: pot 2 gal, 0.4",
    "plant plugs and seedlings: tray of 50, 1.2",
    "plant trees: box 24 in, 2",
    "plant trees: bare root 4 ft, 0.416667",
    "plant trees: bundle of whips, 0.183333",
  })
  void labour_isBySize(String task, double hours) {
    assertEquals(hours, april("us").exact("materials-labour", task, "likely"), 1e-6);
  }

  /**
   * Currants 3 × 21, by the book's row of their size; two trays × 32 and the whips 13 as the plan
   * says with the form; the box by the name of its metric size, 250; the bare tree 35.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "'red currant (Ribes rubrum), pot 2 gal', 63",
    "'lettuce (Lactuca sativa), tray of 50', 64",
    "'apple (dwarf) (Malus domestica), box 24 in', 250",
    "'apple (semi-dwarf) (Malus domestica), bare root 4 ft', 35",
    "'peach (Prunus persica), bundle of whips', 13",
  })
  void cost_isByFormAndSize(String item, String likely) {
    assertEquals(likely, april("us").printed("materials-cost", item, "likely"));
  }

  /**
   * A box is planted as what has leaves, 42 days before the last frost of 6 May to 56 after it;
   * bare whips only until that frost.
   */
  @Test
  void days_areThoseOfTheForm() {
    Drawn drawn = april("us");
    assertEquals("potted", drawn.printed("planting-times", "apple (dwarf)", "how"));
    assertEquals("--07-01", drawn.printed("planting-times", "apple (dwarf)", "until"));
    assertEquals("bare root", drawn.printed("planting-times", "peach", "how"));
    assertEquals("--05-06", drawn.printed("planting-times", "peach", "until"));
    assertEquals(1, drawn.rows("planting-times").stream().filter("peach"::equals).count());
  }

  /** From 20 May on the days of bare roots are over until next spring; pots go on to 1 July. */
  @Test
  void treesOfLateSpring_areBoughtInPots() {
    Drawn drawn = Drawn.of(YARD.formatted("us", "2027-05-20"));
    assertEquals("pot", drawn.printed("plant-schedule", "MD2", "stock"));
    assertEquals("5 gal", drawn.printed("plant-schedule", "MD2", "size"));
    assertEquals("potted", drawn.printed("planting-times", "apple (semi-dwarf)", "how"));
  }

  @Test
  void metricPlan_namesMetricSizes() {
    Drawn drawn = april("metric");
    assertEquals("7 l", drawn.printed("plant-schedule", "RR", "size"));
    assertEquals(
        "63", drawn.printed("materials-cost", "red currant (Ribes rubrum), pot 7 l", "likely"));
  }

  @ParameterizedTest(name = "{0} → {1}")
  @CsvSource({
    "pot 2 gal, pot 2 gla, pot 2 gal",
    "pot 2 gal, box 24 in, red currant is not sold as 'box 24 in'; it comes as tray of 50, plug,"
        + " pot 1 gal",
    "like: 'plug', like: 'plgu', no shipped form is called 'plgu'. Did you mean `plug`?",
    "holds: 50, holds: 1.5, holds is a whole number from 1 to 1000",
    "form;like;minutes, form;like;minuts, there is no column `minuts`. Did you mean `minutes`?",
    "minutes: 0.9, minutes: 0, a rate rises from low to likely to high",
  })
  void whatIsWrong_isSaidWithWhatIsRight(String right, String wrong, String message) {
    String script = YARD.formatted("us", "2027-04-01");
    String broken =
        script.replaceFirst(
            java.util.regex.Pattern.quote(right.replace(';', ',')), wrong.replace(';', ','));
    if (right.equals("pot 2 gal")) {
      broken = script.replace("stock: 'pot 2 gal'", "stock: '" + wrong + "'");
    }
    String text = broken;
    PlanException e = assertThrows(PlanException.class, () -> Drawn.of(text));
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }
}
