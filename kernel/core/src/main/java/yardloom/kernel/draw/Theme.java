package yardloom.kernel.draw;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;

/**
 * How a firm wants its drawings to look. Hatches and dashes stay, since they tell things apart in
 * black and white; what warns (buried lines, findings, cautions) has no part here.
 *
 * @param looks of the parts that look otherwise than usual
 * @param headings colour of headings, {@code #rrggbb}, if not the usual ink
 * @param letters running text and headings against the usual, 1 or more
 */
public record Theme(Map<Part, Look> looks, Optional<String> headings, double letters) {
  /** Everything as usual. */
  public static final Theme USUAL = new Theme(Map.of(), Optional.empty(), 1);

  /** What the plan says of parts, any number; a later line of a part replaces an earlier one. */
  public static final AttributeKey<Look> LOOK = new AttributeKey<>("draw.look", Look.class);

  /** What the plan says of texts. */
  public static final AttributeKey<Lettering> LETTERING =
      new AttributeKey<>("draw.lettering", Lettering.class);

  private static final String VARIANTS = "(-existing|-sample)+$";

  /** What may look otherwise: the palette's style of that name, new and existing. */
  public enum Part {
    LOT,
    LOT_LINE,
    BUILDING,
    NEIGHBOUR,
    STRUCTURE,
    FENCE,
    PAVING,
    PATH,
    MULCHED_GROUND,
    BED,
    TREE;

    private String style() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * How one part looks.
   *
   * @param fill {@code #rrggbb}, or empty for the usual
   * @param line {@code #rrggbb}, or empty for the usual
   * @param weightMm line width on paper, or 0 for the usual
   */
  public record Look(Part part, String fill, String line, double weightMm) {
    private Style of(Style usual) {
      return new Style(
          usual.name(),
          fill.isEmpty() || usual.fill().isEmpty() ? usual.fill() : fill,
          usual.hatch(),
          line.isEmpty() || usual.stroke().isEmpty() ? usual.stroke() : line,
          weightMm > 0 && usual.strokeMm() > 0 ? weightMm : usual.strokeMm(),
          usual.dash());
    }
  }

  /**
   * How texts look.
   *
   * @param headings {@code #rrggbb}, or empty for the usual
   * @param letters against the usual
   */
  public record Lettering(String headings, double letters) {}

  public Theme {
    looks = Map.copyOf(looks);
  }

  /** What the plan says; {@link #USUAL} if it says nothing. */
  public static Theme of(Plan plan) {
    Map<Part, Look> looks = new EnumMap<>(Part.class);
    plan.attributes().all(LOOK).forEach(e -> looks.put(e.value().part(), e.value()));
    Optional<Lettering> lettering = plan.said(LETTERING).map(e -> e.value());
    return new Theme(
        looks,
        lettering.map(Lettering::headings).filter(c -> !c.isEmpty()),
        lettering.map(Lettering::letters).orElse(1.0));
  }

  /** {@code usual} as the firm has it: its name, hatch and dashes stay. */
  public Style of(Style usual) {
    String name = usual.name().replaceFirst(VARIANTS, "");
    return looks.values().stream()
        .filter(look -> look.part().style().equals(name))
        .findFirst()
        .map(look -> look.of(usual))
        .orElse(usual);
  }
}
