package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.draw.Logo;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Theme;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/** The mark and the theme of the firm that draws a set. */
public record FirmLook(Optional<Logo> logo, Theme theme) {
  /** No mark, and everything as usual. */
  public static final FirmLook NONE = new FirmLook(Optional.empty(), Theme.USUAL);

  /** The size of the logo in a field of at most this size; both zero without one. */
  Box sized(double mostWidthMm, double mostHeightMm) {
    return logo.map(
            l -> {
              double mm = Math.min(mostWidthMm / l.width(), mostHeightMm / l.height());
              return new Box(0, 0, l.width() * mm, l.height() * mm);
            })
        .orElse(new Box(0, 0, 0, 0));
  }

  /** The logo in the whole of {@code box}; nothing without one. */
  List<Ink> logoIn(Box box) {
    return logo.map(l -> List.of(drawn(l, box))).orElse(List.of());
  }

  private static Ink drawn(Logo logo, Box box) {
    double mm = box.width() / logo.width();
    List<Ink> pieces = new ArrayList<>();
    for (Logo.Piece piece : logo.pieces()) {
      List<Ink.Track> tracks =
          piece.rings().stream()
              .map(
                  ring ->
                      new Ink.Track(
                          ring.stream()
                              .map(d -> new Xy(box.x() + d.x() * mm, box.y() + d.y() * mm))
                              .toList(),
                          true))
              .toList();
      pieces.add(new Ink.Path(tracks, Style.filled("logo", piece.fill())));
    }
    return new Ink.Group("logo", "Logo", Optional.of(box), pieces);
  }

  /** The inks of a sheet as the theme has them. */
  List<Ink> themed(List<Ink> inks) {
    return theme.equals(Theme.USUAL) ? inks : inks.stream().map(this::themed).toList();
  }

  private Ink themed(Ink ink) {
    if (ink instanceof Ink.Group group) {
      return new Ink.Group(group.name(), group.title(), group.clip(), themed(group.inks()));
    }
    if (ink instanceof Ink.Path path) {
      return new Ink.Path(path.tracks(), theme.of(path.style()));
    }
    if (ink instanceof Ink.Circle circle) {
      return new Ink.Circle(circle.centre(), circle.radiusMm(), theme.of(circle.style()));
    }
    return heading((Ink.Text) ink);
  }

  /** Headings are bold, in plain ink and not part of a drawing, whose texts have a halo. */
  private Ink heading(Ink.Text text) {
    boolean heads =
        text.bold()
            && !text.halo()
            && text.colour().equals(Palette.INK)
            && text.heightMm() >= Type.HEADING;
    if (!heads || theme.headings().isEmpty()) {
      return text;
    }
    return new Ink.Text(
        text.at(),
        text.content(),
        text.heightMm(),
        true,
        text.align(),
        theme.headings().get(),
        false,
        text.turnDegrees());
  }
}
