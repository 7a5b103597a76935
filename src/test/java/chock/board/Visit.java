package chock.board;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A caller of the board, with the cookie it was given. */
final class Visit {
    private static final HttpClient CLIENT = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).connectTimeout(Duration.ofSeconds(10)).build();
    private static final Pattern FORM = Pattern.compile("name=\"form\" value=\"([^\"]+)\"");

    private final String base;
    String cookie = "";
    String form = "";

    Visit(int port) {
        this.base = "http://127.0.0.1:" + port;
    }

    HttpResponse<String> send(String method, String path, String type, byte[] body, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(base + path)).timeout(Duration.ofSeconds(60)).method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofByteArray(body));
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        if (type != null) {
            request.header("Content-Type", type);
        }
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        try {
            HttpResponse<String> response = CLIENT.send(request.build(), BodyHandlers.ofString());
            response.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.split(";")[0]);
            return response;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    HttpResponse<String> get(String path, String... headers) {
        return send("GET", path, null, null, headers);
    }

    HttpResponse<byte[]> bytes(String path) {
        try {
            return CLIENT.send(HttpRequest.newBuilder(URI.create(base + path)).timeout(Duration.ofSeconds(60)).header("Cookie", cookie).build(), BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    HttpResponse<String> json(String method, String path, String body, String... headers) {
        String[] all = java.util.Arrays.copyOf(headers, headers.length + 2);
        all[headers.length] = "X-Form-Token";
        all[headers.length + 1] = form.isEmpty() ? "none" : form;
        return send(method, path, "application/json", body.getBytes(StandardCharsets.UTF_8), all);
    }

    /** Posts a form from name and value in turn, with the token of this caller. */
    HttpResponse<String> post(String path, String... fields) {
        StringBuilder body = new StringBuilder("form=" + encoded(form));
        for (int i = 0; i < fields.length; i += 2) {
            body.append('&').append(encoded(fields[i])).append('=').append(encoded(fields[i + 1]));
        }
        return send("POST", path, "application/x-www-form-urlencoded", body.toString().getBytes(StandardCharsets.UTF_8));
    }

    HttpResponse<String> upload(String path, byte[] file) {
        return upload(path, "record", file);
    }

    HttpResponse<String> upload(String path, String field, byte[] file) {
        String head = "--cut\r\nContent-Disposition: form-data; name=\"form\"\r\n\r\n" + form + "\r\n--cut\r\nContent-Disposition: form-data; name=\"" + field + "\"; filename=\"../../x.yaml\"\r\n\r\n";
        byte[] start = head.getBytes(StandardCharsets.UTF_8);
        byte[] end = "\r\n--cut--\r\n".getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[start.length + file.length + end.length];
        System.arraycopy(start, 0, all, 0, start.length);
        System.arraycopy(file, 0, all, start.length, file.length);
        System.arraycopy(end, 0, all, start.length + file.length, end.length);
        return send("POST", path, "multipart/form-data; boundary=cut", all);
    }

    /** Signs in, sets a password of one's own when asked to, and remembers the form's token. */
    Visit signIn(String id, String password) {
        HttpResponse<String> in = post("/sign-in", "id", id, "password", password);
        if (in.statusCode() != 303) {
            throw new IllegalStateException("not signed in: " + in.statusCode());
        }
        HttpResponse<String> page = get("/password");
        form = token(page.body());
        if (page.body().contains("Somebody else has seen the password")) {
            post("/password", "old", password, "new", "own words of " + password, "again", "own words of " + password);
            form = token(get("/password").body());
        }
        return this;
    }

    static String token(String page) {
        Matcher found = FORM.matcher(page);
        return found.find() ? found.group(1) : "";
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
