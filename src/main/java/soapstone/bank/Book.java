package soapstone.bank;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Caution;
import soapstone.exercise.Convention;
import soapstone.exercise.Family;
import soapstone.exercise.Formula;
import soapstone.exercise.Table;
import soapstone.expression.FormulaBody;

/**
 * What exercises of a bank share, read before them.
 *
 * @param conventions empty where an exercise is read back as it was dealt: what it names was looked at then
 */
record Book(Map<String, Formula> formulas, Map<String, FormulaBody> bodies, Map<String, String> formulaTexts, Map<String, Table> tables,
        Map<String, String> tableTexts, Map<String, Family> families, Map<String, Caution> cautions,
        Optional<Map<String, Convention>> conventions) implements GivenReader.Tables {

    @Override
    public Optional<Table> find(String name) {
        return Optional.ofNullable(tables.get(name));
    }

    @Override
    public Set<String> names() {
        return tables.keySet();
    }
}
