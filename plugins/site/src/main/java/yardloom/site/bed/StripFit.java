package yardloom.site.bed;

/** How parallel beds are fitted into their region. */
enum StripFit {
  /** From the region's edge on. */
  EDGE,
  /** Wherever the most ground is won. */
  MOST
}
