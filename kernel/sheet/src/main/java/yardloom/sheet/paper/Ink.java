package yardloom.sheet.paper;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.TextMetrics;
import yardloom.sheet.font.FontWidths;

/** Something drawn on paper, in millimetres. */
public sealed interface Ink permits Ink.Path, Ink.Circle, Ink.Text, Ink.Group {

  /** One run of straight lines; {@code closed} joins the last point to the first. */
  record Track(List<Xy> points, boolean closed) {
    public Track {
      points = List.copyOf(points);
    }
  }

  /** Lines, or an area by the even-odd rule. */
  record Path(List<Track> tracks, Style style) implements Ink {
    public Path {
      tracks = List.copyOf(tracks);
    }

    public static Path line(Style style, Xy... points) {
      return new Path(List.of(new Track(List.of(points), false)), style);
    }

    public static Path box(Style style, Box box) {
      return new Path(List.of(new Track(Quad.of(box).corners(), true)), style);
    }
  }

  /** A circle. */
  record Circle(Xy centre, double radiusMm, Style style) implements Ink {}

  /** Which part of a text stands at its point. */
  enum Align {
    START,
    MIDDLE,
    END
  }

  /**
   * One line of text.
   *
   * @param at the point on the baseline
   * @param heightMm height of capital letters
   * @param halo whether a white edge keeps it legible over a drawing
   * @param turnDegrees clockwise on paper about {@code at}
   */
  record Text(
      Xy at,
      String content,
      double heightMm,
      boolean bold,
      Align align,
      String colour,
      boolean halo,
      double turnDegrees)
      implements Ink {
    /** Letters above capitals (accents) and below the baseline, in parts of the letter size. */
    private static final double ABOVE = 0.80;

    private static final double BELOW = 0.23;

    public Text {
      content = Signs.shown(content);
    }

    /** The letter size: what fonts call the em. */
    public double emMm() {
      return emFor(heightMm);
    }

    static double emFor(double heightMm) {
      return heightMm * 1000 / FontWidths.CAP_HEIGHT_PER_MILLE;
    }

    /** The room that the text takes in the shipped font. */
    public Quad room(TextMetrics metrics) {
      double em = emMm();
      double width = metrics.widthMm(content, em, bold);
      double left =
          switch (align) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
          };
      Box box = new Box(left, at.y() - ABOVE * em, width, (ABOVE + BELOW) * em);
      return Quad.of(box).turned(turnDegrees, at);
    }
  }

  /**
   * Inks that belong together.
   *
   * @param name lower case with hyphens; becomes an id, made unique by the writer; empty for none
   * @param title what it shows, for tooltips and screen readers; may be empty
   * @param clip nothing is drawn outside it
   */
  record Group(String name, String title, Optional<Box> clip, List<Ink> inks) implements Ink {
    public Group {
      inks = List.copyOf(inks);
    }

    public static Group of(String name, String title, List<Ink> inks) {
      return new Group(name, title, Optional.empty(), inks);
    }
  }
}
