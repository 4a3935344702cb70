package yardloom.sheet.label;

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
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

class LabelPlacerTest {
  private static final Box PAGE = new Box(0, 0, 280, 216);

  @Provide
  Arbitrary<List<LabelRequest>> requests() {
    Arbitrary<Xy> points =
        Combinators.combine(
                Arbitraries.doubles().between(2, 278), Arbitraries.doubles().between(2, 214))
            .as(Xy::new);
    return Combinators.combine(
            points,
            Arbitraries.doubles().between(4, 40),
            Arbitraries.doubles().between(2.6, 8),
            Arbitraries.integers().between(0, 5),
            Arbitraries.of(Anchor.class),
            Arbitraries.of(true, false),
            grounds())
        .as(LabelPlacerTest::request)
        .list()
        .ofMaxSize(60);
  }

  /** Sizes of ground about the point, or none. */
  private static Arbitrary<Optional<Xy>> grounds() {
    return Combinators.combine(
            Arbitraries.doubles().between(1, 90), Arbitraries.doubles().between(1, 90))
        .as(Xy::new)
        .optional(0.5);
  }

  /** A triangle or a lozenge of ground about the point, by its size. */
  private static LabelRequest request(
      Xy at,
      double width,
      double height,
      int rank,
      Anchor stand,
      boolean upright,
      Optional<Xy> size) {
    Optional<Footprint> ground =
        size.map(
            s ->
                new Footprint(
                    s.x() < s.y()
                        ? List.of(at.plus(0, -s.y()), at.plus(s.x(), s.y()), at.plus(-s.x(), s.y()))
                        : List.of(
                            at.plus(0, -s.y()),
                            at.plus(s.x(), 0),
                            at.plus(0, s.y()),
                            at.plus(-s.x(), 0))));
    return new LabelRequest(at, width, height, rank, stand, upright, ground);
  }

  @Property(tries = 60, seed = "20261125")
  void labels_anyRequests_neitherOverlapNorLeaveThePage(
      @ForAll("requests") List<LabelRequest> requests) {
    LabelSpace space = new LabelSpace(PAGE);
    Box taken = new Box(100, 80, 60, 40);
    space.take(Quad.of(taken));
    List<Optional<LabelSpot>> spots = new LabelPlacer(space).place(requests);
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

  /** A line that crosses another is followed to the wrong name. */
  @Property(tries = 60, seed = "20261128")
  void leaders_anyRequests_neverCross(@ForAll("requests") List<LabelRequest> requests) {
    List<LabelSpot.Leader> leaders =
        new LabelPlacer(new LabelSpace(PAGE))
            .place(requests).stream()
                .flatMap(s -> s.stream().flatMap(t -> t.leader().stream()))
                .toList();
    for (int i = 0; i < leaders.size(); i++) {
      for (int j = 0; j < i; j++) {
        LabelSpot.Leader a = leaders.get(i);
        LabelSpot.Leader b = leaders.get(j);
        assertTrue(!Quad.isCrossing(a.from(), a.to(), b.from(), b.to()), a + " and " + b);
      }
    }
  }

  /** In a picture every name stands in its bed or has a line to it, whatever lies beside. */
  @Property(tries = 60, seed = "20261127")
  void labelsInside_areInTheirGround_orLed(@ForAll("requests") List<LabelRequest> requests) {
    List<LabelRequest> inside =
        requests.stream()
            .filter(r -> r.ground().isPresent())
            .map(
                r ->
                    new LabelRequest(
                        r.anchor(),
                        r.widthMm(),
                        r.heightMm(),
                        r.rank(),
                        Anchor.INSIDE,
                        false,
                        r.ground()))
            .toList();
    List<Optional<LabelSpot>> spots = new LabelPlacer(new LabelSpace(PAGE)).place(inside);
    for (int i = 0; i < inside.size(); i++) {
      Footprint ground = inside.get(i).ground().orElseThrow();
      assertTrue(
          spots.get(i).stream().allMatch(s -> s.leader().isPresent() || ground.contains(s.box())),
          "label " + i);
    }
  }

  /** A bed of 6 by 40 mm has room for a name of 20 by 3 mm, upright; one of 6 by 15 mm has none. */
  @Test
  void labelInside_narrowBed_isUprightInIt_shortBed_isLed() {
    LabelSpot tall = insideOf(40);
    assertTrue(tall.upright() && tall.leader().isEmpty(), tall.toString());
    LabelSpot shortBed = insideOf(15);
    assertTrue(shortBed.leader().isPresent(), shortBed.toString());
  }

  private static LabelSpot insideOf(double high) {
    Xy at = PAGE.centre();
    Footprint bed =
        new Footprint(
            List.of(
                at.plus(-3, -high / 2),
                at.plus(3, -high / 2),
                at.plus(3, high / 2),
                at.plus(-3, high / 2)));
    LabelRequest name = new LabelRequest(at, 20, 3, 4, Anchor.INSIDE, false, Optional.of(bed));
    return new LabelPlacer(new LabelSpace(PAGE)).place(List.of(name)).get(0).orElseThrow();
  }

  /** A tap at the wall between a house and a lawn that both are named: its name is in the lawn. */
  @Test
  void nameAtAWall_isNotInTheHouse() {
    Xy tap = PAGE.centre();
    Footprint house =
        new Footprint(
            List.of(tap.plus(-140, 0), tap.plus(140, 0), tap.plus(140, 108), tap.plus(-140, 108)));
    Footprint lawn =
        new Footprint(
            List.of(
                tap.plus(-140, -108), tap.plus(140, -108), tap.plus(140, 0), tap.plus(-140, 0)));
    LabelRequest houses =
        new LabelRequest(tap.plus(0, 25), 12, 4, 1, Anchor.CENTRE, false, Optional.of(house), true);
    LabelRequest lawns =
        new LabelRequest(tap.plus(0, -25), 20, 3, 3, Anchor.CENTRE, false, Optional.of(lawn));
    LabelRequest taps = new LabelRequest(tap, 14, 3, 2, Anchor.NEAR, false, Optional.empty());
    LabelSpace space = new LabelSpace(PAGE);
    // Lines of eaves and beds run under most places of the lawn, none in the house.
    for (double y = -104.5; y < 0; y += 3) {
      space.avoid(tap.plus(-140, y), tap.plus(140, y));
    }
    LabelSpot spot =
        new LabelPlacer(space).place(List.of(houses, lawns, taps)).get(2).orElseThrow();
    assertTrue(spot.box().bottom() <= tap.y(), spot.toString());
  }

  @Property(tries = 30, seed = "20261125")
  void labels_sameRequestsTwice_standTheSame(@ForAll("requests") List<LabelRequest> requests) {
    assertEquals(
        new LabelPlacer(new LabelSpace(PAGE)).place(requests),
        new LabelPlacer(new LabelSpace(PAGE)).place(requests));
  }

  @Property(tries = 60, seed = "20261125")
  void labels_withoutLeader_areNearestToTheirOwnPoint(
      @ForAll("requests") List<LabelRequest> requests) {
    List<Optional<LabelSpot>> spots = new LabelPlacer(new LabelSpace(PAGE)).place(requests);
    for (int i = 0; i < requests.size(); i++) {
      LabelRequest own = requests.get(i);
      boolean besideIts =
          spots.get(i).filter(s -> s.leader().isEmpty() && own.distance(s.box()) > 0).isPresent();
      if (own.isCentred() || !besideIts) {
        continue;
      }
      Box box = spots.get(i).get().box();
      for (LabelRequest other : requests) {
        boolean rival =
            own.isNumber() ? other.isNumber() : !other.isCentred() || other.ground().isPresent();
        if (rival && !other.anchor().equals(own.anchor())) {
          assertTrue(other.distance(box) > own.distance(box));
        }
      }
    }
  }

  /** The law that a reader relies on: an unled label of ground lies in it or touches it. */
  @Property(tries = 60, seed = "20261125")
  void labels_ofGroundWithoutLeader_areInItOrClose(
      @ForAll("requests") List<LabelRequest> requests) {
    List<Optional<LabelSpot>> spots = new LabelPlacer(new LabelSpace(PAGE)).place(requests);
    for (int i = 0; i < requests.size(); i++) {
      LabelRequest own = requests.get(i);
      if (own.ground().isPresent() && spots.get(i).filter(s -> s.leader().isEmpty()).isPresent()) {
        assertTrue(own.distance(spots.get(i).get().box()) <= 2.5);
      }
    }
  }

  /** The number of a bed's corner stands at the corner, though that lies on the bed's own name. */
  @Test
  void label_numberOfACorner_standsAtItWithoutLeader() {
    Footprint bed = rectangle(50, 50, 80, 40);
    LabelRequest name = ofGround(bed, 20, 4, Anchor.CENTRE);
    LabelRequest number =
        new LabelRequest(new Xy(50, 50), 3.2, 3.7, 1, Anchor.POINT, false, Optional.empty());
    LabelSpot spot =
        new LabelPlacer(new LabelSpace(PAGE)).place(List.of(name, number)).get(1).get();
    assertTrue(spot.leader().isEmpty());
    assertTrue(Quad.of(spot.box()).distance(new Xy(50, 50)) < 1);
  }

  @Test
  void label_fixedInNarrowUprightGround_standsUprightInIt() {
    Footprint path = rectangle(100, 50, 6, 60);
    LabelSpot spot = place(new LabelSpace(PAGE), ofGround(path, 20, 4, Anchor.CENTRE));
    assertTrue(spot.upright());
    assertTrue(path.contains(spot.box()));
  }

  @Test
  void label_ofNarrowGround_isLedFromItsEdgeNotItsMiddle() {
    Footprint bed = rectangle(100, 50, 6, 60);
    LabelSpace space = new LabelSpace(PAGE);
    space.take(Quad.of(new Box(76, 26, 54, 108)));
    LabelSpot spot = place(space, ofGround(bed, 20, 4, Anchor.NEAR));
    Xy from = spot.leader().orElseThrow().from();
    assertTrue(bed.nearest(from).distance(from) < 1.3, from.toString());
  }

  @Test
  void label_twoBedsClose_standsAtItsOwn() {
    Footprint upper = rectangle(50, 50, 60, 10);
    Footprint lower = rectangle(50, 65, 60, 10);
    List<LabelRequest> both =
        List.of(ofGround(upper, 30, 4, Anchor.NEAR), ofGround(lower, 30, 4, Anchor.NEAR));
    List<Optional<LabelSpot>> spots = new LabelPlacer(new LabelSpace(PAGE)).place(both);
    for (int i = 0; i < 2; i++) {
      Box box = spots.get(i).orElseThrow().box();
      assertTrue(both.get(i).distance(box) < both.get(1 - i).distance(box));
    }
  }

  /**
   * A step aside costs a tenth a millimetre, a line under the text four: a name steps off a
   * barrow's way, but stays in the middle of a bed that is full of pipe.
   */
  @Test
  void label_plantInTheMiddleOfItsGround_standsBesideThePlant() {
    Footprint bed = rectangle(50, 50, 80, 40);
    LabelRequest request = ofGround(bed, 20, 4, Anchor.CENTRE);
    LabelSpace planted = new LabelSpace(PAGE);
    planted.avoidSymbol(new Xy(89, 69), new Xy(91, 71));
    LabelSpot aside = place(planted, request);
    assertTrue(bed.contains(aside.box()));
    assertFalse(planted.linework().isOnSymbol(aside.box()));
    LabelSpace piped = new LabelSpace(PAGE);
    piped.avoid(new Xy(89, 69), new Xy(91, 71));
    assertTrue(piped.linework().isBare(place(piped, request).box()), "off a short line");
    LabelSpace full = new LabelSpace(PAGE);
    for (double y = 31; y < 90; y += 1.3) {
      full.avoid(new Xy(40, y), new Xy(140, y));
    }
    assertTrue(place(full, request).box().centre().distance(new Xy(90, 70)) < 4, "among rows");
  }

  /**
   * Rows of pipe 16 in apart are 4.23 mm apart at 1:96. A name of 3.8 mm in a bed of 12.7 mm stands
   * between two of three rows, 2.1 mm off the middle one, level or upright.
   */
  @Test
  void label_amongRowsThatLeaveItRoom_standsBetweenThem() {
    for (boolean upright : new boolean[] {false, true}) {
      Footprint bed = upright ? rectangle(50, 50, 12.7, 120) : rectangle(50, 50, 120, 12.7);
      LabelSpace space = new LabelSpace(PAGE);
      for (double row : new double[] {50 + 6.35 - 4.23, 50 + 6.35, 50 + 6.35 + 4.23}) {
        space.avoid(
            upright ? new Xy(row, 50) : new Xy(50, row),
            upright ? new Xy(row, 170) : new Xy(170, row));
      }
      Box box = place(space, ofGround(bed, 40, 3.8, Anchor.CENTRE)).box();
      assertTrue(bed.contains(box));
      assertTrue(space.linework().isBare(box), box.toString());
    }
  }

  /** A measure runs through where the name would stand; the leader of another may cross it. */
  @Test
  void label_neverStandsOnAMeasure_butItsLeaderMayCrossIt() {
    LabelSpace space = new LabelSpace(PAGE);
    space.bar(new Xy(60, 97), new Xy(140, 97));
    Box box = place(space, request(new Xy(100, 100), 20, 4, Anchor.NEAR)).box();
    assertFalse(Quad.of(box).crossedBy(new Xy(60, 97), new Xy(140, 97)), box.toString());
    space.take(Quad.of(new Box(60, 98, 80, 14)));
    LabelSpot led = place(space, request(new Xy(100, 100), 20, 4, Anchor.NEAR));
    assertTrue(led.leader().isPresent());
    assertFalse(Quad.of(led.box()).crossedBy(new Xy(60, 97), new Xy(140, 97)));
  }

  /**
   * All to the left of x = 199 is full; on the right another name's ground leaves free what lies
   * below y = 180, or nothing.
   */
  @Test
  void label_ledFromAnywhere_keepsOffGroundThatAnotherNames() {
    LabelRequest point = request(new Xy(140, 150), 20, 4, Anchor.NEAR);
    LabelSpace space = new LabelSpace(PAGE);
    space.take(Quad.of(new Box(0, 0, 199, 216)));
    for (double end : new double[] {180, 216}) {
      LabelRequest other = ofGround(rectangle(199, 0, 81, end), 30, 4, Anchor.CENTRE);
      LabelOffer offer = new LedPlaces(space, new Rivals(List.of(point, other))).anywhere(point);
      if (end < 216) {
        assertTrue(offer.spot().box().y() >= 180, offer.toString());
      } else {
        assertEquals(LabelOffer.NONE, offer);
      }
    }
  }

  /**
   * Texts on both sides leave the point only places with a leader, the nearest of them above it:
   * free ground at first, then ground that another label names.
   */
  @Test
  void label_led_standsOffGroundThatAnotherNames() {
    LabelRequest point = request(new Xy(100, 100), 20, 4, Anchor.NEAR);
    LabelSpot alone =
        new LabelPlacer(textsOnBothSides()).place(List.of(point)).get(0).orElseThrow();
    assertTrue(alone.leader().isPresent());
    assertTrue(alone.box().bottom() < 97);
    Footprint bed = rectangle(60, 60, 80, 37);
    List<LabelRequest> both = List.of(ofGround(bed, 20, 4, Anchor.CENTRE), point);
    LabelSpot led = new LabelPlacer(textsOnBothSides()).place(both).get(1).orElseThrow();
    assertTrue(led.leader().isPresent());
    assertTrue(bed.distance(led.box()) > 0, led.box().toString());
  }

  private static LabelSpace textsOnBothSides() {
    LabelSpace space = new LabelSpace(PAGE);
    space.take(Quad.of(new Box(88, 96, 4, 8)));
    space.take(Quad.of(new Box(108, 96, 4, 8)));
    return space;
  }

  private static Footprint rectangle(double x, double y, double width, double height) {
    return new Footprint(Quad.of(new Box(x, y, width, height)).corners());
  }

  private static LabelRequest ofGround(
      Footprint ground, double width, double height, Anchor stand) {
    return new LabelRequest(
        ground.bounds().centre(), width, height, 1, stand, false, Optional.of(ground));
  }

  @Test
  void label_alone_standsAboveItsPoint() {
    LabelSpot spot = place(new LabelSpace(PAGE), request(new Xy(100, 100), 20, 4, Anchor.NEAR));
    assertTrue(spot.box().bottom() < 100);
    assertEquals(100, spot.box().centre().x(), 1e-9);
  }

  @Test
  void label_fixed_standsOnItsPoint() {
    LabelSpot spot = place(new LabelSpace(PAGE), request(new Xy(100, 100), 20, 4, Anchor.CENTRE));
    assertEquals(new Xy(100, 100), spot.box().centre());
  }

  @Test
  void label_lineAbove_goesBelow() {
    LabelSpace space = new LabelSpace(PAGE);
    space.avoid(new Xy(0, 97), new Xy(280, 97));
    LabelSpot spot = place(space, request(new Xy(100, 100), 20, 4, Anchor.NEAR));
    assertTrue(spot.box().y() > 97);
  }

  @Test
  void label_surroundedByTexts_isLedTo() {
    LabelSpace space = new LabelSpace(PAGE);
    space.take(Quad.of(new Box(70, 90, 60, 8)));
    space.take(Quad.of(new Box(70, 102, 60, 8)));
    LabelSpot spot = place(space, request(new Xy(100, 100), 20, 6, Anchor.NEAR));
    assertTrue(spot.leader().isPresent());
  }

  @Test
  void label_pageFull_hasNoPlace() {
    LabelSpace space = new LabelSpace(PAGE);
    space.take(Quad.of(PAGE));
    assertFalse(
        new LabelPlacer(space)
            .place(List.of(request(new Xy(9, 9), 20, 4, Anchor.CENTRE)))
            .get(0)
            .isPresent());
  }

  @Test
  void label_fixedOnly_isLeftOutWhereATextStands() {
    LabelRequest request = request(new Xy(100, 100), 20, 4, Anchor.FIXED);
    assertEquals(
        new Xy(100, 100), place(new LabelSpace(PAGE), request).box().centre(), "on free ground");
    LabelSpace space = new LabelSpace(PAGE);
    space.take(Quad.of(new Box(95, 98, 10, 4)));
    assertFalse(new LabelPlacer(space).place(List.of(request)).get(0).isPresent());
  }

  private static LabelRequest request(Xy at, double width, double height, Anchor stand) {
    return new LabelRequest(at, width, height, 1, stand, false, Optional.empty());
  }

  private static LabelSpot place(LabelSpace space, LabelRequest request) {
    return new LabelPlacer(space).place(List.of(request)).get(0).orElseThrow();
  }
}
