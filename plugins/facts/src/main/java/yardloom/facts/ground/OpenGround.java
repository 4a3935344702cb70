package yardloom.facts.ground;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;

/** What stands on ground of the yard that the plan draws nothing on. */
public enum OpenGround {
  LAWN("lawn"),
  BARE("bare ground"),
  WEEDS("weeds"),
  MEADOW("meadow");

  /** On the plan, where it says so. */
  public static final AttributeKey<OpenGround> KEY =
      new AttributeKey<>("site.open-ground", OpenGround.class);

  /** On the plan: that no cardboard is laid anywhere. */
  public static final AttributeKey<Boolean> NO_CARDBOARD =
      new AttributeKey<>("materials.no-cardboard", Boolean.class);

  private final String noun;

  OpenGround(String noun) {
    this.noun = noun;
  }

  /** How texts call it. */
  public String noun() {
    return noun;
  }

  /** What the plan says; else lawn, or bare ground where there is no sod to lay cardboard on. */
  public static OpenGround of(Plan plan) {
    return plan.attributes().get(KEY).orElse(hasCardboard(plan) ? LAWN : BARE);
  }

  /** Whether the plan's mulch has cardboard under it. */
  public static boolean hasCardboard(Plan plan) {
    return !plan.attributes().get(NO_CARDBOARD).orElse(false);
  }
}
