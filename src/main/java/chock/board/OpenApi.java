package chock.board;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The API described (OpenAPI 3.1), from the same table that serves it. */
final class OpenApi {
    private static final Pattern IN_PATH = Pattern.compile("\\{(\\w+)}");
    private static final String SCHEMAS = """
            {"signIn": {"type":"object","required":["id","password"],"additionalProperties":false,"properties":{"id":{"type":"string"},"password":{"type":"string"}}},
             "session": {"type":"object","required":["account","role","formToken","mustChangePassword"],"properties":{"account":{"type":"string"},"role":{"type":"string"},"formToken":{"type":"string","description":"send it as X-Form-Token with every write"},"mustChangePassword":{"type":"boolean"}}},
             "gate": {"type":"object","required":["verdict","worst"],"properties":{"verdict":{"enum":["released","blocked"]},"holdsUntil":{"type":["string","null"],"format":"date-time"},"faults":{"type":"integer"},"doubts":{"type":"integer"},"stale":{"type":"integer"},"missing":{"type":"integer"},"met":{"type":"integer"},"undecided":{"type":"integer"},"worst":{"type":"array","items":{"type":"object","properties":{"check":{"type":"string"},"state":{"type":"string"},"critical":{"type":"boolean"},"says":{"type":"string"}}}}}},
             "machine": {"type":"object","required":["id","version","judged"],"properties":{"id":{"type":"string"},"version":{"type":"integer"},"marque":{"type":"string"},"model":{"type":"string"},"workshop":{"type":"string"},"writtenAt":{"type":"string","format":"date-time"},"judged":{"type":"boolean","description":"false while it waits to be judged by the rule book in force; every gate then reads blocked"},"gates":{"type":"object","additionalProperties":{"$ref":"#/components/schemas/gate"}}}},
             "machines": {"type":"object","required":["all","page","size","machines","next"],"properties":{"all":{"type":"integer"},"page":{"type":"integer"},"size":{"type":"integer"},"machines":{"type":"array","items":{"$ref":"#/components/schemas/machine"}},"next":{"type":["string","null"]}}},
             "done": {"type":"object","required":["machine","version","entries"],"properties":{"machine":{"type":"string"},"version":{"type":"integer"},"entries":{"type":"array","items":{"type":"string"}},"gates":{"type":"object","additionalProperties":{"$ref":"#/components/schemas/gate"}}}},
             "entries": {"type":"array","minItems":1,"maxItems":100,"items":{"type":"object","description":"an entry as in a record file, without id, by and seq, which the board gives; without at it is of now, and entries of one call keep their order; where at lies more than two hours back, late says why it is written only now, and goes into the journal"}},
             "sheet": {"type":"object","additionalProperties":false,"minProperties":1,"properties":{"seeks":{"type":"array"},"instruments":{"type":"array"},"maker":{"type":"object","description":"figures that are new or changed come without by and seconded-by: who is signed in has read them"},"claims":{"type":"array"},"as-built":{"type":"object","description":"what the machine was built with, without by and seconded-by"},"changes":{"type":"array","items":{"type":"object"},"description":"dated changes of its description to be added, without by; the fields they name are changed with them"},"chock":{"const":"job-record/2","description":"moves a record of the first form to the second; its sign-offs are void then"}}},
             "secondReading": {"type":"object","minProperties":1,"maxProperties":1,"additionalProperties":false,"properties":{"figure":{"type":"object","required":["for"],"additionalProperties":false,"properties":{"for":{"type":"string"},"at":{"type":"string"},"at-least":{"type":"string"},"at-most":{"type":"string"},"is":{"type":"string"}}},"as-built":{"type":"object","required":["facts"],"additionalProperties":false,"properties":{"facts":{"type":"object"}}}}},
             "verdict": {"type":"array","description":"as assess --format json prints it","items":{"type":"object"}},
             "order": {"type":"object","description":"as order --format json prints it","required":["record","gate","steps","cycle"],"properties":{"record":{"type":"string"},"gate":{"type":"string"},"steps":{"type":"array","items":{"type":"object"}},"cycle":{"type":"array","items":{"type":"string"}}}},
             "why": {"type":"object","description":"as assess --why --format json prints it","required":["check","places"],"properties":{"check":{"type":"string"},"places":{"type":"array","items":{"type":"object"}}}},
             "rules": {"type":"object","description":"as rules --format json prints it","required":["rulebook","checks"],"properties":{"rulebook":{"type":"object"},"codes":{"type":"array","items":{"type":"object"}},"checks":{"type":"array","items":{"type":"object"}}}},
             "rule": {"type":"object","description":"as rules ID --format json prints it","required":["check","question","gates"],"properties":{"check":{"type":"string"},"question":{"type":"string"},"gates":{"type":"array","items":{"type":"string"}},"lastRehearsal":{"oneOf":[{"$ref":"#/components/schemas/rehearsal"},{"type":"null"}],"description":"null before the first since the board was started"}}},
             "rehearsal": {"type":"object","required":["at","digest","holds","cut","scenarios"],"properties":{"at":{"type":"string","format":"date-time"},"digest":{"type":"string","description":"of the rule book it was held with"},"holds":{"type":"boolean"},"cut":{"type":"boolean","description":"true when there may be more scenarios than were run"},"scenarios":{"type":"array","items":{"type":"object","required":["file","line","name","holds","slips"],"properties":{"file":{"type":"string"},"line":{"type":"integer"},"name":{"type":"string"},"holds":{"type":"boolean"},"slips":{"type":"array","items":{"type":"object","properties":{"line":{"type":"integer"},"expected":{"type":"string"},"found":{"type":"string"}}}}}}}}},
             "impact": {"type":"object","description":"as impact --format json prints it, with the limits and the digest of the house that would have it","required":["tried","impacts","limits","digest","judged","machines"],"properties":{"tried":{"type":"array","items":{"type":"string"}},"impacts":{"type":"array","items":{"type":"object"}},"limits":{"type":"string"},"digest":{"type":"string"},"judged":{"type":"integer"},"machines":{"type":"integer"}}},
             "photo": {"type":"object","required":["entry","digest"],"properties":{"entry":{"type":"string"},"digest":{"type":"string"},"width":{"type":"integer"},"height":{"type":"integer"},"size":{"type":"integer"},"by":{"type":"string"},"at":{"type":"string","format":"date-time"},"positionLeftOut":{"type":"boolean"}}},
             "photos": {"type":"array","items":{"$ref":"#/components/schemas/photo"}},
             "blockers": {"type":"array","items":{"type":"object","properties":{"check":{"type":"string"},"machines":{"type":"integer"}}}},
             "events": {"type":"array","items":{"type":"object","properties":{"id":{"type":"string"},"at":{"type":"string"},"account":{"type":"string"},"action":{"type":"string"},"machine":{"type":["string","null"]},"detail":{"type":"string"}}}},
             "account": {"type":"object","properties":{"id":{"type":"string"},"name":{"type":"string"},"role":{"enum":["technician","inspector","lead"]},"active":{"type":"boolean"}}},
             "accounts": {"type":"array","items":{"$ref":"#/components/schemas/account"}},
             "accountChange": {"type":"object","required":["role","active"],"additionalProperties":false,"properties":{"role":{"enum":["technician","inspector","lead"]},"active":{"type":"boolean"}}},
             "secret": {"type":"object","properties":{"id":{"type":"string"},"oneTimePassword":{"type":"string"}}},
             "sign": {"type":"object","required":["gate","passphrase"],"additionalProperties":false,"properties":{"gate":{"type":"string"},"passphrase":{"type":"string","description":"of the key bound to your account; never kept"}}},
             "signOff": {"type":"object","required":["id","machine","gate","state"],"properties":{"id":{"type":"string"},"machine":{"type":"string"},"gate":{"type":"string"},"state":{"enum":["stands","lapsed","void"]},"why":{"type":["string","null"]},"voidedAt":{"type":["string","null"],"format":"date-time"},"signedAt":{"type":"string","format":"date-time"},"holdsUntil":{"type":"string","format":"date-time"},"signer":{"type":"string"},"role":{"enum":["inspector","lead"]},"keyId":{"type":"string"},"line":{"type":"integer","description":"in the ledger"},"digest":{"type":"string"}}},
             "signOffs": {"type":"object","required":["signOffs","next"],"properties":{"signOffs":{"type":"array","items":{"$ref":"#/components/schemas/signOff"}},"next":{"type":["string","null"]}}},
             "verification": {"type":"object","required":["holds","complete","about","things"],"properties":{"holds":{"type":"boolean"},"complete":{"type":"boolean"},"about":{"type":"string"},"things":{"type":"array","items":{"type":"object","properties":{"thing":{"type":"string"},"holds":{"enum":["yes","no","not-looked-at"]},"says":{"type":"string"}}}}}},
             "signOffHolds": {"allOf":[{"$ref":"#/components/schemas/signOff"},{"type":"object","required":["verification"],"properties":{"verification":{"$ref":"#/components/schemas/verification"}}}]},
             "verify": {"type":"object","required":["signOff"],"additionalProperties":false,"properties":{"signOff":{"type":"string","description":"the text of the sign-off file, or of the code on its sheet"}}},
             "ledger": {"type":"object","required":["sound","says","lines","next"],"properties":{"sound":{"type":"boolean"},"says":{"type":"string"},"lines":{"type":"array","items":{"type":"object","required":["line","at","kind"],"properties":{"line":{"type":"integer"},"at":{"type":"string","format":"date-time"},"kind":{"enum":["signed","refused","voided","key-trusted","key-revoked","withdrawn","recovered"]}}}},"next":{"type":["string","null"]}}},
             "lost": {"type":"object","required":["reason"],"additionalProperties":false,"properties":{"reason":{"type":"string","description":"kept in the journal"}}},
             "lostLines": {"type":"object","required":["voided"],"properties":{"voided":{"type":"integer","description":"sign-offs that are void now"}}},
             "withdraw": {"type":"object","required":["reason","passphrase"],"additionalProperties":false,"anyOf":[{"required":["check"]},{"required":["ruleBook"]}],"properties":{"check":{"type":["string","null"],"description":"id of a check; without one, the whole rule book"},"ruleBook":{"type":["string","null"],"description":"digest of a rule book, sha256 and 64 hex figures; without one, the check of every rule book until now"},"alsoNotAsked":{"type":"boolean","description":"end also the sign-offs of machines that were not asked the check"},"reason":{"type":"string","maxLength":500,"description":"whoever verifies one of these sign-offs reads it"},"passphrase":{"type":"string","description":"of the key bound to your account; never kept"}}},
             "withdrawal": {"type":"object","required":["line","withdrawn","ended","unknown"],"properties":{"line":{"type":"integer","description":"in the ledger"},"withdrawn":{"type":"string"},"ended":{"type":"integer","description":"sign-offs that ended with it, by the lines of the ledger"},"unknown":{"type":"integer","description":"lines of sign-offs that do not say what they rest on; the board held those it keeps against it"}}},
             "keys": {"type":"array","items":{"type":"object","properties":{"id":{"type":"string"},"name":{"type":"string"},"role":{"enum":["inspector","lead"]},"validFrom":{"type":"string","format":"date-time"},"validUntil":{"type":"string","format":"date-time"},"revoked":{"type":"boolean"},"account":{"type":["string","null"]}}}},
             "binding": {"type":"object","required":["keyId"],"additionalProperties":false,"properties":{"keyId":{"type":["string","null"],"description":"id of a key on the trust list, or null for none"}}},
             "problem": {"type":"object","required":["title","status","detail"],"properties":{"type":{"type":"string"},"title":{"type":"string"},"status":{"type":"integer"},"detail":{"type":"string"},"faults":{"type":"array","items":{"type":"object","properties":{"line":{"type":"integer"},"path":{"type":"string"},"what":{"type":"string"},"advice":{"type":"string"}}}}}}}
            """;

    private OpenApi() { }

    static String of(List<Route> routes, String version) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("openapi", "3.1.0");
        root.putObject("info").put("title", "Chock board").put("version", version)
                .put("description", "Every machine of the shop and what holds it. Sign in at /api/session; the answer sets a cookie and gives a token to send as X-Form-Token with every write.");
        ObjectNode paths = root.putObject("paths");
        routes.forEach(route -> paths.withObjectProperty(route.path).set(route.method.name().toLowerCase(Locale.ROOT), operation(route)));
        ObjectNode components = root.putObject("components");
        components.putObject("securitySchemes").putObject("session").put("type", "apiKey").put("in", "cookie").put("name", "chock");
        components.set("schemas", schemas());
        return root.toString();
    }

    private static JsonNode schemas() {
        try {
            ObjectNode all = (ObjectNode) new ObjectMapper().readTree(SCHEMAS);
            all.putObject("record").put("type", "object").put("description", "a job record; chock schema prints its form");
            all.putObject("ndjson").put("type", "string");
            all.putObject("image").put("description", "a photo");
            return all;
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode operation(Route route) {
        ObjectNode operation = JsonNodeFactory.instance.objectNode();
        operation.put("summary", route.says).put("operationId", route.method.name().toLowerCase(Locale.ROOT) + route.path.replace("/api", "").replaceAll("[{}]", "").replace('/', '-'));
        operation.put("description", route.action.open() ? "Open to everybody." : "For " + String.join(", ", java.util.Arrays.stream(Role.values()).filter(route.action::allows).map(Role::word).toList()) + ".");
        operation.putArray("security").addObject().putArray("session");
        if (route.action.open()) {
            operation.putArray("security");
        }
        Matcher names = IN_PATH.matcher(route.path);
        while (names.find()) {
            parameter(operation, names.group(1), "path", "its id", true);
        }
        route.queries.forEach(query -> parameter(operation, query[0], "query", query[1], false));
        if (route.match) {
            parameter(operation, "If-Match", "header", "ETag of the record as you have seen it", true);
        }
        if (route.key) {
            parameter(operation, "Idempotency-Key", "header", "the same key with the same write does it once", false);
        }
        if (!route.method.name().equals("GET") && !route.action.open()) {
            parameter(operation, "X-Form-Token", "header", "formToken of the session", true);
        }
        if (route.body != null) {
            ObjectNode content = operation.putObject("requestBody").put("required", true).putObject("content");
            if (route.body.equals("image")) {
                List.of("image/jpeg", "image/png", "image/webp").forEach(type -> schema(content.putObject(type), route.body));
            } else {
                schema(content.putObject("application/json"), route.body);
            }
            if (route.body.equals("record")) {
                schema(content.putObject("application/yaml"), route.body);
            }
        }
        ObjectNode responses = operation.putObject("responses");
        ObjectNode good = responses.putObject(String.valueOf(route.status)).put("description", "Done");
        if (route.answer != null) {
            schema(good.putObject("content").putObject(route.answer.equals("ndjson") ? "application/x-ndjson" : route.answer.equals("image") ? "image/jpeg" : "application/json"), route.answer);
        }
        schema(responses.putObject("default").put("description", "Not done, and why (RFC 9457)").putObject("content").putObject(Problem.TYPE), "problem");
        return operation;
    }

    private static void parameter(ObjectNode operation, String name, String in, String says, boolean required) {
        operation.withArrayProperty("parameters").addObject().put("name", name).put("in", in).put("description", says).put("required", required).putObject("schema").put("type", "string");
    }

    private static void schema(ObjectNode at, String name) {
        at.putObject("schema").put("$ref", "#/components/schemas/" + name);
    }
}
