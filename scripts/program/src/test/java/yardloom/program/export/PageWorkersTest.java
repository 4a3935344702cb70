package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

class PageWorkersTest {
  private final List<SvgSheet> sheets =
      IntStream.rangeClosed(1, 9)
          .mapToObj(
              n ->
                  new ComposedSheet(
                      "s" + n, n, "", "", Paper.named("a4"), Optional.empty(), List.of()))
          .map(SvgSheet::of)
          .toList();

  @Test
  void whatIsMadeStandsInTheOrderOfTheSheets() throws IOException {
    AtomicInteger now = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    List<Integer> made =
        PageWorkers.each(
            sheets,
            sheet -> {
              most.accumulateAndGet(now.incrementAndGet(), Math::max);
              Thread.yield();
              now.decrementAndGet();
              return sheet.sheet().number() * 7;
            });
    assertEquals(List.of(7, 14, 21, 28, 35, 42, 49, 56, 63), made);
    assertEquals(true, most.get() <= 2, "more than two at once would not fit in the memory");
  }

  @Test
  void theFirstFailureIsToldWhenAllHaveEnded() {
    AtomicInteger ended = new AtomicInteger();
    IOException e =
        assertThrows(
            IOException.class,
            () ->
                PageWorkers.each(
                    sheets,
                    sheet -> {
                      ended.incrementAndGet();
                      int number = sheet.sheet().number();
                      if (number == 8 || number == 3) {
                        throw new IOException("sheet " + number);
                      }
                      return 0;
                    }));
    assertEquals("sheet 3", e.getMessage());
    assertEquals(9, ended.get());
  }
}
