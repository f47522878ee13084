package piecewright.text;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import piecewright.journal.Report;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.Tare;
import piecewright.plan.ActKind;
import piecewright.text.LineReading.Unclear;
import piecewright.text.LineReading.Understood;

/**
 * Reads one short line as a person types it at the bucket: "drained 5.56 kg 21:40 yesterday", "couch 49 C", "acrospire 3
 * 8 12 6 1", "kiln 65 C", "smells of apples", "correct 7 15.36 kg". Figures follow the person's locale. What could mean
 * two things, or holds a word nobody knows, is asked about; nothing is guessed in silence.
 */
public final class LineReader {
    private static final Pattern NOTE =
            Pattern.compile("^(?:note|nb):?\\s+(.*)$", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    private static final Pattern CORRECTION = Pattern.compile(
            "^(?:correct(?:ion)?|entry)\\s*(?:of\\s*)?#?(\\d{1,6}):?\\s+(?:was\\s+|should be\\s+|to\\s+)?(.+)$",
            Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    private static final Pattern VOID =
            Pattern.compile("^(?:void|strike|cross out)\\s+#?(\\d{1,6})$", Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE_FIGURE = Pattern.compile("(?<![\\d.,])(\\d[\\d.,']*)(?![\\d.,]*\\p{L})");
    /** Judgement: a bare figure is a weight when it lies so near the weight expected, share of it. */
    private static final double LIKELY_FRACTION = 0.5;

    private final DisplayUnits units;
    private final ZoneId zone;
    private final SpokenFigures figures;

    /** @param vessels vessels whose weight is remembered */
    public LineReader(DisplayUnits units, ZoneId zone, List<Tare> vessels) {
        this.units = Objects.requireNonNull(units);
        this.zone = Objects.requireNonNull(zone);
        this.figures = new SpokenFigures(units, vessels);
    }

    /**
     * What helps to understand a line.
     *
     * @param nextAct the act that comes next: what "started" alone means
     * @param expectedKg what the piece should weigh about now: whether a bare figure is a weight
     */
    public record Expecting(Instant now, Optional<ActKind> nextAct, OptionalDouble expectedKg) {}

    public LineReading read(String typed, Expecting expecting) {
        try {
            return understood(typed.strip(), expecting);
        } catch (UnclearException unclear) {
            return unclear.reading();
        } catch (UnreadableException unreadable) {
            return new Unclear(String.valueOf(unreadable.getMessage()), List.of());
        }
    }

    private LineReading understood(String typed, Expecting expecting) throws UnclearException, UnreadableException {
        var voided = VOID.matcher(typed);
        if (voided.matches()) {
            int entry = Integer.parseInt(voided.group(1));
            return new Understood(expecting.now(), List.of(new Corrected(entry, Optional.empty())));
        }
        var correction = CORRECTION.matcher(typed);
        if (correction.matches()) return corrected(correction.toMatchResult(), expecting);
        var note = NOTE.matcher(typed);
        if (note.matches())
            return new Understood(
                    expecting.now(), List.of(new Noted(note.group(1).strip())));
        RestOfLine line = RestOfLine.of(typed);
        Instant at = new SpokenTime(zone, units.locale(), expecting.now()).take(line);
        List<Report> reports = reports(line, expecting);
        String left = line.left();
        if (!left.isEmpty())
            throw new UnclearException(
                    Phrases.say("line.unknown-words", Quoted.shortly(left)), List.of("note " + typed));
        if (reports.isEmpty()) throw new UnclearException(Phrases.say("line.nothing-said"), List.of("note " + typed));
        return new Understood(at, reports);
    }

    private LineReading corrected(MatchResult correction, Expecting expecting)
            throws UnclearException, UnreadableException {
        LineReading instead = understood(correction.group(2), expecting);
        if (!(instead instanceof Understood said)) return instead;
        if (said.reports().size() > 1 || said.reports().get(0) instanceof Corrected) {
            throw new UnclearException(Phrases.say("line.corrects-one"));
        }
        int entry = Integer.parseInt(correction.group(1));
        return new Understood(
                said.at(),
                List.of(new Corrected(entry, Optional.of(said.reports().get(0)))));
    }

    private List<Report> reports(RestOfLine line, Expecting expecting) throws UnclearException, UnreadableException {
        List<Report> reports = new ArrayList<>();
        figures.emptyVessel(line).ifPresent(reports::add);
        Optional<Tare> tare = figures.vessel(line);
        figures.chitted(line).ifPresent(reports::add);
        figures.acrospires(line).ifPresent(reports::add);
        figures.moisture(line).ifPresent(reports::add);
        figures.colour(line).ifPresent(reports::add);
        figures.vents(line).ifPresent(reports::add);
        figures.heat(line).ifPresent(reports::add);
        reports.addAll(figures.temperatures(line));
        OptionalDouble volumeL = figures.volumeL(line);
        Optional<Report> weight = figures.weight(line, tare);
        acts(line, expecting, volumeL, reports);
        for (var sign = SpokenSigns.take(line); sign.isPresent(); sign = SpokenSigns.take(line)) {
            reports.add(new Observed(sign.get().sign(), sign.get().words()));
        }
        if (weight.isEmpty()) weight = bare(line, tare, expecting);
        weight.ifPresent(reports::add);
        return reports;
    }

    private static void acts(RestOfLine line, Expecting expecting, OptionalDouble volumeL, List<Report> reports)
            throws UnclearException {
        boolean started = SpokenActs.started(line);
        Optional<ActKind> act = SpokenActs.take(line);
        Optional<ActKind> more = act.isPresent() ? SpokenActs.take(line) : Optional.empty();
        if (act.isEmpty() && started) {
            act = expecting.nextAct();
            if (act.isEmpty()) throw new UnclearException(Phrases.say("line.started-what"));
        }
        if (act.isEmpty() && volumeL.isPresent()) {
            throw new UnclearException(Phrases.say("line.water-where"), List.of("sprinkled", "soaked"));
        }
        if (act.isPresent()) {
            reports.add(started ? new Started(act.get()) : new Did(act.get(), volumeL));
        }
        more.ifPresent(second -> reports.add(Did.of(second)));
    }

    /** A figure without a unit: a weight where it can be one, else it is asked about. */
    private Optional<Report> bare(RestOfLine line, Optional<Tare> tare, Expecting expecting)
            throws UnclearException, UnreadableException {
        Optional<MatchResult> found = line.take(BARE_FIGURE);
        if (found.isEmpty()) return Optional.empty();
        String figure = found.get().group(1);
        double massKg = QuantityParser.forPerson(units).massKg(figure);
        double expectedKg =
                expecting.expectedKg().orElse(0) + tare.map(Tare::tareKg).orElse(0.0);
        if (expectedKg > 0 && Math.abs(massKg / expectedKg - 1) <= LIKELY_FRACTION) {
            return Optional.of(figures.weighed(massKg, tare));
        }
        String unit = units.system() == UnitSystem.METRIC ? "kg" : "lb";
        String degrees = units.system() == UnitSystem.METRIC ? "C" : "F";
        throw new UnclearException(
                Phrases.say("line.which-figure", figure),
                List.of(figure + " " + unit, "bed " + figure + " " + degrees));
    }
}
