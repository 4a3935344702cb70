package yardloom.site.revision;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/**
 * Puts the newest revision into the title block, whether {@code plan} or {@code revision} is
 * written first.
 */
public final class Revising {
  private Revising() {}

  /**
   * {@code info} at the newest of the revisions; itself if there is none.
   *
   * @param all those that the script has given so far, in the order of their dates
   * @param place of the line that is read now
   * @throws PlanException if the plan has a mark of its own beside, or a date after a revision's; a
   *     date of the plan that is not one of ISO 8601 is printed as it is and compared with nothing
   */
  public static PlanInfo newest(
      List<Attributes.Entry<Revision>> all, PlanInfo info, SourceRef place) {
    if (all.isEmpty()) {
      return info;
    }
    if (!info.revision().isEmpty() && info.revised().isEmpty()) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          place,
          "`plan` says revision: '"
              + info.revision()
              + "', and the line `revision` at "
              + all.get(0).place()
              + " says it again; leave `revision:` out of `plan`, its date and what was changed"
              + " stand in lines of their own");
    }
    Optional<LocalDate> issued = info.issued();
    for (Attributes.Entry<Revision> entry : all) {
      Revision revision = entry.value();
      if (issued.filter(revision.date()::isBefore).isPresent()) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            entry.place(),
            "revision '"
                + revision.name()
                + "' is dated "
                + revision.date()
                + ", before the plan, which was issued on "
                + info.date()
                + "; a revision has the day of issue or a later one");
      }
    }
    Revision last = all.get(all.size() - 1).value();
    return info.revised(last.name(), last.date());
  }
}
