package yardloom.facts;

import yardloom.kernel.source.Source;

/**
 * One thing that differs by place: a code to check, a call to make, a rate that holds there.
 *
 * <p>The shipped generic rules rank 0. A regional file or a plan gives its own of a higher rank;
 * for each topic the highest rank is printed and read.
 *
 * @param topic lower-case words, such as {@code digging} or {@code lead}
 * @param region where it holds
 * @param text the rule in one or two sentences
 */
public record LocalRule(String topic, String region, int rank, String text, Source source) {
  /** The rank of shipped rules that hold nowhere in particular. */
  public static final int GENERIC = 0;

  /** The rank of a regional file. */
  public static final int REGIONAL = 1;

  /** The rank of what the plan itself says. */
  public static final int PLAN = 2;
}
