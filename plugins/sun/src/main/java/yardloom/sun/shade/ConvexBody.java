package yardloom.sun.shade;

import java.util.List;

/**
 * A convex polyhedron, in equatorial metres.
 *
 * <p>Seen from a point outside, its outline is the ring of edges between faces turned to the eye
 * and faces turned away. The plane of eye and edge meets a column of hour angle H at t = -(n₁ cos H
 * + n₂ sin H) / n₃, n the normal of that plane: exact, no bins. The vertices decide exactly between
 * which columns an edge lies. From a point inside, everything is hidden.
 *
 * <p>References: [1] M. E. Newell's sum for the plane of a polygon, in I. E. Sutherland, R. F.
 * Sproull, R. A. Schumacker, A characterization of ten hidden-surface algorithms, Computing Surveys
 * 6, 1974 (from memory); the rest own construction.
 */
public final class ConvexBody implements Body {
  private final double[] vertices;
  private final double[] planes;
  private final int[] edges;

  /**
   * A body.
   *
   * @param vertices x, y, z of each
   * @param faces vertex numbers of each face, clockwise as seen from outside on the site (the
   *     equatorial frame is left-handed)
   */
  ConvexBody(double[] vertices, List<int[]> faces) {
    this.vertices = vertices;
    planes = new double[faces.size() * 4];
    for (int f = 0; f < faces.size(); f++) {
      plane(faces.get(f), f * 4);
    }
    edges = edgesOf(faces);
  }

  private void plane(int[] face, int at) {
    // Newell's sum serves faces of any number of corners.
    for (int i = 0; i < face.length; i++) {
      int a = face[i] * 3;
      int b = face[(i + 1) % face.length] * 3;
      planes[at] += vertices[a + 1] * vertices[b + 2] - vertices[a + 2] * vertices[b + 1];
      planes[at + 1] += vertices[a + 2] * vertices[b] - vertices[a] * vertices[b + 2];
      planes[at + 2] += vertices[a] * vertices[b + 1] - vertices[a + 1] * vertices[b];
    }
    int v = face[0] * 3;
    planes[at + 3] =
        -(planes[at] * vertices[v]
            + planes[at + 1] * vertices[v + 1]
            + planes[at + 2] * vertices[v + 2]);
  }

  /** For each edge: from, to, the face on its left, the face on its right. */
  private static int[] edgesOf(List<int[]> faces) {
    int total = faces.stream().mapToInt(f -> f.length).sum();
    int[] found = new int[total / 2 * 4];
    int n = 0;
    for (int f = 0; f < faces.size(); f++) {
      int[] face = faces.get(f);
      for (int i = 0; i < face.length; i++) {
        int a = face[i];
        int b = face[(i + 1) % face.length];
        int other = faceWith(faces, b, a);
        if (f < other) {
          found[n++] = a;
          found[n++] = b;
          found[n++] = f;
          found[n++] = other;
        }
      }
    }
    return found;
  }

  private static int faceWith(List<int[]> faces, int a, int b) {
    for (int f = 0; f < faces.size(); f++) {
      int[] face = faces.get(f);
      for (int i = 0; i < face.length; i++) {
        if (face[i] == a && face[(i + 1) % face.length] == b) {
          return f;
        }
      }
    }
    throw new IllegalArgumentException("an edge of a body belongs to one face only");
  }

  @Override
  public void mark(double eyeX, double eyeY, double eyeZ, ColumnProfile profile, int who) {
    double[] seen = profile.seen(vertices, eyeX, eyeY, eyeZ);
    if (seen == null) {
      return;
    }
    boolean[] front = profile.facing(planes.length / 4);
    boolean outside = false;
    for (int f = 0, p = 0; p < planes.length; f++, p += 4) {
      front[f] = planes[p] * eyeX + planes[p + 1] * eyeY + planes[p + 2] * eyeZ + planes[p + 3] > 0;
      outside |= front[f];
    }
    if (!outside) {
      profile.hideAll(who);
      return;
    }
    boolean holdsNorthPole = true;
    boolean holdsSouthPole = true;
    profile.beginOutline();
    for (int e = 0; e < edges.length; e += 4) {
      boolean left = front[edges[e + 2]];
      if (left == front[edges[e + 3]]) {
        continue;
      }
      int a = left ? edges[e] : edges[e + 1];
      int b = left ? edges[e + 1] : edges[e];
      double poleSide = profile.arc(seen, a, b);
      holdsNorthPole &= poleSide < 0;
      holdsSouthPole &= poleSide > 0;
    }
    profile.endOutline(holdsNorthPole, holdsSouthPole, who);
  }
}
