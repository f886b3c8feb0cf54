package org.tenthwise.app.sums.roughness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.sums.written.WrittenObject;

class RoughnessSumsTest {

    private static SumReply ask(String calc, String keys) throws Exception {
        Map<String, SumValue> given = new LinkedHashMap<>(WrittenObject.read("{" + keys.replace('\'', '"') + "}"));
        return Handbook.sums().ask(calc, SumInput.written(given));
    }

    private static String refusal(String calc, String keys) throws Exception {
        return assertInstanceOf(Problem.class, ask(calc, keys)).why().toString();
    }

    /** Rz 12.5: 2.5 mm by the older edition, from memory, 0.8 mm by the newer, a Swedish table of settings. */
    @Test
    void whereTheEditionsDifferANoteSaysSo() throws Exception {
        SumResult newer = assertInstanceOf(
                SumResult.class,
                ask("roughness-settings", "'parameter':'Rz','limit':'12.5','edition':'ISO 21920-3','unit':'mm'"));
        assertEquals("0.800000", Asking.at(newer, "cutoff"));
        assertEquals("4.000000", Asking.at(newer, "evaluation_length"));
        assertTrue(newer.notes().toString().contains("ISO 4288:1996 has 2.5 mm here"), newer.notes()::toString);
        assertTrue(newer.basis().toString().contains("21920"));
        SumResult older = assertInstanceOf(
                SumResult.class, ask("roughness-settings", "'parameter':'Rz','limit':12.5,'edition':'1996'"));
        assertEquals("2.500000", Asking.at(older, "cutoff"));
        assertTrue(older.notes().toString().contains("ISO 21920-3:2021 has 0.8 mm here"), older.notes()::toString);
        assertTrue(older.notes().toString().contains("from memory"));
        SumResult beyond = assertInstanceOf(
                SumResult.class, ask("roughness-settings", "'parameter':'Rz','limit':300,'edition':'2021'"));
        assertTrue(beyond.notes().toString().contains("ISO 4288:1996 has no band here"), beyond.notes()::toString);
    }

    @Test
    void bothEditionsMayBeNamedWhereTheyAgree() throws Exception {
        SumResult both = assertInstanceOf(
                SumResult.class,
                ask("roughness-settings", "'parameter':'Ra','limit':'0.8','edition':'ISO 4288 / ISO 21920-3'"));
        assertEquals("0.800000", Asking.at(both, "cutoff"));
        assertTrue(refusal("roughness-settings", "'parameter':'Rz','limit':'12.5','edition':'ISO 4288 / ISO 21920-3'")
                .contains("different bands"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            'parameter':'Rq','limit':'1.6','edition':'4288'              | parameter is "Rq"
            'limit':'1.6','edition':'4288'                               | parameter is missing
            'parameter':'Ra','edition':'4288'                            | limit is missing
            'parameter':'Ra','limit':'1.6'                               | edition is missing
            'parameter':'Ra','limit':'0','edition':'4288'                | limit is 0
            'parameter':'Ra','limit':'-1','edition':'4288'               | limit is -1
            'parameter':'Ra','limit':'rough','edition':'4288'            | rough
            'parameter':'Ra','limit':'1.6','edition':'newest'            | newest
            'parameter':'Rz','limit':'0.02','edition':'4288'             | no band for a limit of Rz 0.02
            'parameter':'Ra','limit':'63','edition':'4288','unit':'in'   | unit is in
            'parameter':'Ra','limit':'1.6','edition':'4288','values':[1] | values
            """)
    void settingsOfWhatIsNoLimitAreRefused(String keys, String said) throws Exception {
        String why = refusal("roughness-settings", keys);
        assertTrue(why.contains(said), why);
    }

    @Test
    void theAnswerSaysWhatIsOverAndWhatIsLeft() throws Exception {
        SumResult open = assertInstanceOf(
                SumResult.class,
                ask("roughness", "'values':['1.5',1.7],'limit':'1.6','rule':'16-percent','unit':'in'"));
        assertEquals("open", Asking.at(open, "verdict"));
        assertEquals("4", Asking.at(open, "still_to_measure"));
        assertEquals("1", Asking.at(open, "allowed_over"));
        assertTrue(open.notes().toString().contains("One of 2 values over the limit"), open.notes()::toString);
        SumResult on = assertInstanceOf(
                SumResult.class, ask("roughness", "'values':['1.1','1.7'],'limit':'1.6','rule':'16-percent'"));
        assertEquals("pass", Asking.at(on, "verdict"));
        assertTrue(on.notes().toString().contains("second look"), on.notes()::toString);
        SumResult max =
                assertInstanceOf(SumResult.class, ask("roughness", "'values':['1.1'],'limit':'1.6','rule':'max'"));
        assertTrue(max.notes().toString().contains("None of 1 value over"), max.notes()::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            'values':[],'limit':'1.6','rule':'max'                | values
            'values':'1.5','limit':'1.6','rule':'max'             | values
            'values':['1.5','0'],'limit':'1.6','rule':'max'       | item 2 is 0
            'values':['-1.5'],'limit':'1.6','rule':'16-percent'   | item 1 is -1.5
            'values':['1.5','x'],'limit':'1.6','rule':'max'       | x
            'values':['1.5'],'limit':'0','rule':'max'             | limit is 0
            'values':['1.5'],'limit':'1.6','rule':'16'            | rule is "16"
            'values':['1.5'],'limit':'1.6'                        | rule is missing
            'values':['1.5'],'rule':'max'                         | limit is missing
            """)
    void whatIsNoRoughnessIsRefused(String keys, String said) throws Exception {
        String why = refusal("roughness", keys);
        assertTrue(why.contains(said), why);
    }
}
