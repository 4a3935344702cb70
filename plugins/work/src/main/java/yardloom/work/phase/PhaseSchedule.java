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
 * <p>One crew does one phase after the other; a phase takes its hours / (crew × hours a day),
 * rounded up, at least its waiting days and at least one day; the visits after the work are those
 * of {@link LookAfter}. With a start date, days are Monday to Friday without the days off that are
 * named. Planting waits for the first of the {@link PlantingVisit}s and has the hours of that one
 * only, since the others have their own days; where no kinds are known, it does not fall between
 * six weeks before the first frost and the last frost. A circle of phases or an unknown one is
 * CYCLE or UNKNOWN_WORD.
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

  private PhaseSchedule() {}

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

  /**
   * The schedule.
   *
   * @param hours hours of one person by phase id; phases not named take their least days
   * @param windows the days of each kind that is to be planted, where they are known
   * @param kinds hours by kind, a part of those of its phase
   * @param months which months ask for care of the plants
   */
  public static Scheduled of(
      List<Phase> phases,
      Map<WorkPhase, Double> hours,
      WorkSettings work,
      List<PlantingWindow> windows,
      Map<String, Double> kinds,
      CareMonths months) {
    Scheduled found = inOrder(sorted(phases), hours, work, windows, kinds, months);
    return waitsLong(found.times())
        ? inOrder(sorted(coverFirst(phases)), hours, work, windows, kinds, months)
        : found;
  }

  /** Whether nothing is done for weeks before the trees, and the ground is still to be covered. */
  private static boolean waitsLong(List<PhaseTime> times) {
    int done = 1;
    for (PhaseTime time : times) {
      if (time.phase().id() == WorkPhase.SHEET) {
        return false;
      }
      if (time.phase().id() == WorkPhase.TREES) {
        return time.firstDay() - done > LONGEST_WAIT_DAYS
            && times.stream().anyMatch(t -> t.phase().id() == WorkPhase.SHEET);
      }
      done = time.firstDay() + time.days();
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

  private static Scheduled inOrder(
      List<Phase> phases,
      Map<WorkPhase, Double> hours,
      WorkSettings work,
      List<PlantingWindow> windows,
      Map<String, Double> kinds,
      CareMonths months) {
    List<PhaseTime> times = new ArrayList<>();
    List<CareVisit> visits = List.of();
    int day = 1;
    for (Phase phase : phases) {
      double worked = hours.getOrDefault(phase.id(), 0.0);
      String why = "";
      int span = 0;
      if (phase.id() == WorkPhase.ESTABLISH) {
        visits = visits(work, day, times, windows, months);
        span = (Math.max(1, work.visits().value()) - 1) * WEEK + 1;
        if (!visits.isEmpty()) {
          LocalDate start = work.start().orElseThrow();
          day = work.workdays().number(start, visits.get(0).date());
          span = work.workdays().number(start, visits.get(visits.size() - 1).date()) - day + 1;
          why = months.dry().isEmpty() ? "" : "first weeks after planting, then dry months";
        }
      }
      List<PlantingWindow> own = PlantingVisit.windowsOf(phase.id(), windows);
      boolean known = !own.isEmpty();
      if ((known || phase.id() == WorkPhase.PLANT) && work.start().isPresent()) {
        LocalDate start = work.start().get();
        int ready = known ? inSeason(work, start, day, own) : afterFrost(start, day, work);
        if (ready > day) {
          why = known ? "waits for the season of its plants" : "waits for the last frost";
          day = ready;
        }
        worked -= later(own, work.workdays().day(start, day), work, kinds);
      }
      int first = day;
      int days = Math.max(phase.leastDays(), work.daysFor(worked));
      days = Math.max(days, span);
      int last = day + days - 1;
      times.add(
          new PhaseTime(
              phase,
              first,
              days,
              worked,
              work.start().map(s -> work.workdays().day(s, first)),
              work.start().map(s -> work.workdays().day(s, last)),
              why));
      day = last + 1;
    }
    return new Scheduled(times, visits);
  }

  /** The days of looking after; where nothing is planted they follow the last day of work. */
  private static List<CareVisit> visits(
      WorkSettings work,
      int day,
      List<PhaseTime> times,
      List<PlantingWindow> windows,
      CareMonths months) {
    if (work.start().isEmpty()) {
      return List.of();
    }
    Set<LocalDate> plantings = LookAfter.plantings(times, windows, work.workdays());
    LocalDate next = work.workdays().day(work.start().get(), day);
    return LookAfter.of(work, plantings.isEmpty() ? Set.of(next) : plantings, months);
  }

  /** Hours for the kinds that are not in season on the first day of planting. */
  private static double later(
      List<PlantingWindow> windows, LocalDate first, WorkSettings work, Map<String, Double> kinds) {
    return PlantingVisit.of(windows, first, work.workdays()).stream()
        .skip(1)
        .mapToDouble(visit -> visit.hours(kinds))
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

  private static boolean inFrostWindow(LocalDate date, WorkSettings work) {
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
