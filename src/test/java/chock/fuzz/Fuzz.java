package chock.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Alters good files in every way that hand, disk and malice do, and hands them to a reader for a bounded time: a second,
 * or {@code -Dchock.fuzz=600}. The reader may refuse; it may not fail otherwise, hang, or keep what it read.
 */
public final class Fuzz {
    private static final long SECONDS = Long.getLong("chock.fuzz", 1);
    private static final long PATIENCE_SECONDS = 60;
    private static final long KEPT_AT_MOST = 64L << 20;
    private static final int LONGEST = 200_000;
    /** So many are read however slow the machine is: of fewer, what they leave behind could not be told. */
    private static final int AT_LEAST = 120;
    private static final List<String> SPICE = List.of("null", "~", "\"", "'", "{", "}", "[", "]", ": ", "- ", "\n", "\r", "\t", "\u0000", "#", "|", ">", "&a ", "*a", "<<: ", "!!int ", "%", "@", "`",
            "-0", "1e999999999", "99999999999999999999", "NaN", ".inf", "0x", "2026-02-30", "9999-12-31", "+999999999-01-01", "24:00", "İ", "ß", "\u202e", "\ufeff", "\ud83d\ude00", "e\u0301",
            "../", "${x}", "<script>", "' or 1=1 --", "1,5 mm", "1/0 in", "0 mm", "± ", "±0 mm", "yes", "no", "{\"a\":", "[[[[[[[[[[[[[[[[[[[[", "- - - - - - - - - - - - - - - ");

    private Fuzz() { }

    /** What is handed the altered files. */
    public interface Reader {
        void read(byte[] bytes) throws Exception;
    }

    /** @return how many altered files were read */
    public static int run(List<byte[]> good, Reader reader) {
        return run(good, reader, new Random().nextLong());
    }

    static int run(List<byte[]> good, Reader reader, long seed) {
        ExecutorService one = Executors.newSingleThreadExecutor();
        Random random = new Random(seed);
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
        long before = 0;
        int count = 0;
        try {
            while (System.nanoTime() < end || count < AT_LEAST) {
                byte[] altered = altered(good.get(random.nextInt(good.size())), good, random);
                Future<?> reading = one.submit(() -> {
                    reader.read(altered);
                    return null;
                });
                try {
                    reading.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
                } catch (TimeoutException e) {
                    throw new AssertionError("still reading after " + PATIENCE_SECONDS + " s: " + told(altered, seed), e);
                } catch (java.util.concurrent.ExecutionException e) {
                    throw new AssertionError(e.getCause() + " while reading " + told(altered, seed), e.getCause());
                }
                if (++count == 20) {
                    before = used();
                }
            }
            long grown = used() - before;
            if (grown > KEPT_AT_MOST) {
                throw new AssertionError(count + " files left " + (grown >> 20) + " MB behind (seed " + seed + ")");
            }
            return count;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        } finally {
            one.shutdownNow();
        }
    }

    private static String told(byte[] altered, long seed) {
        return "(seed " + seed + ", as Base64) " + Base64.getEncoder().encodeToString(altered);
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    static byte[] altered(byte[] good, List<byte[]> all, Random random) {
        byte[] bytes = good.clone();
        for (int times = 1 + random.nextInt(4); times > 0; times--) {
            int from = random.nextInt(bytes.length + 1);
            int to = Math.min(bytes.length, from + random.nextInt(40));
            bytes = switch (random.nextInt(9)) {
                case 0 -> joined(bytes, from, to, new byte[0]);
                case 1 -> joined(bytes, from, from, spice(random));
                case 2 -> joined(bytes, from, to, spice(random));
                case 3 -> flipped(bytes, random);
                case 4 -> joined(bytes, from, from, Arrays.copyOfRange(bytes, from, to));
                case 5 -> Arrays.copyOf(bytes, from);
                case 6 -> lineMoved(bytes, random);
                case 7 -> joined(bytes, from, from, part(all.get(random.nextInt(all.size())), random));
                default -> joined(bytes, from, from, spice(random).length == 0 ? bytes : repeated(spice(random), 1 + random.nextInt(400)));
            };
            if (bytes.length > LONGEST) {
                bytes = Arrays.copyOf(bytes, LONGEST);
            }
        }
        return bytes;
    }

    private static byte[] spice(Random random) {
        return SPICE.get(random.nextInt(SPICE.size())).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] repeated(byte[] what, int times) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int i = 0; i < times; i++) {
            out.writeBytes(what);
        }
        return out.toByteArray();
    }

    private static byte[] part(byte[] other, Random random) {
        int from = random.nextInt(other.length + 1);
        return Arrays.copyOfRange(other, from, Math.min(other.length, from + random.nextInt(400)));
    }

    private static byte[] flipped(byte[] bytes, Random random) {
        byte[] flipped = bytes.clone();
        if (flipped.length > 0) {
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return flipped;
    }

    private static byte[] lineMoved(byte[] bytes, Random random) {
        String[] lines = new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1);
        int a = random.nextInt(lines.length);
        int b = random.nextInt(lines.length);
        String kept = lines[a];
        lines[a] = lines[b];
        lines[b] = kept;
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] joined(byte[] bytes, int from, int to, byte[] between) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(between);
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }
}
