package chock.report;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Reads the QR code on the first page of a paper. */
public final class CodeOnPaper {
    /** A reader looks for the squares of a large code by their distance, and at one distance among many it misses some: then one holds it nearer. */
    private static final int[] DOTS_PER_INCH = {150, 200, 300};

    private CodeOnPaper() { }

    /** @throws ReaderException when it cannot be read from near either */
    public static String read(PDDocument pdf) throws IOException, ReaderException {
        ReaderException missed = null;
        for (int dots : DOTS_PER_INCH) {
            try {
                return read(new PDFRenderer(pdf).renderImageWithDPI(0, dots));
            } catch (ReaderException e) {
                missed = e;
            }
        }
        throw missed;
    }

    /** A picture that is nothing but the code is read as such where its squares were missed, which depends on what the code says. */
    static String read(BufferedImage picture) throws ReaderException {
        try {
            return read(picture, DecodeHintType.TRY_HARDER);
        } catch (ReaderException missed) {
            return read(picture, DecodeHintType.PURE_BARCODE);
        }
    }

    private static String read(BufferedImage picture, DecodeHintType way) throws ReaderException {
        int[] dots = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(picture.getWidth(), picture.getHeight(), dots))), Map.of(way, true)).getText();
    }
}
