package yardloom.planting.placing;

import yardloom.kernel.vocab.Choices;

/** What a kind does for the tree of a guild, the ring nearest to the stem first. */
public enum GuildRole {
  GROUND_COVER,
  MULCH_MAKER,
  INSECT_PLANT,
  NITROGEN_FIXER;

  /** As the catalogue and tables call it, such as {@code nitrogen fixer}. */
  public String text() {
    return Choices.text(this);
  }
}
