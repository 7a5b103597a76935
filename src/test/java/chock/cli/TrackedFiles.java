package chock.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of a project, and what is wrong with them as text: conflict markers, dead links, named paths that do not
 * exist. Each finding is one line, {@code file:line: what}.
 *
 * @param text content by path, with {@code /} between the parts; binary files with an empty text
 */
record TrackedFiles(TreeMap<String, String> text) {
    private static final Pattern MARKER = Pattern.compile("<{7}( .*)?|\\|{7}( .*)?|={7}|>{7}( .*)?");
    private static final Pattern LINK = Pattern.compile("\\]\\(<?([^()\\s>]+(?:\\([^()]*\\)[^()\\s>]*)?)>?(?:\\s+\"[^\"]*\")?\\)|^\\[[^\\]]+\\]:\\s*(\\S+)");
    private static final Pattern SCHEME = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*:.*|//.*");
    private static final Pattern FENCE = Pattern.compile("\\s*(```|~~~).*");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`|\\{@code ([^{}]*(?:\\{[^{}]*\\}[^{}]*)*)\\}");
    private static final Pattern WORD = Pattern.compile("(?:<[^<>]*>|[^\\s<>])+");
    private static final Pattern PLACEHOLDER = Pattern.compile("<[^<>]*>|\\{[^{}]*\\}|\\*+|…");
    private static final Pattern TEST = Pattern.compile("[A-Z]\\w*(?:…\\w*)?(?:Test|IT)");
    private static final Set<String> NOT_TRACKED = Set.of(".git", "target", ".idea", ".vscode");

    /** What git tracks in this folder; without git, or outside a checkout, every file but those of builds and editors. */
    static TrackedFiles of(Path root) throws IOException, InterruptedException {
        TreeMap<String, String> all = new TreeMap<>();
        for (String name : names(root)) {
            Path file = root.resolve(name);
            // Removed and not yet committed.
            if (Files.isRegularFile(file)) {
                all.put(name, read(file));
            }
        }
        return new TrackedFiles(all);
    }

    private static List<String> names(Path root) throws IOException, InterruptedException {
        if (Files.exists(root.resolve(".git"))) {
            Path list = Files.createTempFile("tracked", ".txt");
            try {
                Process git = new ProcessBuilder("git", "ls-files", "-z").directory(root.toFile()).redirectOutput(list.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
                if (git.waitFor() == 0) {
                    return List.of(Files.readString(list).split("\0"));
                }
            } catch (IOException e) {
                // git is not installed: the files are listed below.
            } finally {
                Files.delete(list);
            }
        }
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(Files::isRegularFile).map(root::relativize).filter(file -> !NOT_TRACKED.contains(file.getName(0).toString())).map(file -> file.toString().replace('\\', '/')).toList();
        }
    }

    private static String read(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        for (byte b : bytes) {
            if (b == 0) {
                return "";
            }
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            // A fixture in another character set; its markers and paths are ASCII all the same.
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private void eachLine(String file, BiConsumer<Integer, String> line) {
        String[] lines = text.get(file).split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            line.accept(i + 1, lines[i].endsWith("\r") ? lines[i].substring(0, lines[i].length() - 1) : lines[i]);
        }
    }

    /** Lines that a merge left behind. */
    List<String> conflictMarkers() {
        List<String> found = new ArrayList<>();
        text.keySet().forEach(file -> eachLine(file, (n, line) -> {
            if (MARKER.matcher(line).matches()) {
                found.add(file + ":" + n + ": conflict marker " + line);
            }
        }));
        return found;
    }

    private List<String> pages() {
        return text.keySet().stream().filter(file -> file.endsWith(".md")).toList();
    }

    /** Links between pages that lead to no file, or to no heading of it. */
    List<String> deadLinks() {
        Map<String, Set<String>> headings = new HashMap<>();
        Set<String> folders = folders();
        List<String> found = new ArrayList<>();
        for (String page : pages()) {
            eachLineOfWords(page, (n, line) -> {
                Matcher link = LINK.matcher(line.replaceAll("`[^`]*`", "``"));
                while (link.find()) {
                    String to = link.group(1) != null ? link.group(1) : link.group(2);
                    if (SCHEME.matcher(to).matches()) {
                        continue;
                    }
                    String[] parts = to.split("#", 2);
                    String target = parts[0].isEmpty() ? page : resolved(page, parts[0]);
                    if (!text.containsKey(target) && !folders.contains(target)) {
                        found.add(page + ":" + n + ": link to " + to + ", which does not exist");
                    } else if (parts.length == 2 && !headings.computeIfAbsent(target, this::headings).contains(parts[1])) {
                        found.add(page + ":" + n + ": link to " + to + ", and " + target + " has no such heading");
                    }
                }
            });
        }
        return found;
    }

    /** Lines outside blocks of code. */
    private void eachLineOfWords(String page, BiConsumer<Integer, String> words) {
        boolean[] code = {false};
        eachLine(page, (n, line) -> {
            if (FENCE.matcher(line).matches()) {
                code[0] = !code[0];
            } else if (!code[0]) {
                words.accept(n, line);
            }
        });
    }

    private static String resolved(String page, String to) {
        Path folder = Path.of(page).getParent();
        String path = (folder == null ? Path.of(to) : folder.resolve(to)).normalize().toString().replace('\\', '/');
        return path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
    }

    private Set<String> folders() {
        Set<String> folders = new HashSet<>(Set.of(""));
        for (String file : text.keySet()) {
            for (int slash = file.indexOf('/'); slash > 0; slash = file.indexOf('/', slash + 1)) {
                folders.add(file.substring(0, slash));
            }
        }
        return folders;
    }

    // As forges make them: small letters, hyphens for blanks, no punctuation; a second one of the same name ends in -1.
    private Set<String> headings(String page) {
        Map<String, Integer> seen = new HashMap<>();
        Set<String> all = new HashSet<>();
        if (text.containsKey(page)) {
            eachLineOfWords(page, (n, line) -> {
                if (line.matches("#{1,6} .*")) {
                    String name = line.replaceFirst("#+ ", "").strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}\\p{M}_ -]", "").replace(' ', '-');
                    int before = seen.merge(name, 1, Integer::sum) - 1;
                    all.add(before == 0 ? name : name + "-" + before);
                }
            });
        }
        return all;
    }

    /**
     * Paths of the project, named in backticks or {@code @code}, that do not exist; and names of tests in backticks on a
     * page. {@code <x>}, braces, {@code *} and an ellipsis may be anything.
     */
    List<String> absentPaths() {
        Set<String> known = new TreeSet<>(text.keySet());
        known.addAll(folders());
        Set<String> tops = known.stream().map(file -> file.split("/", 2)[0]).filter(top -> !top.isEmpty()).collect(Collectors.toSet());
        Set<String> tests = text.keySet().stream().filter(file -> file.endsWith(".java")).map(file -> file.substring(file.lastIndexOf('/') + 1, file.length() - 5)).collect(Collectors.toSet());
        List<String> found = new ArrayList<>();
        for (String file : text.keySet()) {
            eachLine(file, (n, line) -> {
                Matcher quoted = QUOTED.matcher(line);
                while (quoted.find()) {
                    String words = quoted.group(1) != null ? quoted.group(1) : quoted.group(2);
                    Matcher word = WORD.matcher(words);
                    while (word.find()) {
                        String path = word.group().replaceFirst("[,.;:)'\"]+$", "").replaceFirst("^['\"(]+", "").replaceFirst(":\\d+$", "");
                        if (tops.contains(path.split("/", 2)[0]) && !exists(path, known)) {
                            found.add(file + ":" + n + ": " + path + " does not exist");
                        }
                    }
                    if (file.endsWith(".md") && TEST.matcher(words).matches() && !exists(words, tests)) {
                        found.add(file + ":" + n + ": there is no test " + words);
                    }
                }
            });
        }
        return found;
    }

    private static boolean exists(String path, Set<String> known) {
        String plain = path.replaceFirst("/+$", "");
        if (!PLACEHOLDER.matcher(plain).find()) {
            return known.contains(plain);
        }
        StringBuilder shape = new StringBuilder();
        Matcher placeholder = PLACEHOLDER.matcher(plain);
        int from = 0;
        while (placeholder.find()) {
            shape.append(Pattern.quote(plain.substring(from, placeholder.start()))).append(placeholder.group().equals("**") ? ".*" : "[^/]*");
            from = placeholder.end();
        }
        Pattern any = Pattern.compile(shape.append(Pattern.quote(plain.substring(from))).toString());
        return known.stream().anyMatch(name -> any.matcher(name).matches());
    }
}
