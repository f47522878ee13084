package piecewright.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Report.Noted;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.reading.Outcome.Asked;
import piecewright.reading.Outcome.Kept;
import piecewright.reading.Outcome.Offer;
import piecewright.reading.Outcome.Refused;
import piecewright.reading.Outcome.Said;
import piecewright.text.EntryWords;
import piecewright.text.Phrases;

/** The readings a line can have: one is kept, several are asked, none is refused. Scratch space of one line. */
final class Choice {
    private static final int MOST_OFFERS = 3;
    /** Judgement: an hour so near before now is meant … */
    private static final Duration LATELY = Duration.ofMinutes(60);
    /** … where the other half of the day is further than this from the planned time. Judgement. */
    private static final Duration OFF_PLAN = Duration.ofHours(3);

    private final Scene scene;
    private final String line;
    private final boolean sure;
    private final List<Candidate> fine = new ArrayList<>();
    private final List<Candidate> doubtful = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();

    Choice(Scene scene, String line, boolean sure) {
        this.scene = scene;
        this.line = line;
        this.sure = sure;
    }

    void possible(Candidate candidate) {
        boolean isFine = candidate.doubt().isEmpty() || sure;
        if (fine.stream().anyMatch(candidate::same)) return;
        doubtful.removeIf(known -> isFine && known.same(candidate));
        if (isFine) fine.add(candidate);
        else if (doubtful.stream().noneMatch(candidate::same)) doubtful.add(candidate);
    }

    /** Not every reading was looked at: none of them may be kept unasked. */
    void unsure() {
        List<Candidate> known = List.copyOf(fine);
        fine.clear();
        known.forEach(candidate -> possible(candidate.doubted(Candidate.Doubt.of("ask.which"))));
    }

    void impossible(String sentence) {
        reasons.add(sentence);
    }

    List<Candidate> fine() {
        return List.copyOf(fine);
    }

    List<Candidate> all() {
        List<Candidate> all = new ArrayList<>(fine);
        all.addAll(doubtful);
        return all;
    }

    Optional<String> reason() {
        return reasons.stream().findFirst();
    }

    Outcome outcome() {
        Optional<Candidate> one = fine.size() == 1 ? Optional.of(fine.get(0)) : lately();
        if (one.isPresent()) return kept(one.get().sayings());
        if (!fine.isEmpty())
            return asked(
                    fine,
                    fine.stream()
                            .flatMap(each -> each.doubt().stream())
                            .findFirst()
                            .orElse(Candidate.Doubt.of(halves() ? "line.which-half" : "ask.which")));
        if (!doubtful.isEmpty()) return asked(doubtful, doubtful.get(0).doubt().orElseThrow());
        return new Refused(reason().orElseGet(() -> Phrases.say("line.nothing-said")));
    }

    private boolean halves() {
        return fine.stream().allMatch(Candidate::halved);
    }

    /** Of two halves of a day the one just now, where the other is far from the plan. */
    private Optional<Candidate> lately() {
        boolean onlyTimes = fine.size() > 1
                && halves()
                && fine.stream().map(Choice::reports).distinct().count() == 1;
        if (!onlyTimes) return Optional.empty();
        List<Candidate> near = fine.stream()
                .filter(each -> Standing.near(at(each), scene.now(), LATELY))
                .toList();
        if (near.size() != 1) return Optional.empty();
        List<Instant> planned = planned(near.get(0));
        boolean clear = fine.stream()
                .filter(each -> each != near.get(0))
                .allMatch(other -> planned.stream().noneMatch(time -> Standing.near(time, at(other), OFF_PLAN)));
        return clear ? Optional.of(near.get(0)) : Optional.empty();
    }

    private static List<Report> reports(Candidate candidate) {
        return candidate.sayings().stream().map(Saying::report).toList();
    }

    private static Instant at(Candidate candidate) {
        return candidate.sayings().get(0).at();
    }

    private List<Instant> planned(Candidate candidate) {
        List<ActKind> acts = candidate.sayings().stream()
                .flatMap(saying -> saying.act().stream())
                .toList();
        return scene.planned().stream()
                .filter(visit -> acts.contains(visit.kind()))
                .map(Visit::at)
                .toList();
    }

    Outcome kept(List<Saying> sayings) {
        return new Kept(sayings.stream()
                .map(saying -> new Said(saying.at(), saying.report()))
                .toList());
    }

    private Outcome asked(List<Candidate> candidates, Candidate.Doubt doubt) {
        LineWriter writer = new LineWriter(scene);
        List<Offer> offers = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (offers.size() == MOST_OFFERS) break;
            String typed = writer.line(candidate.sayings(), candidate.doubt().isPresent());
            if (offers.stream().noneMatch(offer -> offer.line().equals(typed)))
                offers.add(new Offer(
                        typed,
                        words(candidate.sayings().stream()
                                .map(saying -> writer.typed(saying, scene.now()))
                                .toList())));
        }
        String note = Lexicon.of(scene.units().locale()).say("note") + " " + line;
        boolean noted = candidates.stream()
                .anyMatch(each -> each.sayings().stream().allMatch(saying -> saying.report() instanceof Noted));
        if (offers.size() < 2 && !noted)
            offers.add(new Offer(note, words(List.of(new Saying(scene.now(), new Noted(line), false)))));
        return new Asked(Phrases.say(doubt.key(), doubt.arguments().toArray(String[]::new)), offers);
    }

    private String words(List<Saying> sayings) {
        EntryWords words = new EntryWords(scene.units(), scene.zone());
        return sayings.stream()
                .map(saying -> words.dated(
                        new Entry(Integer.MAX_VALUE, saying.at(), scene.now(), Optional.empty(), saying.report())))
                .collect(Collectors.joining("; "));
    }
}
