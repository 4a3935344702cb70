package yardloom.program.sitefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.draw.Logo;
import yardloom.kernel.problem.PlanException;

/** Which SVG a logo may be, and where its outlines then lie. */
class SvgLogoTest {
  private static Logo read(String body) {
    return SvgLogo.read(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 50\">" + body + "</svg>");
  }

  private static List<Logo.Dot> ring(String body) {
    return read(body).pieces().get(0).rings().get(0);
  }

  /** Steps of SVG 1.1, 8.3, worked by hand: a square of 10 by each kind of line. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "M10 20 L20 20 L20 30 L10 30 Z",
        "M10,20 20,20 20,30 10,30z",
        "m10 20 10 0 0 10 -10 0z",
        "M10 20H20V30H10Z",
        "M10 20h10v10h-10z",
        "M1e1 2E1h1e1v10h-10z"
      })
  void path_linesAreReadInEveryForm(String data) {
    assertEquals(
        List.of(
            new Logo.Dot(10, 20), new Logo.Dot(20, 20), new Logo.Dot(20, 30), new Logo.Dot(10, 30)),
        ring("<path d=\"" + data + "\"/>"));
  }

  /**
   * A cubic with the control points of a quarter circle passes within 0.03 % of it (known bound).
   */
  @Test
  void path_curvesFollowTheirControlPoints() {
    double k = 0.5522847498;
    List<Logo.Dot> quarter =
        ring("<path d=\"M10 0C10 " + 10 * k + " " + 10 * k + " 10 0 10L0 0Z\"/>");
    for (Logo.Dot dot : quarter.subList(0, SvgPathData.PIECES + 1)) {
      assertEquals(10, Math.hypot(dot.x(), dot.y()), 0.003);
    }
    // Quadratic: at its middle a quarter of each end and half of the control point.
    List<Logo.Dot> bow = ring("<path d=\"M0 0Q20 40 40 0Z\"/>");
    assertEquals(new Logo.Dot(20, 20), bow.get(SvgPathData.PIECES / 2));
    // S mirrors the last control point: (30, -10) after (10, 10) about (20, 0).
    List<Logo.Dot> wave = ring("<path d=\"M0 0C0 10 10 10 20 0S40 -10 40 0Z\"/>");
    Logo.Dot half = wave.get(SvgPathData.PIECES + SvgPathData.PIECES / 2);
    assertEquals(20 / 8.0 + 3 * 30 / 8.0 + 3 * 40 / 8.0 + 40 / 8.0, half.x(), 1e-9);
    assertEquals(-3 * 10 / 8.0 - 3 * 10 / 8.0, half.y(), 1e-9);
  }

  @Test
  void transformsOfGroups_workFromWithinOutwards_andTheFieldBeginsAtZero() {
    Logo logo =
        SvgLogo.read(
            "<svg viewBox=\"5 7 100 50\"><g transform=\"translate(10 20) scale(2)\"><rect"
                + " transform=\"rotate(90)\" x=\"1\" y=\"0\" width=\"3\" height=\"2\"/></g></svg>");
    Logo.Dot first = logo.pieces().get(0).rings().get(0).get(0);
    // (1, 0) turned by 90° is (0, 1); twice (0, 2); moved (10, 22); less the field's corner.
    assertEquals(5, first.x(), 1e-9);
    assertEquals(15, first.y(), 1e-9);
    assertEquals(100, logo.width());
  }

  @Test
  void fills_areInherited_andNoneIsNotDrawn() {
    Logo logo =
        read(
            "<g fill=\"#abc\"><path d=\"M0 0h9v9z\"/><path style=\"fill:#010203;stroke:none\""
                + " d=\"M0 0h9v9z\"/><path fill=\"none\" d=\"M0 0h9v9z\"/></g><circle r=\"4\""
                + " cx=\"9\" cy=\"9\"/>");
    assertEquals(
        List.of("#aabbcc", "#010203", "#000000"),
        logo.pieces().stream().map(Logo.Piece::fill).toList());
  }

  /** A square hole drawn the same way round is turned, so that it stays a hole by either rule. */
  @Test
  void evenOdd_becomesTheUsualRule() {
    List<List<Logo.Dot>> rings =
        read("<path fill-rule=\"evenodd\" d=\"M0 0h30v30h-30z M10 10h10v10h-10z\"/>")
            .pieces()
            .get(0)
            .rings();
    assertEquals(new Logo.Dot(30, 0), rings.get(0).get(1));
    assertEquals(new Logo.Dot(20, 20), rings.get(1).get(1), "reversed");
    assertEquals(new Logo.Dot(20, 10), rings.get(1).get(2), "reversed");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<image href=\"http://x/y.png\"/>",
        "<image href=\"file:///etc/passwd\"/>",
        "<script>alert(1)</script>",
        "<use href=\"#a\"/>",
        "<text>Firm</text>",
        "<foreignObject/>",
        "<a href=\"x\"><path d=\"M0 0h9v9z\"/></a>",
        "<path onload=\"x()\" d=\"M0 0h9v9z\"/>",
        "<path d=\"M0 0h9v9z\" fill=\"url(#g)\"/>",
        "<path d=\"M0 0h9v9z\" style=\"fill:url(http://x)\"/>",
        "<path d=\"M0 0h9v9z\" stroke=\"#000\"/>",
        "<path d=\"M0 0h9v9z\" opacity=\"0.5\"/>",
        "<path d=\"M0 0h9v9z\" clip-path=\"url(#c)\"/>",
        "<path d=\"M0 0A5 5 0 0 1 9 9z\"/>",
        "<path d=\"M0 0h9v9z\" transform=\"skewX(30)\"/>",
        "<path d=\"M0 0h1e99v9z\"/>",
        "<style>path{fill:red}</style><path d=\"M0 0h9v9z\"/>",
        "<?xml-stylesheet href=\"x.css\"?><path d=\"M0 0h9v9z\"/>"
      })
  void whateverIsNoFilledOutline_isRefused(String body) {
    PlanException told = assertThrows(PlanException.class, () -> read(body));
    assertTrue(told.getMessage().contains("the logo"), told.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "no svg",
        "<svg",
        "<html/>",
        "<svg/>",
        "<svg viewBox=\"0 0 10\"/>",
        "<svg viewBox=\"0 0 10 0\"/>",
        "<svg viewBox=\"0 0 90 10\"><path d=\"M0 0h9v9z\"/></svg>",
        "<svg viewBox=\"0 0 9 9\"/>",
        "<svg viewBox=\"0 0 9 9\"><path d=\"M0 0h\"/></svg>",
        "<svg viewBox=\"0 0 9 9\"><path d=\"5 5\"/></svg>",
        "<svg viewBox=\"0 0 9 9\"><path d=\"M0 0 # 9\"/></svg>",
        "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]><svg viewBox=\"0 0 9 9\"><title>&a;</title></svg>",
        "<!DOCTYPE svg SYSTEM \"file:///etc/passwd\"><svg viewBox=\"0 0 9 9\"/>"
      })
  void whateverIsNoSvg_isToldSo(String text) {
    assertThrows(PlanException.class, () -> SvgLogo.read(text));
  }

  @Test
  void sizeHasLimits() {
    String many = "<path d=\"M0 0" + "h1v1".repeat(2_600) + "z\"/>";
    assertTrue(
        assertThrows(PlanException.class, () -> read(many)).getMessage().contains("5000 corners"));
    String deep = "<g>".repeat(60) + "</g>".repeat(60);
    assertTrue(
        assertThrows(PlanException.class, () -> read(deep)).getMessage().contains("50 deep"));
    String longText = "<desc>" + "x".repeat(200_000) + "</desc>";
    assertTrue(
        assertThrows(PlanException.class, () -> read(longText)).getMessage().contains("200000"));
  }
}
