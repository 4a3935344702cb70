package yardloom.facts.work;

import yardloom.kernel.table.SheetUse;

/** Sheets that show what other plugins offer; pages of the crew are {@link WorkPhase}s beside. */
public enum SheetPage implements SheetUse {
  /** Whoever brings or carries something: drivers, and the crew on every page. */
  WAYS,
  /** The cover: a picture of the grown yard in colour, and the figures that matter most. */
  COVER,
  /** The client's page: a picture of the yard as it stands before the work. */
  BEFORE,
  /** The layout sheet: what is measured, kept clear and set out. */
  LAYOUT,
  /** The grading sheet: levels, and what is dug and filled. */
  GRADING,
  /** The materials sheet: what is laid, ordered and delivered. */
  MATERIALS,
  /** The crew's map, and the tables beside it: what it works by in most phases. */
  CREW,
  /** The crew's enlarged plan: the points that are set out. */
  POINTS,
  /** The client's pages: what the yard brings, and what it asks for. */
  CLIENT,
  /** The work sheet, after the tables of cost. */
  WORK_COST,
  /** The work sheet, at its end: what holds where the yard lies. */
  WORK_PLACE,
  /** The planting sheet: what must be seen beside the plants. */
  PLANTING,
  /** The irrigation sheet: what must be seen beside the lines. */
  IRRIGATION,
  /** The sun sheet: sun, shade and the seasons of the yard. */
  SUN
}
