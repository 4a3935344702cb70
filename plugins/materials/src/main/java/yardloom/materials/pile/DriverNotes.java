package yardloom.materials.pile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.work.SiteContacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** What a truck driver has to know before the bed goes up. */
public final class DriverNotes {
  private static final Length OVERHEAD = Length.feet(20);

  private DriverNotes() {}

  /** The paragraphs; none if nothing is tipped. */
  public static List<String> of(Plan plan, Facts facts) {
    List<DropPile> piles = facts.all(YardFacts.PILES);
    return piles.isEmpty()
        ? List.of()
        : driver(
            plan,
            piles,
            facts.all(YardFacts.LOADS),
            facts.find(YardFacts.SITE_CONTACTS).orElse(SiteContacts.NONE));
  }

  private static List<String> driver(
      Plan plan, List<DropPile> piles, List<BulkLoads> loads, SiteContacts contacts) {
    UnitSystem units = plan.info().units();
    List<String> notes = new ArrayList<>();
    notes.addAll(whereAndWhom(contacts));
    for (DropPile pile : piles) {
      notes.add(describe(pile, units));
    }
    others(piles, loads, units).ifPresent(notes::add);
    notes.add(
        "Look up before the bed goes up: lines and branches need "
            + Say.distance(OVERHEAD, units)
            + " of room or more.");
    List<String> lines =
        plan.all(Element.Utility.class).stream().map(u -> u.id().toString()).toList();
    if (!lines.isEmpty()) {
      notes.add("On this lot: " + String.join(", ", lines) + ". Keep clear of their marks.");
    }
    notes.add("Keep the walk, the gutter and the neighbour's drive free.");
    notes.add("Do not drive on soft ground or over a septic field.");
    notes.add("No treated or painted wood, no trash, no vines: if in doubt, call before tipping.");
    return notes;
  }

  /** What the plan does not say is left to be filled in by hand, on one line if that is all. */
  private static List<String> whereAndWhom(SiteContacts contacts) {
    String where = "Address: " + contacts.address().orElse("____________________________");
    String whom = "Phone on site: " + contacts.onSite().orElse("____________________");
    return contacts.address().isEmpty() && contacts.onSite().isEmpty()
        ? List.of(where + "  " + whom)
        : List.of(where, whom);
  }

  /** What comes to the first spot because it has none of its own. */
  private static Optional<String> others(
      List<DropPile> piles, List<BulkLoads> loads, UnitSystem units) {
    List<String> others =
        loads.stream()
            .filter(l -> piles.stream().noneMatch(p -> p.isFor(l.item())))
            .map(l -> l.item() + ", " + Say.volume(l.order().value(), units))
            .toList();
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Drop zone "
                + piles.get(0).spot().name()
                + " too, each load once the heap before it is spread: "
                + String.join("; ", others)
                + ".");
  }

  private static String describe(DropPile pile, UnitSystem units) {
    return "Drop zone "
        + pile.spot().name()
        + ": "
        + Say.volume(pile.load().value(), units)
        + " of "
        + pile.spot().material().title()
        + ", a "
        + pile.form()
        + " about "
        + Say.distance(pile.width(), units)
        + " wide, "
        + Say.distance(pile.length(), units)
        + " long and "
        + Say.distance(pile.height().value(), units)
        + " high. The way in is "
        + Say.distance(pile.spot().access(), units)
        + " wide.";
  }
}
