package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.assess.Impact;
import chock.board.store.Store;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The catalogue finds and shows checks, and a house limit is tried on every machine before anybody adopts it. */
class RulePagesTest {
    private static final String PADS = "limit=brakes.pad-thickness&at-limit=passes&reason=steep+hills&house=Ford+rules&value=";

    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;

    @BeforeAll
    static void start() {
        running = new Running(folder.resolve("store"));
        lead = running.lead();
        for (String file : List.of("lark-released", "merle-released", "lark-faults")) {
            running.board.shop().take(file, Bench.example(file + ".yaml"), "lead", null);
        }
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    /** Asks until all machines are judged. */
    private static HttpResponse<String> finished(String path) {
        HttpResponse<String> answer = lead.get(path);
        for (int i = 0; i < 20 && (answer.statusCode() == 202 || answer.statusCode() == 429 || answer.body().contains("are judged so far")); i++) {
            answer = lead.get(path);
        }
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer;
    }

    private static int checks(String query) {
        String page = lead.get("/rules?" + query).body();
        return Integer.parseInt(page.replaceFirst("(?s).*role=\"status\">(\\d+) check.*", "$1"));
    }

    @Test
    void the_catalogue_is_sieved_by_words_system_and_gate() {
        int all = Bench.book().cards().size();
        assertThat(checks("")).isEqualTo(all);
        long brakes = Bench.book().cards().keySet().stream().filter(id -> id.startsWith("brakes.")).count();
        assertThat(checks("system=brakes")).isEqualTo((int) brakes).isLessThan(all);
        assertThat(checks("q=pad+THICKNESS")).isBetween(1, 10);
        assertThat(lead.get("/rules?q=pad+thickness").body()).contains("/rules/brakes.pad-thickness");
        assertThat(checks("gate=first-start")).isBetween(5, all - 1);
        assertThat(lead.get("/rules?gate=nowhere").statusCode()).isEqualTo(422);
        assertThat(checks("q=%27+OR+1%3D1")).isZero();
        assertThat(lead.get("/api/rules?q=pad+thickness").body()).contains("brakes.pad-thickness").doesNotContain("tyres.age");
    }

    @Test
    void a_page_says_all_there_is_to_say_of_a_check() {
        String page = lead.get("/rules/brakes.pad-thickness").body();
        assertThat(page).contains("Evidence").contains("measured with an instrument").contains("Limit").contains("Undone by").contains("To clear").contains("features/brakes/").contains("/house?limit=brakes.pad-thickness").contains("/?check=brakes.pad-thickness");
        assertThat(lead.get("/rules/no.such").statusCode()).isEqualTo(404);
        assertThat(lead.get("/rules/%3Cscript%3E").body()).doesNotContain("<script>");
        assertThat(lead.get("/api/rules/brakes.pad-thickness").body()).contains("\"limits\"").contains("features/brakes/");
        assertThat(lead.get("/api/rules/no.such").statusCode()).isEqualTo(404);
        Bench.book().cards().keySet().stream().filter(id -> id.hashCode() % 10 == 0).forEach(id -> assertThat(lead.get("/rules/" + id).statusCode()).as(id).isEqualTo(200));
    }

    @Test
    void what_would_loosen_is_refused_with_both_numbers() {
        HttpResponse<String> refused = lead.get("/house?" + PADS + "1.2+mm");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("at least 1.2 mm is looser than at least 1.5 mm").contains("A house may only tighten").doesNotContain("What it would do");
        for (String wrong : List.of("2+kg", "much", "2+mm+to+3+mm", "")) {
            assertThat(lead.get("/house?" + PADS + wrong).statusCode()).as(wrong).isEqualTo(422);
        }
        assertThat(lead.get("/house?limit=no.such&reason=x&value=1+mm").body()).contains("the rule book has no limit 'no.such'");
        assertThat(lead.get("/house?limit=brakes.pad-thickness&value=3+mm").body()).contains("no reason is written");
        assertThat(lead.get("/api/impact?" + PADS + "1.2+mm").statusCode()).isEqualTo(422);
        String evil = URLEncoder.encode("\"</pre><script>alert(1)</script>", StandardCharsets.UTF_8);
        for (String query : List.of(PADS + evil, PADS.replace("steep+hills", evil) + "3+mm", "limit=" + evil + "&reason=x&value=1", PADS.replace("Ford+rules", evil) + "3+mm")) {
            assertThat(lead.get("/house?" + query).body()).contains("<main").doesNotContain("<script>");
        }
    }

    @Test
    void the_effect_is_that_of_judging_twice_and_nothing_is_changed() throws Exception {
        String before = lead.get("/api/machines").body();
        JsonNode told = new ObjectMapper().readTree(finished("/api/impact?" + PADS + "9+mm").body());
        RuleBook other = Bench.book().with(HouseBook.named("Ford rules").withLimits(told.get("limits").textValue()));
        int changed = 0;
        for (String file : List.of("lark-faults", "lark-released", "merle-released")) {
            JobRecord record = RecordReader.read(file, Bench.example(file + ".yaml"), Bench.book().vocabulary(), Bench.NOON);
            for (Impact impact : Impact.of(record, Bench.book(), other, record.seeks(), Bench.NOON)) {
                JsonNode one = null;
                for (JsonNode each : told.get("impacts")) {
                    one = each.get("record").textValue().equals(record.id()) && each.get("gate").textValue().equals(impact.gate().id()) ? each : one;
                }
                assertThat(one).as(record.id() + " " + impact.gate()).isNotNull();
                assertThat(one.get("before").textValue()).isEqualTo(impact.before() ? "released" : "blocked");
                assertThat(one.get("after").textValue()).isEqualTo(impact.after() ? "released" : "blocked");
                assertThat(one.get("findings")).hasSameSizeAs(impact.findings());
                changed += impact.findings().size();
            }
        }
        assertThat(changed).isPositive();
        assertThat(finished("/house?" + PADS + "9+mm").body()).contains("brakes.pad-thickness: at least 9 mm instead of at least 1.5 mm").contains("released now, would be held").contains("3 machines judged twice");
        assertThat(finished("/house?" + PADS + "1.5+mm").body()).contains("Nothing would change.");
        assertThat(lead.get("/api/machines").body()).isEqualTo(before);
    }

    @Test
    void while_one_is_tried_another_waits() throws Exception {
        try (Store store = Store.open(folder.resolve("busy").toString())) {
            Judging judging = new Judging(Bench.book());
            Shop shop = new Shop(store, judging, Bench.CLOCK);
            shop.take("merle", Bench.example("merle-released.yaml"), "lead", null);
            shop.take("lark", Bench.example("lark-released.yaml"), "lead", null);
            HouseTrial trial = new HouseTrial(store, shop, judging, Bench.CLOCK, ZoneId.of("Europe/London"));
            HouseTrial.Wish one = new HouseTrial.Wish("brakes.pad-thickness", "3 mm", true, "hills", "Ida Marrow", "");
            HouseTrial.Asked first = trial.ask(one, Duration.ZERO);
            assertThat(first.done()).as("two machines are not judged in no time").isNull();
            assertThat(first.of()).isEqualTo(2);
            assertThatThrownBy(() -> trial.ask(new HouseTrial.Wish("tyres.age", "5 y", true, "hills", "Ida Marrow", ""), Duration.ZERO)).isInstanceOf(Refusal.class).hasMessageContaining("Somebody is trying a limit");
            assertThat(trial.ask(one, Duration.ofMinutes(2)).done().impacts()).isNotEmpty();
            assertThat(trial.ask(new HouseTrial.Wish("tyres.age", "5 y", true, "hills", "Ida Marrow", ""), Duration.ofMinutes(2)).done().what()).startsWith("tyres.age");
        }
    }

    @Test
    void what_is_fetched_is_a_house_folder_as_it_is_read() throws Exception {
        HttpResponse<String> file = lead.get("/house/limits.yaml?" + PADS.replace("steep+hills", URLEncoder.encode("steep: \"hills\" # and\n- more", StandardCharsets.UTF_8)) + "2.5+mm");
        assertThat(file.headers().firstValue("Content-Disposition")).contains("attachment; filename=\"limits.yaml\"");
        Path house = Files.createDirectories(folder.resolve("house"));
        Files.writeString(house.resolve("limits.yaml"), file.body());
        Files.writeString(house.resolve("house.yaml"), "name: Ford rules\n");
        RuleBook adopted = Bench.book().with(HouseBook.read(house));
        assertThat(adopted.tightened()).singleElement().satisfies(l -> assertThat(l.bounds().words()).isEqualTo("at least 2.5 mm"));
    }

    @Test
    void a_house_in_force_keeps_what_it_has_and_its_digest_is_told_beforehand() throws Exception {
        Path house = Files.createDirectories(folder.resolve("own"));
        Files.writeString(house.resolve("house.yaml"), "name: Hollow Vale\n");
        Files.writeString(house.resolve("limits.yaml"), Files.readString(Path.of("docs/examples/house/limits.yaml")).replace("2026-11-25", "2026-11-01").stripTrailing());
        RuleBook book = Bench.book().with(HouseBook.read(house));
        try (Store store = Store.open(folder.resolve("other").toString())) {
            Judging judging = new Judging(book);
            HouseTrial trial = new HouseTrial(store, new Shop(store, judging, Bench.CLOCK), judging, Bench.CLOCK, ZoneId.of("Europe/London"));
            HouseTrial.Done done = trial.ask(new HouseTrial.Wish("brakes.pad-thickness", "3 mm", true, "hills", "Ida Marrow", ""), Duration.ofMinutes(1)).done();
            assertThat(done.what()).isEqualTo("brakes.pad-thickness: at least 3 mm instead of at least 2.5 mm (the house's own)");
            Files.writeString(house.resolve("limits.yaml"), done.house().limits());
            assertThat(HouseBook.read(house).digest()).isEqualTo(done.house().digest()).isNotEqualTo(book.house().orElseThrow().digest());
            assertThat(HouseBook.read(house).limits()).startsWith(book.house().orElseThrow().limits());
            assertThatThrownBy(() -> trial.with(new HouseTrial.Wish("brakes.pad-thickness", "1 mm", true, "hills", "Ida Marrow", ""))).isInstanceOf(UnusableInput.class).hasMessageContaining("looser");
        }
    }

    /** Rehearses on the page, however long the scenarios take. */
    private static String rehearsed(Visit who, String check) {
        HttpResponse<String> sent = who.post("/rules/" + check + "/rehearsal");
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        assertThat(sent.headers().firstValue("Location")).contains("/rules/" + check + "#scenarios");
        String page = who.get("/rules/" + check).body();
        for (int i = 0; i < 20 && page.contains("being rehearsed"); i++) {
            who.post("/rules/" + check + "/rehearsal");
            page = who.get("/rules/" + check).body();
        }
        return page;
    }

    @Test
    void scenarios_are_rehearsed_at_the_page_and_what_came_of_it_stays() throws Exception {
        Visit tom = running.person(lead, "tom", "Tom Fell", "technician");
        assertThat(tom.get("/rules/brakes.disc-thickness").body()).contains("Not rehearsed since the board was started.").contains("Rehearse these scenarios").contains("It decides nothing").doesNotContain("<strong>holds</strong>");
        assertThat(tom.get("/api/rules/brakes.disc-thickness").body()).contains("\"lastRehearsal\":null");
        String before = tom.get("/api/machines").body();
        String page = rehearsed(tom, "brakes.disc-thickness");
        String digest = Bench.book().digest();
        assertThat(page).contains("Last rehearsed 2026-11-25 12:00").contains("with rule book " + digest.substring("sha256:".length(), 19) + ": all ").contains("<li>thick enough: <strong>holds</strong>").contains("on both sides of the mark: <strong>holds</strong>, ").doesNotContain("does not hold").doesNotContain("Not rehearsed");
        assertThat(lead.get("/rules/brakes.disc-thickness").body()).as("for everybody").contains("Last rehearsed");
        JsonNode last = new ObjectMapper().readTree(tom.get("/api/rules/brakes.disc-thickness").body()).get("lastRehearsal");
        assertThat(last.get("digest").textValue()).isEqualTo(digest);
        assertThat(last.get("holds").booleanValue()).isTrue();
        assertThat(last.get("cut").booleanValue()).isFalse();
        assertThat(last.get("scenarios").size()).isGreaterThan(RulePages.scenarios(Bench.book().cards().get("brakes.disc-thickness")).values().stream().mapToInt(List::size).sum());
        assertThat(new ObjectMapper().readTree(tom.json("POST", "/api/rules/brakes.disc-thickness/rehearsal", "{}").body()).get("scenarios")).isEqualTo(last.get("scenarios"));
        assertThat(tom.get("/api/machines").body()).isEqualTo(before);
    }

    @Test
    void a_rehearsal_needs_a_check_and_the_token_of_the_form() {
        assertThat(lead.post("/rules/no.such/rehearsal").statusCode()).isEqualTo(404);
        assertThat(lead.json("POST", "/api/rules/no.such/rehearsal", "{}").statusCode()).isEqualTo(404);
        assertThat(lead.send("POST", "/rules/tyres.age/rehearsal", "application/x-www-form-urlencoded", new byte[0]).statusCode()).isEqualTo(403);
        assertThat(lead.get("/rules/tyres.age/rehearsal").statusCode()).isEqualTo(405);
        assertThat(lead.get("/rules/tyres.age").body()).contains("Not rehearsed");
    }

    @Test
    void what_does_not_hold_says_what_was_expected_and_found_and_a_house_brings_its_own() throws Exception {
        Path house = Files.createDirectories(folder.resolve("strict"));
        Files.writeString(house.resolve("house.yaml"), "name: Hollow Vale\n");
        Files.writeString(house.resolve("limits.yaml"), Files.readString(Path.of("docs/examples/house/limits.yaml")).replace("2026-11-25", "2026-11-01"));
        Files.writeString(Files.createDirectories(house.resolve("features")).resolve("own.feature"), """
                Feature: Pads of the house
                  @brakes.pad-thickness
                  Scenario: <b>bold</b> pads
                    Given a motorcycle with one hydraulic disc in front and a rod drum behind
                    And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
                    And front-brake/caliper/outer-pad measured thickness 3.1 mm ± 0.1 mm
                    Then brakes.pad-thickness is met
                  @brakes.pad-thickness
                  Scenario: says nothing
                    Given a motorcycle with one hydraulic disc in front and a rod drum behind
                """);
        try (Running strict = new Running(folder.resolve("strict-store"), Bench.book().with(HouseBook.read(house)), null)) {
            String page = rehearsed(strict.lead(), "brakes.pad-thickness");
            assertThat(page).contains("do not hold.").contains("a limit the house has tightened need not hold").contains("<strong>does not hold</strong> in ").contains("expected: Then brakes.pad-thickness is met").contains("Found: ")
                    .contains("&lt;b&gt;bold&lt;/b&gt; pads: <strong>holds</strong>").contains("says nothing: <strong>does not hold</strong>").contains("it expects nothing");
        }
    }

    @Test
    void one_check_is_rehearsed_at_a_time() {
        try (CheckRehearsal rehearsal = new CheckRehearsal(new Judging(Bench.book()), Bench.CLOCK)) {
            assertThat(rehearsal.ask("tyres.tread-depth", Duration.ZERO)).as("not in no time").isEmpty();
            assertThat(rehearsal.runs("tyres.tread-depth")).isTrue();
            assertThatThrownBy(() -> rehearsal.ask("tyres.age", Duration.ZERO)).isInstanceOf(Refusal.class).hasMessageContaining("Another check is being rehearsed");
            assertThat(rehearsal.last("tyres.tread-depth")).isEmpty();
            CheckRehearsal.Last done = rehearsal.ask("tyres.tread-depth", Duration.ofMinutes(2)).orElseThrow();
            assertThat(done.holds()).isTrue();
            assertThat(rehearsal.last("tyres.tread-depth")).contains(done);
            assertThat(rehearsal.ask("tyres.age", Duration.ofMinutes(2)).orElseThrow().at()).isEqualTo(Bench.NOON);
        }
    }
}
