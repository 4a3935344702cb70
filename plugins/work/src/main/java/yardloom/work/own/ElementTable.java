package yardloom.work.own;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.work.DrawnThing;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.work.labour.OwnItem;

/**
 * Of everything drawn, what is bought and done for it and in which phases, or why nothing is: the
 * place to see that nobody takes it for free.
 */
public final class ElementTable implements TableMaker {
  @Override
  public String id() {
    return "work-elements";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.BILL, YardFacts.JOBS, YardFacts.SURFACES, YardFacts.STANDS, YardFacts.DRAWN);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Everything drawn, and where it is counted")
            .column(Column.text("element", "What"))
            .column(Column.text("kind", "Kind"))
            .column(Column.text("bought", "Bought"))
            .column(Column.text("done", "Done"))
            .column(Column.text("phases", "In"))
            .column(Column.text("why", "Else, why nothing"));
    for (Element element : plan.elements()) {
      Counted counted = Counted.of(element.id(), plan, facts);
      table.row(
          Cell.text(element.id().title()),
          Cell.text(element.id().kind().word()),
          text(counted.bought()),
          text(counted.done()),
          text(counted.phases().stream().map(x -> x.title(plan)).toList()),
          counted.isEmpty() ? Cell.text(why(element)) : Cell.BLANK);
    }
    for (DrawnThing thing : drawn(facts)) {
      table.row(
          Cell.text(thing.name()),
          Cell.text(thing.kind()),
          text(bought(thing, facts)),
          text(done(thing, facts)),
          thing.why().isEmpty() ? Cell.text(thing.phase().title(plan)) : Cell.BLANK,
          thing.why().isEmpty() ? Cell.BLANK : Cell.text(thing.why()));
    }
    return table
        .note("Marks, staking, mowing, edges and clearing up are for all of the ground together.")
        .build();
  }

  private static List<DrawnThing> drawn(Facts facts) {
    return facts.all(YardFacts.DRAWN).stream()
        .sorted(Comparator.comparing(DrawnThing::kind).thenComparing(DrawnThing::name))
        .toList();
  }

  /** Of what is said to be bought for a thing, what the bill has. */
  private static Set<String> bought(DrawnThing thing, Facts facts) {
    Set<String> bought = new TreeSet<>();
    facts.all(YardFacts.BILL).stream()
        .filter(line -> line.phase() == thing.phase())
        .map(line -> BillLine.stem(line.item()))
        .filter(item -> thing.bought().stream().anyMatch(item::startsWith))
        .forEach(bought::add);
    return bought;
  }

  private static Set<String> done(DrawnThing thing, Facts facts) {
    Set<String> done = new TreeSet<>();
    facts.all(YardFacts.JOBS).stream()
        .filter(job -> job.phase() == thing.phase() && thing.done().contains(job.task()))
        .forEach(job -> done.add(job.task().title()));
    return done;
  }

  private static Cell text(Collection<String> parts) {
    return parts.isEmpty() ? Cell.BLANK : Cell.text(String.join(", ", parts));
  }

  /** What is there, or only keeps ground free, asks for nothing; the rest is not counted. */
  static String why(Element element) {
    if (element instanceof Element.KeepOut) {
      return "keeps ground free";
    }
    if (element instanceof Element.Utility) {
      return "is there; its marks are called for";
    }
    if (element instanceof Element.MulchedGround || element instanceof Element.Path) {
      return element.stands() ? "is there already" : "all of it lies under something else";
    }
    return element.stands() ? "is there already" : "not counted: give it as an item of its own";
  }

  /** What counts for one element. */
  record Counted(Set<String> bought, Set<String> done, Set<WorkPhase> phases) {
    static Counted of(ElementId id, Plan plan, Facts facts) {
      Counted counted = new Counted(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
      for (BillLine line : facts.all(YardFacts.BILL)) {
        if (line.element().filter(id::equals).isPresent() || isPartOf(line, id)) {
          counted.bought.add(BillLine.stem(line.item()));
          counted.phases.add(line.phase());
        }
      }
      for (Job job : facts.all(YardFacts.JOBS)) {
        if (job.of().filter(id::equals).isPresent()) {
          counted.add(job.task().title(), job.phase());
        }
      }
      facts.all(YardFacts.SURFACES).stream()
          .filter(s -> s.of().equals(id))
          .flatMap(s -> s.courses().stream())
          .forEach(counted::laid);
      facts.all(YardFacts.STANDS).stream()
          .filter(s -> s.in().equals(id) && !s.planted().stands())
          .forEach(s -> counted.add("plant", s.planted().phase()));
      plan.attributes().all(OwnItem.KEY).stream()
          .map(e -> e.value())
          .filter(item -> item.of(plan).filter(id::equals).isPresent())
          .forEach(counted::own);
      return counted;
    }

    /** What is ordered for several things together says so in its sum. */
    private static boolean isPartOf(BillLine line, ElementId id) {
      return line.element().isEmpty()
          && line.exact().inputs().stream().anyMatch(i -> i.name().contains(id.toString()));
    }

    private void own(OwnItem item) {
      if (item.bought()) {
        bought.add(item.name());
      }
      if (item.hoursPerUnit() > 0) {
        done.add(item.task());
      }
      phases.add(item.phase());
    }

    private void laid(LaidLayer course) {
      bought.add(course.material().title());
      add(
          course.material().equals(Material.CARDBOARD)
              ? WorkTask.LAY_CARDBOARD.title()
              : course.material().equals(Material.DRIPLINE)
                  ? WorkTask.LAY_DRIPLINE.title()
                  : WorkTask.SPREAD.title(),
          course.phase());
    }

    private void add(String task, WorkPhase phase) {
      done.add(task);
      phases.add(phase);
    }

    boolean isEmpty() {
      return phases.isEmpty();
    }
  }
}
