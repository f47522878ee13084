package piecewright.publish;

import java.io.ByteArrayOutputStream;
import java.net.ProtocolException;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;
import org.jspecify.annotations.Nullable;

/** Takes a response body of at most so many bytes; a longer one fails instead of filling memory. */
final class BoundedBody implements HttpResponse.BodySubscriber<byte[]> {
    private final int mostBytes;
    private final ByteArrayOutputStream received = new ByteArrayOutputStream();
    private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
    private Flow.@Nullable Subscription subscription;

    BoundedBody(int mostBytes) {
        this.mostBytes = mostBytes;
    }

    @Override
    public CompletionStage<byte[]> getBody() {
        return whole;
    }

    @Override
    public void onSubscribe(Flow.Subscription given) {
        subscription = given;
        given.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(List<ByteBuffer> parts) {
        for (ByteBuffer part : parts) {
            if (received.size() + part.remaining() > mostBytes) {
                Flow.Subscription open = subscription;
                if (open != null) open.cancel();
                whole.completeExceptionally(new ProtocolException("answer longer than " + mostBytes + " bytes"));
                return;
            }
            byte[] bytes = new byte[part.remaining()];
            part.get(bytes);
            received.writeBytes(bytes);
        }
    }

    @Override
    public void onError(Throwable failure) {
        whole.completeExceptionally(failure);
    }

    @Override
    public void onComplete() {
        whole.complete(received.toByteArray());
    }
}
