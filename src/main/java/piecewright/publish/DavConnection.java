package piecewright.publish;

import java.io.IOException;
import java.net.ConnectException;
import java.net.ProtocolException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;

/**
 * Sends requests to one server: HTTP/1.1, name and password with each, redirects followed on the same server only, a
 * few more tries when it is busy, everything bounded in time and size.
 */
final class DavConnection {
    private static final int MOST_BYTES = 8 << 20;
    private static final int MOST_REDIRECTS = 3;
    private static final Set<Integer> REDIRECTS = Set.of(301, 302, 307, 308);
    private static final Pattern SECONDS = Pattern.compile("[0-9]{1,6}");

    private final CollectionUrl collection;
    private final String authorization;
    private final Patience patience;
    private final HttpClient client;

    DavConnection(CollectionUrl collection, Account account, Patience patience) {
        this.collection = collection;
        this.authorization = account.authorization();
        this.patience = patience;
        this.client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER)
                .connectTimeout(patience.connect())
                .build();
    }

    /** The answer, whatever its status, once redirects and busy spells are over. */
    DavReply send(DavRequest request) throws ServerException {
        DavRequest next = request;
        int redirects = 0;
        for (int tries = 1; ; ) {
            HttpResponse<byte[]> response = exchange(next);
            int status = response.statusCode();
            if (REDIRECTS.contains(status)) {
                if (++redirects > MOST_REDIRECTS) throw new ServerException(status);
                next = next.at(redirected(next.uri(), response));
            } else if ((status == 429 || status == 503) && tries < patience.tries()) {
                pause(wait(response, tries));
                tries++;
            } else {
                return new DavReply(status, response.headers().firstValue("ETag"), response.body());
            }
        }
    }

    /**
     * One exchange; sent again if a connection kept open turned out to be dead. Safe for changes too: all of them carry a
     * condition, so that the second of two finds itself too late and looks at what is there.
     */
    private HttpResponse<byte[]> exchange(DavRequest request) throws ServerException {
        for (int tries = 1; ; tries++) {
            CompletableFuture<HttpResponse<byte[]>> answer =
                    client.sendAsync(built(request), information -> new BoundedBody(MOST_BYTES));
            try {
                return answer.get(patience.answer().toMillis() + 1000, TimeUnit.MILLISECONDS);
            } catch (ExecutionException failed) {
                Throwable cause = failed.getCause();
                if (tries >= patience.tries() || !isDeadConnection(cause)) throw new ServerException(reason(cause));
            } catch (TimeoutException tooLong) {
                answer.cancel(true);
                throw new ServerException("no answer in time");
            } catch (InterruptedException stopped) {
                answer.cancel(true);
                Thread.currentThread().interrupt();
                throw new ServerException("stopped");
            }
        }
    }

    private HttpRequest built(DavRequest request) {
        HttpRequest.Builder builder = HttpRequest.newBuilder(request.uri())
                .timeout(patience.answer())
                .header("Authorization", authorization)
                .method(request.method(), HttpRequest.BodyPublishers.ofByteArray(request.body()));
        request.headers().forEach(builder::header);
        return builder.build();
    }

    private static boolean isDeadConnection(@Nullable Throwable cause) {
        return cause instanceof IOException
                && !(cause instanceof ConnectException)
                && !(cause instanceof HttpTimeoutException)
                && !(cause instanceof ProtocolException)
                && !(cause instanceof SSLException);
    }

    private static String reason(@Nullable Throwable cause) {
        return cause == null ? "no connection" : cause.getClass().getSimpleName();
    }

    private URI redirected(URI from, HttpResponse<byte[]> response) throws ServerException {
        Optional<String> location = response.headers().firstValue("Location");
        try {
            URI target = from.resolve(location.orElse(""));
            if (location.isPresent() && collection.sameOrigin(target)) return target;
        } catch (IllegalArgumentException notAnAddress) {
            // falls through: as good as none
        }
        throw new ServerException(response.statusCode());
    }

    private Duration wait(HttpResponse<byte[]> response, int tries) {
        Duration asked = response.headers()
                .firstValue("Retry-After")
                .filter(text -> SECONDS.matcher(text).matches())
                .map(text -> Duration.ofSeconds(Long.parseLong(text)))
                .orElse(Duration.ofSeconds(tries));
        return asked.compareTo(patience.longestPause()) > 0 ? patience.longestPause() : asked;
    }

    private static void pause(Duration length) throws ServerException {
        try {
            Thread.sleep(length.toMillis());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new ServerException("stopped");
        }
    }
}
