package piecewright.desktop;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.store.StoreException;

/** Opens the window and waits until it is closed. */
public final class Start {
    /** Held, because loggers are forgotten when nobody holds them. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private Start() {}

    /** Comes back when the window was closed. */
    public static void open(Setting setting) throws StoreException {
        hushToolkit();
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<StoreException> failure = new AtomicReference<>();
        ExecutorService background = worker("piecewright-background");
        ExecutorService aside = worker("piecewright-aside");
        Platform.startup(() -> {
            try {
                Stage stage = new Stage();
                stage.setOnHidden(event -> closed.countDown());
                new Window(setting, new Threads(background, aside, Platform::runLater)).showOn(stage);
            } catch (StoreException failed) {
                failure.set(failed);
                closed.countDown();
            }
        });
        waitFor(closed);
        finish(background);
        aside.shutdownNow();
        Platform.runLater(Platform::exit);
        StoreException failed = failure.get();
        if (failed != null) throw failed;
    }

    /** What was asked to be kept is written before the program ends. */
    private static void finish(ExecutorService worker) {
        worker.shutdown();
        try {
            worker.awaitTermination(5, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Works one task after the other; what comes after it was shut down is let go. */
    static ExecutorService worker(String name) {
        return new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(),
                daemon(name),
                new ThreadPoolExecutor.DiscardPolicy());
    }

    /** Threads of that name that keep no program running. */
    static ThreadFactory daemon(String name) {
        return task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        };
    }

    /** Running from the class path is meant; the toolkit need not warn of it. */
    static void hushToolkit() {
        TOOLKIT.setFilter(record ->
                record.getMessage() == null || !record.getMessage().startsWith("Unsupported JavaFX configuration"));
    }

    private static void waitFor(CountDownLatch closed) {
        try {
            closed.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
