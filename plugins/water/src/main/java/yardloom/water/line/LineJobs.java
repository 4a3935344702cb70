package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.BillLine;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.unit.Length;

/**
 * What is to be done with what the bill has: trenches are dug, tube is laid, fittings are set,
 * every part put together.
 */
final class LineJobs {
  private LineJobs() {}

  /** The trenches, and one job for each line of the irrigation bill that is handled by itself. */
  static List<Job> of(List<BillLine> bill, Optional<Trenches> trenches) {
    List<Job> jobs = new ArrayList<>();
    trenches
        .filter(t -> t.length().value().metres() > 0)
        .ifPresent(t -> jobs.add(new Job(WorkTask.DIG_TRENCH, WorkPhase.EDGE, t.length())));
    for (BillLine line : bill) {
      boolean isTube = line.exact().value() instanceof Length;
      // Stakes and the fittings of rows are set while the tube is laid.
      boolean isLaid = line.item().startsWith("stakes") || line.item().startsWith("fittings");
      if (!isLaid) {
        jobs.add(new Job(task(line, isTube), line.phase(), line.exact()));
      }
    }
    return jobs;
  }

  private static WorkTask task(BillLine line, boolean isTube) {
    if (isTube) {
      return line.phase() == WorkPhase.EDGE ? WorkTask.LAY_PIPE : WorkTask.LAY_DRIPLINE;
    }
    if (line.phase() == WorkPhase.EDGE) {
      return WorkTask.SET_FITTING;
    }
    return line.phase() == WorkPhase.HEAD ? WorkTask.ASSEMBLE_HEAD : WorkTask.CLOSE_ENDS;
  }
}
