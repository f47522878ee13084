package piecewright.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkupTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                "</p><script>alert(1)</script>",
                "\" onload=\"alert(1)",
                "' & &amp; &#60; ]]> <!-- -->",
                "Gerste \ud83c\udf3e öäü … “”",
                "two  blanks\tand tab"
            })
    void anyTextComesBackAsItWas(String words) {
        String markup = new Markup()
                .open("p", "title", words.replace('\t', ' '))
                .text(words)
                .close()
                .written();
        Parsed parsed = Parsed.of(markup);
        assertEquals(1, parsed.all("*").size(), markup);
        assertEquals(words, parsed.all("p").get(0).getTextContent());
        assertEquals(words.replace('\t', ' '), parsed.all("p").get(0).getAttribute("title"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000", "\u001b[31m", "\ufffe", "\ud83c", "\udf3e"})
    void whatXmlCannotHoldIsReplaced(String words) {
        String markup = new Markup().leaf("p", "a" + words + "b").written();
        assertEquals(
                '\ufffd', Parsed.of(markup).all("p").get(0).getTextContent().charAt(1));
    }
}
