package piecewright.desktop;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.stage.Stage;
import piecewright.app.DemoBatch;
import piecewright.app.NotWrittenException;
import piecewright.app.Workspace;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.CaretRest;
import piecewright.desktop.shell.Looks;
import piecewright.desktop.shell.Rail;
import piecewright.desktop.shell.Shortcuts;
import piecewright.desktop.shell.UndoHistory;
import piecewright.store.SavedWindow;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;
import piecewright.text.WindowWords;

/** The window: one workspace on a stage, its looks, its memory and what is dropped on it. */
public final class Window {
    private static final int TEXT_STEP_PERCENT = 25;
    private static final int LOOK_MILLIS = 1500;

    private final Setting setting;
    private final Threads threads;
    private final Workspace workspace;
    private final StyleLibrary library;
    private final UndoHistory history = new UndoHistory();
    private DisplayUnits units;
    private Looks looks = Looks.usual();
    private Desk desk;
    private final StageFrame frame;
    private Optional<Scene> scene = Optional.empty();
    private long seen;

    public Window(Setting setting, Threads threads) throws StoreException {
        this.setting = setting;
        this.threads = threads;
        this.workspace = Workspace.open(setting.folder());
        this.library = StyleLibrary.builtIn();
        this.units = setting.units();
        Optional<SavedWindow> saved = Optional.empty();
        String trouble = "";
        try {
            saved = workspace.window();
        } catch (StoreException unreadable) {
            trouble = String.valueOf(unreadable.getMessage());
        }
        if (saved.isPresent()) {
            units = new DisplayUnits(
                    saved.get().units(), saved.get().colour(), setting.units().locale());
            looks = new Looks(
                    Looks.Theme.valueOf(saved.get().theme().toUpperCase(Locale.ROOT)),
                    saved.get().textPercent());
        }
        this.desk = desk(saved);
        this.frame = new StageFrame(saved.flatMap(SavedWindow::frame));
        saved.flatMap(SavedWindow::batch).ifPresent(this::lookAgain);
        this.seen = workspace.stamp();
        desk.tell(trouble);
    }

    /** Looks at the batch that was looked at when the window was left, if it is still kept. */
    private void lookAgain(String batch) {
        workspace.batchFiles().stream()
                .filter(file -> file.toString().equals(batch))
                .findFirst()
                .ifPresent(desk::lookAt);
    }

    private Desk desk(Optional<SavedWindow> saved) throws StoreException {
        return new Desk(
                new Desk.Around(setting, workspace, library, units, threads, history),
                saved.flatMap(SavedWindow::wish),
                new Asks());
    }

    /** What the rail asks for. */
    private final class Asks implements Desk.Asks {
        @Override
        public void go(Rail.Place place) {
            desk.go(place);
        }

        @Override
        public void removeDemo() {
            changing(() -> {
                List<Path> kept = workspace.removeDemo();
                return kept.isEmpty() ? "" : WindowWords.say("demo.kept", names(kept));
            });
            history.did(new DemoGone());
        }

        @Override
        public void restoreDemo() {
            changing(Window.this::broughtBack);
        }

        @Override
        public void undo() {
            history.undo();
        }

        @Override
        public void redo() {
            history.redo();
        }

        @Override
        public void otherTheme() {
            dress(looks.withTheme(looks.theme() == Looks.Theme.LIGHT ? Looks.Theme.DARK : Looks.Theme.LIGHT));
        }

        @Override
        public void textStep(int step) {
            int percent = Math.max(100, Math.min(200, looks.textPercent() + step * TEXT_STEP_PERCENT));
            dress(looks.withTextPercent(percent));
        }

        @Override
        public void otherUnits() {
            units = units.system() == UnitSystem.METRIC
                    ? new DisplayUnits(UnitSystem.US, ColourUnit.SRM, units.locale())
                    : new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, units.locale());
            rebuild();
        }

        @Override
        public void changed() {
            remember();
        }

        @Override
        public void bringDemo() {
            telling(workspace::addDemo);
            layDemo(() -> true);
            look();
        }
    }

    /** What keys ask for. */
    private final class Keys implements Shortcuts.Wishes {
        @Override
        public void go(Rail.Place place) {
            desk.go(place);
        }

        @Override
        public void plan() {
            desk.go(Rail.Place.PLAN);
            desk.focus();
        }

        @Override
        public void write() {
            if (desk.lookedAt().isEmpty()) return;
            desk.go(Rail.Place.BATCH);
            desk.focus();
        }
    }

    /** The demo was laid aside. */
    private final class DemoGone implements UndoHistory.Step {
        @Override
        public String words() {
            return WindowWords.say("undo.of.demo");
        }

        @Override
        public void undo() {
            changing(Window.this::broughtBack);
        }

        @Override
        public void redo() {
            changing(() -> {
                workspace.removeDemo();
                return "";
            });
        }

        @Override
        public boolean outlivesScreens() {
            return true;
        }
    }

    private static String names(List<Path> files) {
        return files.stream()
                .map(file -> String.valueOf(file.getFileName()).replaceAll("\\.json$", ""))
                .collect(Collectors.joining(", "));
    }

    private String broughtBack() throws StoreException {
        workspace.restoreDemo();
        return "";
    }

    private interface Task {
        void run() throws StoreException;
    }

    private interface Change {
        /** What is to be told of it, or nothing. */
        String make() throws StoreException;
    }

    /** Changes files after whatever is read of them now was read, and shows what became of it. */
    private void changing(Change change) {
        threads.background().execute(() -> {
            String told;
            try {
                told = change.make();
            } catch (StoreException failed) {
                told = String.valueOf(failed.getMessage());
            }
            String said = told;
            threads.ui().execute(() -> {
                desk.tell(said);
                look();
            });
        });
    }

    private void telling(Task task) {
        try {
            task.run();
            desk.tell("");
        } catch (StoreException failed) {
            desk.tell(String.valueOf(failed.getMessage()));
        }
    }

    private void rebuild() {
        Rail.Place place = desk.place();
        Optional<String> caret =
                scene.map(Scene::getFocusOwner).flatMap(focused -> Optional.ofNullable(focused.getId()));
        telling(() -> {
            history.screensMadeAnew();
            Desk next = desk(Optional.of(saved()));
            scene.ifPresent(shown -> shown.setRoot(next.node()));
            Optional<Path> lookedAt = desk.lookedAt();
            desk = next;
            lookedAt.ifPresent(desk::lookAt);
            if (place != Rail.Place.BATCH || desk.lookedAt().isPresent()) desk.go(place);
            dress(looks);
            tick();
            scene.ifPresent(shown -> putCaret(shown, caret));
        });
    }

    /** The caret stays where it was, or where somebody types; a new screen must not put it on the first button there is. */
    private void putCaret(Scene shown, Optional<String> where) {
        desk.focus();
        where.map(id -> shown.lookup("#" + id)).ifPresent(Node::requestFocus);
    }

    private void dress(Looks changed) {
        looks = changed;
        scene.ifPresent(shown -> desk.dress(looks));
        remember();
    }

    private SavedWindow saved() {
        return new SavedWindow(
                looks.theme().name().toLowerCase(Locale.ROOT),
                looks.textPercent(),
                units.system(),
                units.colour(),
                desk.wish(),
                frame.now(),
                desk.lookedAt().map(Path::toString));
    }

    /** Nothing is lost when the window closes: every change is kept at once. */
    private void remember() {
        SavedWindow now = saved();
        threads.background().execute(() -> {
            try {
                workspace.keepWindow(now);
            } catch (StoreException failed) {
                threads.ui().execute(() -> desk.tell(String.valueOf(failed.getMessage())));
            }
        });
    }

    /** Shows everything on a stage. */
    public void showOn(Stage stage) {
        Scene shown = new Scene(desk.node());
        scene = Optional.of(shown);
        desk.dress(looks);
        new Shortcuts(new Keys(), history).on(shown);
        CaretRest.in(shown);
        shown.setOnDragOver(this::draggedOver);
        shown.setOnDragDropped(this::dropped);
        stage.setTitle(WindowWords.say("title"));
        stage.setScene(shown);
        frame.place(stage);
        stage.show();
        desk.focus();
        tick();
        layDemo(() -> desk.waits());
        // not by the toolkit's own timelines: while one runs, it wakes sixty times a second
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(Start.daemon("piecewright-clock"));
        clock.scheduleWithFixedDelay(() -> threads.ui().execute(this::tick), 60, 60, TimeUnit.SECONDS);
        clock.scheduleWithFixedDelay(this::look, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
        stage.setOnHiding(event -> {
            remember();
            clock.shutdownNow();
        });
    }

    private void tick() {
        desk.now(setting.clock().instant());
    }

    /** Shows what the terminal or another program changed in the workspace. */
    private void look() {
        threads.background().execute(() -> {
            long stamp = workspace.stamp();
            threads.ui().execute(() -> {
                if (stamp == seen) return;
                seen = stamp;
                try {
                    if (desk.outgrown()) rebuild();
                    else desk.read();
                } catch (StoreException failed) {
                    desk.tell(String.valueOf(failed.getMessage()));
                }
            });
        });
    }

    /** A piece under way is laid out, and shown as soon as it lies there if somebody still wants to see it then. */
    private void layDemo(BooleanSupplier wanted) {
        DemoBatch demo = new DemoBatch(workspace, setting.planner(), setting.newId());
        threads.background().execute(() -> {
            try {
                demo.lay(units, setting.clock().instant())
                        .ifPresent(laid -> threads.ui().execute(() -> {
                            desk.lookAt(laid);
                            if (wanted.getAsBoolean()) desk.go(Rail.Place.BATCH);
                            look();
                        }));
            } catch (StoreException | NotWrittenException failed) {
                threads.ui().execute(() -> desk.tell(String.valueOf(failed.getMessage())));
            }
        });
    }

    private void draggedOver(DragEvent event) {
        if (event.getDragboard().hasFiles()) event.acceptTransferModes(TransferMode.COPY);
    }

    private void dropped(DragEvent event) {
        List<File> files = event.getDragboard().getFiles();
        for (File file : files) take(file.toPath());
        event.setDropCompleted(true);
    }

    /** Reads a lot or house into the workspace, or says why not. */
    void take(Path file) {
        telling(() -> workspace.take(file));
        look();
    }
}
