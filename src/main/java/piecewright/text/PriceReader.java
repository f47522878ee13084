package piecewright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import piecewright.purchase.Currency;

/** Reads a price with its currency on either side: an ISO 4217 code, a sign or a short word, or none. */
public final class PriceReader {
    private static final double MOST = 1_000_000;
    private static final String MONEY = "(\\p{Sc}|\\p{L}{1,3}\\.?|)";
    private static final Pattern PRICE = Pattern.compile(MONEY + " ?([0-9][0-9.,']*) ?" + MONEY);
    private static final Pattern CODE = Pattern.compile("[A-Z]{3}");

    private final DecimalReader decimals;

    public PriceReader(Locale locale) {
        this.decimals = new DecimalReader(locale);
    }

    /** What it costs, in which money. */
    public record Price(BigDecimal amount, Currency currency) {}

    /** The price typed so; the exception's message is a clause. */
    public Price read(String typed) throws UnreadableException {
        Matcher matcher = PRICE.matcher(DecimalReader.plain(typed));
        if (!matcher.matches()) throw unreadable(typed);
        String before = matcher.group(1);
        String after = matcher.group(3);
        if (!before.isEmpty() && !after.isEmpty()) throw unreadable(typed);
        mustExist(before + after);
        double amount = decimals.read(matcher.group(2));
        if (!(amount <= MOST)) throw unreadable(typed);
        return new Price(BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP), new Currency(before, after));
    }

    private static void mustExist(String name) throws UnreadableException {
        boolean code = CODE.matcher(name).matches();
        boolean known = java.util.Currency.getAvailableCurrencies().stream()
                .anyMatch(currency -> currency.getCurrencyCode().equals(name));
        if (code && !known) {
            throw new UnreadableException("\"" + name + "\" is no currency; write its code such as EUR, or its sign");
        }
    }

    private static UnreadableException unreadable(String typed) {
        return new UnreadableException(
                "\"" + Quoted.shortly(typed) + "\" is no price; write it like 38.50, €38.50 or 38.50 EUR");
    }
}
