package yardloom.site.element;

import yardloom.kernel.source.Source;

/** The sources that the kernel's rules and tables name. */
public final class Sources {
  public static final Source PLAN = Source.plan("the plan itself");

  public static final Source COORDINATE_AREA =
      Source.computed(
          "Coordinate geometry: area by coordinates",
          "J. Mahun, Open Access Surveying Library",
          0,
          "chapter COGO H");

  public static final Source REACH =
      Source.commonPractice(
          "a gardener reaches 24 in (61 cm) into a bed; published bed widths are 4 ft from two sides"
              + " and 2 to 2.5 ft from one");

  public static final Source PATH_WIDTH =
      Source.commonPractice(
          "18 in is the least to walk on, 30 in the least for a wheelbarrow; published widths"
              + " disagree");

  public static final Source ACCESSIBLE_WIDTH =
      Source.read(
          "Clear width of accessible walks and ramps, 36 in",
          "Los Angeles Department of Building and Safety",
          0,
          "answers on disabled access");

  public static final Source BURIED_LINES =
      Source.commonPractice(
          "have buried lines marked before digging; dig by hand beside them. The width to keep is"
              + " set by law");

  private Sources() {}

  public static Source setback(String rule) {
    return Source.plan(
        rule.isBlank() ? "setback stated in the plan; verify locally" : "setback by " + rule);
  }
}
