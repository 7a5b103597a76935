package chock.board;

import chock.useful.PrintedMachine;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Somebody at the bench with a phone: reads the page that was sent, presses what is on it, and counts. A press is a tap on an
 * answer, a unit, an instrument, a key of the pad, a field that has not the focus, or a button; a letter in a field that has no
 * pad counts one as well.
 */
final class Hand {
    private static final Pattern FIELD = Pattern.compile("(?s)<fieldset class=\"q q-(\\w+)\">(.*?)</fieldset>");
    private static final Pattern HIDDEN = Pattern.compile("(?s)<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">");
    private static final Pattern INPUT = Pattern.compile("<input [^>]*>");

    private Visit visit;
    final String at;
    int presses;
    int digits;
    int steps;
    int entries;
    int skips;
    int instruments;
    long waited;
    final List<String> told = new ArrayList<>();

    private final Running running;

    Hand(Running running, Visit visit, String machine) {
        this.running = running;
        this.visit = visit;
        this.at = "/machines/" + machine + "/bench";
    }

    /** The same count goes on with another person. */
    Hand handedTo(Visit other) {
        visit = other;
        return this;
    }

    /** One control of the page. */
    record Control(Map<String, String> attributes) {
        String name() {
            return attributes.getOrDefault("name", "");
        }

        String value() {
            return attributes.getOrDefault("value", "");
        }

        boolean isChosen() {
            return attributes.containsKey("checked");
        }
    }

    static List<Control> controls(String html) {
        List<Control> controls = new ArrayList<>();
        Matcher input = INPUT.matcher(html);
        while (input.find()) {
            Map<String, String> attributes = new LinkedHashMap<>();
            Matcher one = Pattern.compile("([\\w-]+)(?:=\"([^\"]*)\")?").matcher(input.group().substring("<input".length()));
            while (one.find()) {
                attributes.put(one.group(1), unescaped(one.group(2)));
            }
            controls.add(new Control(attributes));
        }
        return controls;
    }

    private static String unescaped(String text) {
        return text == null ? "" : text.replace("&#39;", "'").replace("&#34;", "\"").replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    }

    static Map<String, String> hidden(String page) {
        Map<String, String> hidden = new LinkedHashMap<>();
        Matcher found = HIDDEN.matcher(page);
        while (found.find()) {
            hidden.put(found.group(1), unescaped(found.group(2)));
        }
        return hidden;
    }

    /** Presses Begin, after the parts that were ticked. */
    void begin(String... parts) {
        List<String> fields = new ArrayList<>(List.of("gate", "road-test", "way", "order"));
        for (String part : parts) {
            fields.addAll(List.of("part", part));
        }
        presses += parts.length == 0 ? 1 : parts.length + 2;
        post(at, fields);
    }

    private HttpResponse<String> post(String path, List<String> fields) {
        long before = System.nanoTime();
        HttpResponse<String> answer = visit.post(path, fields.toArray(new String[0]));
        waited += System.nanoTime() - before;
        return answer;
    }

    String page() {
        long before = System.nanoTime();
        String page = visit.get(at + "/step").body();
        waited += System.nanoTime() - before;
        return page;
    }

    /** Does every step of the round. */
    void work() {
        for (String page = page(); page.contains("id=\"step\""); page = page()) {
            steps++;
            if (Boolean.getBoolean("chock.hand")) {
                System.out.println(steps + " " + hidden(page).get("keys").replace("\n", " + ") + " | " + page.replaceAll("(?s).*role=\"status\">(.*?)</p>.*", "$1").replaceAll("<[^>]*>|\\s+", " "));
            }
            step(page);
            if (steps > Integer.getInteger("chock.hand.most", 400)) {
                throw new IllegalStateException("the round does not end: " + hidden(page).get("keys"));
            }
        }
    }

    private void step(String page) {
        List<String> fields = new ArrayList<>();
        hidden(page).forEach((name, value) -> fields.addAll(List.of(name, value)));
        fields.remove(fields.indexOf("form") + 1);
        fields.remove("form");
        // The work itself takes its time: a minute a step, and what is watched as long as it is watched.
        running.pass(Duration.ofMinutes(1));
        int answered = 0;
        boolean first = true;
        Matcher question = FIELD.matcher(page);
        while (question.find()) {
            List<Control> controls = controls(question.group(2));
            String key = controls.stream().map(Control::name).filter(name -> name.startsWith("is-")).findFirst().orElseThrow().substring(3);
            Optional<PrintedMachine.Found> found = PrintedMachine.found(key.substring(0, key.lastIndexOf(' ')), key.substring(key.lastIndexOf(' ') + 1));
            if (found.isEmpty()) {
                continue;
            }
            if (found.get().is() != null && found.get().is().matches("\\d+ (min|s)")) {
                running.pass(Duration.ofSeconds(Long.parseLong(found.get().is().split(" ")[0]) * (found.get().is().endsWith("min") ? 60 : 1)));
            }
            answer(question.group(1), key, found.get(), controls, first, fields);
            first &= !question.group(1).matches("amount|torque|days|code");
            answered++;
        }
        presses++;
        if (answered == 0) {
            skips++;
            fields.addAll(List.of("do", "skip"));
        } else {
            fields.addAll(List.of("do", "save"));
        }
        entries += answered;
        HttpResponse<String> answer = post(at + "/step", fields);
        if (answer.statusCode() != 303) {
            throw new IllegalStateException(hidden(page).get("keys") + ": " + answer.statusCode() + " " + answer.body().replaceAll("(?s).*role=\"alert\">(.*?)</div>.*", "$1"));
        }
    }

    private void answer(String kind, String key, PrintedMachine.Found found, List<Control> controls, boolean focused, List<String> fields) {
        switch (kind) {
            case "answer", "work" -> {
                String is = kind.equals("work") ? "done" : found.is();
                if (controls.stream().noneMatch(one -> one.name().equals("is-" + key) && one.value().equals(is))) {
                    throw new IllegalStateException(key + ": there is no answer " + is);
                }
                tap("is-" + key, is, fields);
            }
            default -> {
                String[] typed = typed(kind, found.is());
                presses += focused && !kind.equals("code") ? 0 : 1;
                digits += typed[0].length();
                presses += typed[0].length();
                fields.addAll(List.of("is-" + key, typed[0]));
                if (!typed[1].isEmpty()) {
                    choose("unit-" + key, typed[1], controls, fields);
                }
            }
        }
        if (found.with() != null) {
            instruments += choose("with-" + key, found.with(), controls, fields);
        }
    }

    /** What is typed, and the unit; of an uncertainty that every such instrument has anyway nothing is typed. */
    private static String[] typed(String kind, String is) {
        Matcher amount = Pattern.compile("(-?[\\d.]+) ?(\\D*?)(?: ± ([\\d.]+) .*)?").matcher(is);
        if (!kind.matches("amount|torque") || !amount.matches()) {
            return new String[] {is, ""};
        }
        return new String[] {amount.group(1) + (amount.group(3) == null ? "" : "±" + amount.group(3)), amount.group(2).equals("times") ? "" : amount.group(2)};
    }

    /** Taps it unless it is chosen already. */
    private int choose(String name, String value, List<Control> controls, List<String> fields) {
        Control wanted = controls.stream().filter(one -> one.name().equals(name) && one.value().equals(value)).findFirst().orElseThrow(() -> new IllegalStateException(name + ": there is no " + value));
        fields.addAll(List.of(name, value));
        if (!wanted.isChosen()) {
            presses++;
            return 1;
        }
        return 0;
    }

    private void tap(String name, String value, List<String> fields) {
        presses++;
        fields.addAll(List.of(name, value));
    }

    /** Keystroke level: 0.28 s a key of the pad, 1.1 s any other press, 1.35 s thinking a step, and what the board took to answer. */
    double modelledMinutes() {
        return (digits * 0.28 + (presses - digits) * 1.1 + steps * 1.35 + waited / 1e9) / 60;
    }
}
