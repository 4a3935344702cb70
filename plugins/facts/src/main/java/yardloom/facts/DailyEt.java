package yardloom.facts;

import java.time.LocalDate;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.unit.Length;

/**
 * What the air took from short grass on each day of a weather record.
 *
 * @param days never negative; days that the record lacks are missing
 * @param tall the same for tall alfalfa, on the days whose records allow it
 * @param method how it was found, for notes
 */
public record DailyEt(
    SortedMap<LocalDate, Length> days, SortedMap<LocalDate, Length> tall, String method) {
  public DailyEt {
    days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
    tall = Collections.unmodifiableSortedMap(new TreeMap<>(tall));
  }
}
