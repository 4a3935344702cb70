package yardloom.program.appendix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import yardloom.program.cli.Samples;

/**
 * The printed formula is the computed one: every calculation of every sample is worked out again
 * from nothing but its printed text and has to give its printed value, within what the printed
 * inputs are rounded by. An outside check by construction: the evaluator knows no plugin.
 */
class AppendixLawTest {
  private static final String MANY_STEPS =
      "a sum over thousands of instants or cells, which no page could print";
  private static final String SAMPLED =
      "a percentile of the sum of all rows, which share some of their draws";
  private static final String OUTLINES =
      "read off outlines whose corners are too many to print, or off a grid of triangles";
  private static final String PIECES = "counted or cut piece by piece";
  private static final String NETWORK = "solved as a network of pipes, outlet by outlet";

  /** What cannot be worked out from a page, by the beginning of its text, and why. */
  private static final Map<String, String> LISTED =
      Map.ofEntries(
          Map.entry("time with the sun's centre above all obstacles", MANY_STEPS),
          Map.entry("sky seen by a level surface", MANY_STEPS),
          Map.entry("direct sun a day in the season", MANY_STEPS),
          Map.entry("connected free ground", MANY_STEPS),
          Map.entry("steps of the tank", MANY_STEPS),
          Map.entry("steps of the root zone", MANY_STEPS),
          Map.entry("percentiles of the sampled sum of all rows", SAMPLED),
          Map.entry("area within all outlines", OUTLINES),
          Map.entry("area of beds, paths and mulched ground together", OUTLINES),
          Map.entry("edge of all surfaces together where they meet lawn", OUTLINES),
          Map.entry("outline of the bed where it meets lawn", OUTLINES),
          Map.entry("Σ area × (ground − level) at the centroid", OUTLINES),
          Map.entry("lattice places in the bed", OUTLINES),
          Map.entry("(largest − least outlet flow) / largest", NETWORK),
          Map.entry("sum of the outlets' flows in the network", NETWORK),
          Map.entry("least pressure in the network", NETWORK),
          Map.entry("pressure at the outlet in the network", NETWORK),
          Map.entry("pressure at the end of the run in the network", NETWORK),
          Map.entry("flow of the run in the network", NETWORK),
          Map.entry("pressure behind the zone valve in the network", NETWORK),
          Map.entry("pressure at its feed in the network", NETWORK),
          Map.entry("mean of the least quarter of outlets / mean", NETWORK),
          Map.entry("whole ", "chosen among the whole days, turns and minutes of a timer"),
          Map.entry("days × Penman-Monteith", "a page of equations, held by published examples"),
          Map.entry("fewest boards for all pieces", PIECES),
          Map.entry("one for each 2 in (5 cm) of board width", PIECES),
          Map.entry("one for each board, and every 4 ft (1.2 m)", PIECES),
          Map.entry("posts at ends and bends", PIECES),
          Map.entry("shallow end of the depths for the slope", "read off a published table"));

  /** Values that nothing was worked out for: they stand without inputs. */
  private static final List<String> GIVEN =
      List.of(
          "default of ",
          "no minimum load",
          "no supply is given; half-inch line",
          "one for the yard",
          "one at the tap that feeds the dripline",
          "pressure behind the head assembly",
          "intake of the named soil",
          "of the trade rule",
          "loose over compacted",
          "soil settles",
          "typical");

  /** Words that no sample uses. */
  private static final Path RARE_WORDS =
      Path.of("src", "test", "resources", "yardloom", "program", "appendix", "rare-words.groovy");

  /** Lines fed by a tank, which a plan with a tap cannot have as well. */
  private static final Path TANK_LINES = RARE_WORDS.resolveSibling("tank-lines.groovy");

  /** A printed input of two or three figures leaves a result this loose, as a share. */
  private static final double LOOSE = 0.05;

  private static final double YEAR_DAYS = 365;

  private record Checked(PrintedEntry entry, Interval byFormula, Interval printed) {
    /** A day of the year is printed without its year: 21 days from 12 December are 2 January. */
    boolean holds() {
      return byFormula.meets(printed)
          || entry.value().matches("\\d{1,2}.[A-Z][a-z]{2}")
              && (byFormula.plus(Interval.exact(YEAR_DAYS)).meets(printed)
                  || byFormula.minus(Interval.exact(YEAR_DAYS)).meets(printed));
    }
  }

  private static boolean starts(PrintedEntry entry, java.util.Collection<String> with) {
    return with.stream().anyMatch(entry.formula()::startsWith);
  }

  /**
   * A cell may hold two values, {@code 0.35–0.69}; then the formula has two parts, least … to most
   * ….
   */
  private static List<Checked> ends(PrintedEntry entry) {
    String[] formulas = entry.formula().split(" to ", -1);
    String[] values = entry.value().split("–", -1);
    if (!entry.formula().startsWith("least ")) {
      return List.of(checked(entry));
    }
    List<Checked> ends = new ArrayList<>();
    for (int i = 0; i < formulas.length; i++) {
      ends.add(
          checked(
              new PrintedEntry(
                  entry.head(),
                  values[Math.min(i, values.length - 1)],
                  formulas[i],
                  entry.inputs())));
    }
    return ends;
  }

  private static Checked checked(PrintedEntry entry) {
    Optional<Interval> printed = PrintedNumber.read(entry.value());
    assertTrue(printed.isPresent(), () -> "not a number: " + entry);
    Interval byFormula =
        DrawnAgain.draws(entry) ? DrawnAgain.value(entry) : PrintedFormula.value(entry);
    return new Checked(entry, byFormula, printed.get());
  }

  private static List<PrintedEntry> entries() {
    List<PrintedEntry> all = new ArrayList<>();
    for (String plan : Samples.plans()) {
      all.addAll(PrintedEntry.all(Samples.drawn(plan).get("calculations.txt")));
    }
    all.addAll(PrintedEntry.all(Samples.drawnFrom(RARE_WORDS).get("calculations.txt")));
    all.addAll(PrintedEntry.all(Samples.drawnFrom(TANK_LINES).get("calculations.txt")));
    return all;
  }

  @Test
  void everyCalculation_workedOutFromItsPrintedInputs_givesItsPrintedValue() {
    Map<String, String> wrong = new TreeMap<>();
    int right = 0;
    for (PrintedEntry entry : entries()) {
      if (starts(entry, LISTED.keySet()) || starts(entry, GIVEN)) {
        continue;
      }
      try {
        for (Checked one : ends(entry)) {
          if (one.holds()) {
            right++;
          } else {
            wrong.put(entry.formula(), one.byFormula() + " by its formula:\n" + entry);
          }
        }
      } catch (IllegalArgumentException e) {
        wrong.put(entry.formula(), e.getMessage() + ":\n" + entry);
      }
    }
    assertTrue(wrong.isEmpty(), () -> String.join("\n\n", wrong.values()));
    // Some 2,560 in four samples and the rare words; far fewer would mean that inputs were lost.
    assertTrue(right > 2200, "worked out again: " + right);
  }

  /** The check is worth something only where another value would not pass. */
  @Test
  void valuesATenthOff_areFound() {
    int all = 0;
    int found = 0;
    int loose = 0;
    for (PrintedEntry entry : entries()) {
      if (starts(entry, LISTED.keySet()) || starts(entry, GIVEN)) {
        continue;
      }
      for (Checked one : ends(entry)) {
        if (one.printed().low() > 0 && !entry.formula().contains("last frost")) {
          all++;
          loose += one.byFormula().looseness() > LOOSE ? 1 : 0;
          found += one.byFormula().meets(one.printed().times(Interval.exact(1.1))) ? 0 : 1;
        }
      }
    }
    assertTrue(found > 0.97 * all, found + " of " + all);
    assertTrue(loose < 0.02 * all, loose + " of " + all + " are loose");
  }

  @Test
  void listOfWhatCannotBeWorkedOut_holdsNothingThatIsNotPrinted() {
    TreeSet<String> unused = new TreeSet<>(LISTED.keySet());
    unused.addAll(GIVEN);
    for (PrintedEntry entry : entries()) {
      unused.removeIf(entry.formula()::startsWith);
      if (starts(entry, GIVEN)) {
        assertEquals(List.of(), entry.inputs(), entry::toString);
      }
    }
    assertEquals(new TreeSet<String>(), unused);
  }
}
