package chock.board;

import chock.board.store.Store;
import chock.board.store.Unavailable;
import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The running board. */
public final class Board implements AutoCloseable {
    /** Largest request, in bytes: a record file may have five million. */
    static final int LARGEST = 5_500_000;
    /** Largest request that brings a photo. */
    static final int LARGEST_PHOTO = Picture.LARGEST + 500_000;
    /** What everybody who is signed in has to know, on a request. */
    static final String ALARM = "alarm";
    private static final int AT_ONCE = 20;
    private static final Duration KEYS_KEPT = Duration.ofDays(7);
    /** How many connections are open at once; further ones wait until one of them ends. */
    static final int MOST_CONNECTIONS = 500;
    /** How long the head of a request may take, in seconds. */
    private static final int HEAD_SECONDS = 10;
    /** How long the store may take to say that it is there, in milliseconds. */
    private static final int READY_MILLIS = 1_000;

    private final Store store;
    private final Shop shop;
    private final People people;
    private final Clock clock;
    private final Journal journal;
    private final Guard guard;
    private final Pages pages;
    private final HouseTrial trial;
    private final CheckRehearsal rehearsal;
    private final Judging judging;
    private final SigningDesk desk;
    private final PrometheusMeterRegistry metrics = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final ScheduledExecutorService again = Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "judging again"));
    private final ScheduledExecutorService doorkeeper = Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "slow callers"));
    private final ExecutorService asking = Executors.newSingleThreadExecutor(task -> daemon(task, "asking the store"));
    private final SlowHeaders slow = new SlowHeaders(HEAD_SECONDS, System::nanoTime);
    private CompletableFuture<Integer> asked = CompletableFuture.completedFuture(0);
    private final Javalin server;
    private final Optional<String> firstSecret;
    private volatile boolean stopping;
    private volatile String alarm = "";

    /**
     * Starts it.
     *
     * @param zone of the workshop, for days on pages that are not of one machine
     * @param log takes what it says of its running, one JSON object a line
     * @throws UnusableInput when it cannot listen there
     */
    public Board(Store store, RuleBook book, Address address, Clock clock, ZoneId zone, String version, Consumer<String> log) {
        this(store, book, null, address, clock, zone, version, log);
    }

    /**
     * The same, with signing.
     *
     * @param workshop whose sign-offs are made at this board, or null
     */
    public Board(Store store, RuleBook book, chock.signoff.Shop workshop, Address address, Clock clock, ZoneId zone, String version, Consumer<String> log) {
        this.store = store;
        this.clock = clock;
        this.judging = new Judging(book, workshop);
        this.shop = new Shop(store, judging, clock, this::keepUp);
        this.desk = new SigningDesk(workshop, store, shop, judging, clock);
        this.people = new People(store, clock);
        this.guard = new Guard(people, address);
        this.journal = new Journal(log);
        this.trial = new HouseTrial(store, shop, judging, clock, zone);
        this.rehearsal = new CheckRehearsal(judging, clock);
        this.pages = new Pages(store, shop, judging, people, guard, desk, trial, rehearsal, clock, zone);
        this.firstSecret = people.first();
        new JvmMemoryMetrics().bindTo(metrics);
        new JvmGcMetrics().bindTo(metrics);
        new JvmThreadMetrics().bindTo(metrics);
        metrics.gauge("chock.ledger.alarm", desk, one -> one.alarm().isEmpty() ? 0 : 1);
        List<Route> api = new ArrayList<>(new Api(store, shop, judging, people, guard, clock).routes());
        api.addAll(new AnswerApi(shop, judging, clock).routes());
        api.addAll(new PhotoPages(shop, judging, new Album(store, clock), clock).routes());
        api.addAll(new RuleApi(judging, trial, rehearsal).routes());
        api.addAll(new SignApi(store, shop, desk, pages, clock).routes());
        String described = OpenApi.of(api, version);
        this.server = Javalin.create(config -> configure(config, address, api, described));
        try {
            server.start();
        } catch (RuntimeException e) {
            again.shutdownNow();
            doorkeeper.shutdownNow();
            asking.shutdownNow();
            throw UnusableInput.of("--port " + address.port(), "the board cannot listen there", "Stop what listens there, or name another port");
        }
        slow.watch(doorkeeper);
        again.scheduleWithFixedDelay(this::judgeAgain, 0, 60, TimeUnit.SECONDS);
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    private void configure(JavalinConfig config, Address address, List<Route> api, String described) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST_PHOTO;
        config.http.generateEtags = false;
        config.http.prefer405over404 = true;
        config.jetty.threadPool = new QueuedThreadPool(64, 4);
        config.jetty.multipartConfig.maxFileSize(Picture.LARGEST, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_PHOTO, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxInMemoryFileSize(LARGEST, SizeUnit.BYTES);
        config.jetty.modifyServletContextHandler(handler -> {
            // A whole sign-off may be typed into the form that verifies it; other forms are held to less by the guard.
            handler.setMaxFormContentSize(SignPages.LARGEST_SIGN_OFF);
            handler.setMaxFormKeys(200);
        });
        config.jetty.modifyServer(jetty -> {
            jetty.setStopTimeout(10_000);
            NetworkConnectionLimit limit = new NetworkConnectionLimit(MOST_CONNECTIONS, jetty);
            // While all places are taken, whoever holds one and says nothing loses it soon.
            limit.setEndPointIdleTimeout(2_000);
            jetty.addBean(limit);
        });
        config.jetty.addConnector((jetty, http) -> {
            http.setSendServerVersion(false);
            http.setRequestHeaderSize(16_384);
            // Who dribbles is cut off, so that slow callers cannot take all places. Not faster: the rate is looked at from the
            // first letter on, and a short form that waited for a busy computer would be refused.
            http.setMinRequestDataRate(20);
            http.setIdleTimeout(Duration.ofSeconds(30).toMillis());
            ServerConnector connector = address.certificate() == null ? new ServerConnector(jetty, 1, 1, new HttpConnectionFactory(http)) : tls(jetty, http, address);
            connector.setHost(address.listen());
            connector.setPort(address.port());
            connector.setIdleTimeout(30_000);
            connector.addBean(slow);
            return connector;
        });
        config.requestLogger.http((ctx, ms) -> said(ctx, ms));
        config.routes.before(guard::headers);
        config.routes.before(ctx -> ctx.attribute(ALARM, desk.alarm()));
        config.routes.beforeMatched(guard::admit);
        for (Route route : api) {
            config.routes.addHttpHandler(route.method, route.path, route.handler, route.action);
        }
        config.routes.get("/api/openapi.json", ctx -> ctx.contentType("application/json").result(described), Action.ENTER);
        config.routes.get("/health", ctx -> ctx.contentType("text/plain").result(desk.alarm().isEmpty() ? "running\n" : "running\nalarm: the ledger is not the one this board has seen\n"), Action.ENTER);
        config.routes.get("/ready", this::ready, Action.ENTER);
        config.routes.get("/metrics", ctx -> ctx.contentType("text/plain; version=0.0.4; charset=utf-8").result(metrics.scrape()), Action.READ_METRICS);
        pages.on(config.routes);
        config.routes.exception(Refusal.class, (e, ctx) -> {
            if (e.retryAfter() > 0) {
                ctx.header("Retry-After", String.valueOf(e.retryAfter()));
            }
            refuse(ctx, Problem.of(e.status(), e.getMessage()));
        });
        config.routes.exception(UnusableInput.class, (e, ctx) -> refuse(ctx, new Problem(422, Problem.title(422), e.getMessage(), e.faults())));
        config.routes.exception(Shop.WrittenSince.class, (e, ctx) -> refuse(ctx, Problem.of(412, e.getMessage())));
        config.routes.exception(Shop.Taken.class, (e, ctx) -> refuse(ctx, Problem.of(409, e.getMessage())));
        config.routes.exception(Shop.OtherPerson.class, (e, ctx) -> refuse(ctx, Problem.of(409, e.getMessage())));
        config.routes.exception(HttpResponseException.class, (e, ctx) -> refuse(ctx, Problem.of(e.getStatus(), e.getStatus() == 404 ? "There is no such page." : e.getStatus() == 413 ? "More was sent than is taken." : Problem.title(e.getStatus()) + ".")));
        config.routes.exception(Exception.class, this::fail);
    }

    private static ServerConnector tls(org.eclipse.jetty.server.Server jetty, HttpConfiguration http, Address address) {
        SslContextFactory.Server tls = new SslContextFactory.Server();
        tls.setKeyStorePath(address.certificate().toString());
        tls.setKeyStoreType("PKCS12");
        tls.setKeyStorePassword(address.passphrase());
        SecureRequestCustomizer secure = new SecureRequestCustomizer();
        secure.setSniHostCheck(false);
        http.addCustomizer(secure);
        return new ServerConnector(jetty, 1, 1, new SslConnectionFactory(tls, "http/1.1"), new HttpConnectionFactory(http));
    }

    private void said(Context ctx, float ms) {
        Visitor visitor = Guard.visitor(ctx);
        String path = ctx.endpoints().lastHttpEndpoint() == null ? "none" : ctx.endpoints().lastHttpEndpoint().path;
        metrics.timer("chock.requests", "path", path, "status", String.valueOf(ctx.statusCode())).record((long) (ms * 1000), TimeUnit.MICROSECONDS);
        journal.request(clock.instant(), ctx.method().name(), ctx.path(), ctx.statusCode(), ms, visitor == null ? null : visitor.account().id(), guard.caller(ctx));
    }

    private void ready(Context ctx) {
        Optional<Integer> waiting = stopping ? Optional.empty() : waiting();
        ctx.status(waiting.isEmpty() ? 503 : 200).contentType("text/plain").result(stopping ? "stopping\n"
                : waiting.isEmpty() ? "not ready: the store does not answer\n" : waiting.get() == 0 ? "ready\n" : "ready; some machines wait to be judged again\n");
        if (waiting.isEmpty()) {
            ctx.header("Retry-After", "10");
        }
    }

    /** Whether machines wait to be judged again, 0 or 1; empty when the store does not say so at once. Who asks while it is still thinking gets the same answer. */
    private Optional<Integer> waiting() {
        CompletableFuture<Integer> answer;
        synchronized (asking) {
            boolean thinking = !asked.isDone();
            asked = thinking ? asked : CompletableFuture.supplyAsync(() -> store.read(lines -> lines.records().toJudgeAgain(judging.key(), clock.instant(), 1)).size(), asking);
            answer = asked;
        }
        try {
            return Optional.of(answer.get(READY_MILLIS, TimeUnit.MILLISECONDS));
        } catch (ExecutionException | TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private void refuse(Context ctx, Problem problem) {
        ctx.status(problem.status());
        if (problem.status() == 413) {
            // The rest of what was sent is read and dropped within bounds; what may still come makes the connection useless, and the caller is told.
            Guard.readAway(ctx);
            ctx.header("Connection", "close");
        }
        if (ctx.path().startsWith("/api/")) {
            // Of a type it does not know the server takes the letters to be Latin ones.
            ctx.contentType(Problem.TYPE).result(problem.json().getBytes(StandardCharsets.UTF_8));
        } else {
            pages.failed(ctx, problem.status(), problem.detail());
        }
    }

    private void fail(Exception e, Context ctx) {
        int misread = misread(e);
        if (misread > 0) {
            refuse(ctx, Problem.of(misread, misread == 413 ? "More was sent than is taken." : "What was sent cannot be read."));
            return;
        }
        Optional<Unavailable> unavailable = Unavailable.of(e);
        if (unavailable.isPresent()) {
            journal.failure(clock.instant(), "store", e);
            ctx.header("Retry-After", String.valueOf(unavailable.get().retryAfter()));
            refuse(ctx, Problem.of(503, unavailable.get().says() + " Look whether what you sent was written before you send it again."));
            return;
        }
        String number = UUID.randomUUID().toString().substring(0, 8);
        journal.failure(clock.instant(), number, e);
        refuse(ctx, Problem.of(500, "The board failed; its log says why under " + number + ". Nothing was half written."));
    }

    /** The status for what the server could not read, which it tells in several ways; 0 when that is not what happened. */
    private static int misread(Throwable e) {
        for (Throwable at = e; at != null; at = at.getCause()) {
            if (at instanceof org.eclipse.jetty.http.HttpException told) {
                return told.getCode();
            }
            if (String.valueOf(at.getMessage()).matches("(?is).*(max length|exceed|too large|too many).*") && at.getStackTrace().length > 0 && at.getStackTrace()[0].getClassName().startsWith("org.eclipse.jetty")) {
                return 413;
            }
        }
        return 0;
    }

    /** What fails here is tried again within a minute. */
    void keepUp() {
        try {
            desk.keepUp();
        } catch (RuntimeException e) {
            journal.failure(clock.instant(), "ledger", e);
        }
        if (!alarm.equals(desk.alarm())) {
            alarm = desk.alarm();
            journal.said(clock.instant(), alarm.isEmpty() ? "ledger is the one seen before" : "ALARM: the ledger is not the one seen before");
        }
    }

    private void judgeAgain() {
        keepUp();
        try {
            Map<String, RuntimeException> unjudged = new TreeMap<>();
            while (!stopping && shop.judgeAgain(AT_ONCE, unjudged) > 0) {
                Thread.onSpinWait();
            }
            unjudged.forEach((id, why) -> journal.failure(clock.instant(), "judging " + id, why));
            store.change(lines -> lines.replies().forgetBefore(clock.instant().minus(KEYS_KEPT)));
        } catch (RuntimeException e) {
            journal.failure(clock.instant(), "judging", e);
        }
    }

    /** The password of the first account, when this start made it. */
    public Optional<String> firstSecret() {
        return firstSecret;
    }

    public int port() {
        return server.port();
    }

    /** Takes the demo shop in, where the store is empty; the answer is the one-time password of each of its people. */
    public java.util.Map<String, String> demo() {
        java.util.Map<String, String> secrets = new java.util.TreeMap<>();
        if (store.read(lines -> lines.records().ids()).isEmpty()) {
            Visitor demo = new Visitor(new chock.board.store.Accounts.Account("lead", "Shop lead", "lead", "", false, true), Role.LEAD, "", "");
            secrets.put("ida", people.add(demo, "ida", "Ida Marrow", "inspector"));
            secrets.put("tom", people.add(demo, "tom", "Tom Fell", "technician"));
            secrets.keySet().forEach(desk::bindOwn);
            DemoShop.records(clock.instant()).forEach(record -> shop.take("the demo shop", record, "lead", null));
        }
        return secrets;
    }

    /** Every route served: its method, path and action. */
    java.util.stream.Stream<io.javalin.router.Endpoint> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream().map(parsed -> parsed.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod());
    }

    Shop shop() {
        return shop;
    }

    /** Lets what is under way end, up to ten seconds, then stops. */
    @Override
    public synchronized void close() {
        if (stopping) {
            return;
        }
        stopping = true;
        journal.said(Instant.now(clock), "stopping");
        server.stop();
        again.shutdown();
        doorkeeper.shutdownNow();
        asking.shutdownNow();
        trial.close();
        rehearsal.close();
        try {
            again.awaitTermination(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        store.close();
    }
}
