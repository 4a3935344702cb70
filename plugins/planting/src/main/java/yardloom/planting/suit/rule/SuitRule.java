package yardloom.planting.suit.rule;

import java.util.Optional;

/** One question about a plant in a place. Rules keep no state and see only what is handed in. */
public interface SuitRule {
  /** A word: the question, as the table prints it. */
  String id();

  /** Empty where the plant fits, or where what the rule needs is not known. */
  Optional<Reason> judge(Candidate plant, Yard yard);
}
