package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Store;
import chock.record.Gate;
import chock.record.RecordReader;
import chock.signoff.KeyFile;
import chock.signoff.Ledgers;
import chock.signoff.ShopBench;
import chock.signoff.SignOffs;
import chock.signoff.Signers;
import chock.signoff.SigningKey;
import chock.signoff.TrustList;
import chock.signoff.Verification;
import chock.signoff.Verifier;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signing at the board, and everything that must not come of it. */
class SigningTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String EVIL = "x\"'><script>alert(1)</script><img src=x onerror=alert(2)>";

    @TempDir
    static Path made;
    private static String leadPassword;
    private static final Visit[] VISITS = new Visit[3];

    @TempDir
    Path folder;
    private Path workshop;
    private Running running;
    private Visit lead;
    private Visit ida;
    private Visit tom;

    /** One shop is set up with its people signed in; each test gets a copy of it. */
    @BeforeAll
    static void make() throws IOException {
        ShopBench bench = new ShopBench(Files.createDirectories(made.resolve("shop")));
        Files.createDirectories(bench.folder.resolve("keys"));
        for (String file : List.of("ida.pem", "ida.pem.jwk")) {
            Files.move(bench.folder.resolve(file), bench.folder.resolve("keys").resolve(file));
        }
        try (Running first = new Running(made.resolve("store"), bench.shop())) {
            leadPassword = "own words of " + first.leadSecret;
            VISITS[0] = first.lead();
            VISITS[1] = first.person(VISITS[0], "ida", "Ida Marrow", "inspector");
            VISITS[2] = first.person(VISITS[0], "tom", "Tom Fell", "technician");
            first.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            assertThat(VISITS[0].json("PATCH", "/api/accounts/ida/key", "{\"keyId\":\"" + key(bench.shop(), "Ida Marrow") + "\"}").statusCode()).isEqualTo(200);
        }
    }

    @BeforeEach
    void start() throws IOException {
        try (Stream<Path> files = Files.walk(made)) {
            for (Path file : files.toList()) {
                if (!Files.isDirectory(file)) {
                    Path to = folder.resolve(made.relativize(file).toString());
                    Files.createDirectories(to.getParent());
                    Files.copy(file, to);
                }
            }
        }
        workshop = folder.resolve("shop");
        running = new Running(folder.resolve("store"), shop());
        lead = again(0);
        ida = again(1);
        tom = again(2);
    }

    private Visit again(int who) {
        Visit visit = running.visitor();
        visit.cookie = VISITS[who].cookie;
        visit.form = VISITS[who].form;
        return visit;
    }

    @AfterEach
    void stop() {
        running.close();
    }

    private chock.signoff.Shop shop() {
        return chock.signoff.Shop.of(workshop.resolve("shop.yaml"));
    }

    private static String key(chock.signoff.Shop shop, String name) {
        return TrustList.of(shop.trust()).keys().stream().filter(k -> k.name().equals(name)).findFirst().orElseThrow().id();
    }

    private String key(String name) {
        return key(shop(), name);
    }

    private HttpResponse<String> bind(String account, String key) {
        return lead.json("PATCH", "/api/accounts/" + account + "/key", "{\"keyId\":\"" + key + "\"}");
    }

    private HttpResponse<String> sign(Visit visit, String id, String... more) {
        return typed(visit, id, ShopBench.PASSPHRASE, "once-" + java.util.UUID.randomUUID(), more);
    }

    private HttpResponse<String> typed(Visit visit, String id, String passphrase, String once, String... more) {
        String[] fields = Stream.concat(Stream.of("seen", String.valueOf(version(id)), "gate", "road-test", "passphrase", passphrase, "once", once), Stream.of(more)).toArray(String[]::new);
        return visit.post("/machines/" + encoded(id) + "/sign", fields);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private long version(String id) {
        return running.board.shop().find(id).orElseThrow().version();
    }

    private String signed() {
        HttpResponse<String> answer = sign(ida, "HV-0142");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow().substring("/sign-offs/".length());
    }

    private List<String> ledger() {
        return Ledgers.lines(shop().ledger()).stream().map(line -> line.kind() + " " + line.text("record") + " " + line.text("why")).toList();
    }

    private JsonNode signOffs() throws IOException {
        return JSON.readTree(ida.get("/api/sign-offs").body()).get("signOffs");
    }

    private void caliperOff() {
        HttpResponse<String> written = tom.post("/machines/HV-0142/write", "seen", String.valueOf(version("HV-0142")), "work", "removed", "point", "front-brake/caliper");
        assertThat(written.statusCode()).isEqualTo(303);
        assertThat(tom.get(written.headers().firstValue("Location").orElseThrow()).body()).contains("The sign-off at road-test by Ida Marrow is void now: entry ");
    }

    @Test
    void what_is_signed_at_the_page_holds_everywhere() throws Exception {
        String page = ida.get("/machines/HV-0142?gate=road-test").body();
        assertThat(page).contains("/machines/HV-0142/sign?gate=road-test").contains("Never signed.");
        assertThat(tom.get("/machines/HV-0142?gate=road-test").body()).doesNotContain("/sign?gate");
        assertThat(ida.get("/machines/HV-0142/sign?gate=road-test").body()).contains("You sign as <strong>Ida Marrow (inspector)</strong>").contains("type=\"password\"");
        String id = signed();
        assertThat(ida.get("/sign-offs/" + id).body()).contains("<strong>stands</strong>").contains("<strong>Holds:</strong>").contains("signed by Ida Marrow (inspector)").contains("and nothing there voids it.");
        assertThat(ida.get("/").body()).contains("<strong>stands</strong>");
        assertThat(ledger().get(ledger().size() - 1)).startsWith("signed HV-0142");
        List<Path> files;
        try (Stream<Path> all = Files.list(workshop.resolve("signoffs"))) {
            files = all.toList();
        }
        assertThat(files).hasSize(1);
        byte[] jws = Files.readAllBytes(files.get(0));
        assertThat(tom.get("/sign-offs/" + id + "/file").body()).isEqualTo(new String(jws, StandardCharsets.US_ASCII));
        Verification elsewhere = new Verifier(TrustList.of(shop().trust()), shop(), Bench.book(), ShopBench.NOON.plusSeconds(60))
                .verify(new Verifier.Source("sign-off", jws), new Verifier.Source("record", tom.bytes("/machines/HV-0142/record").body()));
        assertThat(elsewhere.holds()).as(elsewhere.toString()).isTrue();
        assertThat(elsewhere.complete()).isTrue();
        assertThat(elsewhere.signOff().signer().name()).isEqualTo("Ida Marrow");
        assertThat(signOffs()).hasSize(1);
        assertThat(signOffs().get(0).get("state").textValue()).isEqualTo("stands");
        assertThat(JSON.readTree(tom.get("/api/sign-offs/" + id).body()).at("/verification/holds").booleanValue()).isTrue();
    }

    @Test
    void a_blocked_gate_is_not_signed_and_the_ledger_says_who_wanted_to() throws Exception {
        String id = running.board.shop().take("faults", Bench.example("lark-faults.yaml"), "lead", null).machine();
        assertThat(ida.get("/machines/" + id + "/sign?gate=road-test").body()).contains("Held").doesNotContain("type=\"password\"");
        HttpResponse<String> refused = sign(ida, id);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains(id + " is blocked at road-test").contains("Nothing was signed.");
        assertThat(ledger().get(ledger().size() - 1)).startsWith("refused " + id + " " + id + " is blocked at road-test");
        assertThat(signOffs()).isEmpty();
    }

    @Test
    void nobody_signs_as_somebody_else_whatever_they_send() throws Exception {
        Visit pat = running.person(lead, "pat", "Pat Sorrel", "inspector");
        assertThat(bind("pat", key("Ida Marrow")).statusCode()).isEqualTo(422);
        assertThat(lead.post("/people/pat/key", "key", key("Ida Marrow")).body()).contains("This key is Ida Marrow's, and the account is Pat Sorrel's.");
        assertThat(bind("pat", "not-a-key").body()).contains("not on the trust list");
        assertThat(sign(pat, "HV-0142", "keyId", key("Ida Marrow"), "signer", "Ida Marrow", "role", "lead", "account", "ida").statusCode()).as("no key is bound to the account").isEqualTo(403);
        assertThat(pat.json("POST", "/api/machines/HV-0142/sign-offs", "{\"gate\":\"road-test\",\"passphrase\":\"x\",\"signer\":\"Ida Marrow\"}", "If-Match", "\"1\"").statusCode()).isEqualTo(422);
        // As though somebody had written it into the database by hand.
        try (Store other = Store.open(folder.resolve("store").toString())) {
            other.change(lines -> lines.signings().bind("ida", null));
            other.change(lines -> lines.signings().bind("pat", key("Ida Marrow")));
        }
        HttpResponse<String> refused = sign(pat, "HV-0142");
        assertThat(refused.statusCode()).isEqualTo(403);
        assertThat(refused.body()).contains("The key bound to the account pat is Ida Marrow's, and the account is Pat Sorrel's.");
        assertThat(signOffs()).isEmpty();
        bind("ida", key("Ida Marrow"));
        assertThat(bind("ida", key("Ida Marrow")).statusCode()).as("bound to pat").isEqualTo(409);
        lead.json("PATCH", "/api/accounts/pat/key", "{\"keyId\":null}");
        bind("ida", key("Ida Marrow"));
        assertThat(sign(ida, "HV-0142", "keyId", key("Nora Pell"), "signer", "Nora Pell", "role", "lead").statusCode()).isEqualTo(303);
        assertThat(signOffs().get(0).get("signer").textValue()).isEqualTo("Ida Marrow");
        assertThat(signOffs().get(0).get("role").textValue()).isEqualTo("inspector");
    }

    @Test
    void whoever_did_all_the_work_does_not_sign_it() {
        ObjectNode record = RecordReader.written("lark", Bench.example("lark-released.yaml"));
        record.put("record", "HV-7001");
        List<String> ids = record.get("people").findValuesAsText("id");
        String idaHere = ids.stream().filter(id -> record.get("people").findValuesAsText("name").get(ids.indexOf(id)).equals("Ida Marrow")).findFirst().orElseThrow();
        record.get("entries").forEach(entry -> {
            if (entry.has("done")) {
                ((ObjectNode) entry).put("by", idaHere);
            }
        });
        running.board.shop().take("x", record.toString().getBytes(StandardCharsets.UTF_8), "lead", null);
        HttpResponse<String> refused = sign(ida, "HV-7001");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("HV-7001");
        assertThat(ledger().get(ledger().size() - 1)).startsWith("refused HV-7001");
    }

    @Test
    void a_revoked_key_signs_nothing_and_voids_what_it_signed() throws Exception {
        signed();
        SigningKey nora = KeyFile.read(workshop.resolve("nora.pem"), ShopBench.PASSPHRASE.toCharArray());
        Signers.revoke(shop(), key("Ida Marrow"), "the computer was stolen", nora, Clock.fixed(ShopBench.NOON, ZoneOffset.UTC));
        HttpResponse<String> refused = sign(ida, "HV-0142");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("was revoked");
        assertThat(ledger().get(ledger().size() - 1)).startsWith("refused HV-0142 the key of Ida Marrow was revoked");
        assertThat(ida.get("/machines/HV-0142/sign?gate=road-test").body()).contains("You cannot sign yet.").contains("was revoked: the computer was stolen").doesNotContain("type=\"password\"");
        running.board.keepUp();
        assertThat(tom.get("/").body()).contains("<strong>VOID</strong>: the key of Ida Marrow was revoked: the computer was stolen");
        assertThat(tom.get("/machines/HV-0142").body()).contains("<strong>VOID</strong>: the key of Ida Marrow was revoked: the computer was stolen");
        assertThat(signOffs().get(0).get("state").textValue()).isEqualTo("void");
        assertThat(signOffs()).hasSize(1);
    }

    @Test
    void a_key_that_is_over_or_not_trusted_or_not_there_signs_nothing() throws Exception {
        SigningKey nora = KeyFile.read(workshop.resolve("nora.pem"), ShopBench.PASSPHRASE.toCharArray());
        Signers.trust(shop(), workshop.resolve("keys/ida.pem.jwk"), "Ida Marrow", chock.signoff.Role.INSPECTOR, null, LocalDate.of(2026, 11, 26), nora, Clock.fixed(ShopBench.NOON, ZoneOffset.UTC));
        running.pass(Duration.ofDays(2));
        ida = running.visitor().signIn("ida", secret(ida));
        assertThat(sign(ida, "HV-0142").body()).contains("is good from");
        assertThat(ledger().get(ledger().size() - 1)).startsWith("refused HV-0142 the key of Ida Marrow is good from");
        Files.move(workshop.resolve("keys/ida.pem"), workshop.resolve("elsewhere.pem"));
        HttpResponse<String> gone = sign(ida, "HV-0142");
        assertThat(gone.statusCode()).isEqualTo(403);
        assertThat(gone.body()).contains("is not in the folder keys of the workshop").doesNotContain(workshop.toString());
        assertThat(signOffs()).isEmpty();
    }

    /** The password {@link Visit#signIn} set for a person. */
    private String secret(Visit visit) {
        String renewed = lead().json("PATCH", "/api/accounts/ida", "{\"role\":\"inspector\",\"active\":true}").body();
        assertThat(renewed).contains("\"ida\"");
        HttpResponse<String> page = lead().post("/people/ida", "renew", "yes");
        return page.body().replaceFirst("(?s).*<code id=\"secret\">([^<]+)</code>.*", "$1");
    }

    private Visit lead() {
        return running.visitor().signIn("lead", leadPassword);
    }

    @Test
    void a_wrong_passphrase_signs_nothing_and_is_not_tried_out() throws Exception {
        for (int i = 0; i < 5; i++) {
            HttpResponse<String> wrong = typed(ida, "HV-0142", "a wrong passphrase " + i, "once-wrong-passphrase-" + i);
            assertThat(wrong.statusCode()).isEqualTo(403);
            assertThat(wrong.body()).contains("The passphrase does not open the key of Ida Marrow.").doesNotContain("a wrong passphrase");
        }
        HttpResponse<String> sixth = sign(ida, "HV-0142");
        assertThat(sixth.statusCode()).as("even the right one").isEqualTo(429);
        assertThat(sixth.headers().firstValue("Retry-After")).isPresent();
        assertThat(signOffs()).isEmpty();
        assertThat(lead.get("/api/events").body()).contains("not signed").contains("passphrase does not open");
        running.pass(Duration.ofMinutes(16));
        signed();
        assertThat(String.join("\n", running.log)).isNotEmpty().doesNotContain("wrong passphrase").doesNotContain(ShopBench.PASSPHRASE);
        assertThat(lead.get("/api/events").body()).doesNotContain("a wrong passphrase").doesNotContain(ShopBench.PASSPHRASE);
        assertThat(Files.readString(shop().ledger())).doesNotContain(ShopBench.PASSPHRASE);
        for (String file : List.of("board.sqlite", "board.sqlite-wal")) {
            byte[] bytes = Files.readAllBytes(folder.resolve("store").resolve(file));
            assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).as(file).doesNotContain(ShopBench.PASSPHRASE).doesNotContain("a wrong passphrase");
        }
    }

    @Test
    void what_was_not_looked_at_is_not_signed() throws Exception {
        String seen = String.valueOf(version("HV-0142"));
        assertThat(tom.post("/machines/HV-0142/write", "seen", seen, "work", "lubricated", "point", "chain").statusCode()).isIn(303, 422);
        HttpResponse<String> wrote = tom.json("POST", "/api/machines/HV-0142/entries", "[{\"point\":\"front-brake/caliper/bolts\",\"done\":\"torqued\"}]", "If-Match", "\"" + version("HV-0142") + "\"");
        assertThat(wrote.statusCode()).isEqualTo(201);
        HttpResponse<String> late = ida.post("/machines/HV-0142/sign", "seen", seen, "gate", "road-test", "passphrase", ShopBench.PASSPHRASE, "once", "once-12345678901234567890");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("Somebody has written to HV-0142 since you looked at it. Nothing was signed.");
        assertThat(ida.json("POST", "/api/machines/HV-0142/sign-offs", "{\"gate\":\"road-test\",\"passphrase\":\"" + ShopBench.PASSPHRASE + "\"}").statusCode()).isEqualTo(428);
        assertThat(ida.json("POST", "/api/machines/HV-0142/sign-offs", "{\"gate\":\"road-test\",\"passphrase\":\"" + ShopBench.PASSPHRASE + "\"}", "If-Match", "\"1\"").statusCode()).isEqualTo(412);
        assertThat(signOffs()).isEmpty();
    }

    @Test
    void neither_record_nor_clock_goes_back_behind_the_ledger() throws Exception {
        signed();
        assertThat(tom.post("/machines/HV-0142/write", "seen", "1", "work", "torqued", "point", "front-brake/caliper/bolts", "when", "2026-11-25 10:00").statusCode()).isEqualTo(303);
        HttpResponse<String> dated = sign(ida, "HV-0142");
        assertThat(dated.statusCode()).isEqualTo(422);
        assertThat(dated.body()).contains("was added since, but is dated before the last sign-off");
        assertThat(ledger().get(ledger().size() - 1)).startsWith("refused HV-0142 entry ");
        running.pass(Duration.ofMinutes(-3));
        HttpResponse<String> early = sign(ida, "HV-0142");
        assertThat(early.statusCode()).isEqualTo(422);
        assertThat(early.body()).contains("the clock of this machine says").contains("Nothing was signed.");
        assertThat(signOffs()).hasSize(1);
    }

    @Test
    void the_same_form_sent_twice_signs_once() throws Exception {
        HttpResponse<String> first = typed(ida, "HV-0142", ShopBench.PASSPHRASE, "once-12345678901234567890");
        HttpResponse<String> again = typed(ida, "HV-0142", ShopBench.PASSPHRASE, "once-12345678901234567890");
        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(again.headers().firstValue("Location")).isEqualTo(first.headers().firstValue("Location"));
        running.pass(Duration.ofSeconds(5));
        String body = "{\"gate\":\"road-test\",\"passphrase\":\"" + ShopBench.PASSPHRASE + "\"}";
        String tag = "\"" + version("HV-0142") + "\"";
        HttpResponse<String> one = ida.json("POST", "/api/machines/HV-0142/sign-offs", body, "If-Match", tag, "Idempotency-Key", "s-1");
        HttpResponse<String> two = ida.json("POST", "/api/machines/HV-0142/sign-offs", body, "If-Match", tag, "Idempotency-Key", "s-1");
        assertThat(one.statusCode()).as(one.body()).isEqualTo(201);
        assertThat(two.body()).isEqualTo(one.body());
        assertThat(signOffs()).hasSize(2);
        assertThat(ledger().stream().filter(line -> line.startsWith("signed"))).hasSize(2);
    }

    @Test
    void a_form_from_elsewhere_signs_nothing() throws Exception {
        String good = ida.form;
        for (String token : List.of("", "wrong", lead.form)) {
            ida.form = token;
            assertThat(sign(ida, "HV-0142").statusCode()).as("token '" + token + "'").isEqualTo(403);
            assertThat(ida.post("/people/ida/key", "key", "").statusCode()).isEqualTo(403);
        }
        ida.form = good;
        byte[] body = ("form=" + good + "&seen=1&gate=road-test&once=once-12345678901234567890&passphrase=" + ShopBench.PASSPHRASE.replace(' ', '+')).getBytes(StandardCharsets.UTF_8);
        assertThat(ida.send("POST", "/machines/HV-0142/sign", "application/x-www-form-urlencoded", body, "Origin", "https://elsewhere.example").statusCode()).isEqualTo(403);
        assertThat(signOffs()).isEmpty();
        assertThat(ledger()).noneMatch(line -> line.contains("HV-0142"));
        assertThat(ida.send("POST", "/machines/HV-0142/sign", "application/x-www-form-urlencoded", body).statusCode()).as("the same from here").isEqualTo(303);
    }

    @Test
    void later_work_voids_it_at_once_and_for_good() throws Exception {
        String id = signed();
        running.pass(Duration.ofMinutes(3));
        caliperOff();
        assertThat(ledger().get(ledger().size() - 1)).startsWith("voided HV-0142 entry ").contains("front-brake/caliper");
        for (String page : List.of("/", "/machines/HV-0142", "/sign-offs?state=void", "/sign-offs/" + id)) {
            assertThat(tom.get(page).body()).as(page).contains("<strong>VOID</strong>: entry ").contains("is about front-brake/caliper");
        }
        assertThat(tom.get("/sign-offs?state=stands").body()).contains("No sign-off is like that.");
        assertThat(tom.get("/sign-offs/" + id).body()).contains("<strong>Does not hold:</strong>");
        assertThat(lead.get("/ledger?machine=HV-0142").body()).contains("voided: a sign-off of HV-0142: entry ").contains("Sound:").doesNotContain("key trusted");
        assertThat(lead.get("/ledger").body()).contains("key trusted: Ida Marrow");
    }

    private void alarmed(String why) throws Exception {
        running.board.keepUp();
        String alarm = "The ledger is not the one this board has seen: " + why;
        for (String page : List.of("/", "/machines/HV-0142", "/sign-offs")) {
            assertThat(tom.get(page).body()).as(page).contains("role=\"alert\">" + alarm);
        }
        assertThat(ida.get("/ledger").body()).contains("NOT SOUND:").contains(alarm);
        assertThat(running.visitor().get("/verify").body()).as("no business of strangers").doesNotContain("role=\"alert\"");
        assertThat(running.visitor().get("/health").body()).contains("alarm: the ledger is not the one this board has seen");
        assertThat(running.visitor().get("/health").statusCode()).isEqualTo(200);
        assertThat(running.log).anyMatch(line -> line.contains("ALARM: the ledger is not the one seen before"));
        HttpResponse<String> refused = sign(ida, "HV-0142");
        assertThat(refused.statusCode()).isEqualTo(503);
        assertThat(refused.body()).contains("Nothing was signed.");
    }

    @Test
    void an_older_ledger_put_back_raises_an_alarm_until_the_newest_is_back() throws Exception {
        String id = signed();
        byte[] older = Files.readAllBytes(shop().ledger());
        running.pass(Duration.ofMinutes(3));
        caliperOff();
        byte[] newest = Files.readAllBytes(shop().ledger());
        Files.write(shop().ledger(), older);
        alarmed("it has 3 lines, and had 4: lines were cut off at its end, or an older copy was put back (seen on 2026-11-25T12:03:00Z)");
        assertThat(Files.readAllBytes(shop().ledger())).as("nothing is written to it").isEqualTo(older);
        assertThat(tom.get("/sign-offs/" + id).body()).contains("<strong>Does not hold:</strong>");
        Files.write(shop().ledger(), newest);
        running.board.keepUp();
        assertThat(tom.get("/").body()).doesNotContain("role=\"alert\"");
        assertThat(running.visitor().get("/health").body()).isEqualTo("running\n");
    }

    @Test
    void a_restart_does_not_make_the_board_forget_how_far_the_ledger_went() throws Exception {
        byte[] older = Files.readAllBytes(shop().ledger());
        signed();
        running.close();
        Files.write(shop().ledger(), older);
        running = new Running(folder.resolve("store"), shop());
        lead = again(0);
        ida = again(1);
        tom = again(2);
        alarmed("it has 2 lines, and had 3");
        Files.delete(shop().ledger());
        alarmed("it has 0 lines, and had 3");
    }

    @Test
    void another_ledger_that_is_as_long_raises_it_as_well() throws Exception {
        signed();
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        ShopBench other = new ShopBench(elsewhere);
        other.sign();
        Files.copy(elsewhere.resolve("ledger.txt"), shop().ledger(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        alarmed("its line 3 is not the one it was: this is another ledger, or one that was written anew");
    }

    @Test
    void a_lead_may_go_by_what_is_left_and_what_was_signed_in_lost_lines_is_void() throws Exception {
        byte[] older = Files.readAllBytes(shop().ledger());
        String id = signed();
        Files.write(shop().ledger(), older);
        running.board.keepUp();
        assertThat(ida.json("POST", "/api/ledger/lost", "{\"reason\":\"x\"}").statusCode()).isEqualTo(403);
        assertThat(lead.json("POST", "/api/ledger/lost", "{\"reason\":\" \"}").statusCode()).isEqualTo(422);
        HttpResponse<String> gone = lead.json("POST", "/api/ledger/lost", "{\"reason\":\"the disk died, the copy is of yesterday\"}");
        assertThat(gone.body()).isEqualTo("{\"voided\":1}");
        assertThat(tom.get("/sign-offs/" + id).body()).contains("its line is no longer in the ledger");
        assertThat(tom.get("/").body()).doesNotContain("role=\"alert\"");
        assertThat(lead.get("/journal").body()).contains("the disk died, the copy is of yesterday");
        assertThat(lead.json("POST", "/api/ledger/lost", "{\"reason\":\"again\"}").statusCode()).isEqualTo(422);
    }

    @Test
    void another_sheet_voids_it_as_well() throws Exception {
        signed();
        String tag = "\"" + version("HV-0142") + "\"";
        ObjectNode maker = (ObjectNode) running.board.shop().find("HV-0142").orElseThrow().sheet().get("maker").deepCopy();
        maker.withArrayProperty("figures").remove(0);
        assertThat(lead.json("PATCH", "/api/machines/HV-0142", "{\"maker\":" + maker + "}", "If-Match", tag).statusCode()).isEqualTo(201);
        assertThat(signOffs().get(0).get("why").textValue()).isEqualTo("'maker' says something else");
        assertThat(ledger().get(ledger().size() - 1)).isEqualTo("voided HV-0142 'maker' says something else");
    }

    @Test
    void what_touches_nothing_critical_leaves_it_standing() throws Exception {
        signed();
        assertThat(lead.json("PATCH", "/api/machines/HV-0142", "{\"seeks\":[\"road-test\"]}", "If-Match", "\"" + version("HV-0142") + "\"").statusCode()).isEqualTo(201);
        assertThat(signOffs().get(0).get("state").textValue()).isEqualTo("stands");
    }

    @Test
    void the_code_on_the_paper_and_the_file_are_looked_at_for_everybody() throws Exception {
        String id = signed();
        String jws = tom.get("/sign-offs/" + id + "/file").body();
        String seal = chock.signoff.SignOff.written(jws.getBytes(StandardCharsets.US_ASCII)).orElseThrow().seal();
        Visit stranger = running.visitor();
        assertThat(stranger.get("/verify").body()).contains("What the code on the sheet says").doesNotContain("HV-0142");
        assertThat(code(stranger, seal).body()).contains("<strong>Holds:</strong>").contains("Ida Marrow").contains("Nothing was written since.").contains("Not judged again here.").doesNotContain("judged again by it").doesNotContain("/sign-offs/");
        assertThat(code(tom, seal).body()).as("for whoever is signed in").contains("judged again by it, the gate is released with the same findings.");
        assertThat(code(stranger, "  " + seal.substring(0, 200) + "\n" + seal.substring(200) + " \n").body()).as("as a reader of codes may break it").contains("<strong>Holds:</strong>");
        assertThat(stranger.upload("/verify", "file", jws.getBytes(StandardCharsets.US_ASCII)).body()).contains("<strong>Holds:</strong>");
        byte[] typed = ("--cut\r\nContent-Disposition: form-data; name=\"code\"\r\n\r\n" + jws + "\r\n--cut--\r\n").getBytes(StandardCharsets.US_ASCII);
        assertThat(typed.length).as("more than other forms take").isGreaterThan(100_000);
        assertThat(stranger.send("POST", "/verify", "multipart/form-data; boundary=cut", typed).body()).as("the whole typed in").contains("<strong>Holds:</strong>");
        String altered = seal.substring(0, 300) + (seal.charAt(300) == 'A' ? 'B' : 'A') + seal.substring(301);
        assertThat(code(stranger, altered).body()).contains("<strong>Does not hold:</strong>").doesNotContain("<strong>Holds:</strong>");
        HttpResponse<String> byProgram = stranger.json("POST", "/api/verify", "{\"signOff\":\"" + seal + "\"}");
        assertThat(JSON.readTree(byProgram.body()).get("holds").booleanValue()).isTrue();
        running.pass(Duration.ofMinutes(3));
        caliperOff();
        assertThat(code(stranger, seal).body()).contains("<strong>Does not hold:</strong>").contains("that voids it").contains("the gate is blocked: ").doesNotContain(workshop.toString());
        running.pass(Duration.ofDays(60));
        assertThat(code(stranger, seal).body()).contains("It lapsed on");
    }

    private static HttpResponse<String> code(Visit visit, String code) {
        return visit.post("/verify", "code", code);
    }

    @Test
    void what_is_no_sign_off_is_told_so_and_never_shown_again() {
        Visit stranger = running.visitor();
        assertThat(code(stranger, EVIL).body()).contains("This is no sign-off as chock writes it").doesNotContain("<script").doesNotContain("alert(1)");
        assertThat(code(stranger, " ").statusCode()).isEqualTo(422);
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13};
        assertThat(stranger.upload("/verify", "file", picture).body()).contains("<strong>Does not hold:</strong>").contains("This is no sign-off as chock writes it");
        HttpResponse<String> tooLarge = stranger.upload("/verify", "file", new byte[1_200_000]);
        assertThat(tooLarge.statusCode()).isEqualTo(413);
        assertThat(tooLarge.headers().firstValue("Connection")).as("nothing more is sent over it").hasValue("close");
        assertThat(stranger.json("POST", "/api/verify", "{\"signOff\":\"" + "x".repeat(1_100_000) + "\"}").statusCode()).isEqualTo(413);
        assertThat(stranger.send("POST", "/verify", "text/plain", "hello".getBytes(StandardCharsets.UTF_8)).statusCode()).isEqualTo(422);
        assertThat(stranger.send("POST", "/api/verify", "text/plain", "hello".getBytes(StandardCharsets.UTF_8)).statusCode()).isEqualTo(415);
        assertThat(code(stranger, "a.b.c").body()).contains("Does not hold");
    }

    @Test
    void a_stranger_does_not_keep_the_board_busy() {
        Visit stranger = running.visitor();
        for (int i = 0; i < 60; i++) {
            assertThat(code(stranger, "a.b.c").statusCode()).isEqualTo(200);
        }
        assertThat(code(stranger, "a.b.c").statusCode()).isEqualTo(429);
        assertThat(code(tom, "a.b.c").statusCode()).as("who is signed in").isEqualTo(200);
        running.pass(Duration.ofMinutes(11));
        assertThat(code(stranger, "a.b.c").statusCode()).isEqualTo(200);
    }

    @Test
    void words_that_are_markup_stay_words() throws Exception {
        ObjectNode record = RecordReader.written("lark", Bench.example("lark-released.yaml"));
        String id = "HV-" + EVIL;
        record.put("record", id);
        ((ObjectNode) record.get("machine")).put("marque", EVIL).put("model", EVIL).put("frame-number", EVIL).put("engine-number", EVIL);
        assertThat(lead.json("POST", "/api/machines", record.toString()).statusCode()).isEqualTo(201);
        HttpResponse<String> answer = sign(ida, id);
        List<String> pages = new java.util.ArrayList<>(List.of("/", "/machines/" + encoded(id) + "/sign?gate=road-test", "/machines/" + encoded(id), "/ledger", "/ledger?machine=" + encoded(EVIL), "/sign-offs", "/sign-offs?machine=" + encoded(EVIL)));
        if (answer.statusCode() == 303) {
            pages.add(answer.headers().firstValue("Location").orElseThrow());
            String jws = ida.get(pages.get(pages.size() - 1) + "/file").body();
            assertThat(code(lead, jws).body()).contains("&lt;script").doesNotContain("<script");
            try (Stream<Path> all = Files.list(workshop.resolve("signoffs"))) {
                assertThat(all.map(f -> f.getFileName().toString()).toList()).allMatch(name -> name.matches("[A-Za-z0-9._-]+"));
            }
        } else {
            assertThat(answer.body()).contains("&lt;script").doesNotContain("<script");
        }
        int shown = 0;
        for (String page : pages) {
            HttpResponse<String> seen = lead.get(page);
            assertThat(seen.body()).as(page).doesNotContain("<script").doesNotContain("<img").contains("<main");
            assertThat(seen.headers().firstValue("Content-Security-Policy")).as(page).hasValueSatisfying(csp -> assertThat(csp).contains("default-src 'none'").doesNotContain("unsafe"));
            shown += seen.body().contains("&lt;script") ? 1 : 0;
        }
        assertThat(shown).isGreaterThanOrEqualTo(5);
    }

    @Test
    void papers_and_sign_offs_lead_nowhere_else() {
        String id = signed();
        for (String path : List.of("/machines/HV-0142/papers/..%2f..%2fshop%2fshop.yaml", "/machines/HV-0142/papers/%2e%2e", "/machines/HV-0142/papers/shop.yaml", "/machines/HV-0142/papers/sign-off.pdf", "/machines/HV-0142/papers/sign-off.pdf?of=..%2f..%2fledger.txt",
                "/machines/none/papers/tag.pdf", "/sign-offs/..%2f..%2fledger.txt", "/sign-offs/none", "/sign-offs/none/file", "/sign-offs/%2e%2e%2fkeys%2fida.pem/file", "/api/sign-offs/..%2fx", "/signoffs/", "/keys/ida.pem")) {
            HttpResponse<String> answer = lead.get(path);
            assertThat(answer.statusCode()).as(path).isIn(400, 404);
            assertThat(answer.body()).as(path).doesNotContain("PRIVATE KEY").doesNotContain("Exception");
        }
        String other = running.board.shop().take("faults", Bench.example("lark-faults.yaml"), "lead", null).machine();
        assertThat(lead.get("/machines/" + other + "/papers/sign-off.pdf?of=" + id).statusCode()).as("of another machine").isEqualTo(404);
        assertThat(lead.get("/machines/HV-0142/papers/tag.pdf?size=" + encoded(EVIL)).statusCode()).isEqualTo(422);
        assertThat(lead.get("/machines/HV-0142/papers/worksheet.pdf?gate=" + encoded(EVIL)).statusCode()).isEqualTo(422);
    }

    @Test
    void the_papers_come_as_pdf() throws Exception {
        String id = signed();
        for (String paper : List.of("statement.pdf?", "tag.pdf?", "worksheet.pdf?gate=road-test", "sign-off.pdf?of=" + id)) {
            for (String size : paper.startsWith("tag") ? List.of("", "&size=letter") : List.of("")) {
                HttpResponse<byte[]> pdf = tom.bytes("/machines/HV-0142/papers/" + paper + size);
                assertThat(pdf.statusCode()).as(paper).isEqualTo(200);
                assertThat(pdf.headers().firstValue("Content-Type")).contains("application/pdf");
                assertThat(pdf.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
                assertThat(pdf.headers().firstValue("Content-Security-Policy").orElseThrow()).contains("default-src 'none'");
                assertThat(pdf.headers().firstValue("Content-Disposition").orElseThrow()).matches("inline; filename=\"HV-0142-[a-z-]+\\.pdf\"");
                try (var document = org.apache.pdfbox.Loader.loadPDF(pdf.body())) {
                    assertThat(new org.apache.pdfbox.text.PDFTextStripper().getText(document)).as(paper).contains("HV-0142").contains("Lark 250");
                    assertThat(Math.round(document.getPage(0).getMediaBox().getWidth())).as(paper + size).isIn(size.isEmpty() ? List.of(595, 842, 298) : List.of(612, 792, 306));
                }
            }
        }
    }

    @Test
    void an_altered_ledger_is_told_with_its_line() throws Exception {
        signed();
        assertThat(lead.get("/ledger").body()).contains("Sound:").contains("3 lines, each as it was written.").contains("signed: HV-0142 at road-test by Ida Marrow");
        String text = Files.readString(shop().ledger());
        Files.writeString(shop().ledger(), text.replaceFirst("road-test", "hand-over"));
        assertThat(lead.get("/ledger").body()).contains("NOT SOUND:").contains("ledger.txt:3");
        JsonNode api = JSON.readTree(lead.get("/api/ledger").body());
        assertThat(api.get("sound").booleanValue()).isFalse();
        assertThat(api.get("says").textValue()).contains(":3");
        assertThat(code(running.visitor(), "a.b.c").statusCode()).isEqualTo(200);
    }

    @Test
    void a_ledger_turns_its_pages() throws Exception {
        String id = running.board.shop().take("faults", Bench.example("lark-faults.yaml"), "lead", null).machine();
        // Of another workshop, which is refused before it is judged.
        byte[] record = running.board.shop().find(id).orElseThrow().record().put("workshop", "Somewhere else").toString().getBytes(StandardCharsets.UTF_8);
        SigningKey key = KeyFile.read(workshop.resolve("keys/ida.pem"), ShopBench.PASSPHRASE.toCharArray());
        for (int i = 0; i < 60; i++) {
            org.assertj.core.api.Assertions.assertThatThrownBy(() -> SignOffs.sign(shop(), key, Bench.book(), workshop.resolve("x.json"), record, Gate.ROAD_TEST, null, Clock.fixed(ShopBench.NOON, ZoneOffset.UTC)))
                    .isInstanceOf(chock.signoff.NotSigned.class);
        }
        String first = lead.get("/ledger").body();
        String second = lead.get("/ledger?page=2").body();
        assertThat(first).contains(">62 · ").doesNotContain(">12 · ").contains("Next page");
        assertThat(second).contains(">12 · ").contains(">1 · ").contains("Page before").doesNotContain("Next page");
        assertThat(lead.get("/ledger?machine=" + id + "&page=2").body()).contains("machine=" + id).doesNotContain("key trusted");
        assertThat(JSON.readTree(lead.get("/api/ledger").body()).get("lines").get(0).get("line").intValue()).isEqualTo(62);
    }

    @Test
    void what_a_crash_left_between_ledger_and_store_is_taken_in() throws Exception {
        byte[] record = running.board.shop().find("HV-0142").orElseThrow().record().toString().getBytes(StandardCharsets.UTF_8);
        SigningKey key = KeyFile.read(workshop.resolve("keys/ida.pem"), ShopBench.PASSPHRASE.toCharArray());
        Path there = Files.createDirectories(workshop.resolve("signoffs"));
        Clock noon = Clock.fixed(ShopBench.NOON, ZoneOffset.UTC);
        SignOffs.sign(shop(), key, Bench.book(), there.resolve("HV-0142.json"), record, Gate.ROAD_TEST, null, noon);
        Path second = SignOffs.sign(shop(), key, Bench.book(), there.resolve("HV-0142.json"), record, Gate.ROAD_TEST, null, Clock.offset(noon, Duration.ofSeconds(9))).file();
        Files.move(second, second.resolveSibling("." + second.getFileName() + ".part"));
        assertThat(signOffs()).isEmpty();
        running.pass(Duration.ofMinutes(1));
        running.board.keepUp();
        running.board.keepUp();
        assertThat(signOffs()).hasSize(2);
        assertThat(tom.get("/sign-offs/" + signOffs().get(0).get("id").textValue()).body()).contains("<strong>Holds:</strong>");
    }

    @Test
    void work_written_while_it_was_signed_voids_it() throws Exception {
        byte[] record = running.board.shop().find("HV-0142").orElseThrow().record().toString().getBytes(StandardCharsets.UTF_8);
        SigningKey key = KeyFile.read(workshop.resolve("keys/ida.pem"), ShopBench.PASSPHRASE.toCharArray());
        SignOffs.sign(shop(), key, Bench.book(), Files.createDirectories(workshop.resolve("signoffs")).resolve("HV-0142.json"), record, Gate.ROAD_TEST, null, Clock.fixed(ShopBench.NOON, ZoneOffset.UTC));
        // The ledger has it; the store does not yet, and an entry comes first.
        assertThat(tom.post("/machines/HV-0142/write", "seen", "1", "work", "removed", "point", "front-brake/caliper").statusCode()).isEqualTo(303);
        running.board.keepUp();
        assertThat(signOffs().get(0).get("state").textValue()).isEqualTo("void");
        running.board.keepUp();
        assertThat(ledger().get(ledger().size() - 1)).startsWith("voided HV-0142 entry ");
    }

    @Test
    void without_the_settings_of_a_workshop_the_page_says_what_the_lead_does() {
        try (Running bare = new Running(folder.resolve("bare"))) {
            Visit boss = bare.lead();
            bare.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            assertThat(boss.get("/machines/HV-0142/sign?gate=road-test").body()).contains("You cannot sign yet.").contains("started without the settings of a workshop").contains("chock keys trust").doesNotContain("type=\"password\"");
            assertThat(boss.post("/machines/HV-0142/sign", "seen", "1", "gate", "road-test", "once", "once-12345678901234567890", "passphrase", "x").statusCode()).isEqualTo(403);
            assertThat(boss.get("/ledger").body()).contains("it has no ledger");
            assertThat(code(bare.visitor(), "a.b.c").statusCode()).isEqualTo(422);
            assertThat(boss.get("/api/ledger").statusCode()).isEqualTo(422);
            assertThat(boss.get("/api/keys").body()).isEqualTo("[]");
        }
    }
}
