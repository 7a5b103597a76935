package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.signoff.ShopBench;
import chock.signoff.SignOff;
import chock.signoff.Verification;
import com.nimbusds.jose.JWSObject;
import com.nimbusds.jose.crypto.Ed25519Verifier;
import com.nimbusds.jose.jwk.JWKSet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/** The sheet says what was signed, and its code is enough to verify it by. */
class SignOffSheetTest {
    private static final Set<String> FIXED = Set.of("·", "Sign-off:", "DOES NOT HOLD", "Law not checked here.", "What stands below is what was signed. It is no leave to run, ride or hand over the machine.", "Until",
            ". It ends at once when anybody works on the machine.", "Machine", "Frame number", "Engine number", "Built", "First registered", "Workshop", "Record", "Digest of the record", "Judged",
            "For the law of", "Local code", "Rule book", "House rules", "Signed by", "On", "With the key", "In the ledger", "Head of the ledger", "place and day", "signature by hand, besides",
            "The seal: record, machine, gate, dates and signer, signed by themselves. Read it, save its text as a file, and give that to chock verify.", "Whether it holds", "Looked at for",
            ", before this sheet was made:", "To look yourself",
            "This sheet proves nothing: what is signed is in the code and in the sign-off file. Hold machine, gate, dates and name on it against those in the code.",
            "With Chock: chock verify FILE --trust trust.json, with the text of the code or the sign-off file as FILE. Add the record as it is now, and it tells whether anything was written since.",
            "Without: both are JWS (RFC 7515) signed with Ed25519, which any JOSE tool verifies by the trust list of the workshop. docs/verify.md shows how, step by step.",
            "The work was done by", "To be known", "Findings", "Small figures such as e12 are entries of the record; a number in brackets is that of the source of the limit, at the end.",
            "What was found", "Measured", "Limit", "Where the limits come from", "Cautions", "Not asked, since it does not apply to this machine", "A later entry about any of these voids it",
            "· " + Wording.NOTICE, ",");

    @TempDir private Path folder;
    private ShopBench bench;
    private SignOff signed;
    private Verification found;

    @BeforeEach
    void sign() throws IOException {
        bench = new ShopBench(folder);
        Path file = bench.sign().file();
        found = bench.verify(Files.readAllBytes(file), Files.readAllBytes(bench.record), ShopBench.NOON);
        signed = found.signOff();
    }

    /** The sheet of a sign-off of the released two-stroke. */
    static SignOffSheet sheet(Path folder, Instant moment) throws IOException {
        ShopBench bench = new ShopBench(folder);
        return SignOffSheet.of(bench.verify(Files.readAllBytes(bench.sign().file()), Files.readAllBytes(bench.record), moment), moment);
    }

    private String html(Instant moment) throws IOException {
        return Papers.html(SignOffSheet.of(bench.verify(bytes(), null, moment), moment), PaperSize.A4);
    }

    private byte[] bytes() throws IOException {
        try (var all = Files.list(folder)) {
            return Files.readAllBytes(all.filter(file -> file.toString().endsWith(".jws")).findFirst().orElseThrow());
        }
    }

    private void verifies(String code) throws Exception {
        Verification seal = bench.verify(code.getBytes(StandardCharsets.US_ASCII), null, ShopBench.NOON);
        assertThat(seal.holds()).isTrue();
        assertThat(seal.title()).isEqualTo("road-test of HV-0142: Tarnbeck Lark 250, frame TB25-10382, engine TB25E-10395");
        JWSObject jws = JWSObject.parse(code);
        JWKSet trust = JWKSet.parse(Files.readString(bench.shop().trust()));
        assertThat(jws.verify(new Ed25519Verifier(trust.getKeyByKeyId(jws.getHeader().getKeyID()).toOctetKeyPair()))).isTrue();
        assertThat(jws.getPayload().toString()).contains("\"gate\":\"road-test\"", "\"digest\":\"" + signed.record().digest() + "\"", "\"signer\":\"Ida Marrow\"");
        String altered = code.substring(0, 200) + (code.charAt(200) == 'A' ? 'B' : 'A') + code.substring(201);
        assertThat(bench.verify(altered.getBytes(StandardCharsets.US_ASCII), null, ShopBench.NOON).holds()).isFalse();
    }

    @Test
    void theCodeOnThePaperIsReadAndVerifies() throws Exception {
        SignOffSheet sheet = SignOffSheet.of(found, ShopBench.NOON);
        for (PaperSize size : PaperSize.values()) {
            try (PDDocument pdf = Loader.loadPDF(Papers.pdf(Papers.html(sheet, size), ShopBench.NOON))) {
                String code = CodeOnPaper.read(pdf);
                assertThat(code).isEqualTo(signed.seal());
                verifies(code);
            }
        }
    }

    @Test
    void theCodeOnThePageIsTheSame() throws Exception {
        Matcher picture = Pattern.compile("src=\"data:image/png;base64,([A-Za-z0-9+/=]+)\" alt=\"QR code").matcher(html(ShopBench.NOON));
        assertThat(picture.find()).isTrue();
        String code = CodeOnPaper.read(ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(picture.group(1)))));
        assertThat(code).isEqualTo(signed.seal());
        assertThat(SignOffSheetText.of(SignOffSheet.of(found, ShopBench.NOON), false).replaceAll("\\s+", "")).contains("Seal" + code);
    }

    @Test
    void aSealThatFitsIntoNoCodeIsNotDrawn() {
        assertThat(QrCode.picture("x".repeat(2331))).startsWith("data:image/png;base64,");
        assertThat(QrCode.picture("x".repeat(2332))).isNull();
    }

    @Test
    void everyFindingIsOnItWithWhatWasMeasuredItsLimitAndItsSource() throws IOException {
        String text;
        try (PDDocument pdf = Loader.loadPDF(Papers.pdf(html(ShopBench.NOON), ShopBench.NOON))) {
            text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", "");
            assertThat(text).contains("page" + pdf.getNumberOfPages() + "of" + pdf.getNumberOfPages());
        }
        SignOffSheet sheet = SignOffSheet.of(found, ShopBench.NOON);
        assertThat(signed.findings()).hasSizeGreaterThan(200);
        for (SignOff.Found one : signed.findings()) {
            SignOffSheet.Row row = sheet.groups().stream().flatMap(g -> g.rows().stream()).filter(r -> r.key().says().equals("met · " + one.check())).findFirst().orElseThrow();
            assertThat(text).contains(squeezed(row.key().says()));
            assertThat(row.says().says()).isEqualTo(one.says());
            assertThat(row.notes()).extracting(Told::says).isEqualTo(one.notes());
            assertThat(row.measured() == null).as(one.check()).isEqualTo(one.measured() == null);
            if (one.limit() != null) {
                assertThat(row.limit().says()).isEqualTo(one.limit().says());
                assertThat(sheet.sources().get(row.source() - 1).says()).isEqualTo(one.limit().source());
                assertThat(text).contains(squeezed(row.measured().says()), squeezed(row.limit().says() + " [" + row.source() + "]"));
            }
        }
        for (String words : List.of(signed.record().digest(), signed.ruleBook().digest(), signed.signer().keyId(), signed.localCode(), signed.deferral(), "IdaMarrow,inspector")) {
            assertThat(text).contains(squeezed(words));
        }
        signed.cautions().forEach(caution -> assertThat(text).contains(squeezed(caution)));
        signed.workBy().forEach(who -> assertThat(text).contains(squeezed(who)));
    }

    private static String squeezed(String words) {
        return words.replaceAll("\\s+", "");
    }

    @Test
    void everyWordRestsOnTheSignOffOrOnWhatWasLookedAt() throws Exception {
        Set<String> sources = new HashSet<>();
        Arrays.stream(SignOff.class.getRecordComponents()).forEach(c -> sources.add("sign-off/" + c.getName()));
        signed.findings().forEach(f -> {
            sources.add("sign-off/findings/" + f.check());
            sources.addAll(f.evidence());
        });
        found.things().forEach(t -> sources.add("verify/" + t.thing().replace(' ', '-')));
        sources.add("verify/as-of");
        for (Instant moment : List.of(ShopBench.NOON, ShopBench.NOON.plusSeconds(86_400))) {
            Element page = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html(moment).replaceFirst("<!DOCTYPE html>", "")))).getDocumentElement();
            List<String> traced = new ArrayList<>();
            walk(page.getElementsByTagName("body").item(0), null, sources, traced);
            assertThat(traced).hasSizeGreaterThan(200);
        }
    }

    private static void walk(Node node, String from, Set<String> sources, List<String> traced) {
        if (node.getNodeType() == Node.TEXT_NODE && !node.getTextContent().isBlank()) {
            String words = node.getTextContent().strip();
            if (from == null) {
                assertThat(FIXED).as("words without a source").contains(words);
            } else {
                assertThat(sources).as(words).containsAll(List.of(from.split(" ")));
                traced.add(words);
            }
        }
        String here = node instanceof Element element && element.hasAttribute("data-from") ? element.getAttribute("data-from") : from;
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            walk(child, here, sources, traced);
        }
    }

    @Test
    void whatHoldsNoMoreSaysSoFirst() throws IOException {
        assertThat(html(ShopBench.NOON)).doesNotContain("DOES NOT HOLD");
        assertThat(html(ShopBench.NOON.plusSeconds(86_400))).containsSubsequence("DOES NOT HOLD", "It lapsed on 2026-11-25 13:50 Europe/London.", "May be ridden to try it");
    }

    @Test
    void theSameSignOffAndMomentGiveTheSameBytes() throws IOException {
        assertThat(Papers.pdf(html(ShopBench.NOON), ShopBench.NOON)).isEqualTo(Papers.pdf(html(ShopBench.NOON), ShopBench.NOON));
    }
}
