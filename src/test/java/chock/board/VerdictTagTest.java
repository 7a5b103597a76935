package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Quantity;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.HouseBook;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import chock.signoff.Shop;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A verdict changes without a write to the record; a caller who asks whether the kept one still holds must be told so. */
class VerdictTagTest {
    private static final String VERDICT = "/api/machines/HV-0142/verdict?gate=road-test";

    @TempDir
    Path folder;

    private static String tag(HttpResponse<String> answer) {
        return answer.headers().firstValue("ETag").orElseThrow();
    }

    private static String verdict(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer.body().replaceFirst("(?s).*\"verdict\" : \"(\\w+)\".*", "$1");
    }

    private static RuleBook house(String row) {
        return Bench.book().with(HouseBook.named("House").withLimits(row + "  at-limit: passes\n  reason: hills\n  author: Ida Marrow\n  date: 2026-11-25\n"));
    }

    private static RuleBook padsAtLeast(String value) {
        return Bench.book().with(l -> !l.id().equals("brakes.pad-thickness") ? l : new Limit(l.id(), l.of(), l.sense(), Quantity.parse(value), l.upper(), l.passesAtLimit(), l.resolution(),
                l.from(), l.registeredFrom(), l.registeredBefore(), l.fasterThan(), l.largerThan(), l.source(), l.reviewed(), l.maker(), l.local(), l.territory(), l.file(), l.line()));
    }

    @Test
    void theTagHoldsUntilTheVerdictChanges() {
        try (Running running = new Running(folder.resolve("store"))) {
            Visit lead = running.lead();
            running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            HttpResponse<String> first = lead.get(VERDICT);
            assertThat(verdict(first)).isEqualTo("released");
            assertThat(tag(first)).matches("W/\"1-[0-9a-f]{64}\"");
            assertThat(lead.get(VERDICT, "If-None-Match", tag(first)).statusCode()).isEqualTo(304);
            running.pass(Duration.ofMinutes(1));
            HttpResponse<String> later = lead.get(VERDICT);
            assertThat(later.body()).as("judged a minute later").isNotEqualTo(first.body()).contains("2026-11-25T12:01");
            assertThat(tag(later)).as("and nothing else is different").isEqualTo(tag(first));
            assertThat(lead.get(VERDICT, "If-None-Match", tag(first)).statusCode()).isEqualTo(304);
            assertThat(tag(lead.get(VERDICT.replace("road-test", "first-start")))).as("another gate").isNotEqualTo(tag(first));
            running.pass(Duration.ofHours(13));
            // Sessions end overnight.
            HttpResponse<String> nextDay = running.visitor().signIn("lead", "own words of " + running.leadSecret).get(VERDICT, "If-None-Match", tag(first));
            assertThat(verdict(nextDay)).as("past midnight").isEqualTo("blocked");
            assertThat(tag(nextDay)).isNotEqualTo(tag(first)).startsWith("W/\"1-");
        }
    }

    @Test
    void anotherHouseOrRuleBookGivesAnotherTag() {
        String known;
        String secret;
        try (Running running = new Running(folder.resolve("store"))) {
            secret = running.leadSecret;
            Visit lead = running.lead();
            running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            known = tag(lead.get(VERDICT));
        }
        String own = "own words of " + secret;
        try (Running same = new Running(folder.resolve("store"))) {
            assertThat(same.visitor().signIn("lead", own).get(VERDICT, "If-None-Match", known).statusCode()).as("nothing changed").isEqualTo(304);
        }
        try (Running stricter = new Running(folder.resolve("store"), house("- id: brakes.pad-thickness\n  sense: at-least\n  value: 9 mm\n"), null)) {
            HttpResponse<String> answer = stricter.visitor().signIn("lead", own).get(VERDICT, "If-None-Match", known);
            assertThat(verdict(answer)).as("a house limit was tightened").isEqualTo("blocked");
            assertThat(tag(answer)).isNotEqualTo(known);
        }
        try (Running elsewhere = new Running(folder.resolve("store"), house("- id: show.fuel-volume\n  sense: at-most\n  value: 4 L\n"), null)) {
            HttpResponse<String> answer = elsewhere.visitor().signIn("lead", own).get(VERDICT, "If-None-Match", known);
            assertThat(verdict(answer)).as("a house that asks nothing at this gate").isEqualTo("released");
            assertThat(answer.body()).contains("\"House\"");
            assertThat(tag(answer)).isNotEqualTo(known);
        }
        try (Running renewed = new Running(folder.resolve("store"), padsAtLeast("9 mm"), null)) {
            HttpResponse<String> answer = renewed.visitor().signIn("lead", own).get(VERDICT, "If-None-Match", known);
            assertThat(verdict(answer)).as("a new rule book").isEqualTo("blocked");
            assertThat(tag(answer)).isNotEqualTo(known);
        }
    }

    @Test
    void aWriteMayNameTheTagOfTheVerdictItRestsOn() {
        String entry = "[{\"point\":\"front-brake/caliper\",\"done\":\"removed\",\"at\":\"2026-11-25 11:00\"}]";
        try (Running running = new Running(folder.resolve("store"))) {
            Visit lead = running.lead();
            running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            String seen = tag(lead.get(VERDICT));
            assertThat(lead.json("POST", "/api/machines/HV-0142/entries", entry, "If-Match", seen).statusCode()).isEqualTo(201);
            HttpResponse<String> after = lead.get(VERDICT, "If-None-Match", seen);
            assertThat(verdict(after)).isEqualTo("blocked");
            assertThat(tag(after)).startsWith("W/\"2-");
            assertThat(lead.get("/api/machines/HV-0142", "If-None-Match", "\"1\"").statusCode()).as("the record itself").isEqualTo(200);
            assertThat(lead.get("/api/machines/HV-0142", "If-None-Match", "\"2\"").statusCode()).isEqualTo(304);
            HttpResponse<String> style = lead.get("/style.css");
            assertThat(style.headers().firstValue("Cache-Control")).as("a page of a new program never gets the style of an old one").contains("public, no-cache");
            assertThat(lead.get("/style.css", "If-None-Match", tag(style)).statusCode()).isEqualTo(304);
            assertThat(lead.get("/style.css", "If-None-Match", "\"old\"").body()).isEqualTo(style.body());
            assertThat(lead.json("POST", "/api/machines/HV-0142/entries", entry, "If-Match", seen).statusCode()).as("somebody wrote in between").isEqualTo(412);
            assertThat(lead.json("POST", "/api/machines/HV-0142/entries", entry, "If-Match", "\"2-short\"").body()).contains("This is not an ETag of this record.");
        }
    }

    /** The list shows what was judged before, so it has to be judged again in time, under a house limit and at a blocked gate too. */
    @Test
    void theListIsJudgedAgainWhenALimitComesIntoForce() {
        RuleBook book = house("- id: show.fuel-volume\n  sense: at-most\n  value: 3 L\n  from: 2026-12-01\n");
        Judging judging = new Judging(book);
        JobRecord record = RecordReader.read("lark", Bench.example("lark-on-show.yaml"), book.vocabulary(), Bench.NOON);
        assertThat(judging.summary(record, Bench.NOON).again()).isEqualTo(Instant.parse("2026-12-01T00:00:00Z"));
        Instant blocked = Instant.parse("2027-03-01T12:00:00Z");
        JobRecord old = RecordReader.read("lark", Bench.example("lark-on-show.yaml"), book.vocabulary(), blocked);
        assertThat(judging.summary(old, blocked).gates()).noneMatch(gate -> gate.released());
        RuleBook coming = house("- id: show.fuel-volume\n  sense: at-most\n  value: 3 L\n  from: 2027-03-02\n");
        assertThat(new Judging(coming).summary(old, blocked).again()).as("nothing lapses on that day, and a limit comes into force").isEqualTo(Instant.parse("2027-03-02T00:00:00Z"));
        assertThat(judging.summary(record, Bench.NOON).book()).isEqualTo(judging.key()).startsWith(book.digest()).isNotEqualTo(new Judging(Bench.book()).key());
    }

    @Test
    void otherSettingsOfTheWorkshopAreJudgedAnew() throws Exception {
        Path file = folder.resolve("shop.yaml");
        Files.writeString(file, Shop.SKELETON);
        String before = new Judging(Bench.book(), Shop.of(file)).key();
        assertThat(new Judging(Bench.book(), Shop.of(file)).key()).isEqualTo(before).isNotEqualTo(new Judging(Bench.book()).key());
        Files.writeString(file, Shop.SKELETON.replace("Europe/London", "Europe/Dublin"));
        assertThat(new Judging(Bench.book(), Shop.of(file)).key()).isNotEqualTo(before);
        assertThat(Api.verdictTag(1, "one key", "[{\"asOf\":\"now\",\"gates\":{}}]")).isEqualTo(Api.verdictTag(1, "one key", "[{\"asOf\":\"then\",\"gates\":{}}]"))
                .isNotEqualTo(Api.verdictTag(1, "other key", "[{\"asOf\":\"now\",\"gates\":{}}]")).isNotEqualTo(Api.verdictTag(2, "one key", "[{\"asOf\":\"now\",\"gates\":{}}]"))
                .isNotEqualTo(Api.verdictTag(1, "one key", "[{\"asOf\":\"now\",\"gates\":{\"road-test\":{}}}]"));
    }
}
