package yardloom.site.firm;

import java.util.Locale;

/** The sheets on which details and notes of one's own may stand. */
public enum OwnSheet {
  LAYOUT,
  GRADING,
  MATERIALS,
  PLANTING,
  IRRIGATION,
  SUN,
  CREW,
  CLIENT;

  /** As the set names it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
