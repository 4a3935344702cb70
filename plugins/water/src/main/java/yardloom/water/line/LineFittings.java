package yardloom.water.line;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.formula.HeaderLayout.Joined;
import yardloom.water.route.LineTree;

/**
 * The fittings of one zone, counted from the graph of its pipes and rows. Where n tubes meet stand
 * n − 2 tees; where two meet in a bed, an elbow if one is a header, else a coupling.
 *
 * @param tees of the pipe, where ways part or a bed is fed on the way
 * @param elbows of the pipe, at bends
 * @param reducers of the pipe, where its size changes
 * @param places where the tees stand, in words, one for each place
 * @param bedTees in the beds, where a header passes a row or the pipe meets header and row
 * @param bedElbows in the beds, where a header ends at a row
 * @param couplings in the beds, where the pipe meets one row alone
 * @param caps one for each row
 */
record LineFittings(
    int tees,
    int elbows,
    int reducers,
    List<String> places,
    int bedTees,
    int bedElbows,
    int couplings,
    int caps) {
  LineFittings {
    places = List.copyOf(places);
  }

  /** Those of a zone and of the dripline that it waters. */
  static LineFittings of(ZoneLine zone, List<DripRun> beds) {
    Count count = new Count(zone.runs(), beds);
    for (int r = -1; r < zone.runs().size(); r++) {
      count.behind(r);
    }
    beds.forEach(count::rows);
    return count.get();
  }

  /** Those in one bed or ring alone. */
  static LineFittings inBed(DripRun bed) {
    Count count = new Count(List.of(), List.of(bed));
    count.rows(bed);
    return count.get();
  }

  private static final class Count {
    private final List<ZoneLine.PipeRun> pipes;
    private final List<DripRun> beds;
    private final List<String> places = new ArrayList<>();
    private int tees;
    private int elbows;
    private int reducers;
    private int bedTees;
    private int bedElbows;
    private int couplings;
    private int caps;

    Count(List<ZoneLine.PipeRun> pipes, List<DripRun> beds) {
      this.pipes = pipes;
      this.beds = beds;
    }

    LineFittings get() {
      return new LineFittings(tees, elbows, reducers, places, bedTees, bedElbows, couplings, caps);
    }

    /** What stands along a run and at its end; −1 is the valve, where runs only part. */
    void behind(int run) {
      List<ZoneLine.PipeRun> after = pipes.stream().filter(p -> p.from() == run).toList();
      List<String> here = new ArrayList<>();
      if (run >= 0) {
        here.addAll(pipes.get(run).to());
        after.forEach(p -> here.removeAll(p.to()));
        elbows += LineTree.bends(pipes.get(run).way());
        PipeSize size = pipes.get(run).size();
        reducers += (int) after.stream().filter(p -> !p.size().equals(size)).count();
      }
      int its = Math.max(0, after.size() + here.size() - 1);
      if (its > 0) {
        tees += its;
        List<String> ways = new ArrayList<>();
        if (!here.isEmpty()) {
          ways.add(names(here));
        }
        after.forEach(p -> ways.add(names(p.to())));
        places.add(
            (run < 0 ? "behind the valve: " : here.isEmpty() ? "fork: " : "on the way: ")
                + String.join(" / ", ways));
      }
    }

    private String names(List<String> feeds) {
      Set<String> names = new LinkedHashSet<>();
      for (DripRun bed : beds) {
        if (bed.feeds().keySet().stream().anyMatch(feeds::contains)) {
          names.add(bed.bed().title());
        }
      }
      return String.join(" + ", names);
    }

    /** Rows that start at one place meet there, with the headers that come and go, or the pipe. */
    void rows(DripRun bed) {
      List<Joined> joined = bed.laid().joined();
      int[] place = new int[joined.size()];
      int[] tubes = new int[joined.size()];
      boolean[] hasHeader = new boolean[joined.size()];
      for (int r = 0; r < joined.size(); r++) {
        Joined row = joined.get(r);
        boolean isSame = row.from() >= 0 && row.header().isEmpty();
        place[r] = isSame ? place[row.from()] : r;
        // The row itself, and unless it starts where another does, the tube that brings its water.
        tubes[place[r]] += isSame ? 1 : 2;
        if (row.header().isPresent()) {
          hasHeader[r] = true;
          tubes[place[row.from()]]++;
          hasHeader[place[row.from()]] = true;
        }
      }
      for (int r = 0; r < joined.size(); r++) {
        if (tubes[r] > 2) {
          bedTees += tubes[r] - 2;
        } else if (tubes[r] == 2) {
          bedElbows += hasHeader[r] ? 1 : 0;
          couplings += hasHeader[r] ? 0 : 1;
        }
      }
      caps += joined.size();
    }
  }
}
