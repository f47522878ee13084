package piecewright.purchase;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cheapest sacks that hold enough; without prices the fewest kg too many, then the fewest sacks. */
record SackChoice(Map<Sack, Integer> sacks) {
    /** Judgement: more sizes than this nobody offers, and the search stays short. */
    static final int MOST_OFFERS = 3;
    /** Judgement: a gram too little is no reason for another sack. */
    private static final double SLACK_KG = 0.001;

    SackChoice {
        sacks = Collections.unmodifiableMap(new LinkedHashMap<>(sacks));
    }

    static SackChoice of(double missingKg, List<Sack> offers) {
        if (offers.size() > MOST_OFFERS) {
            throw new IllegalArgumentException("offers must be at most " + MOST_OFFERS + ": " + offers.size());
        }
        long priced = offers.stream().filter(sack -> sack.price().isPresent()).count();
        if (priced != 0 && priced != offers.size()) {
            throw new IllegalArgumentException("offers must all have prices or none: " + priced + " have");
        }
        if (missingKg <= SLACK_KG || offers.isEmpty()) return new SackChoice(Map.of());
        List<Sack> largestFirst = offers.stream()
                .sorted(Comparator.comparingDouble(Sack::sizeKg).reversed())
                .toList();
        return filled(missingKg, largestFirst, 0);
    }

    private static SackChoice filled(double missingKg, List<Sack> offers, int at) {
        Sack sack = offers.get(at);
        int most = Math.max(0, (int) Math.ceil((missingKg - SLACK_KG) / sack.sizeKg()));
        if (at == offers.size() - 1) return new SackChoice(most == 0 ? Map.of() : Map.of(sack, most));
        SackChoice best = null;
        for (int count = most; count >= 0; count--) {
            SackChoice rest = filled(missingKg - count * sack.sizeKg(), offers, at + 1);
            Map<Sack, Integer> all = new LinkedHashMap<>();
            if (count > 0) all.put(sack, count);
            all.putAll(rest.sacks());
            SackChoice choice = new SackChoice(all);
            if (best == null || BETTER.compare(choice, best) < 0) best = choice;
        }
        return best == null ? new SackChoice(Map.of()) : best;
    }

    private static final Comparator<SackChoice> BETTER = Comparator.comparing(
                    (SackChoice choice) -> choice.cost().orElse(BigDecimal.ZERO))
            .thenComparingDouble(SackChoice::boughtKg)
            .thenComparingInt(choice ->
                    choice.sacks().values().stream().mapToInt(Integer::intValue).sum());

    double boughtKg() {
        return sacks.entrySet().stream()
                .mapToDouble(entry -> entry.getKey().sizeKg() * entry.getValue())
                .sum();
    }

    /** Empty when any has no price. */
    Optional<BigDecimal> cost() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Map.Entry<Sack, Integer> entry : sacks.entrySet()) {
            Optional<BigDecimal> price = entry.getKey().price();
            if (price.isEmpty()) return Optional.empty();
            sum = sum.add(price.get().multiply(BigDecimal.valueOf(entry.getValue())));
        }
        return Optional.of(sum);
    }
}
