package yardloom.sheet.compose;

import java.util.List;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Xy;

/**
 * How much of a sheet's frame is blank. A table, a figure of several tiles or a paragraph takes its
 * whole box, gaps between its columns included; of a site plan only what is inked counts: texts,
 * and cells that a line crosses or a filled outline covers. Gutters of half a cell belong to what
 * stands beside them.
 */
public final class BlankShare {
  private static final double CELL_MM = 7;

  private final Box frame;
  private Box clip;
  private final boolean[][] used;

  private BlankShare(Box frame) {
    this.frame = frame;
    this.clip = frame;
    used =
        new boolean[(int) Math.ceil(frame.width() / CELL_MM)]
            [(int) Math.ceil(frame.height() / CELL_MM)];
  }

  /** From 0, full, to 1, blank. */
  public static double of(ComposedSheet sheet) {
    BlankShare share = new BlankShare(sheet.paper().frame());
    for (Ink ink : sheet.inks()) {
      if (ink instanceof Ink.Group group && !isDrawing(group)) {
        double[] box = {1e9, 1e9, -1e9, -1e9};
        bounds(group, box);
        share.mark(box[0], box[1], box[2], box[3]);
      } else {
        share.ink(ink);
      }
    }
    long free = 0;
    for (boolean[] column : share.used) {
      for (boolean cell : column) {
        free += cell ? 0 : 1;
      }
    }
    return (double) free / (share.used.length * share.used[0].length);
  }

  private static boolean isDrawing(Ink.Group group) {
    return group.name().equals("site-plan");
  }

  private static void bounds(Ink ink, double[] box) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> bounds(i, box));
    } else if (ink instanceof Ink.Path path) {
      path.tracks().forEach(t -> t.points().forEach(p -> include(p.x(), p.y(), box)));
    } else if (ink instanceof Ink.Text text) {
      double[] room = textBox(text);
      include(room[0], room[1], box);
      include(room[2], room[3], box);
    }
  }

  private static double[] textBox(Ink.Text text) {
    double width = text.content().length() * text.heightMm() * 0.75;
    double left =
        switch (text.align()) {
          case START -> text.at().x();
          case MIDDLE -> text.at().x() - width / 2;
          case END -> text.at().x() - width;
        };
    return new double[] {
      left, text.at().y() - text.heightMm(), left + width, text.at().y() + text.heightMm() / 3
    };
  }

  private static void include(double x, double y, double[] box) {
    box[0] = Math.min(box[0], x);
    box[1] = Math.min(box[1], y);
    box[2] = Math.max(box[2], x);
    box[3] = Math.max(box[3], y);
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Group group) {
      Box before = clip;
      clip = group.clip().orElse(before);
      group.inks().forEach(this::ink);
      clip = before;
    } else if (ink instanceof Ink.Text text) {
      double[] room = textBox(text);
      mark(room[0], room[1], room[2], room[3]);
    } else if (ink instanceof Ink.Path path) {
      boolean filled = !path.style().fill().isEmpty();
      for (Ink.Track track : path.tracks()) {
        if (filled && track.closed()) {
          fill(track.points());
        } else if (!path.style().name().equals("frame")) {
          line(track.points());
        }
      }
    } else if (ink instanceof Ink.Circle circle) {
      double r = circle.radiusMm();
      mark(
          circle.centre().x() - r,
          circle.centre().y() - r,
          circle.centre().x() + r,
          circle.centre().y() + r);
    }
  }

  private void line(List<Xy> points) {
    for (int i = 1; i < points.size(); i++) {
      Xy a = points.get(i - 1);
      Xy b = points.get(i);
      int steps = (int) Math.max(1, Math.ceil(Math.hypot(b.x() - a.x(), b.y() - a.y())));
      for (int k = 0; k <= steps; k++) {
        double t = (double) k / steps;
        cell(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
      }
    }
  }

  /** Cells whose middle lies inside by the even-odd rule; outside a ring's box none does. */
  private void fill(List<Xy> ring) {
    line(ring);
    double[] box = {1e9, 1e9, -1e9, -1e9};
    ring.forEach(p -> include(p.x(), p.y(), box));
    int right = Math.min(used.length, (int) Math.ceil((box[2] - frame.x()) / CELL_MM));
    int bottom = Math.min(used[0].length, (int) Math.ceil((box[3] - frame.y()) / CELL_MM));
    int top = Math.max(0, (int) Math.floor((box[1] - frame.y()) / CELL_MM));
    for (int i = Math.max(0, (int) Math.floor((box[0] - frame.x()) / CELL_MM)); i < right; i++) {
      for (int j = top; j < bottom; j++) {
        Xy middle = new Xy(frame.x() + (i + 0.5) * CELL_MM, frame.y() + (j + 0.5) * CELL_MM);
        used[i][j] |= clip.contains(middle) && isInside(middle, ring);
      }
    }
  }

  private static boolean isInside(Xy at, List<Xy> ring) {
    boolean inside = false;
    for (int k = 0; k < ring.size(); k++) {
      Xy a = ring.get(k);
      Xy b = ring.get((k + 1) % ring.size());
      if ((a.y() > at.y()) != (b.y() > at.y())
          && at.x() < (b.x() - a.x()) * (at.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        inside = !inside;
      }
    }
    return inside;
  }

  private void mark(double left, double top, double right, double bottom) {
    for (double x = left; x < right + CELL_MM; x += CELL_MM) {
      for (double y = top; y < bottom + CELL_MM; y += CELL_MM) {
        cell(Math.min(x, right), Math.min(y, bottom));
      }
    }
  }

  private void cell(double x, double y) {
    if (!clip.contains(new Xy(x, y))) {
      return;
    }
    int i = (int) Math.floor((x - frame.x()) / CELL_MM);
    int j = (int) Math.floor((y - frame.y()) / CELL_MM);
    if (i >= 0 && j >= 0 && i < used.length && j < used[0].length) {
      used[i][j] = true;
    }
  }
}
