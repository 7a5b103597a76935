package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.signoff.KeyFile;
import chock.signoff.LedgerLine;
import chock.signoff.Ledgers;
import chock.signoff.ShopBench;
import chock.signoff.SignOff;
import chock.signoff.TrustList;
import chock.signoff.Withdrawals;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was found wrong later is withdrawn at the board, or elsewhere, and the board says of every sign-off that rests on it that it is void. */
class WithdrawingTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String CHECK = "brakes.pad-thickness";
    private static final String HERE = Bench.book().digest();

    @TempDir private Path folder;
    private chock.signoff.Shop shop;
    private Running running;
    private Visit lead;
    private Visit nora;
    private Visit ida;

    @BeforeEach
    void start() throws IOException {
        ShopBench bench = new ShopBench(Files.createDirectories(folder.resolve("shop")));
        shop = bench.shop();
        Files.createDirectories(bench.folder.resolve("keys"));
        for (String file : List.of("ida.pem", "ida.pem.jwk", "nora.pem", "nora.pem.jwk")) {
            Files.copy(bench.folder.resolve(file), bench.folder.resolve("keys").resolve(file));
        }
        running = new Running(folder.resolve("store"), shop);
        lead = running.lead();
        nora = running.person(lead, "nora", "Nora Pell", "lead");
        ida = running.person(lead, "ida", "Ida Marrow", "inspector");
        running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
        for (String[] who : new String[][] {{"nora", "Nora Pell"}, {"ida", "Ida Marrow"}}) {
            String key = TrustList.of(shop.trust()).keys().stream().filter(k -> k.name().equals(who[1])).findFirst().orElseThrow().id();
            assertThat(lead.json("PATCH", "/api/accounts/" + who[0] + "/key", "{\"keyId\":\"" + key + "\"}").statusCode()).isEqualTo(200);
        }
    }

    @AfterEach
    void stop() {
        running.close();
    }

    private HttpResponse<String> sign() {
        return ida.json("POST", "/api/machines/HV-0142/sign-offs", "{\"gate\":\"road-test\",\"passphrase\":\"" + ShopBench.PASSPHRASE + "\"}", "If-Match", "\"" + running.board.shop().find("HV-0142").orElseThrow().version() + "\"");
    }

    private HttpResponse<String> withdraw(Visit who, String what) {
        return who.json("POST", "/api/ledger/withdrawals", "{" + what + ",\"passphrase\":\"" + ShopBench.PASSPHRASE + "\"}");
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        return JSON.readTree(answer.body());
    }

    private List<String> kinds() {
        return Ledgers.lines(shop.ledger()).stream().map(LedgerLine::kind).toList();
    }

    @Test
    void a_lead_withdraws_a_check_and_every_page_says_so() throws IOException {
        JsonNode signed = json(sign());
        assertThat(ida.get("/machines/HV-0142/papers/tag.pdf").statusCode()).isEqualTo(200);
        HttpResponse<String> done = withdraw(nora, "\"check\":\"" + CHECK + "\",\"ruleBook\":\"" + HERE + "\",\"reason\":\"the limit was read from the wrong table\"");
        assertThat(done.statusCode()).as(done.body()).isEqualTo(201);
        assertThat(json(done)).isEqualTo(JSON.createObjectNode().put("line", 4).put("withdrawn", "the check " + CHECK + " of rule book " + HERE).put("ended", 1).put("unknown", 0));
        String says = "Nora Pell withdrew the check " + CHECK + " of rule book " + HERE + " on 2026-11-25 12:";
        for (String page : List.of("/machines/HV-0142", "/sign-offs?state=void", "/sign-offs/" + signed.get("id").asText(), "/")) {
            assertThat(ida.get(page).body()).as(page).contains("<strong>VOID</strong>: " + says).contains("the limit was read from the wrong table");
        }
        String jws = ida.get("/sign-offs/" + signed.get("id").asText() + "/file").body();
        String seal = SignOff.written(jws.getBytes(StandardCharsets.US_ASCII)).orElseThrow().seal();
        assertThat(running.visitor().post("/verify", "code", seal).body()).contains("Does not hold", says);
        assertThat(running.visitor().json("POST", "/api/verify", "{\"signOff\":\"" + jws + "\"}").body()).contains("\"holds\":false", says);
        assertThat(ida.get("/api/ledger").body()).contains("\"kind\":\"withdrawn\"");
        assertThat(ida.get("/ledger").body()).contains("withdrawn: the check " + CHECK + " of rule book " + HERE + " by Nora Pell: the limit was read from the wrong table");
        assertThat(nora.get("/api/events").body()).contains("\"action\":\"withdrawn\"", says);
        HttpResponse<String> again = sign();
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains(says, "Sign by a rule book with another digest", "Nothing was signed.");
        assertThat(ida.get("/machines/HV-0142/sign?gate=road-test").body()).contains("<strong>Held</strong>, so there is nothing to sign: " + says).doesNotContain("type=\"password\"");
        assertThat(ida.get("/machines/HV-0142?gate=road-test").body()).contains("<strong>Do not use this release.</strong> " + says, "road-test: held", "its release rests on what was withdrawn").doesNotContain(">released<");
        for (String paper : List.of("tag.pdf", "statement.pdf")) {
            HttpResponse<String> none = ida.get("/machines/HV-0142/papers/" + paper);
            assertThat(none.statusCode()).as(paper).isEqualTo(422);
            assertThat(none.body()).contains("No paper was made.", says);
        }
        assertThat(ida.get("/machines/HV-0142/papers/sign-off.pdf?of=" + signed.get("id").asText()).statusCode()).as("the sheet says what does not hold").isEqualTo(200);
    }

    @Test
    void what_is_withdrawn_elsewhere_is_taken_in() throws IOException {
        sign();
        Withdrawals.withdraw(shop, Bench.book(), new Withdrawals.What(null, HERE, false, "wrong"), KeyFile.read(folder.resolve("shop/nora.pem"), ShopBench.PASSPHRASE.toCharArray()),
                Clock.fixed(running.now(), ZoneOffset.UTC));
        running.board.keepUp();
        assertThat(ida.get("/api/sign-offs?state=void").body()).contains("Nora Pell withdrew the rule book " + HERE);
        assertThat(kinds()).as("told once").endsWith("signed", "withdrawn", "voided");
    }

    @Test
    void a_sign_off_whose_line_does_not_say_what_it_rests_on_ends_too() throws IOException {
        sign();
        // Without the line that voids it, the board finds out by the sign-off it keeps.
        Withdrawals.withdraw(shop, Bench.book(), new Withdrawals.What(CHECK, null, false, "wrong"), KeyFile.read(folder.resolve("shop/nora.pem"), ShopBench.PASSPHRASE.toCharArray()),
                Clock.fixed(running.now(), ZoneOffset.UTC));
        List<String> lines = Files.readAllLines(shop.ledger());
        Files.writeString(shop.ledger(), String.join("\n", lines.subList(0, lines.size() - 1)) + "\n");
        assertThat(kinds()).endsWith("signed", "withdrawn");
        running.board.keepUp();
        assertThat(ida.get("/api/sign-offs?state=void").body()).contains("Nora Pell withdrew the check " + CHECK + " of every rule book until then");
        assertThat(kinds()).as("and writes it down").endsWith("signed", "withdrawn", "voided");
        running.board.keepUp();
        assertThat(kinds()).hasSize(5);
    }

    @Test
    void a_lead_withdraws_on_the_page_of_the_ledger() throws IOException {
        sign();
        assertThat(ida.get("/ledger").body()).doesNotContain("Withdraw it");
        assertThat(nora.get("/ledger").body()).contains("Withdraw it").contains("<details><summary>Withdraw a check or a rule book");
        HttpResponse<String> wrong = nora.post("/ledger", "check", "brakes.pads", "reason", "the \"wrong\" table", "passphrase", ShopBench.PASSPHRASE);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("is a check neither of the rule book at hand", "Nothing was withdrawn.", "value=\"brakes.pads\"", "value=\"the &#34;wrong&#34; table\"", "<details open>").doesNotContain(ShopBench.PASSPHRASE);
        assertThat(nora.post("/ledger", "check", CHECK, "reason", "wrong", "passphrase", "not it at all").statusCode()).isEqualTo(403);
        assertThat(kinds()).doesNotContain("withdrawn");
        assertThat(ida.post("/ledger", "check", CHECK, "reason", "wrong", "passphrase", ShopBench.PASSPHRASE).statusCode()).isEqualTo(403);
        HttpResponse<String> done = nora.post("/ledger", "check", CHECK, "ruleBook", "", "reason", "wrong", "passphrase", ShopBench.PASSPHRASE);
        assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
        assertThat(kinds()).endsWith("signed", "withdrawn", "voided");
        assertThat(ida.get("/api/sign-offs?state=void").body()).contains("Nora Pell withdrew the check " + CHECK + " of every rule book until then");
    }

    @Test
    void another_rule_book_withdrawn_leaves_it() throws IOException {
        sign();
        assertThat(json(withdraw(nora, "\"ruleBook\":\"sha256:" + "7".repeat(64) + "\",\"reason\":\"wrong\"")).get("ended").asInt()).isZero();
        assertThat(ida.get("/api/sign-offs?state=stands").body()).contains("HV-0142");
        assertThat(ida.get("/machines/HV-0142/papers/tag.pdf").statusCode()).isEqualTo(200);
    }

    @Test
    void nobody_else_does_and_nothing_unclear_is_withdrawn() {
        String check = "\"check\":\"" + CHECK + "\",\"reason\":\"wrong\"";
        assertThat(withdraw(ida, check).statusCode()).isEqualTo(403);
        assertThat(running.visitor().json("POST", "/api/ledger/withdrawals", "{}").statusCode()).isEqualTo(401);
        HttpResponse<String> unbound = withdraw(lead, check);
        assertThat(unbound.statusCode()).isEqualTo(403);
        assertThat(unbound.body()).contains("No key is bound to the account lead. Nothing was withdrawn.");
        HttpResponse<String> wrong = nora.json("POST", "/api/ledger/withdrawals", "{" + check + ",\"passphrase\":\"not it at all\"}");
        assertThat(wrong.statusCode()).isEqualTo(403);
        assertThat(wrong.body()).contains("The passphrase does not open the key of Nora Pell. Nothing was withdrawn.").doesNotContain("not it at all");
        for (String what : List.of("\"reason\":\"wrong\"", "\"ruleBook\":\"2\",\"reason\":\"wrong\"", "\"check\":\"brakes.pads\",\"reason\":\"wrong\"", "\"check\":\"" + CHECK + "\",\"reason\":\" \"",
                "\"check\":7,\"reason\":\"wrong\"", check + ",\"alsoNotAsked\":\"yes\"", check + ",\"until\":\"2027\"")) {
            assertThat(withdraw(nora, what).statusCode()).as(what).isEqualTo(422);
        }
        assertThat(kinds()).doesNotContain("withdrawn");
        assertThat(withdraw(nora, check).statusCode()).isEqualTo(201);
        HttpResponse<String> again = withdraw(nora, check);
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("this was withdrawn already: Nora Pell withdrew");
    }
}
