package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.Temporal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.UnitSystem;

/** What is written is read again by another library, which follows RFC 5545 on its own. */
class CalendarWriterTest {
  private static final PlanInfo PLAN =
      new PlanInfo("back-yard", "Back yard", "", "", "2026-03-01", "", UnitSystem.US, "$");
  private static final DiaryEntry NET =
      new DiaryEntry(
          "net-s4",
          LocalDate.of(2029, 12, 30),
          LocalDate.of(2030, 1, 4),
          "Net berries: currant; gooseberry, black",
          "Held to the ground: \"tight\"\nall round, " + "so that none is caught ".repeat(6) + "é",
          3);
  private static final DiaryEntry SET_OUT =
      new DiaryEntry(
          "plant-1",
          LocalDate.of(2027, 5, 10),
          LocalDate.of(2027, 5, 10),
          "Plant: tomato",
          "Water in",
          0);

  private static Calendar read(String text) {
    try {
      return new CalendarBuilder().build(new StringReader(text));
    } catch (Exception e) {
      throw new AssertionError("no calendar: " + e.getMessage() + "\n" + text, e);
    }
  }

  private static String value(VEvent event, String property) {
    return event.<Property>getProperty(property).orElseThrow().getValue();
  }

  @Test
  void anotherReader_findsEveryEntryAsItWasWritten() {
    Calendar calendar = read(CalendarWriter.text(PLAN, List.of(NET, SET_OUT)));
    ValidationResult checked = calendar.validate();
    assertFalse(checked.hasErrors(), checked.toString());
    List<VEvent> events = calendar.getComponents("VEVENT");
    assertEquals(2, events.size());
    VEvent first = events.get(0);
    assertEquals("plant-1@back-yard.yardloom", value(first, Property.UID));
    assertEquals("20270510", value(first, Property.DTSTART));
    assertEquals("20270511", value(first, Property.DTEND), "the day after its last");
    assertEquals("20260301T000000Z", value(first, Property.DTSTAMP), "the date of the plan");
    assertTrue(first.<Property>getProperty(Property.RRULE).isEmpty());
    VEvent net = events.get(1);
    assertEquals(NET.title(), value(net, Property.SUMMARY));
    assertEquals(NET.text(), value(net, Property.DESCRIPTION));
    assertEquals("20291230", value(net, Property.DTSTART));
    assertEquals("20300105", value(net, Property.DTEND));
    assertEquals("FREQ=YEARLY;INTERVAL=3", value(net, Property.RRULE));
    assertEquals(LocalDate.of(2029, 12, 30), (Temporal) net.getDateTimeStart().getDate());
  }

  /** RFC 5545, 3.1: lines end in CR LF and are no longer than 75 octets without it. */
  @Test
  void lines_areFoldedAsTheStandardAsks() {
    String text = CalendarWriter.text(PLAN, List.of(NET, SET_OUT));
    assertTrue(text.endsWith("END:VCALENDAR\r\n"));
    assertEquals(text.replace("\r\n", "").length(), text.replaceAll("[\r\n]", "").length());
    for (String line : text.split("\r\n")) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
    }
  }

  /** Where and when the program runs changes nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"Pacific/Kiritimati", "Pacific/Pago_Pago", "America/St_Johns"})
  void file_isTheSameInEveryTimeZone(String zone) {
    String here = CalendarWriter.text(PLAN, List.of(SET_OUT, NET));
    TimeZone usual = TimeZone.getDefault();
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    try {
      assertEquals(here, CalendarWriter.text(PLAN, List.of(NET, SET_OUT)));
    } finally {
      TimeZone.setDefault(usual);
    }
  }

  @Test
  void uidOfAnEntry_outlivesAChangeOfItsDays() {
    DiaryEntry moved =
        new DiaryEntry(
            "plant-1",
            LocalDate.of(2028, 4, 2),
            LocalDate.of(2028, 4, 3),
            "Plant: tomato",
            "Water in",
            0);
    Set<String> uids = new HashSet<>();
    for (DiaryEntry entry : List.of(SET_OUT, moved)) {
      List<VEvent> events = read(CalendarWriter.text(PLAN, List.of(entry))).getComponents("VEVENT");
      uids.add(value(events.get(0), Property.UID));
    }
    assertEquals(1, uids.size());
  }

  /** A plan without a date that reads as one is stamped with its first entry. */
  @Test
  void planWithoutADate_isStampedWithItsFirstEntry() {
    PlanInfo undated = new PlanInfo("y", "Y", "", "", "spring", "", UnitSystem.METRIC, "€");
    List<VEvent> events =
        read(CalendarWriter.text(undated, List.of(NET, SET_OUT))).getComponents("VEVENT");
    assertEquals("20270510T000000Z", value(events.get(1), Property.DTSTAMP));
  }
}
