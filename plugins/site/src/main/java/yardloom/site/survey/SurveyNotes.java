package yardloom.site.survey;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.survey.TapeFix;

/** What measuring words leave with the plan, for checks and tables. */
public final class SurveyNotes {
  /** A point found by tapes. */
  public record Tied(String name, TapeFix fix) {}

  /**
   * A description of the lot.
   *
   * @param basis which north its bearings are from, and what was added to reach the plan's
   */
  public record Described(String name, Deed deed, String basis) {}

  public static final AttributeKey<Tied> TIES = new AttributeKey<>("site.tie", Tied.class);

  public static final AttributeKey<Described> DEEDS =
      new AttributeKey<>("site.deed", Described.class);

  private SurveyNotes() {}
}
