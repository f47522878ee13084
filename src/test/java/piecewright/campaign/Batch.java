package piecewright.campaign;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.oracle.Case;
import piecewright.oracle.Home;
import piecewright.oracle.Norms;
import piecewright.oracle.Oracle;
import piecewright.oracle.PlanText;
import piecewright.oracle.Sharing;
import piecewright.oracle.Told;
import tools.jackson.databind.JsonNode;

/** One batch as somebody knows it from the terminal: its plan as last told, what it takes for done, its journal. */
final class Batch {
    /** After so many it is taken that there will be no plan; looking for remedies takes long. */
    private static final int MOST_REFUSALS = 2;

    private final String name;
    private final Terminal terminal;
    private final Verdicts verdicts;
    private final Home home;
    private final Norms norms;
    private final Diary diary;
    private final Set<String> passed = new HashSet<>();
    private Told told = new Told(Instant.EPOCH, 0, 0, 0, List.of(), List.of());
    private Set<String> done = Set.of();
    private Optional<Batch> beside = Optional.empty();
    /** Whether all that stands in the journal was meant so. */
    private boolean meant = true;

    private int refused;

    Batch(String name, Terminal terminal, Verdicts verdicts, Home home, Norms norms) {
        this.name = name;
        this.terminal = terminal;
        this.verdicts = verdicts;
        this.home = home;
        this.norms = norms;
        this.diary = new Diary(name, terminal, verdicts);
    }

    String name() {
        return name;
    }

    Told told() {
        return told;
    }

    void slipStands() {
        meant = false;
    }

    /** Keeps off the other batch from now on, as its words for the command line say. */
    List<String> beside(Batch other) {
        beside = Optional.of(other);
        return List.of("--beside", other.name());
    }

    /** Plans and keeps it; false when there is no plan. */
    boolean planned(Instant now, List<String> wish) {
        List<String> words = new ArrayList<>(List.of("plan", "--into", name, "--json"));
        words.addAll(wish);
        Terminal.Said said = terminal.run(now, words);
        if (said.code() == 2) verdicts.found("a fair wish was not understood", "plan", said.err());
        if (!said.well()) return false;
        JsonNode root = said.json();
        if (!root.has("plan")) return false;
        told = PlanText.told(root.get("plan"));
        judge("plan", Optional.empty());
        return true;
    }

    private void judge(String command, Optional<Instant> now) {
        List<Case.Busy> others = new ArrayList<>();
        beside.ifPresent(other -> other.toCome()
                .forEach(step -> others.add(new Case.Busy(step.at(), step.at().plusSeconds(60L * step.minutes())))));
        beside.ifPresent(other -> verdicts.found(command + " beside", Sharing.faults(told, done, other.told)));
        verdicts.found(command, Oracle.faults(new Case(home, norms, told, now, done, others)));
    }

    /** Steps to come that nobody passed over. */
    List<Told.Step> toCome() {
        return told.steps().stream()
                .filter(step -> !done.contains(step.id()) && !passed.contains(step.id()))
                .toList();
    }

    /** The person will not do it, or did it and wrote nothing. */
    void passOver(Told.Step step) {
        passed.add(step.id());
    }

    /** Types a line; whether it was kept. */
    boolean record(Instant now, String line) {
        return diary.typed(now, line);
    }

    void strikeRefused(int entry) {
        verdicts.found("an entry cannot be struck", "record", "entry " + entry + ": " + diary.lastAnswer());
    }

    Diary diary() {
        return diary;
    }

    /** Asks where it stands, and takes over what is held for done. */
    void where(Instant now) {
        Terminal.Said said = terminal.run(now, "where", name, "--json", "--now", now.toString());
        if (!said.well()) {
            verdicts.found("where does not answer", "where", said.code() + said.err() + said.out());
            return;
        }
        Set<String> acts = new HashSet<>();
        said.json().get("done").forEach(visit -> acts.add(visit.get("act").stringValue()));
        done = acts;
        JsonNode next = said.json().at("/next/act");
        if (next.isString() && told.steps().stream().noneMatch(step -> step.id().equals(next.stringValue()))) {
            verdicts.found("where names a step of no plan", "where", next.stringValue());
        }
    }

    /** Plans the rest anew; a batch under way always gets an answer. */
    boolean replanned(Instant now, boolean accept, List<String> more) {
        if (refused >= MOST_REFUSALS) return false;
        where(now);
        List<String> words = new ArrayList<>(List.of("replan", name, "--json", "--now", now.toString()));
        if (accept) words.add("--accept");
        beside.ifPresent(other -> words.addAll(List.of("--beside", other.name())));
        words.addAll(more);
        Terminal.Said said = terminal.run(now, words);
        if (!said.well()) {
            refused++;
            boolean over = toCome().isEmpty() || done.isEmpty();
            if (said.code() != 1 || !over) {
                verdicts.found(
                        "a re-plan is refused", meant ? "replan" : "replan with a slip left standing", text(said));
            }
            return false;
        }
        Told before = told;
        told = PlanText.told(said.json().get("plan"));
        judge("replan", Optional.of(now));
        if (!accept) told = before;
        return true;
    }

    private static String text(Terminal.Said said) {
        return (said.err() + said.out()).replaceAll("\\s+", " ");
    }
}
