package chock.board;

import chock.record.UnusableInput;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Semaphore;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A photo drawn anew from what was sent. Nothing of the file itself is kept: no position, no name of the camera, nothing
 * hidden behind the picture.
 *
 * @param hadPosition whether the file said where it was taken
 */
record Picture(byte[] jpeg, int width, int height, boolean hadPosition) {
    /** Largest file taken, in bytes. */
    static final int LARGEST = 16_000_000;
    private static final long MOST_POINTS = 50_000_000;
    /** Its reader holds the whole of it. */
    private static final long MOST_POINTS_WEBP = 16_000_000;
    private static final int LONG_SIDE = 2000;
    private static final float QUALITY = 0.85f;
    private static final List<String> TAKEN = List.of("jpeg", "png", "webp");
    /** Pictures are large once they are drawn; one at a time, whoever asks. */
    private static final Semaphore TURN = new Semaphore(1, true);

    /**
     * @throws UnusableInput when it is too large, of another kind by its content, or damaged
     */
    static Picture of(byte[] file) {
        if (file.length > LARGEST) {
            throw refused("it has " + file.length / 1_000_000 + " MB", "Take one of up to " + LARGEST / 1_000_000 + " MB");
        }
        TURN.acquireUninterruptibly();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            ImageReader reader = reader(in);
            try {
                reader.setInput(in, true, true);
                Metadata told = reader.getFormatName().equalsIgnoreCase("jpeg") ? told(file) : new Metadata();
                GpsDirectory position = told.getFirstDirectoryOfType(GpsDirectory.class);
                return made(drawn(read(reader), orientation(told)), position != null && position.getGeoLocation() != null);
            } finally {
                reader.dispose();
            }
        } catch (UnusableInput e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            // A decoder meets a damaged file in many ways.
            throw refused("it is damaged", "Take it again, or save it anew as JPEG");
        } finally {
            TURN.release();
        }
    }

    private static UnusableInput refused(String what, String advice) {
        return UnusableInput.of("the photo", what, advice);
    }

    private static ImageReader reader(ImageInputStream in) throws IOException {
        for (String name : TAKEN) {
            for (Iterator<ImageReader> all = ImageIO.getImageReadersByFormatName(name); all.hasNext(); ) {
                ImageReader reader = all.next();
                if (reader.getOriginatingProvider().canDecodeInput(in)) {
                    return reader;
                }
            }
        }
        throw refused("by its content it is no JPEG, PNG or WebP", "Take a photo of one of these kinds");
    }

    /** Read no finer than it will be shown, so that a small file cannot ask for much memory. */
    private static BufferedImage read(ImageReader reader) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        long most = reader.getFormatName().equalsIgnoreCase("webp") ? MOST_POINTS_WEBP : MOST_POINTS;
        if (width < 1 || height < 1 || (long) width * height > most) {
            throw refused("it is " + width + " by " + height + " points", "Take one of up to " + most / 1_000_000 + " million points");
        }
        int every = Math.max(1, Math.max(width, height) / LONG_SIDE);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        return reader.read(0, param);
    }

    /** What a camera writes into a JPEG, and only that: other parts of other kinds may be packed to any size. */
    private static Metadata told(byte[] file) {
        try {
            return JpegMetadataReader.readMetadata(new ByteArrayInputStream(file), List.of(new ExifReader()));
        } catch (JpegProcessingException | IOException | RuntimeException e) {
            return new Metadata();
        }
    }

    /** 1 to 8 as in Exif; 1 where nothing is said. */
    private static int orientation(Metadata told) {
        ExifIFD0Directory exif = told.getFirstDirectoryOfType(ExifIFD0Directory.class);
        Integer said = exif == null ? null : exif.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        return said == null || said < 1 || said > 8 ? 1 : said;
    }

    private static BufferedImage drawn(BufferedImage read, int orientation) {
        double scale = Math.min(1, (double) LONG_SIDE / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        boolean lies = orientation >= 5;
        BufferedImage drawn = new BufferedImage(lies ? height : width, lies ? width : height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = drawn.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, drawn.getWidth(), drawn.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform turn = turn(orientation, width, height);
        turn.scale((double) width / read.getWidth(), (double) height / read.getHeight());
        pen.drawImage(read, turn, null);
        pen.dispose();
        return drawn;
    }

    /** What brings a picture stored like this upright (Exif 2.3, orientation; from memory). */
    private static AffineTransform turn(int orientation, double w, double h) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }

    private static Picture made(BufferedImage drawn, boolean hadPosition) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(drawn, null, null), param);
        } finally {
            writer.dispose();
        }
        return new Picture(bytes.toByteArray(), drawn.getWidth(), drawn.getHeight(), hadPosition);
    }
}
