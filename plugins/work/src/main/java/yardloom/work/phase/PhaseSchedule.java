package yardloom.work.phase;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.traverse.TopologicalOrderIterator;
import yardloom.facts.PlantingWindow;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

/**
 * Phases in an order in which each follows what it waits for, on working days.
 *
 * <p>One crew does one phase after the other, a new one on the same day where hours are left of it;
 * {@link CrewDays} says when not. Of the phases that wait for no other, the one goes first that can
 * begin first. The visits after the work are those of {@link LookAfter}. With a start date, days
 * are Monday to Friday without the days off that are named. Planting waits for the first of the
 * {@link PlantingVisit}s and has the hours of that one only, since the others have their own days;
 * what lies over plants waits for the last visit that plants them, but through no summer (common
 * practice): what comes in fall is set through it. Where no kinds are known, planting does not fall
 * between six weeks before the first frost and the last frost. A circle of phases or an unknown one
 * is CYCLE or UNKNOWN_WORD.
 *
 * <p>Where trees and shrubs would keep the crew waiting for their season for more than four weeks,
 * the ground is covered first and they are planted through the cover (common practice).
 *
 * <p>References: [1] A. B. Kahn, Topological sorting of large networks, Communications of the ACM
 * 5(11), 1962. The six weeks are common practice.
 */
public final class PhaseSchedule {
  private static final int ROOTING_DAYS = 42;
  private static final int WEEK = 5;

  /** Four weeks; ground that lies mown for longer grows again. */
  private static final int LONGEST_WAIT_DAYS = 20;

  private final Given given;
  private final WorkSettings work;
  private final CrewDays days;
  private final List<PhaseTime> times = new ArrayList<>();
  private List<CareVisit> visits = List.of();

  private PhaseSchedule(Given given) {
    this.given = given;
    this.work = given.work();
    this.days = new CrewDays(work);
  }

  /**
   * What the days depend on.
   *
   * @param hours hours of one person by phase; phases not named take their least days
   * @param windows the days of each kind that is to be planted, where they are known
   * @param kinds hours by kind, a part of those of its phase
   * @param months which months ask for care of the plants
   * @param byTruck phases for which trucks come
   * @param under by phase, the kinds that grow under what it lays
   */
  public record Given(
      Map<WorkPhase, Double> hours,
      WorkSettings work,
      List<PlantingWindow> windows,
      Map<String, Double> kinds,
      CareMonths months,
      Set<WorkPhase> byTruck,
      Map<WorkPhase, Set<String>> under) {
    public Given {
      hours = Map.copyOf(hours);
      windows = List.copyOf(windows);
      kinds = Map.copyOf(kinds);
      byTruck = Set.copyOf(byTruck);
      under = Map.copyOf(under);
    }
  }

  /**
   * The phases with their days.
   *
   * @param care the days of looking after, within that phase; empty without it or without a start
   */
  public record Scheduled(List<PhaseTime> times, List<CareVisit> care) {
    public Scheduled {
      times = List.copyOf(times);
      care = List.copyOf(care);
    }
  }

  /** The schedule. */
  public static Scheduled of(List<Phase> phases, Given given) {
    Scheduled found = new PhaseSchedule(given).inOrder(sorted(phases));
    return waitsLong(found.times())
        ? new PhaseSchedule(given).inOrder(sorted(coverFirst(phases)))
        : found;
  }

  /** Whether nothing is done for weeks before the trees, and the ground is still to be covered. */
  private static boolean waitsLong(List<PhaseTime> times) {
    int done = 0;
    for (PhaseTime time : times) {
      if (time.phase().id() == WorkPhase.SHEET) {
        return false;
      }
      if (time.phase().id() == WorkPhase.TREES) {
        return time.firstDay() - done - 1 > LONGEST_WAIT_DAYS
            && times.stream().anyMatch(t -> t.phase().id() == WorkPhase.SHEET);
      }
      done = time.lastDay();
    }
    return false;
  }

  /**
   * The phases with the ground covered before trees and shrubs, whose holes are then cut through
   * the cover: a lawn covered in autumn is ready in spring, one that waits for them is not.
   */
  private static List<Phase> coverFirst(List<Phase> phases) {
    return phases.stream()
        .map(
            p ->
                switch (p.id()) {
                  case SOAK, SHEET ->
                      p.after(p.after().stream().filter(b -> b != WorkPhase.TREES).toList());
                  case TREES -> p.after(with(p.after(), WorkPhase.SHEET));
                  case PLANT, DRIP, FINISH -> p.after(with(p.after(), WorkPhase.TREES));
                  default -> p;
                })
        .toList();
  }

  private static List<WorkPhase> with(List<WorkPhase> after, WorkPhase other) {
    return Stream.concat(after.stream(), Stream.of(other)).distinct().toList();
  }

  /**
   * A phase as it would go on next.
   *
   * @param begins in working days, see {@link PhaseTime}
   */
  private record Next(Phase phase, double begins, double hours, String why) {}

  private Scheduled inOrder(List<Phase> phases) {
    List<Phase> left = new ArrayList<>(phases);
    double free = 0;
    while (!left.isEmpty()) {
      Next next = null;
      for (Phase phase : left) {
        boolean isReady = left.stream().noneMatch(p -> phase.after().contains(p.id()));
        if (isReady && (phase.id() != WorkPhase.ESTABLISH || left.size() == 1)) {
          Next other = next(phase, free);
          next = next == null || other.begins() < next.begins() ? other : next;
        }
      }
      left.remove(next.phase());
      free = add(next);
    }
    return new Scheduled(times, visits);
  }

  /** Notes a phase and returns when the crew is free after it. */
  private double add(Next next) {
    WorkPhase id = next.phase().id();
    double ends =
        id == WorkPhase.ESTABLISH
            ? next.begins() + span(next)
            : days.end(next.begins(), next.hours(), next.phase().leastDays());
    times.add(
        new PhaseTime(
                next.phase(),
                next.begins(),
                ends,
                next.hours(),
                Optional.empty(),
                Optional.empty(),
                next.why())
            .dated(work));
    return ends;
  }

  private Next next(Phase phase, double free) {
    double hours = given.hours().getOrDefault(phase.id(), 0.0);
    if (phase.id() == WorkPhase.ESTABLISH) {
      return lookAfter(phase, CrewDays.evening(free), hours);
    }
    boolean byTruck = given.byTruck().contains(phase.id());
    double begins = days.begin(free, hours, byTruck);
    if (work.start().isEmpty()) {
      return new Next(phase, begins, hours, "");
    }
    LocalDate start = work.start().get();
    int day = (int) CrewDays.morning(begins) + 1;
    List<PlantingWindow> own = PlantingVisit.windowsOf(phase.id(), given.windows());
    boolean known = !own.isEmpty();
    String why = "";
    if (known || phase.id() == WorkPhase.PLANT) {
      int ready = known ? inSeason(work, start, day, own) : afterFrost(start, day, work);
      if (ready > day) {
        why = known ? "waits for the season of its plants" : "waits for the last frost";
        begins = ready - 1;
      }
      hours -= later(own, work.workdays().day(start, ready));
    }
    double planted =
        ChipDay.after(times, given, given.under().getOrDefault(phase.id(), Set.of()), days);
    if (planted > begins) {
      why = "waits until what grows under it is planted";
      begins = days.begin(planted, hours, byTruck);
    }
    return new Next(phase, begins, hours, why);
  }

  /** Looking after begins on its own days; where nothing is planted after the last of work. */
  private Next lookAfter(Phase phase, double free, double hours) {
    if (work.start().isEmpty()) {
      return new Next(phase, free, hours, "");
    }
    LocalDate start = work.start().get();
    Set<LocalDate> plantings = LookAfter.plantings(times, given.windows(), work.workdays());
    LocalDate next = work.workdays().day(start, (int) free + 1);
    visits = LookAfter.of(work, plantings.isEmpty() ? Set.of(next) : plantings, given.months());
    if (visits.isEmpty()) {
      return new Next(phase, free, hours, "");
    }
    String why =
        given.months().dry().isEmpty() ? "" : "first weeks after planting, then dry months";
    return new Next(phase, work.workdays().number(start, visits.get(0).date()) - 1, hours, why);
  }

  /** Working days from the first visit to the last, weekly where there are no dates. */
  private int span(Next next) {
    if (visits.isEmpty()) {
      int weekly = (Math.max(1, work.visits().value()) - 1) * WEEK + 1;
      return Math.max(weekly, Math.max(next.phase().leastDays(), work.daysFor(next.hours())));
    }
    LocalDate last = visits.get(visits.size() - 1).date();
    return work.workdays().number(work.start().orElseThrow(), last) - (int) next.begins();
  }

  /** Hours for the kinds that are not in season on the first day of planting. */
  private double later(List<PlantingWindow> windows, LocalDate first) {
    return PlantingVisit.of(windows, first, work.workdays()).stream()
        .skip(1)
        .mapToDouble(visit -> visit.hours(given.kinds()))
        .sum();
  }

  private static List<Phase> sorted(List<Phase> phases) {
    Map<WorkPhase, Phase> byId = new EnumMap<>(WorkPhase.class);
    DirectedAcyclicGraph<Integer, DefaultEdge> graph =
        new DirectedAcyclicGraph<>(DefaultEdge.class);
    for (int i = 0; i < phases.size(); i++) {
      byId.put(phases.get(i).id(), phases.get(i));
      graph.addVertex(i);
    }
    for (int i = 0; i < phases.size(); i++) {
      for (WorkPhase before : phases.get(i).after()) {
        if (!byId.containsKey(before)) {
          throw new PlanException(
              ProblemCode.UNKNOWN_WORD,
              phases.get(i).id().id()
                  + " waits for the phase `"
                  + before.id()
                  + "`, which does not exist");
        }
        connect(graph, phases.indexOf(byId.get(before)), i, phases);
      }
    }
    // Ties by the order of the list: of the phases that wait for nobody, the first goes first.
    List<Phase> order = new ArrayList<>();
    new TopologicalOrderIterator<>(graph, Comparator.<Integer>naturalOrder())
        .forEachRemaining(at -> order.add(phases.get(at)));
    return order;
  }

  private static void connect(
      DirectedAcyclicGraph<Integer, DefaultEdge> graph, int from, int to, List<Phase> phases) {
    try {
      graph.addEdge(from, to);
    } catch (IllegalArgumentException e) {
      throw new PlanException(
          ProblemCode.CYCLE,
          "the phases "
              + phases.get(from).id().id()
              + " and "
              + phases.get(to).id().id()
              + " wait for each other");
    }
  }

  /** The working day of the first visit to plant, from {@code day} on. */
  private static int inSeason(
      WorkSettings work, LocalDate start, int day, List<PlantingWindow> windows) {
    Workdays days = work.workdays();
    LocalDate visit = PlantingVisit.of(windows, days.day(start, day), days).get(0).date();
    int at = day;
    while (days.day(start, at).isBefore(visit)) {
      at++;
    }
    return at;
  }

  /** The first working day from {@code day} on that is not in the frost window. */
  private static int afterFrost(LocalDate start, int day, WorkSettings work) {
    if (work.lastFrost().isEmpty() || work.firstFrost().isEmpty()) {
      return day;
    }
    int at = day;
    while (inFrostWindow(work.workdays().day(start, at), work)) {
      at++;
    }
    return at;
  }

  static boolean inFrostWindow(LocalDate date, WorkSettings work) {
    LocalDate last = work.lastFrost().orElseThrow().atYear(date.getYear());
    LocalDate first =
        work.firstFrost().orElseThrow().atYear(date.getYear()).minusDays(ROOTING_DAYS);
    boolean northern = last.isBefore(first);
    return northern
        ? !date.isAfter(last) || !date.isBefore(first)
        : !date.isAfter(last) && !date.isBefore(first);
  }

  /** The last date on which to order so that it is there on {@code needed}. */
  public static Optional<LocalDate> orderBy(Optional<LocalDate> needed, int leadDays) {
    return needed.map(d -> d.minusDays(leadDays));
  }
}
