package soapstone.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringTokenizer;
import java.util.TreeMap;

/**
 * Every word that the reader knows, in English and Spanish, without accents and in small letters. One table, so that
 * adding a word is adding it here; a test prints it and compares.
 */
final class Spellings {

    /** What a word is to the reader. */
    enum Role {
        UNIT, SQUARE, CUBIC, SQUARED, CUBED, PER, AND, ABOUT, MINUS, THING, NUMBER_WORD, NOT_A_NUMBER, TIMES, ORDINAL
    }

    /**
     * What a word stands for.
     *
     * @param role  its part in an answer
     * @param units of a unit word: what it can mean; the asked dimension chooses, else the first counts
     * @param scale how many of the unit it is: 0.001 in for a thou
     * @param good  whether it can be suggested: {@code inchs} is understood, not taught
     */
    record Spelling(Role role, List<Unit> units, double scale, boolean good) {

        boolean measures(Dimension dimension) {
            for (int i = 0; i < units.size() && dimension != null; i++) {
                if (units.get(i).dimension().equals(dimension)) {
                    return true;
                }
            }
            return dimension == null;
        }
    }

    private static final char QUIET = '~';
    private static final Map<String, Spelling> TABLE = new HashMap<>();
    /** What can be counted; apart, because 9 bars are bars when a count is asked and a pressure else. */
    private static final Map<String, Spelling> THINGS = new HashMap<>();

    static {
        lengths();
        areasAndVolumes();
        weightsAndForces();
        pressures();
        timesAndAngles();
        others();
        grammar();
        things();
        numberWords();
    }

    static final Spelling PRIME = sign(Units.FOOT, Units.ARCMIN);
    static final Spelling DOUBLE = sign(Units.INCH, Units.ARCSEC);
    static final Spelling DEGREE = find("deg");
    static final Spelling PERCENT = find("percent");
    static final Spelling DOLLAR = find("dollar");
    static final Spelling CENT = find("cent");
    static final Spelling HASH = find("lb");

    private Spellings() {}

    private static Spelling sign(Unit... units) {
        return new Spelling(Role.UNIT, List.of(units), 1, true);
    }

    private static void lengths() {
        unit("in", "in inch inches ~inchs ~inche ~ins pulgada pulgadas pulg ~pulgs ~plg ~plgs");
        unit("ft", "ft foot feet ~fts pie pies lf");
        unit("yd", "yd yds yard yards yarda yardas");
        unit("mm", "mm ~mms millimeter millimeters millimetre millimetres milimetro milimetros");
        unit("cm", "cm ~cms centimeter centimeters centimetre centimetres centimetro centimetros");
        units("m min", "m");
        unit("m", "~mt ~mts ~mtr ~mtrs meter meters metre metres metro metros");
        scaled("in", 0.001, "thou thous");
        scaled("mm", 0.001, "um micron microns micra micras micrometro micrometros");
    }

    private static void areasAndVolumes() {
        unit("in2", "sqin");
        unit("ft2", "sqft sf");
        unit("yd2", "sqyd");
        unit("in3", "cuin");
        unit("ft3", "cuft cf");
        unit("yd3", "cuyd");
        unit("cm3", "cc");
        unit("gal", "gal gals gallon gallons galon galones");
        unit("qt", "qt qts quart quarts");
        unit("L", "l ~lt ~lts ~ltr ~ltrs liter liters litre litres litro litros");
        unit("mL", "ml ~mls milliliter milliliters millilitre millilitres mililitro mililitros");
    }

    private static void weightsAndForces() {
        units("lb lbf", "lb lbs pound pounds libra libras");
        units("lbf lb", "lbf ~lbsf");
        unit("lb", "lbm");
        unit("oz", "oz ~ozs ounce ounces onza onzas");
        units("ton tonf", "ton tons");
        unit("t", "t tonne tonnes tonelada toneladas");
        unit("kg", "kg ~kgs kilo kilos kilogram kilograms kilogramme kilogrammes kilogramo kilogramos");
        unit("g", "g ~gr ~grs gram grams gramme grammes gramo gramos");
        unit("kip", "kip kips");
        unit("tonf", "tonf");
        unit("N", "n newton newtons");
        unit("kN", "kn kilonewton kilonewtons");
    }

    private static void pressures() {
        unit("psi", "psi psig");
        unit("ksi", "ksi");
        unit("psf", "psf");
        unit("kPa", "kpa ~kpas kilopascal kilopascals kilopascales");
        unit("Pa", "pa pascal pascals pascales");
        unit("MPa", "mpa megapascal megapascals megapascales");
        unit("bar", "bar bars bares");
    }

    private static void timesAndAngles() {
        units("s arcsec", "s sec secs second seconds seg segs segundo segundos");
        units("min arcmin", "min mins minute minutes minuto minutos");
        unit("h", "h hr hrs hs hour hours hora horas");
        units("deg degF degC", "deg ~degs degree degrees grado grados");
        unit("arcmin", "arcmin");
        unit("arcsec", "arcsec");
    }

    private static void others() {
        unit("degF", "f fahrenheit degf");
        unit("degC", "c celsius centigrade centigrado centigrados degc");
        unit("dollar", "dollar dollars usd dolar dolares");
        scaled("dollar", 0.01, "cent cents centavo centavos");
        unit("%", "percent pct porciento");
        unit("rpm", "rpm");
        unit("Hz", "hz hertz");
        unit("J", "j joule joules julio julios");
        unit("kJ", "kj kilojoule kilojoules");
        unit("W", "w watt watts vatio vatios");
        unit("kW", "kw kilowatt kilowatts kilovatio kilovatios");
        unit("A", "a amp amps ampere amperes amperio amperios");
        unit("V", "v volt volts voltio voltios");
        unit("lb/ft3", "pcf");
        unit("lb/ft", "plf");
        unit("ft3/min", "cfm");
        unit("gal/min", "gpm");
        unit("ft/min", "fpm");
        unit("in/min", "ipm");
    }

    private static void grammar() {
        role(Role.SQUARE, "sq square");
        role(Role.CUBIC, "cu cub cubic");
        role(Role.SQUARED, "squared cuadrado cuadrados cuadrada cuadradas");
        role(Role.CUBED, "cubed cubico cubicos cubica cubicas");
        role(Role.PER, "per por");
        role(Role.AND, "and y");
        role(Role.ABOUT, "about approx approximately around aprox aproximadamente unos unas ca is es");
        role(Role.MINUS, "minus negative menos negativo");
        role(Role.TIMES, "x times");
        role(Role.ORDINAL, "th ths nd nds rd rds avos");
        role(Role.NOT_A_NUMBER, "nan inf infinity infinite infinito");
    }

    private static void things() {
        role(Role.THING, "hole holes pc pcs piece pieces part parts space spaces stud studs bolt bolts rivet rivets screw "
                + "screws sheet sheets plate plates weld welds stitch stitches bend bends panel panels baffle baffles "
                + "gusset gussets stiffener stiffeners rung rungs tank tanks blank blanks cut cuts mark marks unit units "
                + "row rows pass passes person people worker workers step steps slot slots tab tabs leg legs bar bars rod "
                + "rods tube tubes pipe pipes angle angles ring rings segment segments gore gores section sections side "
                + "sides box boxes kerf kerfs ga gage gauge each ea line lines load loads trip trips");
        role(Role.THING, "agujero agujeros hoyo hoyos barreno barrenos perforacion perforaciones pieza piezas pza pzas "
                + "espacio espacios perno pernos tornillo tornillos remache remaches lamina laminas hoja hojas chapa chapas "
                + "plancha planchas placa placas soldadura soldaduras doblez dobleces corte cortes marca marcas unidad "
                + "unidades uds fila filas persona personas tanque tanques peldano peldanos barra barras tubo tubos calibre "
                + "cal cordon cordones panel paneles parte partes viaje viajes");
    }

    private static void numberWords() {
        role(Role.NUMBER_WORD, "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
                + "fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety "
                + "hundred thousand dozen half halves quarter quarters eighth eighths sixteenth sixteenths "
                + "third thirds point");
        role(Role.NUMBER_WORD, "cero uno una dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce "
                + "quince dieciseis veinte treinta cuarenta cincuenta cien mil medio media medios tercio tercios cuarto "
                + "cuartos octavo octavos dieciseisavo dieciseisavos docena punto coma");
    }

    private static void unit(String name, String words) {
        put(words, new Spelling(Role.UNIT, List.of(Units.parse(name).orElseThrow()), 1, true));
    }

    private static void units(String names, String words) {
        List<Unit> units = new ArrayList<>();
        StringTokenizer each = new StringTokenizer(names);
        while (each.hasMoreTokens()) {
            units.add(Units.named(each.nextToken()).orElseThrow());
        }
        put(words, new Spelling(Role.UNIT, List.copyOf(units), 1, true));
    }

    private static void scaled(String name, double scale, String words) {
        put(words, new Spelling(Role.UNIT, List.of(Units.named(name).orElseThrow()), scale, true));
    }

    private static void role(Role role, String words) {
        put(words, new Spelling(role, List.of(), 1, true));
    }

    /** The first meaning of a word stays. A word with a {@link #QUIET} mark is read but never suggested. */
    private static void put(String words, Spelling spelling) {
        Map<String, Spelling> table = spelling.role() == Role.THING ? THINGS : TABLE;
        Spelling quiet = new Spelling(spelling.role(), spelling.units(), spelling.scale(), false);
        StringTokenizer each = new StringTokenizer(words);
        while (each.hasMoreTokens()) {
            String word = each.nextToken();
            boolean isQuiet = word.charAt(0) == QUIET;
            table.putIfAbsent(isQuiet ? word.substring(1) : word, isQuiet ? quiet : spelling);
        }
    }

    /** What a folded word stands for, or null. */
    static Spelling find(String folded) {
        return TABLE.get(folded);
    }

    /** Whether a folded word names things that can be counted. */
    static boolean isThing(String folded) {
        return THINGS.containsKey(folded);
    }

    /** The known good words of a role, of more than one letter, whose units can measure a dimension; all of the role when it is null. */
    static List<String> words(Role role, Dimension dimension) {
        List<String> words = new ArrayList<>();
        for (Map.Entry<String, Spelling> entry : TABLE.entrySet()) {
            Spelling s = entry.getValue();
            if (s.role() == role && s.good() && entry.getKey().length() > 1 && s.measures(dimension)) {
                words.add(entry.getKey());
            }
        }
        Collections.sort(words);
        return words;
    }

    /** The whole table, one word a line, for review. */
    static String dump() {
        StringBuilder out = new StringBuilder();
        Map<String, Spelling> sorted = new TreeMap<>(TABLE);
        THINGS.forEach((word, thing) -> sorted.put(word + (TABLE.containsKey(word) ? " counted" : ""), thing));
        for (Map.Entry<String, Spelling> entry : sorted.entrySet()) {
            Spelling s = entry.getValue();
            out.append(entry.getKey()).append(" = ");
            if (s.role() == Role.UNIT) {
                out.append(s.scale() == 1 ? "" : s.scale() + " ");
                out.append(String.join(" or ", s.units().stream().map(Unit::name).toList()));
            } else {
                out.append('(').append(s.role().name().toLowerCase(Locale.ROOT).replace('_', ' ')).append(')');
            }
            out.append(s.good() ? "\n" : ", not suggested\n");
        }
        return out.toString();
    }
}
