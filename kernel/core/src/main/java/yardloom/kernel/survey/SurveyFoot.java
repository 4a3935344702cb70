package yardloom.kernel.survey;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Unit;

/**
 * The foot that a deed means, and the measures made of it: 1 chain = 4 rods = 100 links = 66 ft.
 *
 * <p>The two feet differ by 2 parts in a million: 0.00024 ft on a 120 ft lot, but 4 ft in a
 * state-plane coordinate of 2,000,000 ft.
 *
 * <p>References: [1] NIST, U.S. Survey Foot: Revised Unit Conversion Factors, 2022.
 */
public enum SurveyFoot {
  /** 0.3048 m. */
  INTERNATIONAL(Unit.FOOT),
  /** 1200/3937 m. */
  US_SURVEY(Unit.SURVEY_FOOT);

  private static final Pattern PART =
      Pattern.compile(
          "(\\d+(?:,\\d{3})*(?:\\.\\d+)?)\\s*"
              + "(feet|foot|ft|'|′|chains?|ch|links?|li|rods?|rd|poles?|perch(?:es)?"
              + "|met(?:er|re)s?|m)\\.?\\s*,?\\s*");

  private final Unit foot;

  SurveyFoot(Unit foot) {
    this.foot = foot;
  }

  public Length feet(double value) {
    return Length.metres(foot.toSi(value));
  }

  public Length chains(double value) {
    return feet(66 * value);
  }

  public Length rods(double value) {
    return feet(16.5 * value);
  }

  public Length links(double value) {
    return feet(0.66 * value);
  }

  /**
   * A distance as deeds write it: {@code 725.32 feet}, {@code 5 ch 40 li}, {@code 12 rods}, {@code
   * 36.5 m}.
   *
   * @throws PlanException (SYNTAX) if a part of it is no distance; a bare number is none
   */
  public Length parse(String text) {
    Length sum = Length.ZERO;
    String rest = text.strip();
    Matcher part = PART.matcher(rest);
    int end = 0;
    while (end < rest.length()) {
      if (!part.find(end) || part.start() != end) {
        throw new PlanException(
            ProblemCode.SYNTAX,
            "'"
                + text
                + "' is no distance; write a number and its unit (ft, ch, li, rd, m), such as"
                + " 725.32 ft or 5 ch 40 li");
      }
      double value = Double.parseDouble(part.group(1).replace(",", ""));
      sum = sum.plus(inUnit(value, part.group(2)));
      end = part.end();
    }
    if (sum.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "'" + text + "': a distance must be more than zero");
    }
    return sum;
  }

  private Length inUnit(double value, String unit) {
    return switch (unit.charAt(0)) {
      case 'f', '\'', '′' -> feet(value);
      case 'c' -> chains(value);
      case 'l' -> links(value);
      case 'r', 'p' -> rods(value);
      default -> Length.metres(value);
    };
  }
}
