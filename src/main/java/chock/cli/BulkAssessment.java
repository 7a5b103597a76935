package chock.cli;

import chock.archive.Judging;
import chock.archive.Outcome;
import chock.assess.Assessment;
import chock.record.UnusableInput;
import chock.report.JsonReport;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.LongConsumer;

/**
 * Judges a stream of records, one JSON object a line, into one line each in the same order. Lines wait for their turn in
 * a queue of fixed length, so memory stays the same however long the stream is. A line that cannot be used is told by its
 * number and skipped.
 */
final class BulkAssessment {
    private static final int WAITING_PER_CORE = 16;

    private final Bench bench;
    private final Judging judging;
    private final LongConsumer progress;
    private final int cores;

    /**
     * @param progress hears of every line that is dealt with, by the bytes it took
     * @param cores how many records are judged at a time
     */
    BulkAssessment(Bench bench, Judging judging, LongConsumer progress, int cores) {
        this.bench = bench;
        this.judging = judging;
        this.progress = progress;
        this.cores = cores;
    }

    /** What came of one line: a line of the result, or why there is none. */
    private record Dealt(int status, String result, Throwable why, long bytes) { }

    /** A line of the stream, without its end; null bytes when it is too long to be a record. */
    private record Line(long number, byte[] bytes, long length) { }

    /**
     * Judges the stream from a line on.
     *
     * @param name name of the stream in messages
     * @param after number of the last line that is dealt with already; zero to begin at the first
     * @return the worst exit status of its lines; unusable when there was none
     * @throws UnusableInput when the stream cannot be read or the result not be written
     */
    int run(String name, InputStream stream, OutputStream result, long after) {
        ExecutorService benches = Executors.newFixedThreadPool(cores);
        Deque<Future<Dealt>> waiting = new ArrayDeque<>();
        int status = after > 0 ? Bench.RELEASED : -1;
        try (BufferedInputStream lines = new BufferedInputStream(stream, 1 << 16)) {
            long number = 0;
            for (Line line = next(lines, ++number); line != null; line = next(lines, ++number)) {
                if (number <= after) {
                    progress.accept(line.length);
                    continue;
                }
                Line one = line;
                waiting.add(benches.submit(() -> deal(name, one)));
                if (waiting.size() >= cores * WAITING_PER_CORE) {
                    status = Math.max(status, write(waiting.remove(), result));
                }
            }
            while (!waiting.isEmpty()) {
                status = Math.max(status, write(waiting.remove(), result));
            }
            result.flush();
        } catch (IOException e) {
            throw UnusableInput.of(name, "it could not be read or written to the end: " + e.getMessage(), "What was written so far is whole lines; go on from there with --resume");
        } finally {
            benches.shutdownNow();
        }
        if (status < 0) {
            bench.say(name + ": there is no record in it.");
            return Bench.UNUSABLE;
        }
        return status;
    }

    private static Line next(InputStream lines, long number) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        long length = 0;
        int b = lines.read();
        if (b < 0) {
            return null;
        }
        for (; b >= 0; b = lines.read()) {
            length++;
            if (b == '\n') {
                break;
            }
            if (length <= Judging.LONGEST_LINE) {
                bytes.write(b);
            }
        }
        return new Line(number, length > Judging.LONGEST_LINE ? null : bytes.toByteArray(), length);
    }

    private Dealt deal(String name, Line line) {
        Outcome<Assessment> came = judging.assess(name + ", line " + line.number, line.bytes);
        if (came.refused() != null) {
            return new Dealt(Bench.UNUSABLE, null, came.refused(), line.length);
        }
        if (came.failed() != null) {
            return new Dealt(Bench.FAILED, null, came.failed(), line.length);
        }
        Assessment assessment = came.result();
        try {
            return new Dealt(assessment.allReleased() ? Bench.RELEASED : Bench.BLOCKED, JsonReport.line(line.number, assessment), null, line.length);
        } catch (RuntimeException | StackOverflowError e) {
            return new Dealt(Bench.FAILED, null, e, line.length);
        }
    }

    private int write(Future<Dealt> turn, OutputStream result) throws IOException {
        Dealt dealt;
        try {
            dealt = turn.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("it was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
        progress.accept(dealt.bytes);
        if (dealt.why instanceof UnusableInput unusable) {
            bench.say(unusable.getMessage());
        } else if (dealt.why != null) {
            bench.failed(dealt.why);
        } else {
            result.write(dealt.result.getBytes(StandardCharsets.UTF_8));
        }
        return dealt.status;
    }
}
