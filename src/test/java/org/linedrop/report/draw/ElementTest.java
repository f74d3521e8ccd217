package org.linedrop.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ElementTest {
    @Test
    void everyTextAndAttributeIsEscaped() {
        String hostile = "</p><script>alert(\"x\")</script> & 'y' ]]> -->";
        String written = Element.of("p", hostile).set("title", hostile).write();
        String escaped = "&lt;/p&gt;&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &#39;y&#39; ]]&gt; --&gt;";
        assertThat(written).isEqualTo("<p title=\"" + escaped + "\">" + escaped + "</p>\n");
    }

    @Test
    void whatXmlCannotHoldAndWhatTurnsTextRoundIsLeftOut() {
        String text = "a\u0000b\u001bc\u202ed\u200be\ud800f\ufffeg\u2028h\tend \ud83d\udd27 \u00fc";
        assertThat(Element.of("span", text).write()).isEqualTo("<span>a b cdefg h end \ud83d\udd27 \u00fc</span>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"script", "SCRIPT", "iframe", "object", "embed", "foreignObject", "a b", "a>", "", "1a"})
    void refusesElementsThatRunOrBreakSomething(String name) {
        assertThatThrownBy(() -> Element.of(name)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"onclick", "ONLOAD", "a=b", "x\"y", ""})
    void refusesAttributesThatRunOrBreakSomething(String name) {
        assertThatThrownBy(() -> Element.of("p").set(name, "1")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aStyleIsWrittenAsItStandsAndHoldsNoMarkup() {
        assertThat(Element.of("style", "p { margin: 0 }").write()).contains("<style>p { margin: 0 }</style>");
        assertThatThrownBy(() -> Element.of("style", "</style><p>").write())
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void numbersHaveTwoDecimalsInEveryLanguage() {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.ROOT, new Locale("tr", "TR"), new Locale("ar", "EG"))) {
                Locale.setDefault(locale);
                assertThat(Element.number(1234.5678)).isEqualTo("1234.57");
                assertThat(Element.number(-0.001)).isEqualTo("0");
                assertThat(Element.number(100)).isEqualTo("100");
            }
        } finally {
            Locale.setDefault(before);
        }
        assertThatThrownBy(() -> Element.number(Double.NaN)).isInstanceOf(NumberFormatException.class);
    }
}
