package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Another decoder, that of the Java library, reads what is written. */
class PngFileTest {
  private static byte[] written(BufferedImage image, int dpi) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      PngFile.write(image, dpi, out);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return out.toByteArray();
  }

  private static BufferedImage image(int width, int height, int... pixels) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, width, height, pixels, 0, width);
    return image;
  }

  @Property(tries = 60)
  void anyPixels_readByAnotherDecoder_areTheSame(
      @ForAll @IntRange(min = 1, max = 90) int width,
      @ForAll @IntRange(min = 1, max = 90) int height,
      @ForAll boolean opaque,
      @ForAll long seed)
      throws IOException {
    java.util.Random random = new java.util.Random(seed);
    int[] pixels =
        random.ints((long) width * height).map(p -> opaque ? p | 0xff000000 : p).toArray();
    BufferedImage read =
        ImageIO.read(new ByteArrayInputStream(written(image(width, height, pixels), 150)));
    assertArrayEquals(pixels, read.getRGB(0, 0, width, height, null, 0, width));
  }

  /** Name and data of each chunk; the check sums are left out. */
  private static Map<String, byte[]> chunks(byte[] file) throws IOException {
    Map<String, byte[]> chunks = new LinkedHashMap<>();
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(file))) {
      in.readLong();
      while (!chunks.containsKey("IEND")) {
        int length = in.readInt();
        String type = new String(in.readNBytes(4), StandardCharsets.US_ASCII);
        chunks.put(type, in.readNBytes(length));
        in.readInt();
      }
    }
    return chunks;
  }

  /**
   * Order and contents from the PNG specification, third edition: signature (5.2), IHDR (11.2.1),
   * sRGB, gAMA 45455 and pHYs before IDAT (5.6, 11.3.2.5, 11.3.4.3); 100 dots to the inch are 100 /
   * 0.0254 = 3937 to the metre = 0x0f61.
   */
  @Test
  void opaqueImage_hasTheChunksOfTheSpecification() throws IOException {
    byte[] file = written(image(3, 2, 0xff010203, ~0, ~0, ~0, ~0, 0xff040506), 100);
    assertArrayEquals(new byte[] {(byte) 137, 80, 78, 71, 13, 10, 26, 10}, Arrays.copyOf(file, 8));
    Map<String, byte[]> chunks = chunks(file);
    assertEquals("[IHDR, sRGB, gAMA, pHYs, IDAT, IEND]", chunks.keySet().toString());
    assertArrayEquals(new byte[] {0, 0, 0, 3, 0, 0, 0, 2, 8, 2, 0, 0, 0}, chunks.get("IHDR"));
    assertArrayEquals(new byte[] {0}, chunks.get("sRGB"));
    assertArrayEquals(new byte[] {0, 0, (byte) 0xb1, (byte) 0x8f}, chunks.get("gAMA"));
    assertArrayEquals(new byte[] {0, 0, 0x0f, 0x61, 0, 0, 0x0f, 0x61, 1}, chunks.get("pHYs"));
  }

  /** The last twelve bytes of every PNG file are the same (their check sum from memory). */
  @Test
  void end_isThatOfEveryPng() {
    byte[] file = written(image(1, 1, ~0), 150);
    assertArrayEquals(
        new byte[] {0, 0, 0, 0, 'I', 'E', 'N', 'D', (byte) 0xae, 0x42, 0x60, (byte) 0x82},
        Arrays.copyOfRange(file, file.length - 12, file.length));
  }

  @Test
  void imageThatSomethingShowsThrough_hasAlpha() throws IOException {
    assertEquals(6, chunks(written(image(2, 1, 0x80ff0000, ~0), 150)).get("IHDR")[9]);
    assertEquals(2, chunks(written(image(2, 1, 0xffff0000, ~0), 150)).get("IHDR")[9]);
  }
}
