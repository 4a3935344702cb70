package yardloom.sheet.label;

import java.util.Optional;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/** Where a label stands; the leader is empty if it stands at its point or ground. */
record LabelSpot(Box box, Optional<Leader> leader, boolean upright) {
  /** A line from what a label names to the label. */
  record Leader(Xy from, Xy to) {}
}
