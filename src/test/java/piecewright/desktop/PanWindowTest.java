package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.desktop.timeline.ActMark;
import piecewright.desktop.timeline.PieceChart;
import piecewright.desktop.timeline.PlanTimeline;

/** A piece of fourteen days and forty acts is panned by the mouse; what a frame costs is written down, not judged. */
@Tag("window")
class PanWindowTest {
    private static final int FRAMES = 240;

    @TempDir
    Path folder;

    @Test
    void panningKeepsThePieceUnderThePointer() throws Exception {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.until(
                    () -> !screen.node("chance-stop", Button.class).getParent().isVisible());
            PlanTimeline timeline = screen.node("timeline", PlanTimeline.class);
            Screen.run(() -> timeline.chartProperty()
                    .set(Optional.of(long14Days(timeline.chartProperty().get().orElseThrow()))));
            screen.settle();
            Screen.run(() -> zoomTwice(timeline));
            screen.settle();
            panned(timeline);
            Cost cost = panned(timeline);
            Path file = Files.createDirectories(Path.of("target")).resolve("panning.txt");
            Files.writeString(file, cost + "\n");
            assertTrue(cost.frames() >= FRAMES, cost.toString());
            screen.picture("panned");
        }
    }

    /** What so many frames took, and of it the processor's time of the thread that paints and the one that lays out. */
    private record Cost(int frames, double seconds, double paintingSeconds, double layingOutSeconds) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d frames in %.2f s: %.1f a second; of the processor %.2f ms to paint one, %.2f ms to lay it out",
                    frames,
                    seconds,
                    frames / seconds,
                    1000 * paintingSeconds / frames,
                    1000 * layingOutSeconds / frames);
        }
    }

    private static PieceChart long14Days(PieceChart chart) {
        List<ActMark> acts = new ArrayList<>();
        Instant from = chart.frame().from();
        for (int i = 0; i < 40; i++) {
            ActMark like = chart.acts().get(i % chart.acts().size());
            Instant at = from.plus(Duration.ofMinutes(8 * 60 + i * 14 * 24 * 60 / 41));
            acts.add(new ActMark(
                    "act" + i, like.shape(), like.letters(), like.title(), at, like.window(), like.standing()));
        }
        PieceChart.Frame frame = new PieceChart.Frame(
                chart.frame().zone(),
                from,
                from.plus(Duration.ofDays(14)),
                chart.frame().nights(),
                chart.frame().away(),
                chart.frame().besides());
        return new PieceChart(
                frame, acts, chart.ribbons(), chart.traces(), chart.bands(), chart.shelves(), chart.dots());
    }

    private static void zoomTwice(PlanTimeline timeline) {
        for (int i = 0; i < 2; i++) {
            Event.fireEvent(
                    timeline, new KeyEvent(KeyEvent.KEY_PRESSED, "+", "+", KeyCode.PLUS, false, false, false, false));
        }
    }

    private static Cost panned(PlanTimeline timeline) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        double painted = threadSeconds("QuantumRenderer");
        double laidOut = threadSeconds("JavaFX Application Thread");
        long before = System.nanoTime();
        Screen.run(() -> {
            mouse(timeline, MouseEvent.MOUSE_PRESSED, 500);
            new AnimationTimer() {
                private int frame;

                @Override
                public void handle(long now) {
                    frame++;
                    int swing = frame / 60 % 2 == 0 ? frame % 60 : 60 - frame % 60;
                    mouse(timeline, MouseEvent.MOUSE_DRAGGED, 500 - 6 * swing);
                    if (frame < FRAMES) return;
                    stop();
                    done.countDown();
                }
            }.start();
        });
        assertTrue(done.await(120, TimeUnit.SECONDS));
        double seconds = (System.nanoTime() - before) / 1e9;
        return new Cost(
                FRAMES,
                seconds,
                threadSeconds("QuantumRenderer") - painted,
                threadSeconds("JavaFX Application Thread") - laidOut);
    }

    /** Processor's time of the threads whose names begin so. */
    private static double threadSeconds(String name) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double nanos = 0;
        for (long id : threads.getAllThreadIds()) {
            ThreadInfo thread = threads.getThreadInfo(id);
            if (thread != null && thread.getThreadName().startsWith(name)) nanos += threads.getThreadCpuTime(id);
        }
        return nanos / 1e9;
    }

    private static void mouse(PlanTimeline timeline, EventType<MouseEvent> type, double x) {
        boolean down = true;
        Event.fireEvent(
                timeline,
                new MouseEvent(
                        type,
                        x,
                        200,
                        x,
                        200,
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        down,
                        false,
                        false,
                        false,
                        false,
                        false,
                        new PickResult(timeline, x, 200)));
    }
}
