package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import piecewright.app.HowSure;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Planner;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** A real window on a screen in memory, driven by keys. */
final class Screen implements AutoCloseable {
    private final SetClock clock = new SetClock(Instant.parse("2027-03-01T09:00:00Z"));

    private static boolean started;

    private final ExecutorService background = Start.worker("background");
    private final ExecutorService aside = Start.worker("aside");
    private final Stage stage;
    private final Window window;

    private Screen(Path folder, Consumer<Stage> placed) {
        Setting setting = new Setting(
                folder,
                DisplayUnits.metric(),
                clock,
                () -> UUID.fromString("00000000-0000-4000-8000-000000000001"),
                new Planner(ModelParameters.defaults())::plan,
                new Continuation(ModelParameters.defaults()),
                new HowSure(ModelParameters.defaults()));
        window = on(() -> {
            try {
                return new Window(setting, new Threads(background, aside, Platform::runLater));
            } catch (StoreException failed) {
                throw new AssertionError(failed);
            }
        });
        stage = on(() -> {
            Stage made = new Stage();
            window.showOn(made);
            placed.accept(made);
            return made;
        });
    }

    /** Skips the test where no toolkit can start, as on a machine without fonts and their library. */
    static Screen open(Path folder, double width, double height) {
        Assumptions.assumeTrue(startable(), "the toolkit starts on this machine");
        return new Screen(folder, stage -> {
            stage.setWidth(width);
            stage.setHeight(height);
            stage.setX(0);
            stage.setY(0);
        });
    }

    /** As it was left, wherever that was. */
    static Screen again(Path folder) {
        Assumptions.assumeTrue(startable(), "the toolkit starts on this machine");
        return new Screen(folder, stage -> {});
    }

    Stage stage() {
        return stage;
    }

    private static synchronized boolean startable() {
        if (started) return true;
        Start.hushToolkit();
        System.setProperty("java.awt.headless", "true");
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("prism.order", "sw");
        System.setProperty("headless.geometry", "1600x1200-32");
        try {
            CountDownLatch up = new CountDownLatch(1);
            Platform.startup(up::countDown);
            Platform.setImplicitExit(false);
            started = up.await(60, TimeUnit.SECONDS);
        } catch (RuntimeException | LinkageError | InterruptedException cannot) {
            return false;
        }
        return started;
    }

    /** Puts the clock forward. */
    void tick(String instant) {
        clock.now = Instant.parse(instant);
    }

    /** A clock that goes when it is told. */
    private static final class SetClock extends Clock {
        private volatile Instant now;

        SetClock(Instant first) {
            this.now = first;
        }

        @Override
        public ZoneId getZone() {
            return ZoneId.of("Europe/Oslo");
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    Window window() {
        return window;
    }

    Scene scene() {
        return stage.getScene();
    }

    /** Runs something where the toolkit wants it. */
    static <T> T on(Supplier<T> task) {
        if (Platform.isFxApplicationThread()) return task.get();
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(task.get());
            } catch (RuntimeException | Error failed) {
                done.completeExceptionally(failed);
            }
        });
        return done.orTimeout(120, TimeUnit.SECONDS).join();
    }

    static void run(Runnable task) {
        on(() -> {
            task.run();
            return true;
        });
    }

    <T extends Node> T node(String id, Class<T> type) {
        return on(() -> type.cast(scene().lookup("#" + id)));
    }

    /** Waits until something is so, however slow the machine is. */
    void until(BooleanSupplier so) {
        for (int i = 0; i < 2400; i++) {
            if (on(so::getAsBoolean)) return;
            pause(50);
        }
        picture("stuck");
        throw new AssertionError("waited in vain");
    }

    /** Waits for a node and for the window to have the keyboard, then gives it to the node. */
    void focus(String id) {
        until(() -> {
            // a window that was closed a moment ago may leave the keyboard to nobody
            if (!stage.isFocused()) stage.requestFocus();
            return scene().lookup("#" + id) != null && stage.isFocused();
        });
        until(() -> {
            scene().lookup("#" + id).requestFocus();
            return scene().lookup("#" + id).isFocused();
        });
        settle();
    }

    void press(KeyCode... keys) {
        for (KeyCode key : keys) {
            run(() -> {
                Robot robot = new Robot();
                robot.keyPress(key);
                robot.keyRelease(key);
            });
            settle();
        }
    }

    /** Presses and lets go of the mouse over a point of a node, counted from its upper left corner. */
    void click(Node node, double x, double y) {
        run(() -> {
            Point2D there = node.localToScreen(x, y);
            Robot robot = new Robot();
            robot.mouseMove(there);
            robot.mousePress(MouseButton.PRIMARY);
            robot.mouseRelease(MouseButton.PRIMARY);
        });
        settle();
    }

    /** Goes to a screen by the rail. */
    void go(String way) {
        focus("way-" + way);
        press(KeyCode.SPACE);
    }

    /** Presses the second key while the first is held. */
    void chord(KeyCode held, KeyCode key) {
        run(() -> {
            Robot robot = new Robot();
            robot.keyPress(held);
            robot.keyPress(key);
            robot.keyRelease(key);
            robot.keyRelease(held);
        });
        settle();
    }

    /** Two rounds of the toolkit, so that events and layout are through. */
    void settle() {
        for (int i = 0; i < 3; i++) {
            run(() -> {});
            pause(20);
        }
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        }
    }

    /** Takes a picture into target/pictures and holds it to be no blank. */
    void picture(String name) {
        settle();
        BufferedImage picture = on(() -> buffered(scene().snapshot(null)));
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < picture.getHeight(); y += 2) {
            for (int x = 0; x < picture.getWidth(); x += 2) colours.add(picture.getRGB(x, y));
        }
        assertTrue(colours.size() > 50, name + " has only " + colours.size() + " colours");
        Path file = Path.of("target", "pictures", name + ".png");
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static BufferedImage buffered(WritableImage image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.setRGB(x, y, image.getPixelReader().getArgb(x, y));
            }
        }
        return picture;
    }

    @Override
    public void close() {
        run(stage::hide);
        background.shutdown();
        try {
            background.awaitTermination(60, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        }
        aside.shutdownNow();
    }
}
