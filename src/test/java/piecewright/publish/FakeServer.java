package piecewright.publish;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A calendar server in memory on loopback, with the moods of real ones. */
public final class FakeServer implements AutoCloseable {
    /** A stored resource. */
    record Stored(byte[] body, int version) {
        String etag() {
            return "\"v" + version + "\"";
        }
    }

    /** An answer given instead of the proper one. */
    record Scripted(int status, Map<String, String> headers, byte[] body) {}

    /** A status that means: close the connection without an answer. */
    static final int HANG_UP = 0;

    final Map<String, Stored> stored = new TreeMap<>();
    final List<String> log = new ArrayList<>();
    final Deque<Scripted> next = new ArrayDeque<>();
    public boolean exists = true;
    boolean marksOnPut = true;
    boolean deafOnPut;
    String components = "<C:comp name=\"VEVENT\"/>";
    String type = "<C:calendar/>";

    private final HttpServer server;
    private final ExecutorService pool = Executors.newSingleThreadExecutor();
    private int version;
    private String lateMethod = "";
    private long lateCount;
    private Scripted late = new Scripted(500, Map.of(), new byte[0]);

    public FakeServer() throws IOException {
        System.setProperty("sun.net.httpserver.nodelay", "true"); // or each answer waits 40 ms
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(pool);
        server.createContext("/", this::handle);
        server.start();
    }

    public CollectionUrl collection() {
        return CollectionUrl.of("http://127.0.0.1:" + server.getAddress().getPort() + "/cal/malt/");
    }

    /** What a person's client does to an event. */
    public synchronized void edit(String name, String from, String to) {
        Stored before = stored.get("/cal/malt/" + name);
        String changed = new String(before.body(), StandardCharsets.UTF_8).replace(from, to);
        stored.put("/cal/malt/" + name, new Stored(changed.getBytes(StandardCharsets.UTF_8), ++version));
    }

    /** The server forgets an event, as after a restore from an old copy. */
    public synchronized void lose(String name) {
        stored.remove("/cal/malt/" + name);
    }

    /** The collection is gone with all that was in it. */
    public synchronized void loseAll() {
        stored.clear();
        exists = false;
    }

    /** Names of what lies there. */
    public synchronized List<String> names() {
        return stored.keySet().stream()
                .map(path -> path.substring(path.lastIndexOf('/') + 1))
                .toList();
    }

    public synchronized String text(String name) {
        return new String(stored.get("/cal/malt/" + name).body(), StandardCharsets.UTF_8);
    }

    public synchronized long count(String method) {
        return log.stream().filter(line -> line.startsWith(method + " ")).count();
    }

    /** Gives this answer to a request of the method once so many of them were answered properly. */
    synchronized void after(String method, int proper, Scripted answer) {
        lateMethod = method;
        lateCount = count(method) + proper;
        late = answer;
    }

    private synchronized void handle(HttpExchange exchange) throws IOException {
        byte[] body = exchange.getRequestBody().readAllBytes();
        String path = exchange.getRequestURI().getPath();
        log.add(exchange.getRequestMethod() + " " + path);
        Scripted scripted = next.poll();
        if (exchange.getRequestMethod().equals(lateMethod) && count(lateMethod) == lateCount + 1) {
            scripted = late;
            lateMethod = "";
        }
        if (scripted != null && scripted.status() == HANG_UP) {
            exchange.close();
            return;
        }
        if (scripted != null) {
            scripted.headers()
                    .forEach((name, value) -> exchange.getResponseHeaders().add(name, value));
            reply(exchange, scripted.status(), scripted.body());
        } else if (!"Basic YnJldzpzZWNyZXQ=".equals(exchange.getRequestHeaders().getFirst("Authorization"))) {
            reply(exchange, 401, new byte[0]);
        } else {
            switch (exchange.getRequestMethod()) {
                case "PROPFIND" -> propfind(exchange);
                case "MKCALENDAR" -> {
                    exists = true;
                    reply(exchange, 201, new byte[0]);
                }
                case "GET" -> get(exchange, stored.get(path));
                case "PUT" -> put(exchange, path, body);
                case "DELETE" -> delete(exchange, path);
                default -> reply(exchange, 405, new byte[0]);
            }
        }
        exchange.close();
    }

    private void propfind(HttpExchange exchange) throws IOException {
        if (!exists) {
            reply(exchange, 404, new byte[0]);
            return;
        }
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\"?><D:multistatus xmlns:D=\"DAV:\""
                + " xmlns:C=\"urn:ietf:params:xml:ns:caldav\"><D:response><D:href>/cal/malt/</D:href><D:propstat><D:prop>"
                + "<D:resourcetype><D:collection/>" + type + "</D:resourcetype><C:supported-calendar-component-set>"
                + components + "</C:supported-calendar-component-set></D:prop></D:propstat></D:response>");
        if ("1".equals(exchange.getRequestHeaders().getFirst("Depth"))) {
            stored.forEach((path, event) -> xml.append("<D:response><D:href>" + path + "</D:href><D:propstat><D:prop>"
                    + "<D:getetag>" + event.etag() + "</D:getetag></D:prop></D:propstat></D:response>"));
        }
        reply(exchange, 207, xml.append("</D:multistatus>").toString().getBytes(StandardCharsets.UTF_8));
    }

    private void get(HttpExchange exchange, Stored found) throws IOException {
        if (found == null) {
            reply(exchange, 404, new byte[0]);
            return;
        }
        exchange.getResponseHeaders().add("ETag", found.etag());
        reply(exchange, 200, found.body());
    }

    private void put(HttpExchange exchange, String path, byte[] body) throws IOException {
        if (!holds(exchange, path)) {
            reply(exchange, 412, new byte[0]);
            return;
        }
        Stored fresh = new Stored(body, ++version);
        boolean created = stored.put(path, fresh) == null;
        if (marksOnPut) exchange.getResponseHeaders().add("ETag", fresh.etag());
        reply(exchange, created ? 201 : 204, new byte[0]);
    }

    private void delete(HttpExchange exchange, String path) throws IOException {
        if (!stored.containsKey(path)) {
            reply(exchange, 404, new byte[0]);
        } else if (!holds(exchange, path)) {
            reply(exchange, 412, new byte[0]);
        } else {
            stored.remove(path);
            reply(exchange, 204, new byte[0]);
        }
    }

    private boolean holds(HttpExchange exchange, String path) {
        Stored found = stored.get(path);
        String match = exchange.getRequestHeaders().getFirst("If-Match");
        String none = exchange.getRequestHeaders().getFirst("If-None-Match");
        if ("*".equals(none)) return found == null;
        if (match == null) throw new AssertionError("a change without a condition");
        return found != null && (match.equals("*") || match.equals(found.etag()));
    }

    private void reply(HttpExchange exchange, int status, byte[] body) throws IOException {
        if (deafOnPut && exchange.getRequestMethod().equals("PUT")) {
            deafOnPut = false;
            return; // done, but the answer never gets through
        }
        exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
        if (body.length > 0) exchange.getResponseBody().write(body);
    }

    @Override
    public void close() {
        server.stop(0);
        pool.shutdownNow();
    }
}
