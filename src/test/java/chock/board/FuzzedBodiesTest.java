package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.fuzz.Fuzz;
import chock.record.RecordReader;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a caller who is signed in sends, the board takes it or refuses it; it never fails over it. */
class FuzzedBodiesTest {
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String JSON = "application/json";

    @TempDir
    Path folder;

    private record Call(String method, String path, String type, String body) { }

    private static List<Call> calls(String form) {
        return List.of(
                new Call("POST", "/api/machines/HV-0142/entries", JSON, "[{\"point\":\"front-brake/caliper/inner-pad\",\"measured\":\"thickness\",\"is\":\"4.1 mm\",\"with\":\"caliper-1\",\"note\":\"thin end\"},{\"point\":\"front-brake/caliper\",\"done\":\"removed\"}]"),
                new Call("PATCH", "/api/machines/HV-0142", JSON, "{\"seeks\":[\"road-test\",\"on-show\"],\"claims\":[{\"id\":\"c1\",\"about\":\"machine\",\"kind\":\"year\",\"says\":\"built 1974\"}]}"),
                new Call("POST", "/api/machines", "application/yaml", new String(Bench.example("lark-released.yaml"), StandardCharsets.UTF_8)),
                new Call("POST", "/api/accounts", JSON, "{\"id\":\"nell\",\"name\":\"Nell Ware\",\"role\":\"technician\"}"),
                new Call("PATCH", "/api/accounts/nell", JSON, "{\"role\":\"inspector\",\"active\":true}"),
                new Call("POST", "/api/session", JSON, "{\"id\":\"nell\",\"password\":\"none of these\"}"),
                new Call("POST", "/api/verify", JSON, "{\"signOff\":\"eyJhbGciOiJFZERTQSJ9.eyJhIjoxfQ.c2ln\"}"),
                new Call("POST", "/machines/HV-0142/write", FORM, "form=" + form + "&seen=1&once=a1&point=front-brake%2Fcaliper&work=removed&note=off"),
                new Call("POST", "/verify", FORM, "form=" + form + "&sign-off=eyJhbGciOiJFZERTQSJ9.eyJhIjoxfQ.c2ln"));
    }

    @Test
    void areTakenOrRefused() {
        try (Running running = new Running(folder.resolve("store"))) {
            running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            Visit lead = running.lead();
            List<Call> calls = calls(lead.form);
            int[] turn = {0};
            int[] refused = {0};
            int all = Fuzz.run(calls.stream().map(c -> c.body().getBytes(StandardCharsets.UTF_8)).toList(), bytes -> {
                Call call = calls.get(turn[0]++ % calls.size());
                String tag = lead.get("/api/machines/HV-0142").headers().firstValue("ETag").orElseThrow();
                HttpResponse<String> answer = lead.send(call.method(), call.path(), call.type(), bytes, "X-Form-Token", lead.form, "If-Match", tag);
                assertThat(answer.statusCode()).as(call.method() + " " + call.path() + ": " + answer.body()).isBetween(200, 499);
                refused[0] += answer.statusCode() >= 400 ? 1 : 0;
            });
            assertThat(refused[0]).as("refused, of " + all).isPositive();
            byte[] left = lead.bytes("/api/machines/HV-0142").body();
            assertThat(RecordReader.read("left", left, Bench.book().vocabulary(), Bench.NOON).entries()).as("still a sound record, nothing lost").hasSizeGreaterThan(250);
            assertThat(Stream.of("/", "/machines/HV-0142", "/people", "/journal", "/ledger")).allSatisfy(page -> assertThat(lead.get(page).statusCode()).as(page).isEqualTo(200));
        }
    }
}
