package piecewright.reading;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.reading.Candidate.Doubt;
import piecewright.reading.Piece.Half;
import piecewright.reading.Piece.Hours;
import piecewright.reading.Piece.Told.Clock;
import piecewright.text.MomentFormat;

/** The instants a time as said can be, the likelier first. */
final class Moments {
    /** Judgement: clocks of people and machine differ by less. */
    static final Duration AHEAD = Duration.ofMinutes(5);
    /** Judgement: an hour without a day that lies further back is another day's. */
    private static final Duration FAR_BACK = Duration.ofHours(18);

    private final Scene scene;
    private final MomentFormat format;

    Moments(Scene scene) {
        this.scene = scene;
        this.format = new MomentFormat(scene.zone(), scene.units().locale());
    }

    /** One instant. */
    record Moment(Instant at, Optional<Doubt> doubt, boolean halved) {}

    /** @param act the step it is about, if there is one: its planned time is offered where no hour was said */
    List<Moment> of(When when, Optional<ActKind> act, Standing standing) throws NotSoException {
        if (when.into().isPresent()) return into(when.into().get().length(), standing);
        if (when.ago().isPresent()) {
            Instant at = scene.now().minus(when.ago().get().length());
            if (!when.ago().get().rounded()) return List.of(sure(at));
            return vague(List.of(at, scene.now()));
        }
        if (!when.clocks().isEmpty()) return clocked(when);
        boolean apart = when.vague()
                || !when.days().isEmpty() && !when.days().contains(scene.today())
                || when.hours().isPresent();
        if (when.now() || !apart) return List.of(sure(scene.now()));
        return hourless(when, act);
    }

    private static Moment sure(Instant at) {
        return new Moment(at, Optional.empty(), false);
    }

    private static List<Moment> vague(List<Instant> all) {
        return all.stream()
                .distinct()
                .map(at -> new Moment(at, Optional.of(Doubt.of("ask.which-hour")), false))
                .toList();
    }

    private List<Moment> into(Duration length, Standing standing) throws NotSoException {
        Optional<Standing.Done> roast = standing.lastOf(scene.now(), ActKind.ROAST, ActKind.STEW);
        if (roast.isEmpty()) throw new NotSoException("line.no-clock", length.toMinutes() + " min");
        return List.of(sure(roast.get().at().plus(length)));
    }

    /** A day or part of a day: the planned hour in it, else a usual one, and now. */
    private List<Moment> hourless(When when, Optional<ActKind> act) throws NotSoException {
        LocalDate today = scene.today();
        LocalDate day = when.days().isEmpty() ? today : when.days().get(0);
        Optional<Hours> hours = when.hours();
        LocalDateTime from;
        LocalDateTime until;
        LocalTime usual;
        if (hours.isPresent()) {
            boolean night =
                    hours.get() == Hours.LAST_NIGHT || hours.get() == Hours.OVERNIGHT || hours.get() == Hours.NIGHT;
            LocalDate evening = night && when.days().isEmpty() ? today.minusDays(1) : day;
            from = evening.atTime(begins(hours.get()));
            until = night
                    ? evening.plusDays(1).atTime(6, 0)
                    : evening.plusDays(1).atStartOfDay();
            if (hours.get() == Hours.MORNING) until = evening.atTime(12, 0);
            if (hours.get() == Hours.AFTERNOON) until = evening.atTime(18, 0);
            usual = usual(hours.get());
            day = evening;
        } else if (!when.days().isEmpty()) {
            from = day.atStartOfDay();
            until = day.plusDays(1).atStartOfDay();
            usual = LocalTime.NOON;
        } else {
            from = LocalDateTime.ofInstant(scene.now(), scene.zone()).minusHours(12);
            until = LocalDateTime.ofInstant(scene.now(), scene.zone());
            usual = until.toLocalTime();
        }
        List<Instant> all = new ArrayList<>();
        planned(act, from, until).ifPresent(all::add);
        if (all.isEmpty()) all.add(day.atTime(usual).atZone(scene.zone()).toInstant());
        all.removeIf(at -> at.isAfter(scene.now()));
        boolean ended =
                !when.days().isEmpty() && until.atZone(scene.zone()).toInstant().isBefore(scene.now());
        if (from.atZone(scene.zone()).toInstant().isAfter(scene.now().plus(AHEAD))) throw ahead(from);
        if (!ended || hours.isPresent()) all.add(scene.now());
        return vague(all);
    }

    private static LocalTime begins(Hours hours) {
        return switch (hours) {
            case MORNING -> LocalTime.MIDNIGHT;
            case AFTERNOON -> LocalTime.NOON;
            case EVENING, TONIGHT -> LocalTime.of(17, 0);
            case NIGHT, LAST_NIGHT, OVERNIGHT -> LocalTime.of(18, 0);
        };
    }

    private static LocalTime usual(Hours hours) {
        return switch (hours) {
            case MORNING -> LocalTime.of(9, 0);
            case AFTERNOON -> LocalTime.of(17, 0);
            case EVENING, TONIGHT -> LocalTime.of(20, 0);
            case NIGHT, LAST_NIGHT, OVERNIGHT -> LocalTime.of(22, 0);
        };
    }

    private Optional<Instant> planned(Optional<ActKind> act, LocalDateTime from, LocalDateTime until) {
        Instant first = from.atZone(scene.zone()).toInstant();
        Instant last = until.atZone(scene.zone()).toInstant();
        return scene.planned().stream()
                .filter(visit -> act.isPresent() && visit.kind() == act.get())
                .map(Visit::at)
                .filter(at -> !at.isBefore(first) && !at.isAfter(last) && !at.isAfter(scene.now()))
                .reduce((one, other) -> other);
    }

    private List<Moment> clocked(When when) throws NotSoException {
        Set<Instant> past = new LinkedHashSet<>();
        List<LocalDateTime> all = new ArrayList<>();
        boolean halved = false;
        for (Clock clock : when.clocks()) {
            if (clock.offset().isPresent()) return List.of(offset(when, clock));
            halved |= clock.half() == Half.EITHER;
            for (LocalTime time : times(clock)) all.addAll(days(when, clock, time));
        }
        if (all.isEmpty())
            throw new NotSoException(
                    "line.no-clock",
                    when.clocks().get(0).hour() + ":" + two(when.clocks().get(0).minute()));
        for (LocalDateTime local : all) {
            for (Instant at : instants(local)) if (!at.isAfter(scene.now().plus(AHEAD))) past.add(at);
        }
        List<LocalDateTime> skipped =
                all.stream().filter(local -> instants(local).isEmpty()).toList();
        if (past.isEmpty() && !skipped.isEmpty()) return skipped(skipped.get(0));
        if (past.isEmpty()) throw ahead(all.get(0));
        List<Instant> near = past.stream().filter(at -> !far(at, when)).toList();
        List<Instant> left = near.isEmpty() ? List.copyOf(past) : near;
        boolean yesterday = near.isEmpty();
        boolean several = when.clocks().size() > 1;
        boolean known = halved;
        return left.stream()
                .sorted(Comparator.<Instant>naturalOrder().reversed())
                .map(at -> new Moment(
                        at,
                        yesterday
                                ? Optional.of(Doubt.of("ask.yesterday"))
                                : several ? Optional.of(Doubt.of("ask.which-hour")) : Optional.empty(),
                        known))
                .toList();
    }

    private static String two(int minute) {
        return minute < 10 ? "0" + minute : String.valueOf(minute);
    }

    private boolean far(Instant at, When when) {
        boolean free = when.days().isEmpty() && when.hours().isEmpty();
        boolean midnight = when.clocks().get(0).half() == Half.MIDNIGHT;
        return free && !midnight && Duration.between(at, scene.now()).compareTo(FAR_BACK) > 0;
    }

    private static List<LocalTime> times(Clock clock) {
        int hour = clock.hour();
        int minute = clock.minute();
        return switch (clock.half()) {
            case FIXED, MIDNIGHT -> List.of(LocalTime.of(hour, minute));
            case AM -> List.of(LocalTime.of(hour % 12, minute));
            case PM -> List.of(LocalTime.of(hour % 12 + 12, minute));
            case EITHER -> List.of(LocalTime.of(hour % 12, minute), LocalTime.of(hour % 12 + 12, minute));
        };
    }

    /** The days a time of day can be on. */
    private List<LocalDateTime> days(When when, Clock clock, LocalTime time) {
        LocalDate today = scene.today();
        if (when.hours().isPresent()) {
            return inPart(when, clock, time, when.days().isEmpty() ? List.of(today) : when.days());
        }
        if (when.days().isEmpty()) {
            LocalDateTime local = today.atTime(time);
            return List.of(ahead(local.atZone(scene.zone()).toInstant()) ? local.minusDays(1) : local);
        }
        List<LocalDateTime> all = new ArrayList<>();
        for (LocalDate day : when.days()) {
            all.add(day.atTime(time));
            if (clock.half() == Half.MIDNIGHT) all.add(day.plusDays(1).atTime(time));
        }
        return all;
    }

    private List<LocalDateTime> inPart(When when, Clock clock, LocalTime time, List<LocalDate> days) {
        Hours hours = when.hours().orElseThrow();
        boolean sure = clock.half() == Half.FIXED;
        List<LocalDateTime> all = new ArrayList<>();
        for (LocalDate day : days) {
            switch (hours) {
                case MORNING -> {
                    if (sure || time.getHour() < 12) all.add(day.atTime(time));
                }
                case AFTERNOON, EVENING -> {
                    if (sure || time.getHour() >= 12) all.add(day.atTime(time));
                }
                case TONIGHT -> {
                    if (time.getHour() >= 17) all.add(day.atTime(time));
                    else if (time.getHour() < 5)
                        all.add(
                                scene.now().atZone(scene.zone()).getHour() < 5
                                        ? day.atTime(time)
                                        : day.plusDays(1).atTime(time));
                    else if (sure) all.add(day.atTime(time));
                }
                case NIGHT, LAST_NIGHT, OVERNIGHT -> {
                    LocalDate evening = when.days().isEmpty() ? day.minusDays(1) : day;
                    if (time.getHour() >= 18) all.add(evening.atTime(time));
                    if (time.getHour() < 6) all.add(evening.plusDays(1).atTime(time));
                }
            }
        }
        return all;
    }

    private boolean ahead(Instant at) {
        return at.isAfter(scene.now().plus(AHEAD));
    }

    /** One; two where the clocks went back over it; none where they went forward. */
    private List<Instant> instants(LocalDateTime local) {
        return scene.zone().getRules().getValidOffsets(local).stream()
                .map(local::toInstant)
                .toList();
    }

    /** An hour the clocks skipped: the hour before or the hour after. */
    private List<Moment> skipped(LocalDateTime local) {
        Instant after = local.atZone(scene.zone()).toInstant();
        Doubt doubt = Doubt.of("line.skipped-hour", local.toLocalTime().toString(), format.day(local.toLocalDate()));
        return Stream.of(after.minus(Duration.ofHours(1)), after)
                .filter(at -> !ahead(at))
                .map(at -> new Moment(at, Optional.of(doubt), false))
                .toList();
    }

    private Moment offset(When when, Clock clock) throws NotSoException {
        LocalDate day = when.days().isEmpty() ? scene.today() : when.days().get(0);
        try {
            Instant at = day.atTime(clock.hour(), clock.minute())
                    .toInstant(ZoneOffset.of(clock.offset().orElseThrow()));
            if (ahead(at) && when.days().isEmpty()) at = at.minus(Duration.ofDays(1));
            if (ahead(at)) throw ahead(LocalDateTime.ofInstant(at, scene.zone()));
            return sure(at);
        } catch (java.time.DateTimeException wrong) {
            throw new NotSoException(
                    "line.no-clock",
                    clock.hour() + ":" + two(clock.minute()) + " "
                            + clock.offset().orElseThrow());
        }
    }

    private NotSoException ahead(LocalDateTime local) {
        return new NotSoException(
                "line.ahead",
                () -> List.of(format.moment(local.atZone(scene.zone()).toInstant())));
    }
}
