package chock.spark;

import chock.archive.Judging;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FSDataInputStream;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.io.NullWritable;
import org.apache.hadoop.io.compress.CompressionCodec;
import org.apache.hadoop.io.compress.CompressionCodecFactory;
import org.apache.hadoop.mapreduce.InputSplit;
import org.apache.hadoop.mapreduce.JobContext;
import org.apache.hadoop.mapreduce.RecordReader;
import org.apache.hadoop.mapreduce.TaskAttemptContext;
import org.apache.hadoop.mapreduce.lib.input.FileInputFormat;
import org.apache.hadoop.mapreduce.lib.input.FileSplit;

/**
 * Reads files of lines as bytes, in partitions side by side. A line ends with {@code \n} and with nothing else. Of a line that
 * is longer than a record may be, only the beginning is held in memory: the readers at hand would load it whole, or pass it
 * over without a word.
 */
public final class LineReading extends FileInputFormat<Line, NullWritable> {
    static final String FILES = "chock.archive.files";
    /** So much is kept of a line that is too long: enough to see what it was. */
    static final int BEGINNING = 10_000;
    private static final int BUFFER = 1 << 16;

    /** The files as they were listed, and no others: no name of one is taken for a pattern. */
    @Override
    protected List<FileStatus> listStatus(JobContext job) throws IOException {
        List<FileStatus> files = new ArrayList<>();
        for (String name : job.getConfiguration().get(FILES).split("\n")) {
            Path path = new Path(name);
            files.add(path.getFileSystem(job.getConfiguration()).getFileStatus(path));
        }
        return files;
    }

    @Override
    protected boolean isSplitable(JobContext job, Path file) {
        return codec(job.getConfiguration(), file) == null;
    }

    private static CompressionCodec codec(Configuration conf, Path file) {
        return new CompressionCodecFactory(conf).getCodec(file);
    }

    @Override
    public RecordReader<Line, NullWritable> createRecordReader(InputSplit split, TaskAttemptContext task) {
        return new Reader();
    }

    /** The lines that begin in one partition of a file; the last one is read to its end. */
    private static final class Reader extends RecordReader<Line, NullWritable> {
        private final byte[] buffer = new byte[BUFFER];
        private String file;
        private InputStream in;
        private int filled;
        private int next;
        private long position;
        private long first;
        private long end;
        private Line line;

        @Override
        public void initialize(InputSplit given, TaskAttemptContext task) throws IOException {
            FileSplit split = (FileSplit) given;
            file = split.getPath().toString();
            first = split.getStart();
            end = first + split.getLength();
            CompressionCodec codec = codec(task.getConfiguration(), split.getPath());
            FSDataInputStream raw = split.getPath().getFileSystem(task.getConfiguration()).open(split.getPath());
            if (codec != null) {
                in = codec.createInputStream(raw);
                end = Long.MAX_VALUE;
            } else {
                in = raw;
            }
            if (first > 0) {
                // From the sign before: where that ends a line, the next line begins here and is ours.
                raw.seek(first - 1);
                position = first - 1;
                take();
            }
        }

        @Override
        public boolean nextKeyValue() throws IOException {
            if (position >= end) {
                return false;
            }
            line = take();
            return line != null;
        }

        /** The next line, or null at the end of the file. */
        private Line take() throws IOException {
            long start = position;
            long length = 0;
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(BUFFER / 4);
            boolean cut = false;
            while (fill()) {
                int stop = next;
                while (stop < filled && buffer[stop] != '\n') {
                    stop++;
                }
                int here = stop - next;
                if (!cut && length + here > Judging.LONGEST_LINE) {
                    bytes.write(buffer, next, here);
                    bytes = beginning(bytes);
                    cut = true;
                } else if (!cut) {
                    bytes.write(buffer, next, here);
                }
                length += here;
                boolean ended = stop < filled;
                position += here + (ended ? 1 : 0);
                next = stop + (ended ? 1 : 0);
                if (ended) {
                    return new Line(file, start, length, bytes.toByteArray(), "byte");
                }
            }
            return position == start ? null : new Line(file, start, length, bytes.toByteArray(), "byte");
        }

        private static ByteArrayOutputStream beginning(ByteArrayOutputStream whole) {
            ByteArrayOutputStream kept = new ByteArrayOutputStream(BEGINNING);
            kept.write(whole.toByteArray(), 0, Math.min(BEGINNING, whole.size()));
            return kept;
        }

        private boolean fill() throws IOException {
            if (next < filled) {
                return true;
            }
            next = 0;
            try {
                filled = Math.max(0, in.read(buffer));
            } catch (EOFException e) {
                throw new IOException(file + " ends in the middle of what was packed", e);
            }
            return filled > 0;
        }

        @Override
        public Line getCurrentKey() {
            return line;
        }

        @Override
        public NullWritable getCurrentValue() {
            return NullWritable.get();
        }

        @Override
        public float getProgress() {
            return end == Long.MAX_VALUE || end <= first ? 0 : Math.min(1f, (position - first) / (float) (end - first));
        }

        @Override
        public void close() throws IOException {
            if (in != null) {
                in.close();
            }
        }
    }

    /** The same of a text that is at hand: of one that is too long only the beginning. */
    static Line of(String file, long at, byte[] bytes, String unit) {
        return bytes.length <= Judging.LONGEST_LINE ? new Line(file, at, bytes.length, bytes, unit) : new Line(file, at, bytes.length, Arrays.copyOf(bytes, BEGINNING), unit);
    }
}
