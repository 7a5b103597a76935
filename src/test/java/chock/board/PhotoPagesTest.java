package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.UnusableInput;
import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photo is judged by its content, drawn anew, and shown with the entry it belongs to. */
class PhotoPagesTest {
    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;
    private static Visit tom;
    private static String lark;
    private static String merle;

    @BeforeAll
    static void start() {
        running = new Running(folder.resolve("store"));
        lead = running.lead();
        tom = running.person(lead, "tom", "Tom Fell", "technician");
        lark = running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null).machine();
        merle = running.board.shop().take("merle", Bench.example("merle-released.yaml"), "lead", null).machine();
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    /** Its left half black, its right half white. */
    private static byte[] picture(String kind, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(width / 2, 0, width, height);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, kind, out);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toByteArray();
    }

    /** The JPEG with an Exif part that says how it lies and where it was taken: 51° N, 1° W. */
    private static byte[] withExif(byte[] jpeg, int orientation) {
        ByteBuffer tiff = ByteBuffer.allocate(200).order(ByteOrder.BIG_ENDIAN);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2).putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation).putShort((short) 0);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38).putInt(0);
        tiff.putShort((short) 4);
        tiff.putShort((short) 1).putShort((short) 2).putInt(2).put(new byte[] {'N', 0, 0, 0});
        tiff.putShort((short) 2).putShort((short) 5).putInt(3).putInt(92);
        tiff.putShort((short) 3).putShort((short) 2).putInt(2).put(new byte[] {'W', 0, 0, 0});
        tiff.putShort((short) 4).putShort((short) 5).putInt(3).putInt(116).putInt(0);
        tiff.putInt(51).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1);
        tiff.putInt(1).putInt(1).putInt(15).putInt(1).putInt(0).putInt(1);
        byte[] body = java.util.Arrays.copyOf(tiff.array(), tiff.position());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe1});
        int length = 2 + 6 + body.length;
        out.writeBytes(new byte[] {(byte) (length >> 8), (byte) length});
        out.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(body);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static HttpResponse<String> upload(Visit who, String machine, String entry, byte[] file, String name) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(("--cut\r\nContent-Disposition: form-data; name=\"form\"\r\n\r\n" + who.form + "\r\n--cut\r\nContent-Disposition: form-data; name=\"entry\"\r\n\r\n" + entry
                + "\r\n--cut\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"" + name + "\"\r\nContent-Type: image/jpeg\r\n\r\n").getBytes(StandardCharsets.UTF_8));
        all.writeBytes(file);
        all.writeBytes("\r\n--cut--\r\n".getBytes(StandardCharsets.UTF_8));
        return who.send("POST", "/machines/" + machine + "/photo", "multipart/form-data; boundary=cut", all.toByteArray());
    }

    private static JsonNode added(Visit who, String machine, String entry, byte[] file) throws IOException {
        HttpResponse<String> answer = who.send("POST", "/api/machines/" + machine + "/photos?entry=" + entry, "image/jpeg", file, "X-Form-Token", who.form);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
        return new ObjectMapper().readTree(answer.body());
    }

    private static byte[] kept(String digest) throws IOException {
        return Files.readAllBytes(folder.resolve("store/photos").resolve(digest.substring(0, 2)).resolve(digest));
    }

    @Test
    void a_photo_stands_with_its_entry_and_is_served_as_nothing_but_a_picture() throws Exception {
        assertThat(upload(tom, lark, "e5", picture("jpeg", 640, 480), "../../e5.jpg").headers().firstValue("Location")).contains("/machines/" + lark + "?entries=all#e5");
        String page = tom.get("/machines/" + lark + "?entries=all").body();
        assertThat(page).contains("alt=\"Photo to e5 by ");
        String link = page.replaceFirst("(?s).*src=\"(/machines/[^\"]+/photos/[0-9a-f]{64})\".*", "$1");
        HttpResponse<String> shown = tom.get(link);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(shown.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(shown.headers().firstValue("Content-Disposition").orElseThrow()).matches("inline; filename=\"[0-9a-f]{12}[.]jpg\"");
        assertThat(shown.headers().firstValue("Content-Security-Policy").orElseThrow()).contains("default-src 'none'").contains("sandbox");
        String digest = link.substring(link.length() - 64);
        assertThat(HexFormat.of().formatHex(java.security.MessageDigest.getInstance("SHA-256").digest(kept(digest)))).isEqualTo(digest);
        assertThat(running.visitor().get(link).statusCode()).isEqualTo(303);
        assertThat(lead.get("/journal").body()).contains("photo added").contains(digest);
        assertThat(tom.get("/api/machines/" + lark + "/photos").body()).contains(digest);
    }

    @Test
    void the_same_photo_twice_is_there_once_and_needs_an_entry() throws Exception {
        byte[] file = picture("png", 300, 200);
        String digest = added(tom, lark, "e6", file).get("digest").textValue();
        assertThat(added(tom, lark, "e6", file).get("digest").textValue()).isEqualTo(digest);
        assertThat(tom.get("/api/machines/" + lark + "/photos").body().split(digest, -1)).hasSize(2);
        assertThat(upload(tom, lark, "no-such", file, "x.png").statusCode()).isEqualTo(404);
        assertThat(upload(tom, "no-such", "e6", file, "x.png").statusCode()).isEqualTo(404);
        assertThat(tom.send("POST", "/api/machines/" + lark + "/photos?entry=e6", "image/png", file).statusCode()).as("without the token of the form").isEqualTo(403);
    }

    @Test
    void where_it_was_taken_is_left_out_and_it_stands_upright() throws Exception {
        byte[] sent = withExif(picture("jpeg", 600, 200), 6);
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(sent)).getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation().getLatitude()).isEqualTo(51.5);
        JsonNode made = added(tom, lark, "e7", sent);
        assertThat(made.get("positionLeftOut").booleanValue()).isTrue();
        assertThat(made.get("width").intValue()).isEqualTo(200);
        assertThat(made.get("height").intValue()).isEqualTo(600);
        byte[] kept = kept(made.get("digest").textValue());
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(kept)).getFirstDirectoryOfType(GpsDirectory.class)).isNull();
        assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        BufferedImage upright = ImageIO.read(new ByteArrayInputStream(kept));
        // Stored on its side, the left half is the upper one.
        assertThat(upright.getRGB(100, 50) & 0xff).isLessThan(60);
        assertThat(upright.getRGB(100, 550) & 0xff).isGreaterThan(200);
        Map<Integer, String> dark = new TreeMap<>();
        for (int lies = 1; lies <= 8; lies++) {
            Picture picture = Picture.of(withExif(picture("jpeg", 600, 200), lies));
            BufferedImage drawn = ImageIO.read(new ByteArrayInputStream(picture.jpeg()));
            boolean tall = drawn.getHeight() > drawn.getWidth();
            boolean first = (drawn.getRGB(20, 20) & 0xff) < 60;
            dark.put(lies, tall ? first ? "above" : "below" : first ? "left" : "right");
        }
        assertThat(dark.values()).containsExactly("left", "right", "right", "left", "above", "above", "below", "below");
    }

    @Test
    void what_hides_behind_a_picture_is_gone() throws Exception {
        byte[] jpeg = picture("jpeg", 300, 200);
        byte[] tail = "<html><script>alert(1)</script></html>PK\3\4".getBytes(StandardCharsets.UTF_8);
        byte[] both = java.util.Arrays.copyOf(jpeg, jpeg.length + tail.length);
        System.arraycopy(tail, 0, both, jpeg.length, tail.length);
        assertThat(new String(kept(added(tom, lark, "e8", both).get("digest").textValue()), StandardCharsets.ISO_8859_1)).doesNotContain("<script").doesNotContain("PK\3\4");
    }

    @Test
    void what_is_no_photo_by_its_content_is_refused_whatever_it_is_called() throws Exception {
        for (byte[] wrong : List.of("<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>".getBytes(StandardCharsets.UTF_8), "%PDF-1.7".getBytes(StandardCharsets.UTF_8), picture("gif", 20, 20), picture("bmp", 20, 20), "chock: job-record/2".getBytes(StandardCharsets.UTF_8))) {
            HttpResponse<String> answer = upload(tom, lark, "e5", wrong, "photo.jpg");
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("by its content it is no JPEG, PNG or WebP");
        }
        byte[] png = picture("png", 400, 400);
        assertThat(upload(tom, lark, "e5", java.util.Arrays.copyOf(png, 60), "half.png").body()).contains("it is damaged");
        assertThat(upload(tom, lark, "e5", new byte[0], "none.jpg").body()).contains("No photo was chosen");
    }

    /** A PNG of a few bytes that says it is enormous. */
    private static byte[] bomb() {
        ByteBuffer head = ByteBuffer.allocate(17).put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(90_000).putInt(90_000).put(new byte[] {8, 2, 0, 0, 0});
        CRC32 sum = new CRC32();
        sum.update(head.array());
        return ByteBuffer.allocate(8 + 4 + 17 + 4 + 12).put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}).putInt(13).put(head.array()).putInt((int) sum.getValue())
                .putInt(0).put("IDAT".getBytes(StandardCharsets.US_ASCII)).putInt(0x35af061e).array();
    }

    @Test
    void too_much_is_refused_before_it_is_drawn() {
        HttpResponse<String> answer = upload(tom, lark, "e5", bomb(), "x.png");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("it is 90000 by 90000 points");
        assertThat(upload(tom, lark, "e5", new byte[Board.LARGEST_PHOTO], "x.jpg").statusCode()).isEqualTo(413);
        assertThat(tom.send("POST", "/api/machines/" + lark + "/photos?entry=e5", "image/jpeg", new byte[Board.LARGEST_PHOTO + 1], "X-Form-Token", tom.form).statusCode()).isEqualTo(413);
        assertThatThrownBy(() -> Picture.of(new byte[Picture.LARGEST + 1])).isInstanceOf(UnusableInput.class).hasMessageContaining("16 MB");
        Picture wide = Picture.of(picture("png", 7000, 100));
        assertThat(wide.width()).isBetween(1500, 2000);
        assertThat(upload(tom, lark, "e5", picture("png", 3000, 2000), "fine.png").statusCode()).isEqualTo(303);
    }

    @Test
    void a_digest_leads_to_this_machines_photos_and_nowhere_else() throws Exception {
        String digest = added(tom, lark, "e9", picture("jpeg", 123, 45)).get("digest").textValue();
        assertThat(tom.get("/machines/" + lark + "/photos/" + digest).statusCode()).isEqualTo(200);
        for (String path : List.of("/machines/" + merle + "/photos/" + digest, "/machines/" + lark + "/photos/" + "0".repeat(64), "/machines/" + lark + "/photos/..%2f..%2fboard.sqlite", "/machines/" + lark + "/photos/%2e%2e%2fboard.sqlite",
                "/machines/" + lark + "/photos/" + digest.toUpperCase(java.util.Locale.ROOT), "/api/machines/" + lark + "/photos/..%5cboard.sqlite", "/machines/" + lark + "/photos/" + digest + "%00")) {
            HttpResponse<String> answer = tom.get(path);
            assertThat(answer.statusCode()).as(path).isIn(400, 404);
            assertThat(answer.body()).as(path).doesNotContain("SQLite format");
        }
        Files.write(folder.resolve("store/photos").resolve(digest.substring(0, 2)).resolve(digest), "<script>".getBytes(StandardCharsets.UTF_8));
        assertThat(tom.get("/machines/" + lark + "/photos/" + digest).statusCode()).as("somebody changed the file").isEqualTo(404);
    }
}
