package chock.report;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/** A QR code (ISO/IEC 18004) as a picture in black and white, with the quiet border it needs. */
final class QrCode {
    /** Dots of the picture to each square of the code, each way, so that no viewer blurs its edges. */
    private static final int SCALE = 4;
    private static final int QUIET = 4;
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private QrCode() { }

    /**
     * The address of a picture that carries itself (RFC 2397), a PNG of one bit a dot.
     *
     * @param text plain ASCII; up to 2,331 letters fit at middling strength (15 % of it may be spoilt)
     * @return null when it does not fit into one code
     */
    static String picture(String text) {
        try {
            BitMatrix squares = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, QUIET));
            return "data:image/png;base64," + Base64.getEncoder().encodeToString(png(squares));
        } catch (WriterException e) {
            return null;
        }
    }

    private static byte[] png(BitMatrix squares) {
        int side = squares.getWidth() * SCALE;
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(png)) {
            out.write(PNG);
            ByteArrayOutputStream head = new ByteArrayOutputStream();
            DataOutputStream fields = new DataOutputStream(head);
            fields.writeInt(side);
            fields.writeInt(side);
            fields.write(new byte[] {1, 0, 0, 0, 0});
            chunk(out, "IHDR", head.toByteArray());
            chunk(out, "IDAT", dots(squares, side));
            chunk(out, "IEND", new byte[0]);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory", e);
        }
        return png.toByteArray();
    }

    private static byte[] dots(BitMatrix squares, int side) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
            for (int y = 0; y < side; y++) {
                byte[] row = new byte[1 + (side + 7) / 8];
                for (int x = 0; x < side; x++) {
                    if (!squares.get(x / SCALE, y / SCALE)) {
                        row[1 + x / 8] |= (byte) (0x80 >> x % 8);
                    }
                }
                out.write(row);
            }
        }
        return packed.toByteArray();
    }

    private static void chunk(DataOutputStream out, String name, byte[] data) throws IOException {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(type);
        sum.update(data);
        out.writeInt(data.length);
        out.write(type);
        out.write(data);
        out.writeInt((int) sum.getValue());
    }
}
