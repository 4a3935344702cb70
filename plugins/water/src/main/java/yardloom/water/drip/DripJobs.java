package yardloom.water.drip;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.BillLine;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.unit.Length;

/** What is to be done with what the bill has: every tube is laid, every part put together. */
public final class DripJobs {
  private DripJobs() {}

  /** One job for each line of the irrigation bill. */
  public static List<Job> of(List<BillLine> bill) {
    List<Job> jobs = new ArrayList<>();
    for (BillLine line : bill) {
      WorkTask task =
          line.exact().value() instanceof Length
              ? WorkTask.LAY_DRIPLINE
              : line.phase() == WorkPhase.HEAD ? WorkTask.ASSEMBLE_HEAD : WorkTask.CLOSE_ENDS;
      jobs.add(new Job(task, line.phase(), line.exact()));
    }
    return jobs;
  }
}
