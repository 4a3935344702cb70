package yardloom.kernel.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import yardloom.kernel.sheet.LabelPlacer.Request;
import yardloom.kernel.sheet.LabelPlacer.Spot;

class LabelPlacerTest {
  private static final Box PAGE = new Box(0, 0, 280, 216);

  @Provide
  Arbitrary<List<Request>> requests() {
    Arbitrary<Xy> points =
        Combinators.combine(
                Arbitraries.doubles().between(2, 278), Arbitraries.doubles().between(2, 214))
            .as(Xy::new);
    return Combinators.combine(
            points,
            Arbitraries.doubles().between(4, 40),
            Arbitraries.doubles().between(2.6, 8),
            Arbitraries.integers().between(0, 5),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false))
        .as(Request::new)
        .list()
        .ofMaxSize(60);
  }

  @Property(tries = 60)
  void labels_anyRequests_neitherOverlapNorLeaveThePage(
      @ForAll("requests") List<Request> requests) {
    LabelPlacer placer = new LabelPlacer(PAGE);
    Box taken = new Box(100, 80, 60, 40);
    placer.take(Quad.of(taken));
    List<Optional<Spot>> spots = placer.place(requests);
    List<Quad> quads = new ArrayList<>(List.of(Quad.of(taken)));
    for (int i = 0; i < requests.size(); i++) {
      if (spots.get(i).isEmpty()) {
        continue;
      }
      Quad quad = Quad.of(spots.get(i).get().box());
      assertTrue(quad.inside(PAGE));
      assertTrue(quads.stream().noneMatch(quad::overlaps), "label " + i);
      quads.add(quad);
    }
  }

  @Property(tries = 30)
  void labels_sameRequestsTwice_standTheSame(@ForAll("requests") List<Request> requests) {
    assertEquals(new LabelPlacer(PAGE).place(requests), new LabelPlacer(PAGE).place(requests));
  }

  @Property(tries = 60)
  void labels_withoutLeader_areNearestToTheirOwnPoint(@ForAll("requests") List<Request> requests) {
    List<Optional<Spot>> spots = new LabelPlacer(PAGE).place(requests);
    for (int i = 0; i < requests.size(); i++) {
      Request own = requests.get(i);
      if (own.fixed() || spots.get(i).isEmpty() || spots.get(i).get().leaderTo().isPresent()) {
        continue;
      }
      Quad quad = Quad.of(spots.get(i).get().box());
      for (Request other : requests) {
        if (!other.fixed() && !other.anchor().equals(own.anchor())) {
          assertTrue(quad.distance(other.anchor()) > quad.distance(own.anchor()));
        }
      }
    }
  }

  @Test
  void label_alone_standsAboveItsPoint() {
    Spot spot = place(new LabelPlacer(PAGE), new Request(new Xy(100, 100), 20, 4, 1, false, false));
    assertTrue(spot.box().bottom() < 100);
    assertEquals(100, spot.box().centre().x(), 1e-9);
  }

  @Test
  void label_fixed_standsOnItsPoint() {
    Spot spot = place(new LabelPlacer(PAGE), new Request(new Xy(100, 100), 20, 4, 1, true, false));
    assertEquals(new Xy(100, 100), spot.box().centre());
  }

  @Test
  void label_lineAbove_goesBelow() {
    LabelPlacer placer = new LabelPlacer(PAGE);
    placer.avoid(new Xy(0, 97), new Xy(280, 97));
    Spot spot = place(placer, new Request(new Xy(100, 100), 20, 4, 1, false, false));
    assertTrue(spot.box().y() > 97);
  }

  @Test
  void label_surroundedByTexts_isLedTo() {
    LabelPlacer placer = new LabelPlacer(PAGE);
    placer.take(Quad.of(new Box(70, 90, 60, 8)));
    placer.take(Quad.of(new Box(70, 102, 60, 8)));
    Spot spot = place(placer, new Request(new Xy(100, 100), 20, 6, 1, false, false));
    assertTrue(spot.leaderTo().isPresent());
  }

  @Test
  void label_pageFull_hasNoPlace() {
    LabelPlacer placer = new LabelPlacer(PAGE);
    placer.take(Quad.of(PAGE));
    assertFalse(
        placer.place(List.of(new Request(new Xy(9, 9), 20, 4, 1, true, false))).get(0).isPresent());
  }

  @Test
  void label_orNone_isLeftOutWhereATextStands() {
    Request request = new Request(new Xy(100, 100), 20, 4, 1, true, true, false);
    assertEquals(
        new Xy(100, 100), place(new LabelPlacer(PAGE), request).box().centre(), "on free ground");
    LabelPlacer placer = new LabelPlacer(PAGE);
    placer.take(Quad.of(new Box(95, 98, 10, 4)));
    assertFalse(placer.place(List.of(request)).get(0).isPresent());
  }

  private static Spot place(LabelPlacer placer, Request request) {
    return placer.place(List.of(request)).get(0).orElseThrow();
  }
}
