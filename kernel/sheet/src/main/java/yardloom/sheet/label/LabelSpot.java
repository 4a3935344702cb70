package yardloom.sheet.label;

import java.util.Optional;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/** Where a label stands; the leader is empty if it stands at its point or ground. */
record LabelSpot(Box box, Optional<Leader> leader, boolean upright) {
  /** A line from what a label names to the label. */
  record Leader(Xy from, Xy to) {}

  /** A stroke of this length or less tells whose name stands beside it; it leads nowhere else. */
  private static final double TICK_MM = 2.5;

  /** Whether the eye has to follow a line from the name to what it names. */
  boolean isLed() {
    return leader.filter(l -> l.from().distance(l.to()) > TICK_MM).isPresent();
  }
}
