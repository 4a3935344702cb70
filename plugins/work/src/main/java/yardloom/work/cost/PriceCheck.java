package yardloom.work.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * Says when a price of the plan is for nothing on the bill: a warning where it misses by a letter
 * or two, else one note for all, since a price book serves many yards.
 */
public final class PriceCheck implements Check {
  private static final Source NAMES =
      Source.commonPractice("prices are found by the name on the bill");

  @Override
  public String id() {
    return "work.price-names";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<BillLine> bill = facts.all(YardFacts.BILL);
    Set<String> onBill = new TreeSet<>();
    bill.forEach(line -> onBill.addAll(names(line)));
    Set<String> known = new TreeSet<>(PriceBook.demo().items());
    known.addAll(onBill);
    known.addAll(PriceBook.general());
    List<Finding> findings = new ArrayList<>();
    Set<String> idle = new TreeSet<>();
    List<Attributes.Entry<Price>> said = plan.attributes().all(Price.KEY);
    for (Attributes.Entry<Price> entry : said) {
      String item = entry.value().item();
      if (onBill.contains(item)) {
        wrongUnit(item, said, bill).ifPresent(text -> findings.add(warning(text, entry)));
      } else if (!PriceBook.isGeneral(item)) {
        String hint = known.contains(item) ? "" : near(item, known);
        if (hint.isEmpty()) {
          idle.add("'" + item + "'");
        } else {
          findings.add(
              warning(
                  "nothing is called '" + item + "', so this price is not used." + hint, entry));
        }
      }
    }
    if (!idle.isEmpty()) {
      findings.add(
          Finding.of(
              id(),
              Severity.NOTE,
              "nothing on this bill is called " + String.join(", ", idle) + ": not used",
              "write items as the bill does; a price book for many yards may keep them",
              NAMES));
    }
    return findings;
  }

  /** What a price of a line may be called: its item, or the form that a plant is bought in. */
  private static List<String> names(BillLine line) {
    List<String> names = new ArrayList<>(List.of(line.item(), BillLine.stem(line.item())));
    line.stock().ifPresent(s -> names.addAll(s.names()));
    return names;
  }

  private Finding warning(String text, Attributes.Entry<Price> entry) {
    return Finding.of(
            id(), Severity.WARNING, text, "write item and unit as the cost table does", NAMES)
        .at(entry.place());
  }

  /** By a letter or two, else by a word they share: 'chips' for 'wood-chip mulch'. */
  private static String near(String item, Set<String> known) {
    String hint = Nearest.hint(item, known);
    if (!hint.isEmpty()) {
      return hint;
    }
    List<String> alike = Nearest.sharingAWord(item, known);
    return alike.isEmpty() ? "" : " There is '" + String.join("', '", alike) + "'.";
  }

  /** What is said of a thing on the bill whose prices are all for other kinds of amounts. */
  private static Optional<String> wrongUnit(
      String item, List<Attributes.Entry<Price>> said, List<BillLine> bill) {
    List<String> units =
        said.stream()
            .map(Attributes.Entry::value)
            .filter(p -> p.item().equals(item))
            .map(Price::unit)
            .distinct()
            .toList();
    List<Object> amounts =
        bill.stream()
            .filter(line -> names(line).contains(item))
            .<Object>map(line -> line.order().value())
            .toList();
    boolean used =
        amounts.stream().anyMatch(a -> units.stream().anyMatch(u -> PriceBook.measures(u, a)));
    if (used) {
      return Optional.empty();
    }
    String wanted =
        amounts.get(0) instanceof Quantity<?> q
            ? "a " + q.dimension().word() + " (" + Unit.words(q.dimension()) + ")"
            : "the piece";
    return Optional.of(
        "'"
            + item
            + "' is ordered by "
            + wanted
            + ", its price is per "
            + String.join(" and ", units)
            + ": not used");
  }
}
