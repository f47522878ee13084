package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.germination.FloorActs;

/**
 * Runs a timetable through the reference stages, act by act, beside a second kiln that is among the slowest tenth.
 * Pure: the same timetable and setup give the same course.
 */
public final class Simulation {
    /** Judgement: crumbs and samples lost between kiln and sack, share of the malt. */
    public static final double HANDLING_FRACTION = 0.01;
    /** Judgement: no sprinkling in the last day before wither or kiln; 24 to 36 h in practice. */
    private static final Duration NO_SPRINKLING_BEFORE_END = Duration.ofHours(24);
    /** Judgement: a sprinkling brings the bed this far above what it must keep, wet basis. */
    private static final double SPRINKLED_TO_FRACTION = 0.015;

    /** Acts that can end growth. */
    static final Set<ActKind> GROWTH_ENDS = EnumSet.of(ActKind.WITHER, ActKind.PACK, ActKind.STEW, ActKind.LOAD);

    private final Setup setup;
    private final Instant origin;
    private final Phases phases;
    private final Optional<StewBlock> stew;
    private final Optional<RoastBlock> roast;

    public Simulation(Setup setup, Instant origin) {
        this.setup = setup;
        this.origin = origin;
        this.phases = new Phases(setup);
        this.stew = StewBlock.of(setup);
        this.roast = RoastBlock.of(setup);
    }

    /**
     * What was found at one act.
     *
     * @param before the piece as the phase before ends, drained
     * @param after the piece once the act is done
     * @param slowFraction moisture nine kilns in ten are at or below, wet basis; as expected before the kiln
     * @param meanC mean grain temperature of the phase before
     * @param waterKg water sprinkled, 0 for none
     * @param during the phase the act ends or interrupts
     */
    public record Station(
            Visit visit,
            PieceState before,
            PieceState after,
            double slowFraction,
            double meanC,
            double waterKg,
            PhaseKind during) {}

    /**
     * What a reading found where this was forecast, and what is held since.
     *
     * @param slowFraction moisture nine kilns in ten are at or below, wet basis; as held before the kiln
     */
    public record Read(Reading reading, PieceState forecast, PieceState held, double slowFraction) {}

    /** Stations in time order, the states between them, and what was read on the way. */
    public record Course(List<Station> stations, List<Plan.Sample> samples, List<Read> reads) {
        public Course {
            stations = List.copyOf(stations);
            samples = List.copyOf(samples);
            reads = List.copyOf(reads);
        }

        public PieceState finished() {
            return stations.get(stations.size() - 1).after();
        }

        /** The warmest the grain gets between the first act of one kind and that of another, °C; 0 without the former. */
        double hottestC(ActKind from, ActKind until) {
            if (!has(from)) return 0;
            Instant begins = first(from).visit().at();
            Instant ends = first(until).visit().at();
            return samples.stream()
                    .filter(sample ->
                            !sample.at().isBefore(begins) && !sample.at().isAfter(ends))
                    .mapToDouble(sample -> sample.state().grainC())
                    .max()
                    .orElse(0);
        }

        /** Whether there is a station of that kind: people leave phases out. */
        boolean has(ActKind kind) {
            return stations.stream().anyMatch(station -> station.visit().kind() == kind);
        }

        /** The first station of that kind; throws NoSuchElementException when there is none. */
        public Station first(ActKind kind) {
            return stations.stream()
                    .filter(station -> station.visit().kind() == kind)
                    .findFirst()
                    .orElseThrow();
        }
    }

    public Course run(Timetable timetable, PieceState raw) {
        return run(timetable, raw, Found.nothing());
    }

    /** The same where the forecast gives way to what was found; readings may go on past the last act. */
    public Course run(Timetable timetable, PieceState raw, Found found) {
        List<Station> stations = new ArrayList<>();
        List<Plan.Sample> samples = new ArrayList<>();
        Passage passage = new Passage(
                found,
                this::hours,
                setup.models().steep().saturationCoreRatio(),
                setup.models().metabolism());
        Passage.Piece piece = new Passage.Piece(raw, Optional.empty());
        Passing passing = Passing.none();
        Instant sinceAt = timetable.visits().get(0).at();
        Instant growthEnds = growthEnds(timetable);
        for (Visit visit : timetable.visits()) {
            Tally tally = new Tally(samples);
            piece = passage.through(piece, passing, new Passage.Stretch(sinceAt, visit.at()), tally);
            PieceState before = piece.expected();
            Double known = found.sprinkledKg().get(visit.id());
            double waterKg = known == null ? sprinklingKg(visit, before, passing, growthEnds) : known;
            PieceState after = acted(visit, before, waterKg, passing.kind(), stations);
            double slowFraction = piece.slow().orElse(before).mass().moisture().wetBasisFraction();
            stations.add(new Station(visit, before, after, slowFraction, tally.meanC(before), waterKg, passing.kind()));
            piece = new Passage.Piece(after, visit.kind() == ActKind.LOAD ? Optional.of(after) : piece.slow());
            passing = phases.after(visit, passing);
            sinceAt = visit.at();
        }
        Instant end = passage.lastAt(sinceAt);
        passage.through(piece, passing, new Passage.Stretch(sinceAt, end), new Tally(samples));
        return new Course(stations, samples, passage.reads());
    }

    private static Instant growthEnds(Timetable timetable) {
        return timetable.visits().stream()
                .filter(visit -> GROWTH_ENDS.contains(visit.kind()))
                .map(Visit::at)
                .findFirst()
                .orElse(Instant.MAX);
    }

    /** Water that a turning adds by the style's rule, kg; 0 when the piece is moist enough or soon to be dried. */
    public double sprinklingKg(Visit visit, PieceState state, Passing passing, Instant growthEnds) {
        boolean growing = visit.kind() == ActKind.TURN && passing.kind() == PhaseKind.GROWTH;
        double keep = setup.style().growth().keepMoistureFraction();
        if (!growing
                || state.mass().moisture().wetBasisFraction() >= keep
                || visit.at().plus(NO_SPRINKLING_BEFORE_END).isAfter(growthEnds)) {
            return 0;
        }
        double to = Math.min(setup.style().steep().targetFraction(), keep + SPRINKLED_TO_FRACTION);
        return FloorActs.sprinklingKg(state.mass(), to / (1 - to));
    }

    /** What an act of the steep, the floor or the kiln changes at once. */
    public PieceState acted(Visit visit, PieceState before, double waterKg) {
        return acted(visit, before, waterKg, PhaseKind.GROWTH, List.of());
    }

    private PieceState acted(Visit visit, PieceState before, double waterKg, PhaseKind during, List<Station> stations) {
        boolean withers = visit.kind() == ActKind.WITHER || during == PhaseKind.WITHERING;
        var air = withers ? setup.air().wither() : setup.air().floor();
        double airC = air.airC(hours(visit.at()));
        return switch (visit.kind()) {
            case TURN, FLOOR, WITHER -> FloorActs.sprinkled(FloorActs.turned(before, airC), waterKg);
            case OFF -> before.withGrainC(setup.air().curer().airC(hours(visit.at())));
            case DEROOT ->
                FloorActs.handled(
                        FloorActs.derooted(before, setup.grain(), setup.lot().energyFraction()), HANDLING_FRACTION);
            case STEW -> stew.orElseThrow().stewed(before);
            case ROAST -> roasted(visit, before, stations);
            default -> before;
        };
    }

    private PieceState roasted(Visit visit, PieceState before, List<Station> stations) {
        RoastBlock block = roast.orElseThrow();
        PieceState malt = stations.stream()
                .filter(station -> station.visit().kind() == ActKind.ROAST)
                .map(Station::before)
                .findFirst()
                .orElse(before);
        return block.after(malt, visit.number(), before.grainC());
    }

    private double hours(Instant at) {
        return Duration.between(origin, at).toMillis() / 3_600_000.0;
    }

    /** What goes on between two acts: its kind, the expected stage and the slow kiln's. */
    public record Passing(PhaseKind kind, Optional<Stage> expected, Optional<Stage> slow) {
        public static Passing none() {
            return new Passing(PhaseKind.RESTING, Optional.empty(), Optional.empty());
        }

        /** The same phase once it was entered. */
        Passing goingOn() {
            return new Passing(kind, expected.map(stage -> stage::step), slow.map(stage -> stage::step));
        }
    }

    /** Collects samples every half hour and the mean temperature. */
    private final class Tally implements Stage.Observer {
        private static final int STEPS_PER_SAMPLE = 6;

        private final List<Plan.Sample> samples;
        private double sumC;
        private int seen;

        Tally(List<Plan.Sample> samples) {
            this.samples = samples;
        }

        @Override
        public void saw(double atHours, PieceState state) {
            if (seen % STEPS_PER_SAMPLE == 0) {
                samples.add(new Plan.Sample(origin.plusSeconds(Math.round(atHours * 3600)), state));
            }
            sumC += state.grainC();
            seen++;
        }

        double meanC(PieceState otherwise) {
            return seen == 0 ? otherwise.grainC() : sumC / seen;
        }
    }
}
