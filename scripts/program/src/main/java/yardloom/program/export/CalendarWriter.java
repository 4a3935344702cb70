package yardloom.program.export;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.RecurrenceRule;
import biweekly.util.DateTimeComponents;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.Date;
import java.util.List;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.plan.PlanInfo;

/**
 * The diary of a plan as iCalendar: whole-day events for any calendar program.
 *
 * <p>An event keeps its UID when only its days change, so that a calendar read in again is brought
 * up to date and not doubled. The stamp is the date of the plan, or of the first entry where the
 * plan has none that reads as a date: no clock is asked.
 *
 * <p>References: RFC 5545, Internet Calendaring and Scheduling Core Object Specification, 2009.
 */
public final class CalendarWriter {
  private static final String PRODUCT = "-//Yardloom//Yard plan//EN";

  /** The library counts characters, and blanks at a fold beyond them; the standard 75 octets. */
  private static final int FOLD = 60;

  private CalendarWriter() {}

  /** The text of the file, lines of at most 75 octets ended by CR LF. */
  public static String text(PlanInfo plan, List<DiaryEntry> diary) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setExperimentalProperty("X-WR-CALNAME", plan.title());
    Date stamp = stamp(plan, diary);
    diary.stream().sorted().forEach(entry -> calendar.addEvent(event(plan, entry, stamp)));
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(FOLD);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return text.toString();
  }

  private static VEvent event(PlanInfo plan, DiaryEntry entry, Date stamp) {
    VEvent event = new VEvent();
    event.setUid(entry.key() + "@" + plan.id() + ".yardloom");
    event.setDateTimeStamp(stamp);
    event.setDateStart(new DateStart(day(entry.from())));
    // The end of a whole-day event is the day after its last.
    event.setDateEnd(new DateEnd(day(entry.until().plusDays(1))));
    event.setSummary(entry.title());
    event.setDescription(entry.text());
    event.setTransparency(true);
    if (entry.everyYears() > 0) {
      event.setRecurrenceRule(
          new RecurrenceRule(
              new Recurrence.Builder(Frequency.YEARLY).interval(entry.everyYears()).build()));
    }
    return event;
  }

  /** A day without a time, which no time zone can shift. */
  private static ICalDate day(LocalDate date) {
    return new ICalDate(
        new DateTimeComponents(
            date.getYear(), date.getMonthValue(), date.getDayOfMonth(), 0, 0, 0, false),
        false);
  }

  private static Date stamp(PlanInfo plan, List<DiaryEntry> diary) {
    return Date.from(issued(plan, diary).atStartOfDay(ZoneOffset.UTC).toInstant());
  }

  private static LocalDate issued(PlanInfo plan, List<DiaryEntry> diary) {
    return plan.issued()
        .or(() -> diary.stream().map(DiaryEntry::from).min(Comparator.naturalOrder()))
        .orElseThrow();
  }
}
