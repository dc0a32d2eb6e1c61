package soapstone.bank;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Caution;
import soapstone.exercise.Family;
import soapstone.exercise.Formula;
import soapstone.exercise.Table;
import soapstone.expression.FormulaBody;

/** What exercises of a bank share, read before them. */
record Book(Map<String, Formula> formulas, Map<String, FormulaBody> bodies, Map<String, String> formulaTexts, Map<String, Table> tables,
        Map<String, String> tableTexts, Map<String, Family> families, Map<String, Caution> cautions) implements GivenReader.Tables {

    @Override
    public Optional<Table> find(String name) {
        return Optional.ofNullable(tables.get(name));
    }

    @Override
    public Set<String> names() {
        return tables.keySet();
    }
}
